using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Lays a block over the rows: a tap away from its trunk's channel gets a passage in every row between, a climbing tap turns round
/// beside its stand, and a rail end beside the trunk's channel stands in a column that the net has anyway.
/// </summary>
internal sealed class Layering
{
    private readonly Netlist netlist;
    private readonly RowPlan rows;
    private readonly SidePins sides;
    private readonly List<Seat> seats = [];
    private readonly List<Draft> drafts = [];
    private readonly List<Way> ways = [];
    private readonly Dictionary<int, Seat> seatOf = [];
    private readonly Dictionary<(int Terminal, int Channel), (Seat At, int Offset, bool Down, SeenIn Seen, Way Way)> led = [];
    private int ends;

    private Layering(Netlist netlist, RowPlan rows, SidePins sides) => (this.netlist, this.rows, this.sides) = (netlist, rows, sides);

    private sealed record Draft(int Id, int Channel, Net Net, SeenIn Seen, bool IsTrunk)
    {
        public List<End> Tops { get; } = [];

        public List<End> Bottoms { get; } = [];
    }

    public static Lattice Of(Netlist netlist, RowPlan rows, SidePins sides, Block block) => new Layering(netlist, rows, sides).Lay(block);

    private Lattice Lay(Block block)
    {
        foreach (int stand in block.Stands) seatOf[stand] = NewSeat(rows.RowOf[stand], netlist.Stands[stand].Seen, stand, -1);
        var trunks = new int[block.Nets.Length];
        // What runs beside a net shares its way to their common pin.
        foreach (var (net, number) in block.Nets.Select((n, i) => (netlist.Nets[n], i)).OrderBy(n => n.Item1.RunsApart ? 1 : 0))
        {
            Draft trunk = NewPiece(TrunkChannel(net), net, net.Seen, true);
            trunks[number] = trunk.Id;
            Tap[] taps = [.. net.Taps.Select(t => netlist.Taps[t])];
            foreach (Tap tap in taps.Where(t => !IsBesideRail(t, trunk))) Lead(tap, trunk);
            foreach (Tap tap in taps.Where(t => IsBesideRail(t, trunk))) StandOver(tap, trunk);
        }
        IEnumerable<Piece> pieces = drafts.Select(d => new Piece(
            d.Id, d.Channel, d.Net, d.Seen, d.IsTrunk, d.IsTrunk && netlist.HasRail(d.Net), [.. d.Tops], [.. d.Bottoms]));
        return new(rows.Rows, [.. seats], [.. pieces], [.. ways], [.. trunks], ends);
    }

    /// <summary>A net of rail ends alone keeps off the rail it hangs on.</summary>
    private int TrunkChannel(Net net) =>
        net.Taps.Any(t => netlist.Taps[t].Kind != EndKind.Feed) ? net.Taps.Any(t => netlist.Taps[t].Kind != EndKind.Chassis)
            ? rows.TrunkOf[net.Id] : rows.Rows - 1 : 1;

    private bool IsBesideRail(Tap tap, Draft trunk) =>
        tap.Kind == EndKind.Feed ? trunk.Channel == 0 : tap.Kind == EndKind.Chassis && trunk.Channel == rows.Rows;

    private Seat NewSeat(int row, SeenIn seen, int stand, int tap)
    {
        seats.Add(new(seats.Count, row, seen, stand, tap));
        return seats[^1];
    }

    private Draft NewPiece(int channel, Net net, SeenIn seen, bool isTrunk)
    {
        drafts.Add(new(drafts.Count, channel, net, seen, isTrunk));
        return drafts[^1];
    }

    private void Attach(Draft piece, Seat seat, int offset, SeenIn seen, bool atTop, bool implied = false) =>
        (atTop ? piece.Tops : piece.Bottoms).Add(new(ends++, seat.Id, offset, seen, implied));

    private void Lead(Tap tap, Draft trunk)
    {
        int stand = netlist.StandOf(tap);
        if (trunk.Net.RunsApart && led.TryGetValue((tap.Terminal, trunk.Channel), out var known) && (known.Seen & tap.Seen) == tap.Seen)
        {
            Attach(trunk, known.At, known.Offset, tap.Seen, known.Down);
            ways.Add(known.Way with { Tap = tap.Id });
            return;
        }
        (Seat Seat, int Offset)? at = stand < 0 ? null : (seatOf[stand], sides.ColumnOf[tap.Terminal]);
        (Seat Seat, int Offset)? start = at;
        List<Step> steps = [];
        bool above = rows.Above[tap.Id], climbs = rows.Climbs[tap.Id];
        int row = stand >= 0 ? rows.RowOf[stand] : above ? 0 : rows.Rows + 1;
        if (climbs) Pass(row, above ? row : row - 1, above, above);
        bool down = above != climbs;
        if (down)
            for (int next = row + 1; next <= trunk.Channel; next++) Pass(next, next - 1, true, false);
        else
            for (int next = row - 1; next > trunk.Channel; next--) Pass(next, next, false, true);
        Attach(trunk, at!.Value.Seat, at.Value.Offset, tap.Seen, down);
        ways.Add(new(tap.Id, start!.Value.Seat.Id, start.Value.Offset, [.. steps]));
        if (tap.OnTerminal && !trunk.Net.RunsApart) led.TryAdd((tap.Terminal, trunk.Channel), (at.Value.Seat, at.Value.Offset, down, tap.Seen, ways[^1]));

        // On through a channel to a passage in a row; the passage is a top or a bottom of the piece that leads there.
        void Pass(int toRow, int channel, bool fromTop, bool passageAtTop)
        {
            Seat passage = NewSeat(toRow, tap.Seen, -1, tap.Id);
            Draft piece = NewPiece(channel, trunk.Net, tap.Seen, false);
            if (at is { } from)
            {
                Attach(piece, from.Seat, from.Offset, tap.Seen, fromTop);
                steps.Add(new(piece.Id, passage.Id));
            }
            else
            {
                Attach(piece, passage, 0, tap.Seen, fromTop, implied: true);
                start = (passage, 0);
            }
            Attach(piece, passage, 0, tap.Seen, passageAtTop);
            at = (passage, 0);
        }
    }

    /// <summary>A rail end takes a column of the other side of the trunk, one of its own views first; with none free, a place of its own.</summary>
    private void StandOver(Tap tap, Draft trunk)
    {
        bool feed = tap.Kind == EndKind.Feed;
        List<End> mine = feed ? trunk.Tops : trunk.Bottoms, others = feed ? trunk.Bottoms : trunk.Tops;
        End[] free = [.. others.Where(o => !mine.Any(m => m.Seat == o.Seat && m.Offset == o.Offset && (m.Seen & tap.Seen) != 0))];
        End? column = free.FirstOrDefault(e => (e.Seen & tap.Seen) == tap.Seen) ?? free.FirstOrDefault(e => (e.Seen & tap.Seen) != 0);
        if (column is null)
        {
            Seat seat = NewSeat(feed ? 0 : rows.Rows + 1, tap.Seen, -1, tap.Id);
            Attach(trunk, seat, 0, tap.Seen, feed);
            ways.Add(new(tap.Id, seat.Id, 0, []));
            return;
        }
        Attach(trunk, seats[column.Seat], column.Offset, tap.Seen, feed, implied: true);
        ways.Add(new(tap.Id, column.Seat, column.Offset, []));
    }
}
