using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Finds the order of a block's seats with few crossings and short trunks: whole tracks first, then single stands and columns.</summary>
internal static class Tracks
{
    /// <param name="lattice">The block.</param>
    /// <param name="ownerOfTap">By tap: the stand it leads from, or −1.</param>
    /// <param name="widthOf">How wide a seat is, text included, in modules.</param>
    public static SeatOrder Of(Lattice lattice, ImmutableArray<int> ownerOfTap, Func<Seat, int> widthOf)
    {
        var singles = Strand.Singles(lattice);
        var tracks = Strand.Tracks(lattice, singles);
        var byTrack = Improved(lattice, tracks, FileOrder(lattice, tracks, ownerOfTap), widthOf);
        var bySingle = Improved(lattice, singles, byTrack.Current().SelectMany(t => tracks[t].Parts), widthOf);
        var rows = Enumerable.Range(0, lattice.Rows + 2).Select(row => bySingle.Current().SelectMany(s => singles[s].Seats)
            .Where(s => lattice.Seats[s].Row == row).ToImmutableArray());
        return new([.. rows], bySingle.Crossings);
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
    private static IEnumerable<int> FileOrder(Lattice lattice, ImmutableArray<Strand> strands, ImmutableArray<int> ownerOfTap) =>
        strands.OrderBy(s => s.Seats.Min(i => Key(lattice.Seats[i], ownerOfTap))).ThenBy(s => s.Seats.Any(i => lattice.Seats[i].IsStand) ? 0 : 1).ThenBy(s => s.Id).Select(s => s.Id);

    private static int Key(Seat seat, ImmutableArray<int> ownerOfTap) => seat.IsStand ? seat.Stand : ownerOfTap[seat.Tap] is >= 0 and var owner ? owner : int.MaxValue;
}
