using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>Blocks of ways side by side: terminal block (two screws a way), fuse block (one feed for all, or one each).</summary>
internal static class BlockSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("terminal-block", Terminals), ("fuse-block", Fuses)];

    private static Symbol? Terminals(TerminalSet terminals, SymbolOptions options)
    {
        if (Ways(terminals) is not { } ways || ways.Upper.Length != ways.Lower.Length)
            return null;
        int pitch = Pitch(ways.Upper.Concat(ways.Lower), options);
        var s = new SymbolSketch(1 + (pitch * ways.Upper.Length), 6, options.Lettering);
        double cap = options.Lettering.Small.CapHeight / Symbol.Module;
        for (int i = 0; i < ways.Upper.Length; i++)
        {
            int x = 1 + (i * pitch);
            s.Line(Pen.Medium, x, 0, x, 6);
            s.Rectangle(x - 0.7, 1.6, 1.4, 2.8, 0, Pen.Thin);
            s.Line(Pen.Medium, x, 1.6, x, 4.4);
            s.Circle(x, 2.2, 0.35);
            s.Circle(x, 3.8, 0.35);
            s.Mark(ways.Upper[i].Label, x + 0.35, 0.4 + cap);
            s.Mark(ways.Lower[i].Label, x + 0.35, 5.65);
            s.Pin(ways.Upper[i], x, 0, SymbolSide.Top);
            s.Pin(ways.Lower[i], x, 6, SymbolSide.Bottom);
        }

        return s.Done("terminal-block");
    }

    private static Symbol? Fuses(TerminalSet terminals, SymbolOptions options)
    {
        if (Ways(terminals) is not { } ways || (ways.Upper.Length != 1 && ways.Upper.Length != ways.Lower.Length))
            return null;
        const int height = 9, middle = 5;
        bool bus = ways.Upper.Length == 1;
        int pitch = Math.Max(3, Pitch(ways.Upper.Concat(ways.Lower), options)), last = 2 + ((ways.Lower.Length - 1) * pitch);
        var s = new SymbolSketch(last + pitch, height, options.Lettering);
        s.Enclosure(0, 0, s.Width, height);
        if (bus && last > 2)
            s.Line(Pen.Plate, 2, 2.2, last, 2.2);
        for (int i = 0; i < ways.Lower.Length; i++)
        {
            int x = 2 + (i * pitch);
            if (i == 0 || !bus)
                s.Line(Pen.Medium, x, 0, x, middle - 2);
            s.Line(Pen.Medium, x, 2.2, x, middle - 2);
            FuseSymbols.Body(s, x, middle);
            s.Line(Pen.Medium, x, middle + 2, x, height);
            s.Stud(ways.Lower[i], x, height, SymbolSide.Bottom);
            if (i < ways.Upper.Length)
                s.Stud(ways.Upper[i], x, 0, SymbolSide.Top);
        }

        return s.Done("fuse-block");
    }

    private static (ImmutableArray<SymbolTerminal> Upper, ImmutableArray<SymbolTerminal> Lower)? Ways(TerminalSet terminals)
    {
        ImmutableArray<SymbolTerminal> upper = [.. terminals.Left.Where(t => t.Side == SymbolSide.Top)], lower = [.. terminals.Left.Where(t => t.Side != SymbolSide.Top)];
        if (upper.IsEmpty || lower.IsEmpty)
            return null;
        while (terminals.Count > 0)
            terminals.TakeNext();
        return (upper, lower);
    }

    private static int Pitch(IEnumerable<SymbolTerminal> terminals, SymbolOptions options) =>
        Math.Max(2, (int)Math.Ceiling((TextMeasure.Widest(terminals.Select(t => t.Label), options.Lettering.Small) / Symbol.Module) + 1));
}
