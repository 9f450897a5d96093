using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Counts the crossings an order of seats costs, by view and by net. Two pieces of a channel cross (runs − 2) / 2 times, where runs
/// are the changes from one to the other when walking round the channel over the ends of both, tops to the right, bottoms back.
/// What has been counted is kept until it is counted again.
/// </summary>
internal sealed class CrossingCount
{
    // Larger than any offset inside a stand, so that seats compare before offsets.
    private const int SeatPitch = 4096, OffsetShift = 1024;
    private readonly int[] key;
    private readonly SeenIn[] seen;
    private readonly int[][] tops, bottoms, endsOfSeat;
    private readonly int[] offset;
    private readonly bool[] uniform;
    private readonly SeenIn[] strange;
    private readonly byte[] known;
    private readonly int pieces;

    public CrossingCount(Lattice lattice)
    {
        pieces = lattice.Pieces.Length;
        (key, offset, seen) = (new int[lattice.Ends], new int[lattice.Ends], new SeenIn[lattice.Ends]);
        End[] ends = [.. lattice.Pieces.SelectMany(p => p.Ends)];
        foreach (var end in ends) (offset[end.Id], seen[end.Id]) = (end.Offset + OffsetShift, end.Seen);
        var bySeat = ends.ToLookup(e => e.Seat, e => e.Id);
        endsOfSeat = [.. lattice.Seats.Select(s => bySeat[s.Id].ToArray())];
        tops = [.. lattice.Pieces.Select(p => p.Tops.Select(e => e.Id).ToArray())];
        bottoms = [.. lattice.Pieces.Select(p => p.Bottoms.Select(e => e.Id).ToArray())];
        uniform = [.. lattice.Pieces.Select(p => p.Ends.All(e => e.Seen == SeenIn.Both))];
        (strange, known) = (new SeenIn[pieces * pieces], new byte[pieces * pieces]);
        var rivals = new List<(int, int)>();
        foreach (var channel in lattice.Pieces.GroupBy(p => p.Channel).Select(g => g.ToArray()))
            for (int i = 0; i < channel.Length; i++)
                for (int j = 0; j < i; j++)
                {
                    int low = Math.Min(channel[i].Id, channel[j].Id), high = Math.Max(channel[i].Id, channel[j].Id);
                    strange[(low * pieces) + high] = channel[i].Strange(channel[j]);
                    if (strange[(low * pieces) + high] != 0) rivals.Add((low, high));
                }
        Rivals = [.. rivals];
    }

    /// <summary>The pairs of pieces that can cross at all, lower number first.</summary>
    public ImmutableArray<(int A, int B)> Rivals { get; }

    /// <summary>Whether two pieces can cross at all.</summary>
    public bool AreRivals(int a, int b) => strange[Index(a, b)] != 0;

    /// <summary>Moves a seat; the ends that hang on it must be sorted again before the next count.</summary>
    public void Place(int seat, int at)
    {
        foreach (int end in endsOfSeat[seat]) key[end] = (at * SeatPitch) + offset[end];
    }

    /// <summary>Moves an end on its seat; counts as moving the seat.</summary>
    public void Shift(int end, int seatPlace, int to)
    {
        offset[end] = to + OffsetShift;
        key[end] = (seatPlace * SeatPitch) + offset[end];
    }

    /// <summary>Sorts the ends of a piece's one side after seats have moved.</summary>
    public void Sort(int piece, bool atTop) => Sort(atTop ? tops[piece] : bottoms[piece]);

    /// <summary>What is known now, to come back to.</summary>
    public byte[] Save() => [.. known];

    /// <summary>Comes back to what was known when the seats stood as they do now.</summary>
    public void Restore(byte[] saved)
    {
        saved.CopyTo(known, 0);
        SortAll();
    }

    /// <summary>Sorts all and counts all anew; returns the sum.</summary>
    public int CountAll()
    {
        SortAll();
        int total = 0;
        foreach (var (a, b) in Rivals) total += Recount(a, b, out _);
        return total;
    }

    /// <summary>Crossings of two pieces as counted last, before and after added.</summary>
    public int Known(int a, int b) => known[Index(a, b)];

    /// <summary>Counts the crossings of two pieces; tells how many there were when they were counted last.</summary>
    public int Recount(int a, int b, out int was)
    {
        int index = Index(a, b);
        was = known[index];
        var views = strange[index];
        int crossings = views == 0 ? 0 : views == SeenIn.Both && uniform[a] && uniform[b] ? 2 * In(a, b, SeenIn.Both)
            : ((views & SeenIn.Before) != 0 ? In(a, b, SeenIn.Before) : 0) + ((views & SeenIn.After) != 0 ? In(a, b, SeenIn.After) : 0);
        known[index] = (byte)Math.Min(crossings, byte.MaxValue);
        return known[index];
    }

    private int Index(int a, int b) => a < b ? (a * pieces) + b : (b * pieces) + a;

    private int In(int a, int b, SeenIn view)
    {
        int first = 0, last = 0, runs = 0;
        Walk(tops[a], tops[b], view, true, ref first, ref last, ref runs);
        Walk(bottoms[a], bottoms[b], view, false, ref first, ref last, ref runs);
        if (runs <= 1) return 0;
        if (last == first) runs--;
        return Math.Max(0, (runs / 2) - 1);
    }

    private void Walk(int[] a, int[] b, SeenIn view, bool rightwards, ref int first, ref int last, ref int runs)
    {
        int step = rightwards ? 1 : -1, i = rightwards ? 0 : a.Length - 1, j = rightwards ? 0 : b.Length - 1;
        while (true)
        {
            while ((uint)i < (uint)a.Length && (seen[a[i]] & view) == 0) i += step;
            while ((uint)j < (uint)b.Length && (seen[b[j]] & view) == 0) j += step;
            bool hasA = (uint)i < (uint)a.Length, hasB = (uint)j < (uint)b.Length;
            if (!hasA && !hasB) return;
            int keyA = hasA ? key[a[i]] : 0, keyB = hasB ? key[b[j]] : 0;
            if (hasA && hasB && keyA == keyB)
            {
                (i, j) = (i + step, j + step);
                continue;
            }
            int next = !hasB || (hasA && keyA < keyB == rightwards) ? 1 : 2;
            if (next != last)
            {
                runs++;
                if (first == 0) first = next;
                last = next;
            }
            if (next == 1) i += step;
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
            int end = list[i], own = key[end], j = i - 1;
            for (; j >= 0 && key[list[j]] > own; j--) list[j + 1] = list[j];
            list[j + 1] = end;
        }
    }
}
