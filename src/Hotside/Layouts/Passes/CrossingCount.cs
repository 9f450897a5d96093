using System.Numerics;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Counts the crossings an order of strands costs, by view and by net. Two pieces of a channel cross (runs − 2) / 2 times, where runs
/// are the changes from one to the other when walking round the channel over the ends of both, tops to the right, bottoms back.
/// What has been counted is kept until it is counted again.
/// </summary>
internal sealed class CrossingCount
{
    // Larger than any offset inside a stand, so that strands compare before offsets.
    private const int StrandPitch = 4096, OffsetShift = 1024;

    private readonly int[] place, strandOf, offset, channel, indexInChannel, firstOfChannel, crossingsOf;
    private readonly SeenIn[] seen;
    private readonly int[][] tops, bottoms;
    private readonly bool[] uniform, simple;
    private readonly Rivalry[] rivalries;
    private readonly byte[] known;

    /// <summary>Two pieces of one channel, lower number first, and the views in which they can cross.</summary>
    private readonly record struct Rivalry(int A, int B, SeenIn Views);

    /// <param name="lattice">The block.</param>
    /// <param name="strandOfSeat">The strand of each seat.</param>
    /// <param name="place">Where each strand stands: looked up at each count.</param>
    public CrossingCount(Lattice lattice, int[] strandOfSeat, int[] place)
    {
        this.place = place;
        int pieces = lattice.Pieces.Length;
        (strandOf, offset, seen) = (new int[lattice.Ends], new int[lattice.Ends], new SeenIn[lattice.Ends]);
        (tops, bottoms, uniform, simple) = (new int[pieces][], new int[pieces][], new bool[pieces], new bool[pieces]);
        foreach (var piece in lattice.Pieces)
        {
            foreach (var end in piece.Ends) (strandOf[end.Id], offset[end.Id], seen[end.Id]) = (strandOfSeat[end.Seat], end.Offset + OffsetShift, end.Seen);
            (tops[piece.Id], bottoms[piece.Id]) = ([.. piece.Tops.Select(e => e.Id)], [.. piece.Bottoms.Select(e => e.Id)]);
            uniform[piece.Id] = piece.Ends.All(e => e.Seen == piece.Seen);
            simple[piece.Id] = uniform[piece.Id] && piece.Tops.Length == 1 && piece.Bottoms.Length == 1;
        }
        channel = [.. lattice.Pieces.Select(p => p.Channel)];
        (indexInChannel, firstOfChannel, crossingsOf) = (new int[pieces], new int[pieces], new int[pieces]);
        var rivals = new List<Rivalry>();
        foreach (var together in lattice.Pieces.GroupBy(p => p.Channel).Select(g => g.ToArray()))
            for (int i = 0, first = rivals.Count; i < together.Length; i++)
            {
                (indexInChannel[together[i].Id], firstOfChannel[together[i].Id]) = (i, first);
                for (int j = 0; j < i; j++)
                    rivals.Add(new(Math.Min(together[i].Id, together[j].Id), Math.Max(together[i].Id, together[j].Id), together[i].Strange(together[j])));
            }
        rivalries = [.. rivals];
        known = new byte[rivalries.Length];
    }

    /// <summary>The pairs of pieces that cross now.</summary>
    public IEnumerable<(int A, int B)> Crossing => rivalries.Where((_, i) => known[i] > 0).Select(r => (r.A, r.B));

    /// <summary>The number of two pieces that can cross; below 0 where they cannot.</summary>
    public int PairOf(int a, int b)
    {
        if (a == b || channel[a] != channel[b]) return -1;
        int i = Math.Max(indexInChannel[a], indexInChannel[b]), j = Math.Min(indexInChannel[a], indexInChannel[b]), pair = firstOfChannel[a] + (i * (i - 1) / 2) + j;
        return rivalries[pair].Views != 0 ? pair : -1;
    }

    /// <summary>How many pairs there are: their numbers are below.</summary>
    public int Pairs => rivalries.Length;

    /// <summary>Crossings of a piece with all others, as counted last.</summary>
    public int CrossingsOf(int piece) => crossingsOf[piece];

    /// <summary>Moves an end on its seat.</summary>
    public void Shift(int end, int to) => offset[end] = to + OffsetShift;

    /// <summary>Sorts the ends of a piece's one side after strands have moved.</summary>
    public void Sort(int piece, bool atTop) => Sort(atTop ? tops[piece] : bottoms[piece]);

    /// <summary>What is known now, to come back to.</summary>
    public (byte[] Known, int[] CrossingsOf) Save() => ([.. known], [.. crossingsOf]);

    /// <summary>Comes back to what was known when the strands stood as they do now.</summary>
    public void Restore((byte[] Known, int[] CrossingsOf) saved)
    {
        saved.Known.CopyTo(known, 0);
        saved.CrossingsOf.CopyTo(crossingsOf, 0);
        SortAll();
    }

    /// <summary>Sorts all and counts all anew; returns the sum.</summary>
    public int CountAll()
    {
        SortAll();
        int total = 0;
        for (int pair = 0; pair < rivalries.Length; pair++) total += Recount(pair, out _);
        return total;
    }

    /// <summary>Counts the crossings of two pieces; tells how many there were when they were counted last.</summary>
    public int Recount(int pair, out int was)
    {
        var (a, b, views) = rivalries[pair];
        was = known[pair];
        int crossings = simple[a] && simple[b] ? OfSimple(a, b) * BitOperations.PopCount((uint)views)
            : uniform[a] && uniform[b] ? In(a, b, SeenIn.Both) * BitOperations.PopCount((uint)views)
            : ((views & SeenIn.Before) != 0 ? In(a, b, SeenIn.Before) : 0) + ((views & SeenIn.After) != 0 ? In(a, b, SeenIn.After) : 0);
        if (crossings == was) return was;
        crossings = Math.Min(crossings, byte.MaxValue);
        Set(pair, was, crossings);
        return crossings;
    }

    /// <summary>Comes back to what was known of two pieces; returns the change.</summary>
    public int Undo(int pair, int to)
    {
        int from = known[pair];
        Set(pair, from, to);
        return to - from;
    }

    private void Set(int pair, int from, int to)
    {
        known[pair] = (byte)to;
        crossingsOf[rivalries[pair].A] += to - from;
        crossingsOf[rivalries[pair].B] += to - from;
    }

    private int Key(int end) => (place[strandOf[end]] * StrandPitch) + offset[end];

    // One end above, one below: either the order of both is the same, or they cross.
    private int OfSimple(int a, int b)
    {
        int above = Key(tops[a][0]) - Key(tops[b][0]), below = Key(bottoms[a][0]) - Key(bottoms[b][0]);
        return (above < 0 && below > 0) || (above > 0 && below < 0) ? 1 : 0;
    }

    private int In(int a, int b, SeenIn view)
    {
        var walk = new Walked();
        Walk(tops[a], tops[b], view, true, ref walk);
        Walk(bottoms[a], bottoms[b], view, false, ref walk);
        return walk.Crossings;
    }

    private void Walk(int[] a, int[] b, SeenIn view, bool rightwards, ref Walked walk)
    {
        int step = rightwards ? 1 : -1, i = rightwards ? 0 : a.Length - 1, j = rightwards ? 0 : b.Length - 1;
        while (true)
        {
            while ((uint)i < (uint)a.Length && (seen[a[i]] & view) == 0) i += step;
            while ((uint)j < (uint)b.Length && (seen[b[j]] & view) == 0) j += step;
            bool hasA = (uint)i < (uint)a.Length, hasB = (uint)j < (uint)b.Length;
            if (!hasA && !hasB) return;
            int difference = hasA && hasB ? Key(a[i]) - Key(b[j]) : 0;
            if (hasA && hasB && difference == 0)
            {
                (i, j) = (i + step, j + step);
                continue;
            }
            bool first = !hasB || (hasA && difference < 0 == rightwards);
            walk.Come(first ? 1 : 2);
            if (first) i += step;
            else j += step;
        }
    }

    private void SortAll()
    {
        foreach (int[] list in tops) Sort(list);
        foreach (int[] list in bottoms) Sort(list);
    }

    // Nearly sorted as a rule: two neighbours have changed places.
    private void Sort(int[] list)
    {
        for (int i = 1; i < list.Length; i++)
        {
            int end = list[i], own = Key(end), j = i - 1;
            for (; j >= 0 && Key(list[j]) > own; j--) list[j + 1] = list[j];
            list[j + 1] = end;
        }
    }

    /// <summary>What has been passed on the way round a channel.</summary>
    private struct Walked
    {
        private int first, last, runs;

        public readonly int Crossings => runs <= 1 ? 0 : Math.Max(0, ((last == first ? runs - 1 : runs) / 2) - 1);

        public void Come(int to)
        {
            if (to == last) return;
            runs++;
            if (first == 0) first = to;
            last = to;
        }
    }
}
