using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Looks up in what an earlier layout remembers; a thing is found again by any of its names.</summary>
internal sealed class Recollection(LayoutMemory memory, Netlist netlist)
{
    /// <summary>How many rows there were.</summary>
    public int Rows => memory.Rows;

    /// <summary>The vertical measures of then.</summary>
    public Levels Levels => memory.Levels;

    /// <summary>Where a stand stood; its column is that of the stand, whichever of its boxes was there.</summary>
    public RememberedBox? Of(Stand stand)
    {
        foreach (var standing in stand.Boxes)
            if (memory.Boxes.TryGetValue(standing.Box.Id, out var known) && known.Row > 0) return known with { X = known.X - stand.LeftOf(standing) };
        return null;
    }

    /// <summary>The column in which a joint stood.</summary>
    public int? ColumnOf(LayoutBox joint) => memory.Boxes.TryGetValue(joint.Id, out var known) && known.Row == 0 ? known.X : null;

    /// <summary>How a tap led to its trunk.</summary>
    public RememberedEnd? Of(Tap tap)
    {
        foreach (string name in netlist.NamesOf(tap))
            if (memory.Ends.TryGetValue(name, out var known)) return known;
        return null;
    }

    /// <summary>Channel and track of a net's trunk.</summary>
    public (int Channel, int Track)? Of(Net net)
    {
        foreach (int line in net.Lines)
            if (memory.Trunks.TryGetValue(netlist.Lines[line].Name, out var known)) return known;
        return null;
    }

    /// <summary>The column of a seat.</summary>
    public int? ColumnOf(Seat seat)
    {
        if (seat.IsStand) return Of(netlist.Stands[seat.Stand])?.X;
        foreach (string name in netlist.NamesOf(netlist.Taps[seat.Tap]))
            if (memory.Passages.TryGetValue((name, seat.Row), out int known)) return known;
        return null;
    }

    /// <summary>The place of a seat in the order from left to right.</summary>
    public int? PlaceOf(Seat seat) => seat.IsStand ? Of(netlist.Stands[seat.Stand])?.Place : Of(netlist.Taps[seat.Tap])?.Place;

    /// <summary>The track of a piece, or −1.</summary>
    public int TrackOf(Piece piece, Lattice lattice)
    {
        if (piece.IsTrunk) return Of(piece.Net) is { } trunk && trunk.Channel == piece.Channel ? trunk.Track : -1;
        foreach (var seat in piece.Ends.Select(e => lattice.Seats[e.Seat]).Where(s => !s.IsStand))
            foreach (string name in netlist.NamesOf(netlist.Taps[seat.Tap]))
                if (memory.Tracks.TryGetValue((name, piece.Channel), out int known)) return known;
        return -1;
    }

    /// <summary>What there is to remember of a layout.</summary>
    public static LayoutMemory Remembered(Netlist netlist, RowPlan rows, PlannedBlock[] blocks, ImmutableArray<ImmutableArray<int>> places, Layout layout, Levels levels, LayoutOptions asked, LayoutOptions spacing, IEnumerable<int> apart)
    {
        var boxes = new Dictionary<string, RememberedBox>();
        var ends = new Dictionary<string, RememberedEnd>();
        var passages = new Dictionary<(string, int), int>();
        var tracks = new Dictionary<(string, int), int>();
        var trunks = new Dictionary<string, (int, int)>();
        foreach (var (block, place) in blocks.Zip(places))
        {
            foreach (var seat in block.Lattice.Seats)
            {
                int at = place[seat.Id], x = block.X[seat.Id];
                if (seat.IsStand)
                    foreach (var standing in netlist.Stands[seat.Stand].Boxes)
                        boxes[standing.Box.Id] = new(seat.Row, x + netlist.Stands[seat.Stand].LeftOf(standing), at, netlist.Stands[seat.Stand].Turned, block.Columns.TextLeft.Contains(seat.Stand), netlist.Stands[seat.Stand].Facing);
                else
                    foreach (string name in netlist.NamesOf(netlist.Taps[seat.Tap]))
                    {
                        passages[(name, seat.Row)] = x;
                        ends[name] = new(rows.Above[seat.Tap], at);
                    }
            }
            foreach (var piece in block.Lattice.Pieces)
                if (piece.IsTrunk)
                    foreach (int line in piece.Net.Lines) trunks[netlist.Lines[line].Name] = (piece.Channel, block.Columns.Levels[piece.Id]);
                else
                    foreach (var seat in piece.Ends.Select(e => block.Lattice.Seats[e.Seat]).Where(s => !s.IsStand))
                        foreach (string name in netlist.NamesOf(netlist.Taps[seat.Tap])) tracks[(name, piece.Channel)] = block.Columns.Levels[piece.Id];
        }
        foreach (var tap in netlist.Taps)
            foreach (string name in netlist.NamesOf(tap)) ends.TryAdd(name, new(rows.Above[tap.Id], -1));
        foreach (var joint in netlist.Joints)
            boxes[joint.Id] = new(0, layout.Boxes.First(b => b.Id == joint.Id).X, -1, false, false, Facing.AsGiven);
        return new(asked, spacing, boxes.ToFrozenDictionary(), ends.ToFrozenDictionary(), passages.ToFrozenDictionary(), tracks.ToFrozenDictionary(), trunks.ToFrozenDictionary(), levels) { Apart = apart.Select(l => netlist.Lines[l].Name).ToFrozenSet(StringComparer.Ordinal) };
    }
}
