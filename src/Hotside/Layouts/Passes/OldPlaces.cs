using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Where conductors lay that lie elsewhere now, both circuits over each other. Each old place is a line of its own from pin to pin, or nobody could tell on a trunk which of several
/// conductors lay where. Those that move together, from one pin to one pin, hang on one trunk as they did.
/// </summary>
internal static class OldPlaces
{
    /// <summary>Those of an input that are lines of their own, by number; none where each view shows its own.</summary>
    public static ImmutableHashSet<int> Of(LayoutInput input)
    {
        if (!input.IsOverlaid) return [];
        var present = input.Wires.Where(w => (w.Seen & SeenIn.After) != 0).GroupBy(w => w.Conductor, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        return
        [
            .. Enumerable.Range(0, input.Wires.Length).Where(i => input.Wires[i].Seen == SeenIn.Before && present.ContainsKey(input.Wires[i].Conductor))
                .GroupBy(i => MoveOf(input.Wires[i], present[input.Wires[i].Conductor])).Where(g => g.Key is null || g.Count() == 1).SelectMany(g => g),
        ];
    }

    // From which pin to which the conductor moves; nothing where not just one end does.
    private static (LayoutEnd From, LayoutEnd To)? MoveOf(LayoutWire old, LayoutWire present) =>
        (new[] { old.From, old.To }.Except([present.From, present.To]).ToArray(), new[] { present.From, present.To }.Except([old.From, old.To]).ToArray()) is ([var from], [var to]) ? (from, to) : null;
}
