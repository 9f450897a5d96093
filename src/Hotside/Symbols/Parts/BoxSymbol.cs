using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>The symbol of whatever has none of its own: a box with named pins and, if there is one, a short text inside.</summary>
internal static class BoxSymbol
{
    private const int WidestText = 12;

    /// <summary>Draws the box.</summary>
    public static Symbol Of(IReadOnlyList<SymbolTerminal> terminals, SymbolOptions options)
    {
        string inside = options.Inside ?? "";
        TextStyle style = options.Lettering.SmallBold;
        double width = Math.Min(WidestText, TextMeasure.Width(inside, style) / Symbol.Module), cap = style.CapHeight / Symbol.Module;
        return BoxFrame.Draw("box", terminals, options, width, inside.Length == 0 ? 0 : cap + 0.5, (s, x, y) =>
        {
            if (inside.Length > 0)
                s.Letter(inside, x, y + (cap / 2), style, width: width + 0.01);
        });
    }
}
