using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Counts the crossings an order of seats costs, by view and by net. Two pieces of a channel cross (runs − 2) / 2 times, where runs
/// are the changes from one to the other when walking round the channel over the ends of both, tops to the right, bottoms back.
/// </summary>
internal sealed class CrossingCount
{
    // Larger than any offset inside a stand, so that seats compare before offsets.
    private const int SeatPitch = 4096, OffsetShift = 1024;
    private readonly ImmutableArray<Piece> pieces;
    private readonly int[] seat, offset;
    private readonly SeenIn[] seen;
    private readonly int[][] tops, bottoms;
    private readonly bool[] uniform;
    private readonly int[] position;

    public CrossingCount(Lattice lattice)
    {
        pieces = lattice.Pieces;
        (seat, offset, seen) = (new int[lattice.Ends], new int[lattice.Ends], new SeenIn[lattice.Ends]);
        foreach (End end in pieces.SelectMany(p => p.Ends)) (seat[end.Id], offset[end.Id], seen[end.Id]) = (end.Seat, end.Offset, end.Seen);
        tops = [.. pieces.Select(p => p.Tops.Select(e => e.Id).ToArray())];
        bottoms = [.. pieces.Select(p => p.Bottoms.Select(e => e.Id).ToArray())];
        uniform = [.. pieces.Select(p => p.Ends.All(e => e.Seen == SeenIn.Both))];
        position = new int[lattice.Seats.Length];
    }

    public int Position(int seatId) => position[seatId];

    /// <summary>Moves a seat; the ends that hang on it must be sorted again before the next count.</summary>
    public void Place(int seatId, int at) => position[seatId] = at;

    public void Sort(int piece, bool atTop) => Sort(atTop ? tops[piece] : bottoms[piece]);

    public void SortAll()
    {
        foreach (int[] list in tops) Sort(list);
        foreach (int[] list in bottoms) Sort(list);
    }

    public int Total()
    {
        int total = 0;
        foreach (IGrouping<int, Piece> channel in pieces.GroupBy(p => p.Channel))
        {
            Piece[] list = [.. channel];
            for (int i = 0; i < list.Length; i++)
                for (int j = 0; j < i; j++) total += Between(list[i].Id, list[j].Id);
        }
        return total;
    }

    /// <summary>Crossings of two pieces of one channel, before and after added.</summary>
    public int Between(int a, int b)
    {
        SeenIn views = pieces[a].Net.Strange(pieces[b].Net) & pieces[a].Seen & pieces[b].Seen;
        if (views == 0) return 0;
        if (views == SeenIn.Both && uniform[a] && uniform[b]) return 2 * In(a, b, SeenIn.Both);
        return ((views & SeenIn.Before) != 0 ? In(a, b, SeenIn.Before) : 0) + ((views & SeenIn.After) != 0 ? In(a, b, SeenIn.After) : 0);
    }

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
            int keyA = hasA ? Key(a[i]) : 0, keyB = hasB ? Key(b[j]) : 0;
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

    private int Key(int end) => (position[seat[end]] * SeatPitch) + offset[end] + OffsetShift;

    private void Sort(int[] list)
    {
        for (int i = 1; i < list.Length; i++)
        {
            int end = list[i], key = Key(end), j = i - 1;
            for (; j >= 0 && Key(list[j]) > key; j--) list[j + 1] = list[j];
            list[j + 1] = end;
        }
    }
}
