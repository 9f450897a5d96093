using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What shows a value. An ammeter always has the marks of its terminals: swapping its leads must be seen.</summary>
internal static class MeterSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        ("gauge", Gauge),
        ("ammeter", (t, o) => Lettered("ammeter", "A", t, o with { TerminalMarks = true })),
        ("voltmeter", (t, o) => Lettered("voltmeter", "V", t, o with { TerminalMarks = true })),
    ];

    private static Symbol? Lettered(string name, string letter, TerminalSet terminals, SymbolOptions options) =>
        TwoPinFrame.Draw(name, terminals, options, 2, 3, (s, x, y, _) =>
        {
            s.Line(Pen.Medium, x, y - 2, x, y - 1.5);
            s.Line(Pen.Medium, x, y + 1.5, x, y + 2);
            s.Circle(x, y, 1.5);
            s.Letter(letter, x, y + (s.Lettering.BodyBold.CapHeight / 2 / Symbol.Module), s.Lettering.BodyBold);
        });

    /// <summary>Feed above, sender below; a third terminal, the other return, to the left.</summary>
    private static Symbol? Gauge(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? feed = terminals.Take("I", "IGN", "+") ?? terminals.TakeAt(SymbolSide.Top);
        SymbolTerminal? sender = terminals.Take("S", "SEND") ?? terminals.TakeAt(SymbolSide.Bottom) ?? terminals.TakeNext();
        SymbolTerminal? other = terminals.Take("G", "case", "31", "GND") ?? terminals.TakeNext();
        if (feed is null || sender is null)
            return null;
        int x = other is null ? 2 : 2 + Math.Max(2, TwoPinFrame.RoomFor(options, other));
        var s = new SymbolSketch(x + Math.Max(2, TwoPinFrame.RoomFor(options, feed, sender)), 6, options.Lettering);
        s.Line(Pen.Medium, x, 0, x, 1.6);
        s.Line(Pen.Medium, x, 4.4, x, 6);
        Dial(s, x, 3);
        double cap = options.Lettering.Small.CapHeight / Symbol.Module;
        s.Mark(feed.Label, x + 0.4, 0.4 + cap);
        s.Mark(sender.Label, x + 0.4, 5.6);
        s.Pin(feed, x, 0, SymbolSide.Top);
        s.Pin(sender, x, 6, SymbolSide.Bottom);
        if (other is not null)
        {
            s.Line(Pen.Medium, 0, 3, x - 1.4, 3);
            s.Mark(other.Label, 0.3, 2.65);
            s.Pin(other, 0, 3, SymbolSide.Left);
        }

        return s.Done("gauge");
    }

    private static void Dial(SymbolSketch s, double x, double y)
    {
        s.Circle(x, y, 1.4);
        s.Curve(Pen.Thin, (x - 0.95, y - 0.1), new CurveStep((x + 0.95, y - 0.1), 0.96, true));
        s.Line(Pen.Heavy, x - 0.2, y + 0.7, x + 0.42, y - 0.45);
        s.Filled((x + 0.64, y - 0.86), (x + 0.14, y - 0.52), (x + 0.54, y - 0.3));
    }
}
