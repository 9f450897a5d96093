using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Finds the order of a block's seats with few crossings and short trunks: whole tracks first, then single stands and columns.</summary>
internal static class Tracks
{
    private const int FewCrossings = 4;

    public static SeatOrder Of(Lattice lattice, Netlist netlist, ImmutableArray<TextRoom> text)
    {
        var singles = Strand.Singles(lattice);
        var tracks = Strand.Tracks(lattice, singles);
        int[] inFile = [.. FileOrder(lattice, tracks, netlist)];
        var byTrack = Improved(lattice, tracks, inFile, WidthOf);
        // A search ends in the valley where it began: a large block is searched from another side, too.
        if (byTrack.Crossings > FewCrossings && Improved(lattice, tracks, DepthFirst(lattice, tracks, inFile), WidthOf) is var other && other.Crossings < byTrack.Crossings) byTrack = other;
        var bySingle = Improved(lattice, singles, byTrack.Current().SelectMany(t => tracks[t].Parts), WidthOf);
        Twins.InFileOrder(lattice, bySingle, new(lattice, bySingle, WidthOf), tracks, s => netlist.Stands[s.Stand].Shape);
        Chains.InOrder(lattice, netlist, bySingle, new(lattice, bySingle, WidthOf));
        return Ordered(lattice, bySingle);

        int WidthOf(Seat seat) => Tracks.WidthOf(seat, netlist, text);
    }

    /// <summary>How wide a seat is about, text included.</summary>
    public static int WidthOf(Seat seat, Netlist netlist, ImmutableArray<TextRoom> text) => seat.IsStand ? netlist.Stands[seat.Stand].Width + text[seat.Stand].In(seat.Seen) + 1 : 2;

    /// <summary>The order as it was; what was not there then finds its place beside what it hangs on.</summary>
    public static SeatOrder AsBefore(Lattice lattice, Recollection known) => InPlace(lattice, known.PlaceOf);

    /// <summary>The order by places; what has none finds its place beside what it hangs on.</summary>
    public static SeatOrder InPlace(Lattice lattice, Func<Seat, int?> placeOf)
    {
        var singles = Strand.Singles(lattice);
        double?[] place = [.. singles.Select(s => s.Seats.Select(i => (double?)placeOf(lattice.Seats[i])).FirstOrDefault(p => p >= 0))];
        int[] added = [.. singles.Where(s => place[s.Id] is null).Select(s => s.Id)];
        var strandOf = new int[lattice.Seats.Length];
        foreach (var strand in singles)
            foreach (int seat in strand.Seats) strandOf[seat] = strand.Id;
        // What is new may hang on what is new: from the known outwards, as often as it takes.
        for (int open = added.Length + 1; added.Count(s => place[s] is null) is > 0 and var left && left < open; open = left)
            foreach (int strand in added.Where(s => place[s] is null))
                place[strand] = lattice.Pieces.Where(p => p.Ends.Any(e => strandOf[e.Seat] == strand)).SelectMany(p => p.Ends.Select(e => place[strandOf[e.Seat]])).Average();
        var order = new StrandOrder(lattice, singles, singles.OrderBy(s => place[s.Id] ?? double.MaxValue).ThenBy(s => s.Id).Select(s => s.Id));
        foreach (int strand in added) order.Sift(strand);
        return Ordered(lattice, order);
    }

    /// <summary>The order of the seats as the strands stand now.</summary>
    public static SeatOrder Ordered(Lattice lattice, StrandOrder order)
    {
        int[] seats = [.. order.Current().SelectMany(s => order.Strands[s].Seats)];
        var rows = Enumerable.Range(0, lattice.Rows + 2).Select(row => seats.Where(s => lattice.Seats[s].Row == row).ToImmutableArray());
        return new([.. rows], order.Crossings) { Places = [.. lattice.Seats.Select(s => order.PlaceOf(order.StrandOf[s.Id]))] };
    }

    private static StrandOrder Improved(Lattice lattice, ImmutableArray<Strand> strands, IEnumerable<int> start, Func<Seat, int> widthOf)
    {
        var order = new StrandOrder(lattice, strands, start);
        var lengths = new TrunkLengths(lattice, order, widthOf);
        OrderSearch.Improve(order, lengths);
        lengths.Tidy();
        return order;
    }

    // Stands as the file has them; a column beside the stand that it leads from.
    private static IEnumerable<int> FileOrder(Lattice lattice, ImmutableArray<Strand> strands, Netlist netlist) =>
        strands.OrderBy(s => s.Seats.Min(i => Key(lattice.Seats[i], netlist))).ThenBy(s => s.Seats.Any(i => lattice.Seats[i].IsStand) ? 0 : 1).ThenBy(s => s.Id).Select(s => s.Id);

    // What hangs together stands together.
    private static int[] DepthFirst(Lattice lattice, ImmutableArray<Strand> strands, int[] inFile)
    {
        var strandOf = new int[lattice.Seats.Length];
        foreach (var strand in strands)
            foreach (int seat in strand.Seats) strandOf[seat] = strand.Id;
        var near = lattice.Pieces.SelectMany(p => p.Ends.SelectMany(e => p.Ends.Select(f => (Strand: strandOf[e.Seat], p.Id, Next: strandOf[f.Seat])))).ToLookup(t => t.Strand, t => (t.Id, t.Next));
        var seen = new HashSet<int>();
        var order = new List<int>();
        foreach (int start in inFile)
        {
            var open = new Stack<int>([start]);
            while (open.TryPop(out int at))
            {
                if (!seen.Add(at)) continue;
                order.Add(at);
                foreach (var (_, next) in near[at].Distinct().OrderByDescending(n => n)) open.Push(next);
            }
        }
        return [.. order];
    }

    private static int Key(Seat seat, Netlist netlist) => seat.IsStand ? seat.Stand : netlist.StandOf(netlist.Taps[seat.Tap]) is >= 0 and var owner ? owner : int.MaxValue;
}
