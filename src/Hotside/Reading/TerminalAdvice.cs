using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Reading;

/// <summary>What to say of a terminal that a part does not have: those it has, and of which kind the mark is known.</summary>
internal static class TerminalAdvice
{
    // From here on a number is a mark of the standard (DIN 72552); less are counted by every maker.
    private const int LeastMark = 10;

    /// <summary>The advice.</summary>
    public static string Of(PartKind kind, string asked, Catalogue kinds)
    {
        string own = kind.TerminalHint(asked);
        if (kind.TakesAnyTerminal || own.EndsWith('?') || asked.Length == 0 || Meant(kind, asked, kinds) is not { } other) return own;
        return $"{own}; {other.WithArticle()} has {string.Join(", ", other.Terminals.Select(t => t.Name))}: if it is one, write that as its kind";
    }

    // Of the kinds with such a terminal one that is called alike, else the plainest that has the mark.
    private static PartKind? Meant(PartKind kind, string asked, Catalogue kinds)
    {
        var having = kinds.Kinds.Where(k => k.Id != kind.Id && !k.TakesAnyTerminal && k.TerminalNamed(asked) is not null)
            .OrderBy(k => k.TerminalNamed(asked) == asked ? 0 : 1).ThenBy(k => k.Terminals.Length).ThenBy(k => k.Id.Length).ThenBy(k => k.Id, StringComparer.Ordinal).ToArray();
        string[] words = kind.Id.Split('-');
        bool isMark = int.TryParse(new string([.. asked.TakeWhile(char.IsAsciiDigit)]), out int mark) && mark >= LeastMark;
        return Array.Find(having, k => k.Id.Split('-').Intersect(words).Any()) ?? (isMark ? having.FirstOrDefault() : null);
    }
}
