using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>What only joins wires: dot, ring, chassis, other metal, and the flag of what lies off the drawing.</summary>
internal static class NodeSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        ("splice", (t, o) => Point("splice", t, o, s => s.Dot(0, 0, 0.34))),
        ("stud", (t, o) => Point("stud", t, o, s => s.Circle(0, 0, 0.3))),
        ("rail", Rail),
        ("chassis", Chassis),
        ("chassis-point", ChassisPoint),
        ("metal", Metal),
        ("elsewhere", Elsewhere),
    ];

    private static Symbol? Point(string name, TerminalSet terminals, SymbolOptions options, Action<SymbolSketch> draw)
    {
        if (terminals.TakeNext() is not { } terminal)
            return null;
        var s = new SymbolSketch(0, 0, options.Lettering);
        draw(s);
        s.Pin(terminal, 0, 0, SymbolSide.Any);
        return s.Done(name);
    }

    /// <summary>A piece of a feed rail; on a drawing it is as long as its wires need.</summary>
    private static Symbol? Rail(TerminalSet terminals, SymbolOptions options)
    {
        if (terminals.TakeNext() is not { } terminal)
            return null;
        var s = new SymbolSketch(6, 1, options.Lettering);
        s.Line(Pen.Plate, 0, 0, 6, 0);
        s.Dot(3, 0, 0.34);
        s.Line(Pen.Medium, 3, 0, 3, 1);
        s.Pin(terminal, 3, 1, SymbolSide.Bottom);
        return s.Done("rail");
    }

    private static Symbol? Chassis(TerminalSet terminals, SymbolOptions options)
    {
        if (terminals.TakeNext() is not { } terminal)
            return null;
        var s = new SymbolSketch(4, 1, options.Lettering);
        s.Line(Pen.Heavy, 1, 0, 3, 0);
        for (int i = 0; i < 4; i++)
            s.Line(Pen.Thin, 1.1 + (0.6 * i), 0, 0.6 + (0.6 * i), 0.8);
        s.Pin(terminal, 2, 0, SymbolSide.Top);
        return s.Done("chassis");
    }

    /// <summary>A screw on the chassis: a ring on its bar.</summary>
    private static Symbol? ChassisPoint(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("chassis-point", terminals, options, 2, 2, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y + 2);
        s.Line(Pen.Heavy, x - 1, y + 0.5, x + 1, y + 0.5);
        s.Circle(x, y, 0.5);
    });

    /// <summary>An engine block or a body: metal that is not the chassis, a hatched bar on which wires end.</summary>
    private static Symbol? Metal(TerminalSet terminals, SymbolOptions options)
    {
        if (terminals.TakeNext() is not { } terminal)
            return null;
        var s = new SymbolSketch(6, 1, options.Lettering);
        s.Rectangle(0, 0, 6, 1);
        for (int i = 0; i < 6; i++)
            s.Line(Pen.Thin, 0.75 + (0.9 * i), 0, 0.25 + (0.9 * i), 1);
        s.Pin(terminal, 3, 0, SymbolSide.Any);
        return s.Done("metal");
    }

    /// <summary>A flag that points away from its wire: the part lies elsewhere.</summary>
    private static Symbol? Elsewhere(TerminalSet terminals, SymbolOptions options)
    {
        if (terminals.TakeNext() is not { } terminal)
            return null;
        TextStyle style = options.Lettering.SmallBold;
        string text = TextMeasure.Shorten(options.Inside ?? terminal.Label, style, 200 * options.Lettering.Factor);
        double f = options.Lettering.Factor, body = 1.7 * f;
        int half = Math.Max(2, (int)Math.Ceiling(((TextMeasure.Width(text, style) / Symbol.Module) + 1) / 2));
        var s = new SymbolSketch(2 * half, (int)Math.Ceiling(body + 0.6), options.Lettering);
        s.Polygon(Pen.Thin, ColourRole.Paper, (0, 0), (2 * half, 0), (2 * half, body), (half, body + 0.6), (0, body));
        s.Letter(text, half, (body / 2) + 0.15 + (style.CapHeight / 20), style);
        s.Pin(terminal, half, 0, SymbolSide.Top);
        Symbol symbol = s.Done("elsewhere");
        return terminal.Side == SymbolSide.Bottom ? symbol.TurnedOver() : symbol;
    }
}
