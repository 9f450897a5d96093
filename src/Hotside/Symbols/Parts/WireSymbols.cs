using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Conductors that are parts of their own: a cable between two lugs, a braided strap; and a gap for a spark.</summary>
internal static class WireSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("cable", Cable), ("strap", Strap), ("spark-gap", Gap)];

    private static Symbol? Cable(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("cable", terminals, options, 1, 1, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1.6);
        s.Line(Pen.Medium, x, y + 1.6, x, y + 2);
        s.Line(Pen.Plate, x, y - 1.1, x, y + 1.1);
        s.Circle(x, y - 1.3, 0.3);
        s.Circle(x, y + 1.3, 0.3);
    });

    private static Symbol? Strap(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("strap", terminals, options, 1, 1, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1.6);
        s.Line(Pen.Medium, x, y + 1.6, x, y + 2);
        foreach (double side in (double[])[-0.35, 0.35])
            s.Path(Pen.Medium, [.. Enumerable.Range(0, 6).Select(i => (x + (i is 0 or 5 ? 0 : i % 2 == 0 ? -side : side), y - 1 + (0.4 * i)))]);
        s.Circle(x, y - 1.3, 0.3);
        s.Circle(x, y + 1.3, 0.3);
    });

    private static Symbol? Gap(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("spark-gap", terminals, options, 1, 1, (s, x, y, _) => Darts(s, x, y));

    /// <summary>Two darts, with leads to 2 M above and below their centre.</summary>
    public static void Darts(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 0.9);
        s.Line(Pen.Medium, x, y + 0.9, x, y + 2);
        s.Filled((x, y - 0.25), (x - 0.45, y - 1.05), (x + 0.45, y - 1.05));
        s.Filled((x, y + 0.25), (x - 0.45, y + 1.05), (x + 0.45, y + 1.05));
    }
}
