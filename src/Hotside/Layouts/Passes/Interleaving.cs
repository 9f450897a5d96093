using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>One order from left to right of all that stands in all blocks, as a later layout needs it: a block in a hole of others stands between their strands.</summary>
internal static class Interleaving
{
    /// <summary>By block, the place of each seat among all; block after block where none stands in a hole.</summary>
    /// <param name="blocks">The blocks where they stand.</param>
    /// <param name="places">By block, the place of each seat in it.</param>
    /// <returns>The places, and whether they hold in all rows: what is left of another in one row must not be right of it in the next.</returns>
    public static (ImmutableArray<ImmutableArray<int>> Places, bool Hold) Of(PlannedBlock[] blocks, IReadOnlyList<ImmutableArray<int>> places)
    {
        var left = new Dictionary<(int Block, int Place), int>();
        var right = new Dictionary<(int Block, int Place), HashSet<(int, int)>>();
        foreach (var strand in blocks.SelectMany((b, i) => b.Lattice.Seats.Select(s => (i, places[i][s.Id])))) (left[strand], right[strand]) = (0, []);
        foreach (var view in Extents.Views)
            foreach (var row in blocks.SelectMany((b, i) => b.Lattice.Seats.Where(s => (s.Seen & view) != 0).Select(s => (s.Row, X: b.X[s.Id], Strand: (i, places[i][s.Id])))).GroupBy(s => s.Row))
            {
                var seats = row.OrderBy(s => s.X).Select(s => s.Strand).ToArray();
                for (int i = 1; i < seats.Length; i++)
                    if (right[seats[i - 1]].Add(seats[i])) left[seats[i]]++;
            }
        var order = new Dictionary<(int, int), int>();
        SortedSet<(int Block, int Place)> ready = [.. left.Where(s => s.Value == 0).Select(s => s.Key)];
        while (ready.Count > 0)
        {
            var strand = ready.Min;
            ready.Remove(strand);
            order[strand] = order.Count;
            foreach (var next in right[strand])
                if (--left[next] == 0) ready.Add(next);
        }
        bool hold = order.Count == left.Count;
        foreach (var strand in left.Keys.Where(s => !order.ContainsKey(s)).Order()) order[strand] = order.Count;
        return ([.. blocks.Select((b, i) => b.Lattice.Seats.Select(s => order[(i, places[i][s.Id])]).ToImmutableArray())], hold);
    }
}
