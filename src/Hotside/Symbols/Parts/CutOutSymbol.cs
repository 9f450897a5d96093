using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>A cut-out: a contact that its own shunt coil closes once the generator gives enough.</summary>
internal static class CutOutSymbol
{
    private const int Line = 3, Coil = 9, Width = 12, Height = 10;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("cut-out", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? battery = terminals.Take("51", "BAT", "B", "B+"), generator = terminals.Take("61", "GEN", "D", "D+");
        SymbolTerminal? body = terminals.Take("31", "case");
        if (battery is null || generator is null)
            return null;
        var s = new SymbolSketch(Width, Height, options.Lettering);
        s.Enclosure(0, 0, Width, Height);
        Contact.Make(s, Line, 3, 3, 7);
        s.Path(Pen.Link, (Line - 0.5, 3), (Coil + 1, 3), (Coil + 1, 5.6));
        s.Path(Pen.Medium, (Line, 4.8), (Coil, 4.8), (Coil, 5.6));
        s.Dot(Line, 4.8);
        RelaySymbols.Winding(s, Coil, 6.6);
        s.Line(Pen.Medium, Coil, 7.6, Coil, body is null ? 8.1 : Height);
        if (body is null)
            s.CaseGround(Coil, 8.1);
        s.Stud(battery, Line, 0, SymbolSide.Top);
        s.Stud(generator, Line, Height, SymbolSide.Bottom, room: 2.6);
        s.Stud(body, Coil, Height, SymbolSide.Bottom, markLeft: true, room: 2.2);
        return s.Done("cut-out");
    }
}
