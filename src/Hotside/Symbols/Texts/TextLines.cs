using System.Collections.Immutable;

namespace Hotside.Symbols.Texts;

/// <summary>A text broken into lines.</summary>
internal static class TextLines
{
    private static readonly string[] Units = ["A", "Ah", "V", "W", "Ω", "kΩ", "mm²", "mm", "m", "ft", "AWG", "s"];

    /// <summary>
    /// Breaks at spaces, a word wider than the line after a hyphen or slash of its own or else anywhere; what does not fit into
    /// <paramref name="most"/> lines is shortened. An empty text has no lines.
    /// </summary>
    public static ImmutableArray<string> Break(string text, TextStyle style, double width, int most = int.MaxValue)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        string rest = CleanText.Of(text);
        while (rest.Length > 0)
        {
            if (lines.Count == most - 1 || TextMeasure.Fits(rest, style, width))
            {
                lines.Add(TextMeasure.Shorten(rest, style, width));
                break;
            }

            int end = EndOfLine(rest, style, width);
            lines.Add(rest[..end].TrimEnd(' '));
            rest = rest[end..].TrimStart(' ');
        }

        return lines.ToImmutable();
    }

    private static int EndOfLine(string rest, TextStyle style, double width)
    {
        int fits = Math.Max(1, TextMeasure.LongestPrefix(rest, width, style));
        if (fits >= rest.Length)
            return fits;
        for (int space = rest[fits] == ' ' ? fits : rest.LastIndexOf(' ', fits - 1); space > 0; space = rest.LastIndexOf(' ', space - 1))
            if (!IsBeforeUnit(rest, space))
                return space;
        int joint = rest.LastIndexOfAny(['-', '/', '–', '·'], fits - 1);
        return joint > 0 ? joint + 1 : fits;
    }

    // A number and its unit are one thing.
    private static bool IsBeforeUnit(string text, int space)
    {
        if (!char.IsAsciiDigit(text[space - 1]))
            return false;
        int end = text.AsSpan(space + 1).IndexOf(' ');
        var word = (end < 0 ? text.AsSpan(space + 1) : text.AsSpan(space + 1, end)).TrimEnd(",;.:)");
        foreach (string unit in Units)
            if (word.SequenceEqual(unit))
                return true;
        return false;
    }
}
