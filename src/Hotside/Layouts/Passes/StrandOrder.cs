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
    private readonly int[,] seatIn;
    private readonly int[][] topPieces, bottomPieces;
    private readonly bool[] inside;
    private readonly int[] stamp;
    private readonly List<(int A, int B)> pairs = [];
    private int tick;

    public StrandOrder(Lattice lattice, CrossingCount count, ImmutableArray<Strand> strands, IEnumerable<int> start)
    {
        (this.lattice, this.count, Strands) = (lattice, count, strands);
        order = [.. start.Select(i => strands[i])];
        place = new int[strands.Length];
        rows = new ulong[strands.Length];
        seatIn = new int[strands.Length, lattice.Rows + 2];
        stamp = new int[lattice.Pieces.Length * lattice.Pieces.Length];
        StrandOf = new int[lattice.Seats.Length];
        foreach (Strand strand in strands)
            foreach (Seat seat in strand.Seats.Select(s => lattice.Seats[s]))
            {
                seatIn[strand.Id, seat.Row] = seat.Id + 1;
                rows[strand.Id] |= (ulong)seat.Seen << (2 * seat.Row);
                StrandOf[seat.Id] = strand.Id;
            }
        ILookup<int, int> tops = Hanging(p => p.Tops), bottoms = Hanging(p => p.Bottoms);
        topPieces = [.. lattice.Seats.Select(s => tops[s.Id].Distinct().ToArray())];
        bottomPieces = [.. lattice.Seats.Select(s => bottoms[s.Id].Distinct().ToArray())];
        inside = [.. lattice.Pieces.Select(p => p.Ends.Select(e => StrandOf[e.Seat]).Distinct().Count() <= 1)];
        Restore([.. order.Select(s => s.Id)]);
    }

    public ImmutableArray<Strand> Strands { get; }

    /// <summary>The strand of each seat.</summary>
    public int[] StrandOf { get; }

    /// <summary>Exchanges tried so far: the measure of work, since a clock would not be repeatable.</summary>
    public long Steps { get; private set; }

    public int Length => order.Length;

    public int PlaceOf(int strand) => place[strand];

    public int[] Current() => [.. order.Select(s => s.Id)];

    public void Restore(int[] ids)
    {
        for (int i = 0; i < ids.Length; i++) Put(Strands[ids[i]], i);
        count.SortAll();
    }

    public int Total() => count.Total();

    /// <summary>Exchanges the strands at places <paramref name="at"/> and at + 1 and returns the change of the count.</summary>
    public int Exchange(int at)
    {
        (Strand left, Strand right) = (order[at], order[at + 1]);
        bool apart = (rows[left.Id] & rows[right.Id]) == 0 && lattice.Rows < 31;
        if (!apart) CollectPairs(left, right);
        int before = apart ? 0 : Sum();
        Put(right, at);
        Put(left, at + 1);
        if (apart) return 0;
        Steps++;
        foreach (int seat in left.Seats)
            if (seatIn[right.Id, lattice.Seats[seat].Row] is var other && other > 0)
            {
                Resort(seat);
                Resort(other - 1);
            }
        return Sum() - before;
    }

    public void Move(int from, int to)
    {
        while (from < to) Exchange(from++);
        while (from > to) Exchange(--from);
    }

    /// <summary>Carries a strand past all others and leaves it where the count is least, at its old place when none is better.</summary>
    public int Sift(int strand)
    {
        int home = place[strand], best = home, change = 0, least = 0;
        for (int i = home; i < Length - 1; i++)
            if ((change += Exchange(i)) < least) (least, best) = (change, i + 1);
        for (int i = Length - 1; i > 0; i--)
            if ((change += Exchange(i - 1)) < least && i - 1 < home) (least, best) = (change, i - 1);
        Move(0, best);
        return least;
    }

    private ILookup<int, int> Hanging(Func<Piece, ImmutableArray<End>> side) =>
        lattice.Pieces.SelectMany(p => side(p).Where(e => !e.Implied).Select(e => (e.Seat, p.Id))).ToLookup(t => t.Seat, t => t.Id);

    private void Put(Strand strand, int at)
    {
        order[at] = strand;
        place[strand.Id] = at;
        foreach (int seat in strand.Seats) count.Place(seat, at);
    }

    private void CollectPairs(Strand left, Strand right)
    {
        pairs.Clear();
        tick++;
        foreach (int seat in left.Seats)
        {
            int other = seatIn[right.Id, lattice.Seats[seat].Row] - 1;
            if (other < 0 || (lattice.Seats[seat].Seen & lattice.Seats[other].Seen) == 0) continue;
            Collect(topPieces[seat], topPieces[other]);
            Collect(bottomPieces[seat], bottomPieces[other]);
        }
    }

    private void Collect(int[] left, int[] right)
    {
        foreach (int a in left)
            foreach (int b in right)
            {
                int key = (a * lattice.Pieces.Length) + b;
                if (a == b || (inside[a] && inside[b]) || stamp[key] == tick) continue;
                stamp[key] = tick;
                pairs.Add((a, b));
            }
    }

    private int Sum()
    {
        int sum = 0;
        foreach ((int a, int b) in pairs) sum += count.Between(a, b);
        return sum;
    }

    private void Resort(int seat)
    {
        foreach (int piece in topPieces[seat]) count.Sort(piece, true);
        foreach (int piece in bottomPieces[seat]) count.Sort(piece, false);
    }
}
