using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What lets current through one way: the triangle points from anode to cathode, whichever of them is on top.</summary>
internal static class DiodeSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("diode", Diode), ("led", Led), ("isolator", Isolator)];

    private static Symbol? Diode(TerminalSet terminals, SymbolOptions options) =>
        TwoPinFrame.Draw("diode", terminals, options, 1, 1, (s, x, y, upper) => Body(s, x, y, upper));

    private static Symbol? Led(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("led", terminals, options, 1, 3, (s, x, y, upper) =>
    {
        Body(s, x, y, upper);
        Arrow(s, x + 0.9, y - 0.3);
        Arrow(s, x + 0.9, y + 0.4);
    });

    private static void Body(SymbolSketch s, double x, double y, SymbolTerminal upper)
    {
        bool cathodeOnTop = upper.Is("K") || upper.Is("cathode") || upper.Is("minus") || upper.Is("-") || upper.Is("neg");
        Body(s, x, y, cathodeOnTop ? -0.6 : 0.6);
    }

    /// <summary>A diode on a lead from 2 M above its centre to 2 M below; it lets current through downwards where <paramref name="down"/> is positive.</summary>
    public static void Body(SymbolSketch s, double x, double y, double down)
    {
        s.Line(Pen.Medium, x, y - 2, x, y + 2);
        s.Polygon(Pen.Medium, ColourRole.Paper, (x - 0.7, y - down), (x + 0.7, y - down), (x, y + down));
        s.Line(Pen.Medium, x - 0.7, y + down, x + 0.7, y + down);
        s.Line(Pen.Medium, x, y - 0.6, x, y + 0.6);
    }

    /// <summary>Two diodes from one feed.</summary>
    private static Symbol? Isolator(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? feed = terminals.TakeAt(SymbolSide.Top), left = terminals.TakeNext(), right = terminals.TakeNext();
        if (feed is null || left is null || right is null)
            return null;
        int spread = Math.Max(4, (int)Math.Ceiling(Symbol.MarkWidth(left, options) + 1)), second = 3 + spread;
        var s = new SymbolSketch(second + Math.Max(3, TwoPinFrame.RoomFor(options, right) + 1), 8, options.Lettering);
        s.Enclosure(0, 0, s.Width, 8);
        s.Line(Pen.Medium, 3, 0, 3, 2);
        s.Line(Pen.Medium, 3, 2, second, 2);
        s.Dot(3, 2);
        foreach (int x in (int[])[3, second])
        {
            Body(s, x, 4, 0.6);
            s.Line(Pen.Medium, x, 6, x, 8);
        }

        s.Stud(feed, 3, 0, SymbolSide.Top);
        s.Stud(left, 3, 8, SymbolSide.Bottom);
        s.Stud(right, second, 8, SymbolSide.Bottom);
        return s.Done("isolator");
    }

    private static void Arrow(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Thin, x, y, x + 0.7, y - 0.7);
        s.Filled((x + 1, y - 1), (x + 0.45, y - 0.82), (x + 0.82, y - 0.45));
    }
}
