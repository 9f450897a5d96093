using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What lets current through one way: the triangle points from anode to cathode, whichever of them is on top.</summary>
internal static class DiodeSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("diode", Diode), ("led", Led)];

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
        double down = cathodeOnTop ? -0.6 : 0.6;
        s.Line(Pen.Medium, x, y - 2, x, y + 2);
        s.Polygon(Pen.Medium, ColourRole.Paper, (x - 0.7, y - down), (x + 0.7, y - down), (x, y + down));
        s.Line(Pen.Medium, x - 0.7, y + down, x + 0.7, y + down);
        s.Line(Pen.Medium, x, y - 0.6, x, y + 0.6);
    }

    private static void Arrow(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Thin, x, y, x + 0.7, y - 0.7);
        s.Filled((x + 1, y - 1), (x + 0.45, y - 0.82), (x + 0.82, y - 0.45));
    }
}
