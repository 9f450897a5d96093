using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>The words that differ between American and British usage (trade usage, from memory); those for parts are in the kinds' data.</summary>
internal sealed record Vocabulary(string Ground, bool IsBritish, string Polarize, string Hot)
{
    public static Vocabulary Of(Words words) => words == Words.British ? British : American;

    private static Vocabulary American { get; } = new("ground", false, "polarize", "hot");

    private static Vocabulary British { get; } = new("earth", true, "polarise", "live");

    /// <summary>A word that begins a sentence.</summary>
    public static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];

    /// <summary>What a sentence calls a part of a kind: <c>horn relay</c>.</summary>
    public string Noun(PartKind kind) => (IsBritish ? kind.BritishNoun : null) ?? kind.Noun;
}
