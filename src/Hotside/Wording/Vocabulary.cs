namespace Hotside.Wording;

/// <summary>The words that differ between American and British usage (trade usage, from memory).</summary>
internal sealed record Vocabulary(string Ground, string Generator, string Splice)
{
    public static Vocabulary Of(Words words) => words == Words.British ? British : American;

    private static Vocabulary American { get; } = new("ground", "generator", "splice");

    private static Vocabulary British { get; } = new("earth", "dynamo", "joint");

    /// <summary>The name of a kind in a sentence: <c>horn relay</c>.</summary>
    public string KindName(string id) => id switch
    {
        "generator" or "generator-third-brush" => Generator + id["generator".Length..].Replace('-', ' '),
        "splice" => Splice,
        _ => id.Replace('-', ' '),
    };
}
