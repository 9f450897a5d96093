using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>A load's verdict as a sentence, through all relays.</summary>
internal static class LoadSentence
{
    /// <summary>
    /// Such as <c>horn H1 is hot-switched by Horn relay K1, whose coil is ground-switched by Horn button S1</c>.
    /// </summary>
    /// <param name="load">The load.</param>
    /// <param name="all">All loads of the circuit, among them the coils of its relays.</param>
    /// <param name="circuit">The circuit.</param>
    /// <param name="words">Whose words.</param>
    public static string Of(LoadStudy load, ImmutableArray<LoadStudy> all, Circuit circuit, Words words)
    {
        string name = load.Name == load.Part.Id ? PartNaming.WithId(load.Part, words)
            : $"{load.Element.Name} of {PartNaming.WithId(load.Part, words)}";
        return $"{name} is {Verdict(load, all, circuit, words, [])}";
    }

    private static string Verdict(LoadStudy load, ImmutableArray<LoadStudy> all, Circuit circuit, Words words, ImmutableArray<string> told)
    {
        string phrase = VerdictText.Phrase(load.Side, words);
        if (load.Side == SwitchedSide.Dead)
            return load.DeadBecause is { } why ? $"{phrase} because of {why}" : $"{phrase}: no position feeds it";
        if (load.Side == SwitchedSide.InSeries)
            return load.InSeriesWith.IsEmpty ? phrase : $"{phrase} with {Names(load.InSeriesWith, circuit, words)}";
        string? relay = load.Chain.IsEmpty ? null : load.Chain[0];
        ImmutableArray<string> by = relay is null ? load.SwitchedBy : [relay, .. load.SwitchedBy];
        string verdict = by.IsEmpty ? phrase : $"{phrase} by {Names(by, circuit, words)}";
        // A relay tells of its coil once, even where relays hold each other.
        var coil = relay is null || told.Contains(relay) ? null
            : all.FirstOrDefault(l => l.Part.Id == relay && l.Element.Type == ElementType.Coil);
        string whose = coil is null ? "" : $", {(by.Length > 1 ? $"where the coil of {relay}" : "whose coil")} is {Verdict(coil, all, circuit, words, told.Add(relay!))}";
        return verdict + whose;
    }

    private static string Names(ImmutableArray<string> ids, Circuit circuit, Words words) =>
        Listing.And([.. ids.Select(id => circuit.FindPart(id) is { } part ? PartNaming.WithId(part, words) : id)]);
}
