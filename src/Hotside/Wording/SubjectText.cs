using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What a sheet is about, made of the sources and loads on it: <c>Fuel, Temperature, Oil gauges; Heater motor</c>.</summary>
internal static class SubjectText
{
    private const string More = "…";

    /// <summary>It in ever fewer words, the fullest first; empty where there is nothing that it could be made of.</summary>
    /// <param name="parts">The parts that it may be made of, in their order.</param>
    /// <param name="isEnglish">Whether the parts have English names; others are no neighbours for the nouns of kinds.</param>
    /// <param name="words">Whose words.</param>
    public static IEnumerable<string> Of(IEnumerable<Part> parts, bool isEnglish, Vocabulary words)
    {
        Group[] groups = isEnglish
            ? [.. parts.GroupBy(p => NounOf(p, words)).Select(g => new Group(g.Key, [.. g.Select(p => Stem(p, g.Key)).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal)], g.Count()))]
            : [.. parts.Select(words.Title).Select(Head).Distinct(StringComparer.Ordinal).Select(h => new Group("", [h], 1))];
        // Longer lists give way to what they are lists of first.
        foreach (int most in new[] { int.MaxValue, 2, 1, 0 }) yield return string.Join("; ", groups.Select(g => g.Text(most)));
        for (int shown = groups.Length - 1; shown > 0; shown--) yield return string.Join("; ", groups.Take(shown).Select(g => g.Text(0)).Append(More));
    }

    // "Turn, left front" and "Turn, right rear" are both of the turn signals.
    private static string Head(string name) => name.Split(',')[0].Trim();

    // What its kind is called, or its own name where that says it in the midst: "Starter motor" of a starter.
    private static string NounOf(Part part, Vocabulary words)
    {
        string noun = words.Noun(part.Kind), head = Head(part.Name ?? "");
        return head.Length > noun.Length && !head.EndsWith(noun, StringComparison.OrdinalIgnoreCase) && head.Split(' ').Contains(noun, StringComparer.OrdinalIgnoreCase) ? head : noun;
    }

    // What a name says beyond that.
    private static string Stem(Part part, string noun)
    {
        string head = Head(part.Name ?? "");
        return noun.Contains(head, StringComparison.OrdinalIgnoreCase) ? ""
            : head.EndsWith(" " + noun, StringComparison.OrdinalIgnoreCase) ? head[..^(noun.Length + 1)].TrimEnd()
            : head;
    }

    /// <summary>Parts that are called alike.</summary>
    private sealed record Group(string Noun, string[] Stems, int Count)
    {
        // No more names than these, or what all are called.
        public string Text(int most)
        {
            string noun = Count > 1 ? Vocabulary.Plural(Noun) : Noun;
            return noun.Length == 0 ? Stems[0] : Stems.Length == 0 || Stems.Length > most ? Vocabulary.Capital(noun) : $"{string.Join(", ", Stems)} {noun}";
        }
    }
}
