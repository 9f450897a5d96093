using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Finds the order of a block's tracks with few crossings: whole tracks first, then single stands and columns. Each is sifted, then kicked
/// and sifted again; a new order is kept when it crosses less, or as often on shorter trunks. Work is counted in steps, never by a clock.
/// </summary>
internal static class Tracks
{
    private const int StepsPerStrand = 4000, MostSteps = 600_000, TidiedStrands = 160;

    public static SeatOrder Of(Lattice lattice, ImmutableArray<int> ownerOfTap)
    {
        var singles = Strand.Singles(lattice);
        var tracks = Strand.Tracks(lattice, singles);
        var count = new CrossingCount(lattice);
        var byTrack = new StrandOrder(lattice, count, tracks, FileOrder(lattice, tracks, ownerOfTap));
        Improve(lattice, byTrack);
        int[] expanded = [.. byTrack.Current().SelectMany(t => tracks[t].Parts)];
        var bySingle = new StrandOrder(lattice, count, singles, expanded);
        Improve(lattice, bySingle);
        Tidy(lattice, bySingle);
        var rows = Enumerable.Range(0, lattice.Rows + 2).Select(row => bySingle.Current().SelectMany(s => singles[s].Seats)
            .Where(s => lattice.Seats[s].Row == row).ToImmutableArray());
        return new([.. rows], bySingle.Total());
    }

    // Stands as the file has them; a column beside the stand that it leads from.
    private static IEnumerable<int> FileOrder(Lattice lattice, ImmutableArray<Strand> strands, ImmutableArray<int> ownerOfTap) =>
        strands.OrderBy(s => s.Seats.Min(i => Key(lattice.Seats[i], ownerOfTap))).ThenBy(s => s.Seats.Any(i => lattice.Seats[i].IsStand) ? 0 : 1).ThenBy(s => s.Id).Select(s => s.Id);

    private static int Key(Seat seat, ImmutableArray<int> ownerOfTap) => seat.IsStand ? seat.Stand : ownerOfTap[seat.Tap] is >= 0 and var owner ? owner : int.MaxValue;

    private static void Improve(Lattice lattice, StrandOrder order)
    {
        if (order.Length < 2) return;
        SiftAll(order);
        int total = order.Total();
        int[] best = order.Current();
        long limit = order.Steps + Math.Min(MostSteps, (long)StepsPerStrand * order.Length);
        var random = new SplitMix(12345);
        while (total > 0 && order.Steps < limit)
        {
            long before = order.Steps;
            Kick(order, random);
            SiftAll(order);
            int now = order.Total();
            if (now < total || (now == total && Length(lattice, order) < LengthOf(lattice, order, best))) (total, best) = (now, order.Current());
            else order.Restore(best);
            // An order whose strands share no row takes no steps: there is nothing to search.
            if (order.Steps == before) break;
        }
        order.Restore(best);
    }

    private static void SiftAll(StrandOrder order)
    {
        for (int round = 0; round < 4; round++)
        {
            int gain = 0;
            foreach (int strand in order.Current()) gain += order.Sift(strand);
            if (gain == 0) break;
        }
    }

    // Carries one strand, or a short run of them, somewhere else.
    private static void Kick(StrandOrder order, SplitMix random)
    {
        int from = random.Below(order.Length), run = 1 + random.Below(Math.Min(10, order.Length)), to = random.Below(order.Length);
        for (int i = 0; i < run && from + i < order.Length; i++) order.Move(Math.Min(from + (to > from ? 0 : i), order.Length - 1), to > from ? to : Math.Min(to + i, order.Length - 1));
    }

    // At equal crossings shorter trunks are calmer: neighbours are exchanged while that helps.
    private static void Tidy(Lattice lattice, StrandOrder order)
    {
        if (order.Length is < 2 or > TidiedStrands) return;
        long cost = Cost();
        for (int round = 0; round < 6; round++)
        {
            bool better = false;
            for (int distance = 1; distance <= Math.Min(6, order.Length - 1); distance++)
                for (int i = 0; i + distance < order.Length; i++)
                    foreach (var (from, to) in new[] { (i, i + distance), (i + distance, i) })
                    {
                        order.Move(from, to);
                        long now = Cost();
                        if (now < cost) (cost, better) = (now, true);
                        else order.Move(to, from);
                    }
            if (!better) break;
        }

        long Cost() => (1000L * order.Total()) + Length(lattice, order);
    }

    private static int LengthOf(Lattice lattice, StrandOrder order, int[] ids)
    {
        int[] now = order.Current();
        order.Restore(ids);
        int length = Length(lattice, order);
        order.Restore(now);
        return length;
    }

    // How far apart the ends of each piece stand, in strands.
    private static int Length(Lattice lattice, StrandOrder order)
    {
        int length = 0;
        foreach (var piece in lattice.Pieces)
        {
            int least = int.MaxValue, most = int.MinValue;
            foreach (var end in piece.Ends)
            {
                int place = order.PlaceOf(order.StrandOf[end.Seat]);
                least = Math.Min(least, place);
                most = Math.Max(most, place);
            }
            if (most > least) length += (most - least) * (piece.Seen == Symbols.SeenIn.Both ? 2 : 1);
        }
        return length;
    }
}
