using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Boxes with a sign of what they do: flasher (pulses), reducer (from one voltage to another), regulator (a voltage held).</summary>
internal static class FunctionBoxSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        ("flasher", (t, o) => Draw("flasher", t, o, 3.2, 1.4, Pulses)),
        ("reducer", (t, o) => Draw("reducer", t, o, 5 * o.Lettering.Factor, 2.6 * o.Lettering.Factor, (s, x, y) => FromTo(s, x, y, o))),
        ("regulator", (t, o) => Draw("regulator", t, o, 2.6 * o.Lettering.Factor, 1.4 * o.Lettering.Factor, (s, x, y) => s.Letter("U =", x, y + (s.Lettering.BodyBold.CapHeight / 20), s.Lettering.BodyBold))),
    ];

    private static Symbol? Draw(string name, TerminalSet terminals, SymbolOptions options, double width, double height, Action<SymbolSketch, double, double> sign)
    {
        var all = terminals.Left;
        while (terminals.Count > 0)
            terminals.TakeNext();
        return all.IsEmpty ? null : BoxFrame.Draw(name, all, options, width, height, sign);
    }

    private static void Pulses(SymbolSketch s, double x, double y) => s.Path(
        Pen.Medium,
        (x - 1.5, y + 0.6), (x - 1, y + 0.6), (x - 1, y - 0.6), (x - 0.3, y - 0.6), (x - 0.3, y + 0.6), (x + 0.4, y + 0.6), (x + 0.4, y - 0.6), (x + 1.1, y - 0.6), (x + 1.1, y + 0.6), (x + 1.5, y + 0.6));

    private static void FromTo(SymbolSketch s, double x, double y, SymbolOptions options)
    {
        double f = s.Lettering.Factor, w = 2.5 * f, h = 1.3 * f;
        s.Line(Pen.Thin, x - w, y + h, x + w, y - h);
        s.Letter(options.Inside ?? "", x - w + 0.1, y - h + (0.85 * f), s.Lettering.SmallBold, Anchor.Start, w + 0.6);
        s.Letter(options.InsideToo ?? "", x + w - 0.1, y + h - (0.12 * f), s.Lettering.SmallBold, Anchor.End, w + 0.6);
    }
}
