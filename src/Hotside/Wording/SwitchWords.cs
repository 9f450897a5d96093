namespace Hotside.Wording;

/// <summary>Joins switches by "and" where a current passes all of them, by "or" where it passes one of them at a time.</summary>
internal static class SwitchWords
{
    /// <summary><c>S2 and S1</c>, <c>S2 or S1</c>, <c>S1 and (S3 or S2)</c>, <c>S1 alone or with S2</c>, <c>S3, or S2 and S1</c>.</summary>
    /// <param name="switches">The switches, in the order in which they are told.</param>
    /// <param name="ways">Which of them each way passes; together all.</param>
    /// <param name="named">What a switch is called.</param>
    public static string Of(string[] switches, HashSet<string>[] ways, Func<string, string> named)
    {
        string[] always = [.. switches.Where(s => ways.All(w => w.Contains(s)))];
        // What else each way passes, once each, the shortest first.
        string[][] others = [.. ways.Select(w => switches.Except(always).Where(w.Contains).ToArray()).DistinctBy(w => string.Join(' ', w)).OrderBy(w => w.Length).ThenBy(w => w.Length == 0 ? 0 : Array.IndexOf(switches, w[0]))];
        string common = Listed([.. always.Select(named)], "and");
        if (others.All(o => o.Length == 0)) return common;
        bool isOneEach = others.All(o => o.Length == 1), canBeAlone = others[0].Length == 0;
        string[] added = [.. others.Where(o => o.Length > 0).Select(o => Listed([.. o.Select(named)], "and"))];
        string any = isOneEach ? Listed(added, "or") : string.Join(", or ", added);
        if (always.Length == 0) return any;
        return canBeAlone ? $"{common} alone or with {any}" : added.Length == 1 ? $"{common} and {any}" : $"{common} and ({any})";
    }

    private static string Listed(string[] names, string word) => names.Length < 3 ? string.Join($" {word} ", names) : $"{string.Join(", ", names[..^1])} {word} {names[^1]}";
}
