namespace Hotside.Circuits;

/// <summary>Which terminal of a kind a name means, and what to say when it means none; the one place that knows.</summary>
internal static class TerminalNaming
{
    private const int MostListed = 12;

    /// <summary>The terminal's own name; an empty name means the only one. <see langword="null"/> when the name means none.</summary>
    public static string? TerminalMeant(this PartKind kind, string name) => name.Length == 0 ? kind.OnlyTerminal : kind.TerminalNamed(name);

    /// <summary>What terminals a kind has, and which was most likely meant: <c>a horn has 1, 2; did you mean "1"?</c>.</summary>
    public static string TerminalHint(this PartKind kind, string asked = "")
    {
        if (kind.TakesAnyTerminal) return $"name one; {kind.WithArticle()} takes any name";
        string[] names = [.. kind.Terminals.Select(t => t.Name), .. kind.HasCaseTerminal && kind.Terminals.All(t => !t.IsCase) ? ["case"] : Array.Empty<string>()];
        if (names.Length == 0) return $"{kind.WithArticle()} has no terminals";
        string list = $"{kind.WithArticle()} has {string.Join(", ", names.Take(MostListed))}{(names.Length > MostListed ? " …" : "")}";
        return NearestName.Of(asked, names) is { } near && near != asked ? $"{list}; did you mean \"{near}\"?" : list;
    }

    /// <summary>The same as the end of a sentence.</summary>
    public static string TerminalSentence(this PartKind kind, string asked) => kind.TerminalHint(asked) is var hint && hint.EndsWith('?') ? hint : hint + ".";

    /// <summary>The kind as a sentence has it: <c>a horn</c>, <c>an ammeter</c>.</summary>
    public static string WithArticle(this PartKind kind) => (kind.Id[0] is 'a' or 'e' or 'i' or 'o' or 'u' || kind.Id.StartsWith("hour", StringComparison.Ordinal) ? "an " : "a ") + kind.Id;
}
