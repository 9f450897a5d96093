using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>
/// The cautions that an alteration calls for, few and to the point. Sources: TM 10-3930-671-24 (grounded cable first off and last on; never reverse
/// or run an alternator without its battery), 29 CFR 1926.441 (eye protection at batteries); the rest common practice, no source, halogen bulbs from makers' wrappers (from memory).
/// </summary>
internal static class Cautions
{
    /// <summary>Who decides: the first sentence of whatever tells somebody what to do.</summary>
    public const string Aid = "An aid: the workshop manual, local codes and licensed practice take precedence.";

    // The word of a lamp's kind for a bulb that is under pressure.
    private const string Halogen = "halogen";

    /// <summary>The cautions of a drawing.</summary>
    public static IEnumerable<string> Of(Alteration alteration, Vocabulary words)
    {
        string[] work = [.. OfWork(alteration, words)];
        return [.. work[..^1], $"{work[^1]} This sheet is an aid; the workshop manual, local codes and licensed practice decide."];
    }

    /// <summary>The same without who decides; how the first power comes is the last.</summary>
    public static IEnumerable<string> OfWork(Alteration alteration, Vocabulary words)
    {
        var whole = alteration.Whole;
        // Of a battery on no common return nobody can say which cable is the grounded one.
        if (whole.Before.Parts.Concat(whole.After.Parts).Any(p => p.IsStandingSource))
            yield return $"{OfPosts(alteration, words) ?? "Both cables off the battery before work, on again after it."} Rings off, eyes protected; battery gas explodes: no flame, no spark near it.";
        foreach (string polarity in OfPolarity(alteration, words)) yield return polarity;
        if (OfBulbs(alteration, alteration.After.Parts.Where(p => alteration.StateOf(p.Id) is not PartState.Left).Select(p => p.Id)) is { } bulbs) yield return bulbs;
        yield return "First power through a small fuse or a lamp in series.";
    }

    /// <summary>Which cables come off first and go on last; <see langword="null"/> where no battery stands on the return.</summary>
    public static string? OfPosts(Alteration alteration, Vocabulary words)
    {
        // Which cables come off is a matter of the whole vehicle, however little of it is shown.
        string? before = Post(alteration.Whole.Before), after = Post(alteration.Whole.After);
        return (before ?? after) is null ? null : FirstAndLast(alteration, before, after, words);
    }

    /// <summary>How bulbs under pressure are handled; <see langword="null"/> where none of the parts is said to have one.</summary>
    public static string? OfBulbs(Alteration alteration, IEnumerable<string> parts)
    {
        string[] ids = [.. parts.Distinct().Where(id => new[] { alteration.Before, alteration.After }.Any(c => c.FindPart(id)?.Spec.Options.Contains(Halogen) == true))];
        return ids.Length == 0 ? null : $"Halogen {(ids.Length > 1 ? "bulbs" : "bulb")} ({string.Join(", ", ids)}): hot and under pressure. Let cool, eyes covered, no finger on the glass; wipe off what touched it.";
    }

    /// <summary>What a wrong polarity would do, and what machines ask for.</summary>
    public static IEnumerable<string> OfPolarity(Alteration alteration, Vocabulary words)
    {
        string? before = Post(alteration.Whole.Before), after = Post(alteration.Whole.After);
        bool isTurned = before is not null && after is not null && before != after;
        string minding = Minding(alteration, words);
        if (isTurned) yield return $"Prove the new battery's polarity with a meter before a cable goes on, and mark the cables: old {words.Color}s may say the contrary.{minding}";
        else if (minding.Length > 0 && (before ?? after) is not null) yield return $"Prove each polarity with a meter before the {(alteration.Whole.After.System.Ground == Ground.Isolated ? "return" : words.Ground)} cable goes on.{minding}";
        if (Ids(alteration.After, p => p.Kind.Symbol == "alternator") is { Length: > 0 } alternators)
            yield return $"Never run {alternators} without its battery, never {words.Polarize} it, never turn its battery round.";
        if (Ids(alteration.After, p => p.Kind.Polarity == "polarise" && (isTurned || alteration.StateOf(p.Id) is not (PartState.Left or PartState.Remounted))) is { Length: > 0 } machines)
            yield return $"{Vocabulary.Capital(words.Polarize)} {machines} before the first start, as its own field circuit asks.";
    }

    // Those that are touched, or all where the poles change: what a wrong polarity would cost, by name.
    private static string Minding(Alteration alteration, Vocabulary words)
    {
        bool isAnyTurned = Post(alteration.Whole.Before) != Post(alteration.Whole.After);
        var parts = alteration.After.Parts.Where(p => p.Kind.Polarity == "destroyed" && !p.IsStandingSource && (isAnyTurned || alteration.StateOf(p.Id) is not (PartState.Left or PartState.Remounted)));
        string[] named = [.. parts.GroupBy(p => words.Noun(p.Kind)).Select(g => $"{(g.Count() > 1 ? Vocabulary.Plural(g.Key) : g.Key)} {string.Join(", ", g.Select(p => p.Id))}")];
        return named.Length == 0 ? "" : $" The wrong way round destroys {string.Join("; ", named)}.";
    }

    private static string FirstAndLast(Alteration alteration, string? before, string? after, Vocabulary words)
    {
        string was = On(alteration.Whole.Before, words), will = On(alteration.Whole.After, words);
        if (before == after && was == will) return $"First off and last on: {before}, {(before?.StartsWith("the cables", StringComparison.Ordinal) == true ? "all" : "which is")} on {was}.";
        string off = before is null ? "" : $"First off: {before}, on {was} now.", on = after is null ? "" : $"Last on: {after}, on {will} then.";
        return $"{off} {on}".Trim();
    }

    /// <summary>Which cable comes off first and goes on last, of one circuit: <c>first off and last on, the cable of the positive post, which is on ground</c>.</summary>
    public static string GroundedFirst(Circuit circuit, Vocabulary words) => Post(circuit) is not { } post ? "the grounded cable first off and last on"
        : $"first off and last on, {post}, {(post.StartsWith("the cables", StringComparison.Ordinal) ? "all" : "which is")} on {On(circuit, words)}";

    // The cable at the post, or at the posts, that stand on the return; null where no battery does.
    private static string? Post(Circuit circuit)
    {
        var nodes = Nodes.WithAllClosed(circuit);
        var sources = circuit.Sources.Where(s => s.Part.IsStandingSource && nodes.AreOne(s.Return, circuit.System.ReturnNode)).ToArray();
        if (sources.Length == 0) return null;
        string posts = string.Join(" and ", sources.Select(s => s.PlusIsFeed ? "negative" : "positive").Distinct());
        return sources.Length == 1 ? $"the cable of the {posts} post" : $"the cables of the {posts} posts of {string.Join(", ", sources.Select(s => s.Part.Id))}";
    }

    private static string On(Circuit circuit, Vocabulary words) => circuit.System.Return is { } node ? "the return, " + EndWords.Of(node, circuit) : words.Ground;

    private static string Ids(Circuit circuit, Func<Part, bool> which) => string.Join(", ", circuit.Parts.Where(which).Select(p => p.Id));
}
