using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What opens by itself when too much flows: fuse, circuit breaker, fusible link.</summary>
internal static class FuseSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("fuse", Fuse), ("breaker", Breaker), ("breaker-manual", Manual), ("fusible-link", Link)];

    private static Symbol? Fuse(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("fuse", terminals, options, 1, 1, (s, x, y, _) => Body(s, x, y));

    /// <summary>A fuse, with leads to 2 M above and below its centre.</summary>
    public static void Body(SymbolSketch s, double x, double y)
    {
        s.Rectangle(x - 0.5, y - 1.3, 1, 2.6);
        s.Line(Pen.Medium, x, y - 2, x, y + 2);
    }

    /// <summary>What trips a breaker: a heater's sign in a box.</summary>
    public static void Heater(SymbolSketch s, double x, double y)
    {
        s.Rectangle(x - 0.7, y - 0.6, 1.4, 1.2);
        s.Path(Pen.Thin, (x - 0.5, y + 0.2), (x - 0.2, y + 0.2), (x - 0.2, y - 0.3), (x + 0.2, y - 0.3), (x + 0.2, y + 0.2), (x + 0.5, y + 0.2));
    }

    /// <summary>The cross on the fixed contact of a breaker.</summary>
    public static void Cross(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Medium, x - 0.4, y - 0.4, x + 0.4, y + 0.4);
        s.Line(Pen.Medium, x - 0.4, y + 0.4, x + 0.4, y - 0.4);
    }

    private static Symbol? Breaker(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("breaker", terminals, options, 4, 1, (s, x, y, _) =>
    {
        Contact.Make(s, x, y);
        Cross(s, x, y - 1);
        s.Line(Pen.Link, x - 2, y, x - 0.6, y);
        Heater(s, x - 2.7, y);
    });

    // A hand's button at the end of the link.
    private static Symbol? Manual(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("breaker-manual", terminals, options, 6, 1, (s, x, y, _) =>
    {
        Contact.Make(s, x, y);
        Cross(s, x, y - 1);
        s.Line(Pen.Link, x - 2, y, x - 0.6, y);
        s.Line(Pen.Link, x - 5, y, x - 3.4, y);
        Heater(s, x - 2.7, y);
        Contact.Actuate(s, Actuator.Push, x - 5, y);
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
