using System.Globalization;
using System.Text;

namespace Hotside.Notation;

/// <summary>Puts a text into quotes where YAML would take it for something else.</summary>
internal static class YamlQuotes
{
    /// <summary>The text as a key or a value.</summary>
    public static string Of(string text) =>
        text.Any(c => char.IsControl(c) || char.IsSurrogate(c) || c is '\uFEFF' or '\u2028' or '\u2029' or '\uFFFE' or '\uFFFF') ? Double(text)
        : IsPlain(text) ? text
        : "'" + text.Replace("'", "''", StringComparison.Ordinal) + "'";

    private static bool IsPlain(string text) =>
        text.Length > 0 && text.Trim() == text && !"-?:,[]{}#&*!|>'\"%@`".Contains(text[0], StringComparison.Ordinal) && text is not "---" and not "..."
        && !text.Contains(": ", StringComparison.Ordinal) && !text.EndsWith(':') && !text.Contains(" #", StringComparison.Ordinal);

    private static string Double(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char c in text)
            _ = c switch
            {
                '"' or '\\' => quoted.Append('\\').Append(c),
                '\n' => quoted.Append("\\n"),
                _ when char.IsControl(c) || c is '\uFEFF' or '\u2028' or '\u2029' or '\uFFFE' or '\uFFFF' => quoted.Append("\\u").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture)),
                _ => quoted.Append(c),
            };
        return quoted.Append('"').ToString();
    }
}
