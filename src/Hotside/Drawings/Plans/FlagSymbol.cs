using System.Collections.Immutable;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Plans;

/// <summary>The flag at which a line goes on elsewhere: its tip points away from the line where it goes out, at the line where it comes in.</summary>
internal static class FlagSymbol
{
    private const double Body = 1.7, Tip = 0.6;

    /// <summary>The flag with its pin in the middle of its upper or lower edge.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="widest">The widest text that it must have room for, since what it says is known when all has its place.</param>
    /// <param name="isPinAbove">Whether the line comes from above.</param>
    /// <param name="isOut">Whether it goes out.</param>
    /// <param name="lettering">Lettering.</param>
    public static Symbol Of(string text, string widest, bool isPinAbove, bool isOut, Lettering lettering) => Of([text], [widest], isPinAbove, isOut, lettering);

    /// <summary>The flag with its lines below each other, for which it needs less width.</summary>
    /// <param name="lines">What it says.</param>
    /// <param name="widest">The widest text that each line must have room for.</param>
    /// <param name="isPinAbove">Whether the line comes from above.</param>
    /// <param name="isOut">Whether it goes out.</param>
    /// <param name="lettering">Lettering.</param>
    public static Symbol Of(ImmutableArray<string> lines, ImmutableArray<string> widest, bool isPinAbove, bool isOut, Lettering lettering)
    {
        TextStyle style = lettering.SmallBold;
        double pitch = style.Pitch / Symbol.Module, body = (Body * lettering.Factor) + (pitch * (widest.Length - 1));
        int half = HalfWidth(widest, lettering), height = (int)Math.Ceiling(body + Tip);
        // Drawn hanging from its pin; mirrored where it stands on it.
        double Y(double down) => isPinAbove ? down : height - down;
        double top = isOut ? 0 : Tip, bottom = isOut ? body : body + Tip;
        var s = new SymbolSketch(2 * half, height, lettering);
        if (isOut) s.Polygon(Pen.Thin, ColourRole.Paper, (0, Y(top)), (2 * half, Y(top)), (2 * half, Y(bottom)), (half, Y(bottom + Tip)), (0, Y(bottom)));
        else s.Polygon(Pen.Thin, ColourRole.Paper, (half, Y(0)), (2 * half, Y(top)), (2 * half, Y(bottom)), (0, Y(bottom)), (0, Y(top)));
        double first = Y((top + bottom) / 2) + (style.CapHeight / 2 / Symbol.Module) - (pitch * (lines.Length - 1) / 2);
        for (int i = 0; i < lines.Length; i++) s.Letter(TextMeasure.Shorten(lines[i], style, (2 * half * Symbol.Module) - 6), half, first + (pitch * i), style);
        s.Pin(SymbolTerminal.Of(CircuitEnds.Point, isPinAbove ? SymbolSide.Top : SymbolSide.Bottom), half, isPinAbove ? 0 : height, isPinAbove ? SymbolSide.Top : SymbolSide.Bottom);
        return s.Done("flag");
    }

    private static int HalfWidth(ImmutableArray<string> texts, Lettering lettering) =>
        Math.Max(2, (int)Math.Ceiling(((TextMeasure.Widest(texts, lettering.SmallBold) / Symbol.Module) + 1) / 2));
}
