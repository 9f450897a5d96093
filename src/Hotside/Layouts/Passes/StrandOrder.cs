using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// One order of strands from left to right, from which the order of every row follows, with the exchange of neighbours as its only
/// move: that changes the count by a few pairs of pieces only.
/// </summary>
internal sealed class StrandOrder
{
    private readonly Lattice lattice;
    private readonly CrossingCount count;
    private readonly Strand[] order;
    private readonly int[] place;
    private readonly ulong[] rows;
    private readonly Meeting?[,] meetings;
    private readonly int[][] topPieces, bottomPieces;
    private readonly Seated?[] onSeat;

    public StrandOrder(Lattice lattice, ImmutableArray<Strand> strands, IEnumerable<int> start)
    {
        (this.lattice, Strands, count) = (lattice, strands, new(lattice));
        order = [.. start.Select(i => strands[i])];
        place = new int[strands.Length];
        rows = new ulong[strands.Length];
        meetings = new Meeting?[strands.Length, strands.Length];
        onSeat = new Seated?[lattice.Seats.Length];
        StrandOf = new int[lattice.Seats.Length];
        foreach (var strand in strands)
            foreach (var seat in strand.Seats.Select(s => lattice.Seats[s]))
            {
                rows[strand.Id] |= (ulong)seat.Seen << (2 * seat.Row);
                StrandOf[seat.Id] = strand.Id;
            }
        ILookup<int, int> tops = Hanging(p => p.Tops), bottoms = Hanging(p => p.Bottoms);
        topPieces = [.. lattice.Seats.Select(s => tops[s.Id].Distinct().ToArray())];
        bottomPieces = [.. lattice.Seats.Select(s => bottoms[s.Id].Distinct().ToArray())];
        StrandsOfPiece = [.. lattice.Pieces.Select(p => p.Ends.Select(e => StrandOf[e.Seat]).Distinct().ToImmutableArray())];
        for (int i = 0; i < order.Length; i++) Put(order[i], i);
        Crossings = count.CountAll();
    }

    public ImmutableArray<Strand> Strands { get; }

    /// <summary>The strand of each seat.</summary>
    public int[] StrandOf { get; }

    /// <summary>The strands in which each piece ends.</summary>
    public ImmutableArray<ImmutableArray<int>> StrandsOfPiece { get; }

    /// <summary>Exchanges tried so far: the measure of work, since a clock would not be repeatable.</summary>
    public long Steps { get; private set; }

    /// <summary>Crossings of both views in the present order.</summary>
    public int Crossings { get; private set; }

    public int Length => order.Length;

    public int PlaceOf(int strand) => place[strand];

    public int At(int at) => order[at].Id;

    public int[] Current() => [.. order.Select(s => s.Id)];

    /// <summary>The pairs of pieces that cross now.</summary>
    public IEnumerable<(int A, int B)> Crossing() => count.Rivals.Where(r => count.Known(r.A, r.B) > 0);

    /// <summary>The present order with all that is known of it.</summary>
    public State Save() => new(Current(), count.Save(), Crossings);

    /// <summary>Comes back to an order; nothing needs to be counted.</summary>
    public void Restore(State saved)
    {
        for (int i = 0; i < saved.Ids.Length; i++) Put(Strands[saved.Ids[i]], i);
        count.Restore(saved.Known);
        Crossings = saved.Crossings;
    }

    /// <summary>Exchanges the strands at places <paramref name="at"/> and at + 1 and returns the change of the count.</summary>
    public int Exchange(int at)
    {
        var (left, right) = (order[at], order[at + 1]);
        Put(right, at);
        Put(left, at + 1);
        if ((rows[left.Id] & rows[right.Id]) == 0 && lattice.Rows < 31) return 0;
        Steps++;
        var meeting = meetings[left.Id, right.Id] ??= meetings[right.Id, left.Id] = Meet(left, right);
        foreach (var (piece, atTop) in meeting.Lists) count.Sort(piece, atTop);
        int change = 0;
        foreach (var (a, b) in meeting.Pairs) change += count.Recount(a, b, out int was) - was;
        Crossings += change;
        return change;
    }

    public void Move(int from, int to)
    {
        while (from < to) Exchange(from++);
        while (from > to) Exchange(--from);
    }

    /// <summary>Moves the ends on a seat, from its left edge as given to where they stand now, and returns the change of the count.</summary>
    public int Face(int seat, Func<int, int> columnOf)
    {
        var on = onSeat[seat] ??= OnSeat(seat);
        foreach (var (end, given) in on.Ends) count.Shift(end, place[StrandOf[seat]], columnOf(given));
        foreach (var (piece, atTop) in on.Lists) count.Sort(piece, atTop);
        int change = 0;
        foreach (var (a, b) in on.Pairs) change += count.Recount(a, b, out int was) - was;
        Crossings += change;
        return change;
    }

    /// <summary>Comes to another order by exchanges, so that only what changes is counted.</summary>
    public void Rearrange(IReadOnlyList<int> ids)
    {
        for (int at = 0; at < ids.Count; at++) Move(place[ids[at]], at);
    }

    /// <summary>Carries a strand past all others and leaves it where the count is least, at its old place when none is better.</summary>
    public void Sift(int strand)
    {
        int home = place[strand], best = home, change = 0, least = 0;
        for (int i = home; i < Length - 1; i++)
            if ((change += Exchange(i)) < least) (least, best) = (change, i + 1);
        for (int i = Length - 1; i > 0; i--)
            if ((change += Exchange(i - 1)) < least && i - 1 < home) (least, best) = (change, i - 1);
        Move(0, best);
    }

    private ILookup<int, int> Hanging(Func<Piece, ImmutableArray<End>> side) =>
        lattice.Pieces.SelectMany(p => side(p).Where(e => !e.Implied).Select(e => (e.Seat, p.Id))).ToLookup(t => t.Seat, t => t.Id);

    private void Put(Strand strand, int at)
    {
        order[at] = strand;
        place[strand.Id] = at;
        foreach (int seat in strand.Seats) count.Place(seat, at);
    }

    // What an exchange of two strands can change: found once for each two that meet.
    private Meeting Meet(Strand left, Strand right)
    {
        var pairs = new SortedSet<(int, int)>();
        var lists = new SortedSet<(int, bool)>();
        foreach (int seat in left.Seats)
            foreach (int other in right.Seats.Where(o => lattice.Seats[o].Row == lattice.Seats[seat].Row))
            {
                foreach (int on in new[] { seat, other })
                {
                    lists.UnionWith(topPieces[on].Select(p => (p, true)));
                    lists.UnionWith(bottomPieces[on].Select(p => (p, false)));
                }
                if ((lattice.Seats[seat].Seen & lattice.Seats[other].Seen) == 0) continue;
                pairs.UnionWith(Rivals(topPieces[seat], topPieces[other]));
                pairs.UnionWith(Rivals(bottomPieces[seat], bottomPieces[other]));
            }
        return new([.. pairs], [.. lists]);
    }

    // What a seat that faces otherwise can change: its own ends only, among each other.
    private Seated OnSeat(int seat)
    {
        var tops = lattice.Pieces.Where(p => p.Tops.Any(e => e.Seat == seat)).Select(p => p.Id).ToArray();
        var bottoms = lattice.Pieces.Where(p => p.Bottoms.Any(e => e.Seat == seat)).Select(p => p.Id).ToArray();
        var pairs = new[] { tops, bottoms }.SelectMany(side => from a in side from b in side where a < b && count.AreRivals(a, b) select (a, b)).Distinct();
        return new([.. lattice.Pieces.SelectMany(p => p.Ends).Where(e => e.Seat == seat).Select(e => (e.Id, e.Offset))], [.. pairs], [.. tops.Select(p => (p, true)), .. bottoms.Select(p => (p, false))]);
    }

    private IEnumerable<(int, int)> Rivals(int[] left, int[] right) =>
        from a in left
        from b in right
        where a != b && count.AreRivals(a, b) && !(StrandsOfPiece[a].Length <= 1 && StrandsOfPiece[b].Length <= 1)
        select (Math.Min(a, b), Math.Max(a, b));

    /// <summary>An order to come back to.</summary>
    public sealed record State(int[] Ids, byte[] Known, int Crossings);

    private sealed record Seated((int End, int Given)[] Ends, (int A, int B)[] Pairs, (int Piece, bool AtTop)[] Lists);

    private sealed record Meeting((int A, int B)[] Pairs, (int Piece, bool AtTop)[] Lists);
}
