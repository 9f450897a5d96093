using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>What a drawing shows, in sentences for those who cannot see it; made from the study, never invented.</summary>
internal static class Description
{
    private const int Few = 6;

    /// <summary>One view: supply, and who switches what.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="moment">Which circuit it is.</param>
    /// <param name="loads">What was found of its loads.</param>
    /// <param name="words">Whose words.</param>
    public static string Of(Circuit circuit, Moment moment, ImmutableArray<LoadStudy> loads, Words words)
    {
        LoadStudy[] shown = [.. loads.Where(l => !l.Element.IsInternal)];
        // Coils are told of with what they switch; a relay that switches nothing shown still speaks for itself.
        string[] relays = [.. shown.SelectMany(l => l.Chain)];
        LoadStudy[] own = [.. shown.Where(l => !(l.Element.Type == ElementType.Coil && relays.Contains(l.Part.Id)))];
        string head = $"{SheetText.Heading(moment)}: {SheetText.Supply(circuit.System, words)}.";
        var told = own.Length <= Few
            ? own.Select(l => $"The {LoadSentence.Of(l, loads, circuit, words)}.")
            : own.GroupBy(l => l.Side).OrderBy(g => g.Key).Select(g =>
                $"{Listing.Capital(VerdictText.Phrase(g.Key, words))}: {Listing.And([.. g.Select(l => l.Name)])}.");
        return string.Join(' ', told.Prepend(head));
    }

    /// <summary>A pair: both views and the number of changes between them.</summary>
    public static string Of(Alteration alteration, ImmutableArray<LoadStudy> before, ImmutableArray<LoadStudy> after, Words words)
    {
        int count = alteration.Changes.Length;
        string changes = count switch { 0 => "No changes.", 1 => "One change.", _ => $"{Numbers.Whole(count)} changes, in order of work." };
        return string.Join(' ', Of(alteration.Before, Moment.Before, before, words), Of(alteration.After, Moment.After, after, words),
            changes);
    }
}
