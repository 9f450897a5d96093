using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>An ignition coil: two windings on one core, joined at the feed.</summary>
internal static class IgnitionCoilSymbol
{
    private const int Primary = 3, Secondary = 6, Width = 9, Height = 8;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("ignition-coil", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? feed = terminals.Take("15", "SW", "+"), breaker = terminals.Take("1", "CB", "-"), high = terminals.Take("4", "HT");
        if (feed is null || breaker is null || high is null)
            return null;
        var s = new SymbolSketch(Width, Height, options.Lettering);
        s.Enclosure(0, 0, Width, Height);
        s.Curve(Pen.Medium, (Primary, 0), Winding(Primary, clockwise: true));
        s.Line(Pen.Thin, 4.3, 2.4, 4.3, 6.4);
        s.Line(Pen.Thin, 4.7, 2.4, 4.7, 6.4);
        s.Curve(Pen.Medium, (Primary, 1.9), [new CurveStep((Secondary, 1.9)), .. Winding(Secondary, clockwise: false)]);
        s.Dot(Primary, 1.9);
        s.Stud(feed, Primary, 0, SymbolSide.Top);
        s.Stud(breaker, Primary, Height, SymbolSide.Bottom, room: 2.2);
        s.Stud(high, Secondary, Height, SymbolSide.Bottom);
        return s.Done("ignition-coil");
    }

    private static CurveStep[] Winding(double x, bool clockwise) =>
    [
        new CurveStep((x, 2.4)),
        .. Enumerable.Range(1, 4).Select(i => new CurveStep((x, 2.4 + i), 0.5, clockwise)),
        new CurveStep((x, Height)),
    ];
}
