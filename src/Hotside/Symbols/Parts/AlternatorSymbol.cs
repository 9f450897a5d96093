using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>An alternator with rectifier and regulator in it.</summary>
internal static class AlternatorSymbol
{
    private const int Stator = 3, Rotor = 10, Width = 13, Height = 9;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("alternator", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? output = terminals.Take("B+", "30", "B", "BAT"), exciter = terminals.Take("D+", "61", "L", "IND");
        SymbolTerminal? field = exciter is null ? terminals.Take("DF", "F", "FLD") : null;
        // An insulated one has its own return; its case then joins nothing inside.
        SymbolTerminal? back = terminals.Take("B-", "E", "31", "case"), body = back is null || back.Name == "case" ? null : terminals.Take("case");
        if (output is null)
            return null;
        var s = new SymbolSketch(Width, Height, options.Lettering);
        s.Enclosure(0, 0, Width, Height);
        Rectifier(s);
        s.Circle(Stator, 6, 1.5);
        s.Letter("G", Stator, 5.95, s.Lettering.BodyBold with { CapHeight = 10 });
        s.Letter("3 ~", Stator, 7.1, s.Lettering.SmallBold with { CapHeight = 7.2 });
        Excitation(s, exciter is not null, field is not null);
        s.Line(Pen.Medium, Stator, 7.5, Stator, back is null ? 8 : Height);
        if (back is null)
            s.CaseGround(Stator, 8);
        s.Stud(output, Stator, 0, SymbolSide.Top, room: 6);
        s.Stud(exciter ?? field, Rotor, 0, SymbolSide.Top);
        s.Stud(back, Stator, Height, SymbolSide.Bottom);
        s.Stud(body, Rotor, Height, SymbolSide.Bottom, markLeft: true);
        return s.Done("alternator");
    }

    // Its own regulator; or the rotor's winding alone, where the regulator stands apart.
    private static void Excitation(SymbolSketch s, bool fed, bool winding)
    {
        if (fed || winding)
            s.Line(Pen.Medium, Rotor, 0, Rotor, 4.9);
        if (winding)
        {
            RelaySymbols.Winding(s, Rotor, 5.9);
            s.Line(Pen.Link, Stator + 1.5, 6, Rotor - 1.6, 6);
            s.Line(Pen.Medium, Rotor, 6.9, Rotor, 7.6);
            s.CaseGround(Rotor, 7.6);
            return;
        }

        s.Line(Pen.Medium, Stator + 1.5, 6, Rotor - 1.1, 6);
        s.Rectangle(Rotor - 1.1, 4.9, 2.2, 2.2);
        s.Letter("U=", Rotor, 6.36, s.Lettering.SmallBold with { CapHeight = 7.2 });
    }

    private static void Rectifier(SymbolSketch s)
    {
        s.Line(Pen.Medium, Stator, 0, Stator, 1.6);
        s.Rectangle(Stator - 1, 1.6, 2, 2);
        s.Line(Pen.Medium, Stator, 1.6, Stator, 4.5);
        s.Line(Pen.Medium, Stator - 0.5, 2.1, Stator + 0.5, 2.1);
        s.Polygon(Pen.Medium, ColourRole.Paper, (Stator, 2.1), (Stator - 0.52, 3), (Stator + 0.52, 3));
        s.Line(Pen.Medium, Stator, 1.6, Stator, 3.6);
    }
}
