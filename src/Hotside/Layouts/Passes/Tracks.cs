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
        var rows = Enumerable.Range(0, lattice.Rows + 2).Select(row => bySingle.Current().SelectMany(s => singles[s].Seats)
            .Where(s => lattice.Seats[s].Row == row).ToImmutableArray());
        return new([.. rows], bySingle.Crossings);

        int WidthOf(Seat seat) => seat.IsStand ? netlist.Stands[seat.Stand].Width + text[seat.Stand].In(seat.Seen) + 1 : 2;
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
