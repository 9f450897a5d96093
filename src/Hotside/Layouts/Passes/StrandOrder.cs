using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// One order of strands from left to right, from which the order of every row follows, with the exchange of neighbours as its only
/// move: that changes the count by a few pairs of pieces only.
/// </summary>
internal sealed class StrandOrder
{
    private readonly Lattice lattice;
    private readonly CrossingCount count;
    private readonly int[] order, place, stamp;
    private readonly ulong[] rows;
    private readonly Meeting?[] meetings;
    /// <summary>From so many strands on, where a strand may go is looked for near what it hangs on only.</summary>
    public const int Many = 60;

    // How far past all that it hangs on a strand is carried in search of a better place (own choice: measured on the bench).
    private const int Beyond = 4;

    private readonly int[][] pieces, near;
    private readonly OnStrand[][] ends;
    private readonly (int Piece, bool AtTop)[][] lists;
    private readonly Seated?[] onSeat;
    private (int Pair, int Was)[] log = new (int, int)[64];
    private int logged, tick;

    public StrandOrder(Lattice lattice, ImmutableArray<Strand> strands, IEnumerable<int> start)
    {
        (this.lattice, Strands) = (lattice, strands);
        order = [.. start];
        place = new int[strands.Length];
        rows = new ulong[strands.Length];
        meetings = new Meeting?[strands.Length * (strands.Length - 1) / 2];
        onSeat = new Seated?[lattice.Seats.Length];
        StrandOf = new int[lattice.Seats.Length];
        foreach (var strand in strands)
            foreach (int seat in strand.Seats)
            {
                rows[strand.Id] |= (ulong)lattice.Seats[seat].Seen << (2 * lattice.Seats[seat].Row);
                StrandOf[seat] = strand.Id;
            }
        ends = [.. lattice.Pieces.SelectMany(p => p.Tops.Select(e => new OnStrand(StrandOf[e.Seat], p.Channel, true, e.Seen, p.Id)).Concat(p.Bottoms.Select(e => new OnStrand(StrandOf[e.Seat], p.Channel + 1, false, e.Seen, p.Id))))
            .GroupBy(e => e.Strand).ToDictionary(g => g.Key, g => g.Distinct().ToArray()) is var on ? strands.Select(t => on.GetValueOrDefault(t.Id, [])) : []];
        // An end on a rail that stands in another's column has no seat in its row, but crosses like any.
        foreach (var end in ends.SelectMany(e => e)) rows[end.Strand] |= (ulong)end.Seen << (2 * end.Row);
        StrandsOfPiece = [.. lattice.Pieces.Select(p => p.Ends.Select(e => StrandOf[e.Seat]).Distinct().ToImmutableArray())];
        (pieces, lists) = OnStrands();
        near = [.. pieces.Select((on, strand) => on.SelectMany(p => StrandsOfPiece[p]).Distinct().Where(s => s != strand).ToArray())];
        for (int i = 0; i < order.Length; i++) place[order[i]] = i;
        count = new(lattice, StrandOf, place);
        stamp = new int[count.Pairs];
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

    public int At(int at) => order[at];

    public int[] Current() => [.. order];

    /// <summary>The pairs of pieces that cross now.</summary>
    public IEnumerable<(int A, int B)> Crossing() => count.Crossing;

    /// <summary>The present order with all that is known of it.</summary>
    public State Save() => new(Current(), count.Save(), Crossings);

    /// <summary>Comes back to an order; nothing needs to be counted.</summary>
    public void Restore(State saved)
    {
        saved.Ids.CopyTo(order, 0);
        for (int i = 0; i < order.Length; i++) place[order[i]] = i;
        count.Restore(saved.Known);
        Crossings = saved.Crossings;
    }

    /// <summary>Exchanges the strands at places <paramref name="at"/> and at + 1 and returns the change of the count.</summary>
    public int Exchange(int at)
    {
        logged = 0;
        return Exchanged(at);
    }

    /// <summary>Moves the ends on a seat, from its left edge as given to where they stand now, and returns the change of the count.</summary>
    public int Face(int seat, Func<int, int> columnOf)
    {
        var on = onSeat[seat] ??= OnSeat(seat);
        foreach (var (end, given) in on.Ends) count.Shift(end, columnOf(given));
        foreach (var (piece, atTop) in on.Lists) count.Sort(piece, atTop);
        int change = 0;
        foreach (int pair in on.Pairs) change += count.Recount(pair, out int was) - was;
        Crossings += change;
        return change;
    }

    /// <summary>Comes to another order by exchanges, so that only what changes is counted.</summary>
    public void Rearrange(IReadOnlyList<int> ids)
    {
        for (int at = 0; at < ids.Count; at++)
            for (int from = place[ids[at]]; from > at; from--) Exchange(from - 1);
    }

    /// <summary>
    /// Carries a strand past all others, or past those near what it hangs on, and leaves it where the count is least, at its old place when none is better.
    /// Where none of its conductors cross there is nothing to gain, and once none would there is no more.
    /// </summary>
    public void Sift(int strand)
    {
        int gain = 0;
        foreach (int piece in pieces[strand]) gain += count.CrossingsOf(piece);
        if (gain == 0) return;
        int home = place[strand], best = home, change = 0, least = 0, kept = 0, from = home, to = home;
        foreach (int other in near[strand]) (from, to) = (Math.Min(from, place[other]), Math.Max(to, place[other]));
        (from, to) = Length < Many ? (0, Length - 1) : (Math.Max(from - Beyond, 0), Math.Min(to + Beyond, Length - 1));
        logged = 0;
        for (int i = home; i < to && least > -gain; i++)
            if ((change += Exchanged(i)) < least) (least, best) = (change, i + 1);
        Return(strand, home, 0);
        change = 0;
        for (int i = home; i > from && least > -gain; i--)
            if ((change += Exchanged(i - 1)) < least) (least, best, kept) = (change, i - 1, logged);
        Return(strand, Math.Min(best, home), kept);
        for (int i = home; i < best; i++) Exchanged(i);
    }

    private int Exchanged(int at)
    {
        int left = order[at], right = order[at + 1];
        (order[at], order[at + 1], place[right], place[left]) = (right, left, at, at + 1);
        if ((rows[left] & rows[right]) == 0 && lattice.Rows < 31) return 0;
        Steps++;
        int low = Math.Min(left, right), high = Math.Max(left, right);
        var meeting = meetings[(high * (high - 1) / 2) + low] ??= Meet(low, high);
        foreach (var (piece, atTop) in meeting.Lists) count.Sort(piece, atTop);
        int change = 0;
        foreach (int pair in meeting.Pairs)
        {
            int now = count.Recount(pair, out int was);
            if (now == was) continue;
            change += now - was;
            Log(pair, was);
        }
        Crossings += change;
        return change;
    }

    private void Log(int pair, int was)
    {
        if (logged == log.Length) Array.Resize(ref log, 2 * logged);
        log[logged++] = (pair, was);
    }

    // Back the way a strand came, to where so much had been logged: that needs no counting.
    private void Return(int strand, int to, int until)
    {
        int at = place[strand], step = Math.Sign(to - at);
        if (step == 0) return;
        for (; at != to; at += step)
        {
            order[at] = order[at + step];
            place[order[at]] = at;
        }
        (order[to], place[strand]) = (strand, to);
        while (logged > until) Crossings += count.Undo(log[--logged].Pair, log[logged].Was);
        foreach (var (piece, atTop) in lists[strand]) count.Sort(piece, atTop);
    }

    // The pieces that end on a strand, and the lists of ends that it shares with others: what a move of it can change.
    private (int[][] Pieces, (int Piece, bool AtTop)[][] Lists) OnStrands()
    {
        var on = Strands.Select(_ => (Pieces: new List<int>(), Lists: new List<(int, bool)>())).ToArray();
        foreach (var piece in lattice.Pieces)
        {
            foreach (int strand in StrandsOfPiece[piece.Id]) on[strand].Pieces.Add(piece.Id);
            foreach (bool atTop in new[] { true, false })
                if ((atTop ? piece.Tops : piece.Bottoms).Select(e => StrandOf[e.Seat]).Distinct().ToArray() is { Length: > 1 } several)
                    foreach (int strand in several) on[strand].Lists.Add((piece.Id, atTop));
        }
        return ([.. on.Select(o => o.Pieces.ToArray())], [.. on.Select(o => o.Lists.ToArray())]);
    }

    // What an exchange of two strands can change: found once for each two that meet.
    private Meeting Meet(int left, int right)
    {
        var pairs = new List<int>();
        tick++;
        foreach (var a in ends[left])
            foreach (var b in ends[right])
                if (a.Row == b.Row && a.AtTop == b.AtTop && (a.Seen & b.Seen) != 0 && count.PairOf(a.Piece, b.Piece) is >= 0 and var pair && stamp[pair] != tick
                    && (StrandsOfPiece[a.Piece].Length > 1 || StrandsOfPiece[b.Piece].Length > 1))
                {
                    stamp[pair] = tick;
                    pairs.Add(pair);
                }
        (int, bool)[] shared = [.. lists[left].Intersect(lists[right])];
        return pairs.Count == 0 && shared.Length == 0 ? Meeting.None : new([.. pairs], shared);
    }

    // What a seat that faces otherwise can change: its own ends only, among each other.
    private Seated OnSeat(int seat)
    {
        var tops = lattice.Pieces.Where(p => p.Tops.Any(e => e.Seat == seat)).Select(p => p.Id).ToArray();
        var bottoms = lattice.Pieces.Where(p => p.Bottoms.Any(e => e.Seat == seat)).Select(p => p.Id).ToArray();
        var pairs = new[] { tops, bottoms }.SelectMany(side => from a in side from b in side where a < b select count.PairOf(a, b)).Where(p => p >= 0).Distinct();
        return new([.. lattice.Pieces.SelectMany(p => p.Ends).Where(e => e.Seat == seat).Select(e => (e.Id, e.Offset))], [.. pairs], [.. tops.Select(p => (p, true)), .. bottoms.Select(p => (p, false))]);
    }

    /// <summary>An order to come back to.</summary>
    public sealed record State(int[] Ids, (byte[] Known, int[] CrossingsOf) Known, int Crossings);

    private readonly record struct OnStrand(int Strand, int Row, bool AtTop, SeenIn Seen, int Piece);

    private sealed record Seated((int End, int Given)[] Ends, int[] Pairs, (int Piece, bool AtTop)[] Lists);

    private sealed record Meeting(int[] Pairs, (int Piece, bool AtTop)[] Lists)
    {
        public static Meeting None { get; } = new([], []);
    }
}
