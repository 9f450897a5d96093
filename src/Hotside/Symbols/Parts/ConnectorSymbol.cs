using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>A plug in its socket, one or more ways; several share a thin outline and have their marks beside the leads.</summary>
internal static class ConnectorSymbol
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("connector", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        ImmutableArray<SymbolTerminal> upper = [.. terminals.Left.Where(t => t.Side == SymbolSide.Top)], lower = [.. terminals.Left.Where(t => t.Side != SymbolSide.Top)];
        if (upper.Length != lower.Length || upper.IsEmpty)
            return null;
        while (terminals.Count > 0)
            terminals.TakeNext();
        return upper.Length == 1 ? Single(upper[0], lower[0], options) : Several(upper, lower, options);
    }

    private static Symbol Single(SymbolTerminal upper, SymbolTerminal lower, SymbolOptions options)
    {
        var s = new SymbolSketch(2, 4, options.Lettering);
        Way(s, 1, 2, 2);
        s.Pin(upper, 1, 0, SymbolSide.Top);
        s.Pin(lower, 1, 4, SymbolSide.Bottom);
        return s.Done("connector");
    }

    private static Symbol Several(ImmutableArray<SymbolTerminal> upper, ImmutableArray<SymbolTerminal> lower, SymbolOptions options)
    {
        double marks = TextMeasure.Widest(upper.Concat(lower).Select(t => t.Label), options.Lettering.Small) / Symbol.Module;
        double cap = options.Lettering.Small.CapHeight / Symbol.Module;
        int pitch = Math.Max(Math.Max(2, options.LeastPitch), (int)Math.Ceiling(marks + 0.7));
        var s = new SymbolSketch(1 + (pitch * upper.Length), 6, options.Lettering);
        s.Rectangle(0, 1.5, s.Width, 3, 0.2, Pen.Thin);
        for (int i = 0; i < upper.Length; i++)
        {
            int x = 1 + (i * pitch);
            Way(s, x, 3, 3);
            s.Mark(upper[i].Label, x + 0.35, 0.4 + cap);
            s.Mark(lower[i].Label, x + 0.35, 5.65);
            s.Pin(upper[i], x, 0, SymbolSide.Top);
            s.Pin(lower[i], x, 6, SymbolSide.Bottom);
        }

        return s.Done("connector");
    }

    private static void Way(SymbolSketch s, double x, double y, double reach)
    {
        s.Line(Pen.Medium, x, y - reach, x, y - 0.5);
        s.Curve(Pen.Medium, (x - 0.6, y + 0.1), new CurveStep((x, y - 0.5), 0.6, true), new CurveStep((x + 0.6, y + 0.1), 0.6, true));
        s.Filled((x - 0.18, y), (x + 0.18, y), (x + 0.18, y + 0.9), (x - 0.18, y + 0.9));
        s.Line(Pen.Medium, x, y + 0.9, x, y + reach);
    }
}
