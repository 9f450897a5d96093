using System.Collections.Immutable;

namespace Hotside.Drawings.Sets;

/// <summary>
/// Two halves of what lines join, about even, with few lines between them: from each cut through the order of the file single units go over as long as that helps
/// (Fiduccia and Mattheyses, A linear-time heuristic for improving network partitions, 1982; by memory).
/// </summary>
internal sealed class Bisection
{
    private const int MostPasses = 8;

    private readonly ImmutableArray<int> sizes;
    private readonly List<int>[] beside;
    private readonly int all;
    private readonly double evenness;

    private Bisection(ImmutableArray<int> sizes, ImmutableArray<(int A, int B)> lines, double evenness)
    {
        (this.sizes, this.evenness) = (sizes, evenness);
        all = sizes.Sum();
        beside = [.. sizes.Select(_ => new List<int>())];
        foreach (var (a, b) in lines.Where(l => l.A != l.B))
        {
            beside[a].Add(b);
            beside[b].Add(a);
        }
    }

    /// <summary>For each of two units and more whether it lies in the second half; neither half is empty.</summary>
    /// <param name="sizes">How large each unit is, in the order of the file.</param>
    /// <param name="lines">Which units each line joins.</param>
    /// <param name="evenness">What uneven halves count for, in lines cut.</param>
    public static ImmutableArray<bool> Of(ImmutableArray<int> sizes, ImmutableArray<(int A, int B)> lines, double evenness)
    {
        Bisection bisection = new(sizes, lines, evenness);
        return [.. Enumerable.Range(1, sizes.Length - 1).Select(at => bisection.Improved([.. sizes.Select((_, i) => i >= at)])).MinBy(bisection.Cost)!];
    }

    private double Cost(bool[] second)
    {
        int cut = beside.Select((others, i) => others.Count(o => second[o] != second[i])).Sum() / 2;
        return cut + Unevenness(SizeOf(second));
    }

    private double Unevenness(int second) => second == 0 || second == all ? double.PositiveInfinity : evenness * Math.Pow((2.0 * second / all) - 1, 2) * Math.Sqrt(all);

    private int SizeOf(bool[] second) => sizes.Where((_, i) => second[i]).Sum();

    // In a pass each unit goes over once, the one that costs least first; the best state passed is where the next pass begins.
    private bool[] Improved(bool[] start)
    {
        var best = start;
        double least = Cost(start);
        for (int pass = 0; pass < MostPasses; pass++)
        {
            bool[] state = [.. best];
            var free = Enumerable.Range(0, state.Length).ToList();
            bool isBetter = false;
            while (free.Count > 0)
            {
                int size = SizeOf(state);
                int next = free.MinBy(i => beside[i].Sum(o => state[o] == state[i] ? 1 : -1) + Unevenness(size + (state[i] ? -sizes[i] : sizes[i])));
                free.Remove(next);
                state[next] = !state[next];
                if (Cost(state) is var cost && cost < least - 1e-9) (best, least, isBetter) = ([.. state], cost, true);
            }
            if (!isBetter) break;
        }
        return best;
    }
}
