using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>The solenoid on a starter: the hold-in winding returns through the case, the pull-in winding through the motor; one plunger.</summary>
internal static class StarterSolenoidSymbol
{
    private const int Height = 8;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("solenoid-two-windings", Draw), ("solenoid", Plain)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? battery = terminals.Take("B", "30", "BAT"), motor = terminals.Take("M", "MOT", "87"), start = terminals.Take("S", "50");
        SymbolTerminal? bypass = terminals.Take("R", "I", "15a"), body = terminals.Take("case", "31");
        if (battery is null || motor is null || start is null)
            return null;
        int main = bypass is null ? 3 : 6, pullIn = main + 5, holdIn = pullIn + 4;
        var s = new SymbolSketch(holdIn + 3, Height, options.Lettering);
        s.Enclosure(0, 0, holdIn + 3, Height);
        Contact.Make(s, main, 4, 4, 4);
        if (bypass is not null)
        {
            s.Path(Pen.Medium, (main, 2), (3, 2), (3, 3));
            Contact.Make(s, 3, 4, 1, 4);
            s.Dot(main, 2);
        }

        s.Line(Pen.Link, bypass is null ? main - 0.5 : 2.5, 4, pullIn - 1.6, 4);
        s.Line(Pen.Link, pullIn + 1.6, 4, holdIn - 1.6, 4);
        Windings(s, main, pullIn, holdIn, body is null);
        s.Stud(battery, main, 0, SymbolSide.Top, room: 6);
        s.Stud(motor, main, Height, SymbolSide.Bottom, room: 3.5);
        s.Stud(start, holdIn, 0, SymbolSide.Top);
        s.Stud(bypass, 3, Height, SymbolSide.Bottom, room: 2.2);
        s.Stud(body, holdIn, Height, SymbolSide.Bottom, markLeft: true, room: 3.5);
        return s.Done("solenoid-two-windings");
    }

    private static void Windings(SymbolSketch s, int main, int pullIn, int holdIn, bool ownGround)
    {
        s.Line(Pen.Medium, holdIn, 0, holdIn, 3);
        s.Path(Pen.Medium, (holdIn, 2), (pullIn, 2), (pullIn, 3));
        s.Dot(holdIn, 2);
        RelaySymbols.Winding(s, pullIn, 4);
        RelaySymbols.Winding(s, holdIn, 4);
        s.Path(Pen.Medium, (pullIn, 5), (pullIn, 6), (main, 6));
        s.Dot(main, 6);
        s.Line(Pen.Medium, holdIn, 5, holdIn, ownGround ? 6.6 : Height);
        if (ownGround)
            s.CaseGround(holdIn, 6.6);
    }

    /// <summary>One winding that pulls a plunger.</summary>
    private static Symbol? Plain(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("solenoid", terminals, options, 2, 4, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1);
        s.Line(Pen.Medium, x, y + 1, x, y + 2);
        RelaySymbols.Winding(s, x, y);
        s.Line(Pen.Link, x + 1.6, y, x + 2.9, y);
        s.Filled((x + 3.7, y), (x + 2.9, y - 0.4), (x + 2.9, y + 0.4));
    });
}
