using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Turns parts that may face either way, and puts the ways of connectors into another order, where conductors cross less then, or trunks get much shorter.
/// A part that faces otherwise changes crossings of its own conductors alone; only what hangs on it is then sifted again.
/// </summary>
internal sealed class Facings
{
    // A part is turned from its usual facing for a crossing less, or for trunks that are shorter by so many modules and by such a share
    // (own choice: measured on the gallery and the bench).
    private const double Worth = 12, Share = 0.12;
    private const int Rounds = 3, Sifts = 2;

    private readonly Netlist netlist;
    private readonly Lattice lattice;
    private readonly StrandOrder order;
    private readonly TrunkLengths lengths;
    private readonly Dictionary<int, int> seatOf;
    private readonly Dictionary<int, Facing> facing = [];
    private readonly int[][] near;

    private Facings(Netlist netlist, Lattice lattice, ImmutableArray<TextRoom> text, SeatOrder found)
    {
        (this.netlist, this.lattice) = (netlist, lattice);
        var singles = Strand.Singles(lattice);
        order = new(lattice, singles, singles.OrderBy(s => found.Places[s.Seats[0]]).Select(s => s.Id));
        lengths = new(lattice, order, s => Tracks.WidthOf(s, netlist, text));
        seatOf = lattice.Seats.Where(s => s.IsStand).ToDictionary(s => s.Stand, s => s.Id);
        near = [.. singles.Select(_ => Array.Empty<int>())];
        foreach (var piece in order.StrandsOfPiece)
            foreach (int strand in piece) near[strand] = [.. near[strand].Union(piece)];
    }

    /// <summary>Whether a stand may face otherwise than given.</summary>
    public static bool IsAble(Stand stand) => MayMirror(stand) || MaySort(stand);

    /// <summary>A stand facing otherwise, with its terminals.</summary>
    public static Netlist Faced(Netlist netlist, int stand, Facing facing)
    {
        var old = netlist.Stands[stand];
        return netlist with
        {
            Stands = netlist.Stands.SetItem(stand, old with { Facing = facing }),
            Terminals = [.. netlist.Terminals.Select(t => t.Stand != stand ? t : t with { X = ColumnOf(old, facing, t.X), Side = facing.Mirrored ? t.Side.Mirrored() : t.Side })],
        };
    }

    /// <summary>As an earlier layout had them.</summary>
    public static Netlist AsBefore(Netlist netlist, LayoutMemory memory)
    {
        foreach (var stand in netlist.Stands.Where(IsAble))
            if (memory.Boxes.TryGetValue(stand.Boxes[0].Box.Id, out var known) && known.Facing != Facing.AsGiven && (known.Facing.Mirrored ? MayMirror(stand) : MaySort(stand) && known.Facing.Ways.Length == stand.Boxes[0].Box.Ways.Length))
                netlist = Faced(netlist, stand.Id, known.Facing);
        return netlist;
    }

    /// <summary>How the stands of a block face as suits its order best, those that face otherwise than given, and the order that it has then.</summary>
    public static (IReadOnlyDictionary<int, Facing> Facing, SeatOrder Order) Of(Netlist netlist, ImmutableArray<TextRoom> text, Block block, Lattice lattice, SeatOrder found)
    {
        int[] able = [.. block.Stands.Where(s => IsAble(netlist.Stands[s]))];
        if (able.Length == 0) return (new Dictionary<int, Facing>(), found);
        var facings = new Facings(netlist, lattice, text, found);
        facings.Turn(able);
        return facings.facing.Count == 0 ? (facings.facing, found) : (facings.facing, Tracks.Ordered(lattice, facings.order));
    }

    private void Turn(int[] able)
    {
        // What a search from here finds without turning anything is no merit of turning.
        lengths.Tidy();
        for (int round = 0; round < Rounds; round++)
        {
            bool better = false;
            foreach (int stand in able)
            {
                if (MaySort(netlist.Stands[stand])) better |= SiftWays(stand);
                foreach (var tried in Others(stand)) better |= Try(stand, tried);
            }
            if (!better) break;
        }
        lengths.Tidy();
    }

    // Kept where that is worth it once what hangs on the stand has found its place anew.
    private bool Try(int stand, Facing tried)
    {
        var (before, length, was) = (order.Save(), lengths.Total(), FacingOf(stand));
        Face(stand, tried);
        int own = order.StrandOf[seatOf[stand]];
        lengths.Tidy([.. near[own].Append(own).SelectMany(s => near[s]).Distinct().OrderBy(order.PlaceOf)], Sifts);
        if (order.Crossings < before.Crossings || (order.Crossings == before.Crossings && lengths.Total() <= length - Math.Max(Worth, Share * length))) return true;
        Face(stand, was);
        order.Restore(before);
        return false;
    }

    // Each way is carried past the others and left where its conductors cross least; nothing else moves.
    private bool SiftWays(int stand)
    {
        int least = order.Crossings, ways = netlist.Stands[stand].Boxes[0].Box.Ways.Length;
        bool better = false;
        for (int way = 0; way < ways; way++)
        {
            var best = FacingOf(stand);
            foreach (var tried in Carried(stand, way))
            {
                Face(stand, tried);
                if (order.Crossings < least) (least, best, better) = (order.Crossings, tried, true);
            }
            Face(stand, best);
        }
        return better;
    }

    private Facing FacingOf(int stand) => facing.GetValueOrDefault(stand, Facing.AsGiven);

    private void Face(int stand, Facing to)
    {
        order.Face(seatOf[stand], x => ColumnOf(netlist.Stands[stand], to, x));
        if (to == Facing.AsGiven) facing.Remove(stand);
        else facing[stand] = to;
    }

    private static bool MayMirror(Stand stand) => stand.Boxes.All(b => b.Box.MayMirror);

    // An old and a new connector share a place only where their ways stand in the same columns.
    private static bool MaySort(Stand stand) => stand.Boxes is [{ Box.Ways.Length: > 1 }];

    private IEnumerable<Facing> Others(int stand)
    {
        if (MayMirror(netlist.Stands[stand])) yield return FacingOf(stand).Mirrored ? Facing.AsGiven : new(true, []);
        if (!MaySort(netlist.Stands[stand])) yield break;
        for (int way = 0; way < netlist.Stands[stand].Boxes[0].Box.Ways.Length; way++)
            foreach (var carried in Carried(stand, way)) yield return carried;
    }

    // A way is carried past others; they close up.
    private IEnumerable<Facing> Carried(int stand, int way)
    {
        var given = netlist.Stands[stand].Boxes[0].Box.Ways;
        var ways = FacingOf(stand).Ways is { IsDefaultOrEmpty: false } stood ? stood : given;
        int[] columns = [.. given.Order()], inOrder = [.. Enumerable.Range(0, ways.Length).OrderBy(i => ways[i])];
        int from = Array.IndexOf(inOrder, way);
        for (int to = 0; to < ways.Length; to++)
        {
            if (from == to) continue;
            var moved = inOrder.ToList();
            moved.RemoveAt(from);
            moved.Insert(to, way);
            var after = new int[ways.Length];
            for (int i = 0; i < moved.Count; i++) after[moved[i]] = columns[i];
            var carried = after.SequenceEqual(given) ? Facing.AsGiven : new Facing(false, [.. after]);
            if (KeepsSigns(stand, carried)) yield return carried;
        }
    }

    // What rises to a chassis sign of its own needs room beside its pin.
    private bool KeepsSigns(int stand, Facing tried)
    {
        int[] risen = [.. netlist.Signs.Select(l => HungLead.PinOf(netlist.Lines[l])).OfType<int>().Where(p => netlist.Terminals[p] is { Side: Side.Top } pin && pin.Stand == stand)];
        if (risen.Length == 0) return true;
        var faced = Faced(netlist, stand, tried);
        return risen.All(p => HungLead.AsideOf(faced.Terminals[p], faced.Stands[stand], faced.Terminals, faced.Lines) is not null);
    }

    // Where a column of a stand as given stands now.
    private static int ColumnOf(Stand stand, Facing facing, int x) =>
        facing.Mirrored ? stand.Width - x : facing.Ways.IsDefaultOrEmpty ? x : stand.Boxes[0].X + facing.ColumnOf(x - stand.Boxes[0].X, stand.Boxes[0].Box);
}
