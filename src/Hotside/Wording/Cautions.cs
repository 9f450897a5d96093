using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>
/// The cautions that an alteration calls for, few and to the point. Sources: TM 10-3930-671-24 (grounded cable first off and last on; never reverse
/// or run an alternator without its battery), 29 CFR 1926.441 (eye protection at batteries), SAE J537 (taper posts, from memory); the rest common practice, no source.
/// </summary>
internal static class Cautions
{
    public static IEnumerable<string> Of(Alteration alteration, Vocabulary words)
    {
        string before = Post(alteration.Before), after = Post(alteration.After);
        yield return before == after
            ? $"First off and last on: the cable of the {before} post, which is on {words.Ground}. Rings off, eyes protected, no flame near the battery."
            : $"First off: the cable of the {before} post, on {words.Ground} now. Last on: that of the {after} post, on {words.Ground} then. Rings off, eyes protected, no flame near the battery.";
        if (before != after) yield return "Prove the new battery's polarity with a meter before a cable goes on, and mark the cables: old colours may say the contrary.";
        if (Has(alteration.After, "alternator")) yield return "Never run the alternator without its battery, never polarise it, never turn its battery round.";
        if (before != after && Polarised(alteration.After) is { } machine) yield return $"Polarise {machine} before the first start, as its own field circuit asks.";
        if (alteration.After.Parts.Any(p => p.Kind.Polarity == "destroyed" && !p.Kind.Elements.Any(e => e.IsSource)))
            yield return "Lamps, flashers and modules that mind polarity go on after the final polarity is proved.";
        yield return "First power through a small fuse or a lamp in series. This sheet is an aid; the workshop manual, local codes and licensed practice decide.";
    }

    // The post that stands on the return.
    private static string Post(Circuit circuit) => circuit.Sources.FirstOrDefault(s => s.Element.When is null) is { PlusIsFeed: false } ? "positive" : "negative";

    private static bool Has(Circuit circuit, string kind) => circuit.Parts.Any(p => p.Kind.Id.Contains(kind, StringComparison.Ordinal));

    private static string? Polarised(Circuit circuit) => circuit.Parts.FirstOrDefault(p => p.Kind.Polarity == "polarise")?.Id;
}
