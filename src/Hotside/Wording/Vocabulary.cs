using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>The words that differ between American and British usage (trade usage, from memory); those for parts are in the kinds' data.</summary>
internal sealed record Vocabulary(string Ground, bool IsBritish, string Polarize, string Hot, string Color)
{
    public static Vocabulary Of(Words words) => words switch
    {
        Words.American => American,
        Words.British => British,
        _ => throw new ArgumentOutOfRangeException(nameof(words), words, "There are no such words."),
    };

    private static Vocabulary American { get; } = new("ground", false, "polarize", "hot", "color");

    private static Vocabulary British { get; } = new("earth", true, "polarise", "live", "colour");

    /// <summary>A word that begins a sentence.</summary>
    public static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];

    /// <summary>A name within a sentence; one that begins with capitals, such as <c>LED lamp</c>, keeps them.</summary>
    public static string Small(string name) =>
        name.Length == 0 || (name.Length > 1 && !char.IsLower(name[1])) ? name : char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>Several of what a noun names.</summary>
    public static string Plural(string noun) => noun.Length < 2 ? noun
        : noun[^1] == 'y' && !"aeiou".Contains(noun[^2], StringComparison.Ordinal) ? noun[..^1] + "ies"
        : noun[^1] is 's' or 'x' || noun.EndsWith("ch", StringComparison.Ordinal) || noun.EndsWith("sh", StringComparison.Ordinal) ? noun + "es" : noun + "s";

    /// <summary>A part's name, or what its kind is called, as a heading has it: <c>Horn button</c>.</summary>
    public string Title(Part part) => part.Name ?? Capital(NamesItself(part) ? part.Id + " metal" : Noun(part.Kind));

    /// <summary>Whether a metal's id is a word that says what it is: <c>engine</c>, <c>frame</c>.</summary>
    public static bool NamesItself(Part part) => part.Name is null && part.Kind.Symbol == "metal" && part.Id.Length > 2 && part.Id.All(char.IsLetter);

    /// <summary>A rail or a piece of metal as a drawing has it, so that lists which have its id alone are understood: <c>X1 · Battery feed</c>.</summary>
    public string Rail(Part part) => $"{part.Id} · {Title(part)}";

    /// <summary>What a sentence calls a part of a kind: <c>horn relay</c>.</summary>
    public string Noun(PartKind kind) => (IsBritish ? kind.BritishNoun : null) ?? kind.Noun;
}
