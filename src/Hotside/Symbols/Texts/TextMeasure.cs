namespace Hotside.Symbols.Texts;

/// <summary>Widths of texts, from the outlines that are drawn later; the same on every machine and thread.</summary>
internal static class TextMeasure
{
    private const string Ellipsis = "…";

    /// <summary>Width in units of a text as it is drawn, see <see cref="CleanText"/>.</summary>
    public static double Width(string text, TextStyle style)
    {
        string clean = CleanText.Of(text);
        return (style.Face.Advance(clean) * style.Size / style.Face.UnitsPerEm) + (clean.Length * style.Spacing);
    }

    /// <summary>The greatest width of some texts; 0 of none.</summary>
    public static double Widest(IEnumerable<string> texts, TextStyle style) => texts.Select(t => Width(t, style)).DefaultIfEmpty(0).Max();

    /// <summary>Whether a text is no wider than a width; a very long one need not be measured for that.</summary>
    public static bool Fits(string text, TextStyle style, double width) => text.Length <= MostCharacters(width, style) && Width(text, style) <= width;

    /// <summary>The cleaned text if it fits, else its beginning and an ellipsis; never wider than <paramref name="width"/> unless that holds not even the ellipsis.</summary>
    public static string Shorten(string text, TextStyle style, double width)
    {
        string clean = CleanText.Of(text);
        if (Fits(clean, style, width))
            return clean;
        int keep = LongestPrefix(clean, width - Width(Ellipsis, style), style);
        return clean[..keep].TrimEnd(' ', ',', ';', '·', '-') + Ellipsis;
    }

    /// <summary>Number of leading characters that are no wider than <paramref name="width"/>.</summary>
    internal static int LongestPrefix(string clean, double width, TextStyle style)
    {
        int low = 0, high = (int)Math.Min(MostCharacters(width, style), clean.Length);
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (Width(clean[..middle], style) <= width)
                low = middle;
            else
                high = middle - 1;
        }

        return low;
    }

    // No glyph of the faces is narrower than an eighth of the size, kerning included.
    private static double MostCharacters(double width, TextStyle style) => Math.Floor(Math.Max(width, 0) * 8 / style.Size) + 1;
}
