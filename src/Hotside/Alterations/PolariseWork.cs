using System.Text.RegularExpressions;

namespace Hotside.Alterations;

/// <summary>Whether a work that changes no circuit is to polarise a machine, or to flash its field, which is the same.</summary>
internal static partial class PolariseWork
{
    /// <summary>Whether a sentence says so, and does not forbid it.</summary>
    public static bool IsSaidBy(string sentence) => Asked().IsMatch(sentence) && !Denied().IsMatch(sentence);

    [GeneratedRegex(@"\bpolari[sz](e|ed|ing)\b|\bflash\w* (the |its )?field", RegexOptions.IgnoreCase)]
    private static partial Regex Asked();

    [GeneratedRegex(@"\b(never|not|no)\b( to)?( be)? (polari[sz]|flash)", RegexOptions.IgnoreCase)]
    private static partial Regex Denied();
}
