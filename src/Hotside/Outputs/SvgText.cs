using System.Text;

namespace Hotside.Outputs;

/// <summary>Text made fit for XML 1.0: marked up characters escaped, forbidden ones replaced by U+FFFD.</summary>
internal static class SvgText
{
    /// <summary>For the content of an element.</summary>
    public static string Content(string text) => Escape(text, quotes: false);

    /// <summary>For the value of an attribute in double quotes.</summary>
    public static string Attribute(string text) => Escape(text, quotes: true);

    private static string Escape(string text, bool quotes)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (Rune rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '"' when quotes:
                    escaped.Append("&quot;");
                    break;
                case '\t' or '\n' or '\r' or 0x2028 or 0x2029:
                    escaped.Append(' ');
                    break;
                default:
                    escaped.Append(IsAllowed(rune.Value) ? rune : Rune.ReplacementChar);
                    break;
            }
        }

        return escaped.ToString();
    }

    // XML 1.0, production 2; direction marks are legal there but would turn what follows in a viewer's tooltip.
    private static bool IsAllowed(int value) =>
        value is >= 0x20 and not (0xFFFE or 0xFFFF) and not (>= 0x7F and <= 0x9F) and not (>= 0x202A and <= 0x202E) and not (>= 0x2066 and <= 0x2069) and not (0x200E or 0x200F or 0x061C);
}
