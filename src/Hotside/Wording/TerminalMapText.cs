using Hotside.Alterations;

namespace Hotside.Wording;

/// <summary>On which terminals of a replaced part its wires go, where the new part calls them otherwise: <c>: 1 to L, 2 to 54g</c>.</summary>
internal static class TerminalMapText
{
    /// <summary>Of parts under one number; empty where every terminal keeps its name.</summary>
    public static string Of(IReadOnlyList<string> ids, Alteration alteration)
    {
        var pairs = ids.SelectMany(i => Pairs(i, alteration)).Distinct().ToArray();
        if (pairs.Length == 0) return "";
        // A plug and its socket have each pole twice, under names that differ in their first letter only.
        var poles = pairs.Where(p => p.Old.Length > 1 && p.New.Length > 1 && p.Old[0] == p.New[0] && char.IsLetter(p.Old[0]))
            .GroupBy(p => (Old: p.Old[1..], New: p.New[1..])).Select(g => (Pole: g.Key, Halves: string.Join(" and ", g.Select(p => p.Old[..1]).Order(StringComparer.Ordinal)))).ToArray();
        bool hasHalves = poles.Length * 2 == pairs.Length && poles.Select(p => p.Halves).Distinct().Count() == 1;
        return hasHalves ? $" on {poles[0].Halves}: {Listed(poles.Select(p => p.Pole))}" : ": " + Listed(pairs);
    }

    private static string Listed(IEnumerable<(string Old, string New)> pairs) => string.Join(", ", pairs.OrderBy(p => p.Old, StringComparer.Ordinal).Select(p => $"{p.Old} to {p.New}"));

    private static IEnumerable<(string Old, string New)> Pairs(string id, Alteration alteration)
    {
        if (alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Reverse or Replace { Reversed: true } && a.Items.Contains(id))) yield break;
        var moved = alteration.Changes.SelectMany(c => c.Acts).OfType<Move>().SelectMany(m => m.Ends.Select(e => (m.Items[0], e.From))).ToHashSet();
        foreach (var was in alteration.Before.Conductors)
        {
            if (alteration.After.FindConductor(was.Id) is not { } now) continue;
            foreach (var (old, fresh) in new[] { (was.From, now.From), (was.To, now.To) })
                if (old.Part == id && fresh.Part == id && old.Terminal != fresh.Terminal && !moved.Contains((was.Id, old)))
                    yield return (old.Terminal, fresh.Terminal);
        }
    }
}
