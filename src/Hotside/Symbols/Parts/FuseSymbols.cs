using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What opens by itself when too much flows: fuse, circuit breaker, fusible link.</summary>
internal static class FuseSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("fuse", Fuse), ("breaker", Breaker), ("fusible-link", Link)];

    private static Symbol? Fuse(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("fuse", terminals, options, 1, 1, (s, x, y, _) =>
    {
        s.Rectangle(x - 0.5, y - 1.3, 1, 2.6);
        s.Line(Pen.Medium, x, y - 2, x, y + 2);
    });

    private static Symbol? Breaker(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("breaker", terminals, options, 4, 1, (s, x, y, _) =>
    {
        Contact.Make(s, x, y);
        s.Line(Pen.Medium, x - 0.4, y - 1.4, x + 0.4, y - 0.6);
        s.Line(Pen.Medium, x - 0.4, y - 0.6, x + 0.4, y - 1.4);
        s.Line(Pen.Link, x - 2, y, x - 0.6, y);
        s.Rectangle(x - 3.4, y - 0.6, 1.4, 1.2);
        s.Path(Pen.Thin, (x - 3.2, y + 0.2), (x - 2.9, y + 0.2), (x - 2.9, y - 0.3), (x - 2.5, y - 0.3), (x - 2.5, y + 0.2), (x - 2.2, y + 0.2));
    });

    private static Symbol? Link(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("fusible-link", terminals, options, 1, 1, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1.2);
        s.Line(Pen.Medium, x, y + 1.2, x, y + 2);
        s.Curve(
            Pen.Medium,
            (x, y - 1.2),
            new CurveStep((x, y), First: new Point(x + 0.9, y - 0.8), Second: new Point(x + 0.9, y - 0.4)),
            new CurveStep((x, y + 1.2), First: new Point(x - 0.9, y + 0.4), Second: new Point(x - 0.9, y + 0.8)));
        s.Line(Pen.Heavy, x - 0.8, y - 1.2, x + 0.8, y - 1.2);
        s.Line(Pen.Heavy, x - 0.8, y + 1.2, x + 0.8, y + 1.2);
    });
}
