namespace Hotside.Layouts.Passes;

/// <summary>
/// Looks for an order of strands with fewer crossings: all are sifted, then the best order is kicked, mostly at one of its crossings, and what
/// was kicked is sifted again. A new order is kept when it crosses less, or as often on shorter trunks. Work is counted in steps, never by a clock.
/// </summary>
internal sealed class OrderSearch
{
    // How long and how far it looks (own choice: measured on the gallery and the bench).
    private const int Steps = 15_000, LongestRun = 10, Patience = 20;
    private const double MostShares = 2.4;

    private readonly StrandOrder order;
    private readonly TrunkLengths lengths;
    private readonly SplitMix random = new(12345);
    private readonly int[] inFile;
    private readonly int[][] neighbours;

    private OrderSearch(StrandOrder order, TrunkLengths lengths)
    {
        (this.order, this.lengths, inFile) = (order, lengths, order.Current());
        var near = order.Strands.Select(_ => new SortedSet<int>()).ToArray();
        foreach (var strands in order.StrandsOfPiece)
            foreach (int strand in strands) near[strand].UnionWith(strands);
        neighbours = [.. near.Select(n => n.ToArray())];
    }

    /// <summary>Leaves the best order found.</summary>
    public static void Improve(StrandOrder order, TrunkLengths lengths)
    {
        if (order.Length < 2 || order.Crossings == 0) return;
        new OrderSearch(order, lengths).Improve();
    }

    private void Improve()
    {
        Sift(inFile, 8);
        var (best, length) = (order.Save(), lengths.Total());
        // A large order needs more than its share: what is kicked must find its way past more strands.
        double size = order.Length / 40.0;
        long end = order.Steps + (long)(Steps * Math.Min(MostShares, 0.2 + (size * (1 + size))));
        // A small one has seen all that there is to see soon.
        int patience = Math.Min(Patience * order.Length, 40 + (24_000 / Math.Max(10, order.Length)));
        // To sift all is dear where there are many: then only what is better already is worth it.
        int near = order.Length < StrandOrder.Many ? 1 : -1;
        (int A, int B)[] crossing = [.. order.Crossing()];
        for (int stale = 0; order.Steps < end && best.Crossings > 0 && stale < patience; stale++)
        {
            order.Restore(best);
            var kicked = new SortedSet<int>();
            order.Rearrange(random.Below(2) > 0 && crossing.Length > 0 ? KickedAtCrossing(crossing[random.Below(crossing.Length)], kicked) : KickedAnywhere(kicked));
            foreach (int strand in kicked.ToArray()) kicked.UnionWith(neighbours[strand]);
            Sift([.. inFile.Where(kicked.Contains)], 3);
            if (order.Crossings <= best.Crossings + near) Sift(inFile, 3);
            if (order.Crossings > best.Crossings || (order.Crossings == best.Crossings && lengths.Total() >= length)) continue;
            if (order.Crossings < best.Crossings) stale = 0;
            (best, length) = (order.Save(), lengths.Total());
            crossing = [.. order.Crossing()];
        }
        order.Restore(best);
    }

    // To and fro, since a strand that is sifted early cannot know where the later ones go.
    private void Sift(int[] strands, int rounds)
    {
        for (int round = 0; round < rounds && order.Crossings > 0; round++)
        {
            int before = order.Crossings;
            for (int i = 0; i < strands.Length && order.Crossings > 0; i++) order.Sift(strands[round % 2 == 0 ? i : strands.Length - 1 - i]);
            if (order.Crossings == before) break;
        }
    }

    // An end of the crossing goes elsewhere, or beside another of its ends, or a run around it is turned or carried away.
    private List<int> KickedAtCrossing((int A, int B) crossing, SortedSet<int> kicked)
    {
        List<int> ids = [.. order.Current()];
        int[] ends = [.. order.StrandsOfPiece[crossing.A].Union(order.StrandsOfPiece[crossing.B])];
        kicked.UnionWith(ends);
        for (int kicks = 1 + random.Below(2); kicks > 0; kicks--)
        {
            int strand = ends[random.Below(ends.Length)], at = ids.IndexOf(strand), way = random.Below(4);
            if (way < 2)
            {
                int beside = ends[random.Below(ends.Length)];
                ids.RemoveAt(at);
                int to = way == 0 || beside == strand ? random.Below(ids.Count + 1) : ids.IndexOf(beside) + random.Below(2);
                ids.Insert(to, strand);
                continue;
            }
            int length = Math.Min(ids.Count, 2 + random.Below(LongestRun));
            Carry(ids, Math.Clamp(at - random.Below(length), 0, ids.Count - length), length, turned: way == 2 || random.Below(2) == 0, stays: way == 2, kicked);
        }
        return ids;
    }

    private List<int> KickedAnywhere(SortedSet<int> kicked)
    {
        List<int> ids = [.. order.Current()];
        int length = 1 + random.Below(Math.Min(Math.Max(1, ids.Count / 2), LongestRun));
        Carry(ids, random.Below(ids.Count - length + 1), length, turned: random.Below(2) == 0, stays: random.Below(3) == 0, kicked);
        return ids;
    }

    private void Carry(List<int> ids, int from, int length, bool turned, bool stays, SortedSet<int> kicked)
    {
        var run = ids.GetRange(from, length);
        kicked.UnionWith(run);
        ids.RemoveRange(from, length);
        if (turned) run.Reverse();
        ids.InsertRange(stays ? from : random.Below(ids.Count + 1), run);
    }
}
