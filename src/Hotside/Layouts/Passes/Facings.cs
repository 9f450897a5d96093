using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Turns parts that may face either way, and puts the ways of connectors into another order, where conductors cross less then, or trunks get much shorter.
/// </summary>
internal static class Facings
{
    // A part is turned from its usual facing for a crossing less, or for trunks that are shorter by so many modules and by such a share.
    private const double Worth = 12, Share = 0.12;
    private const int Rounds = 3, LargestBlock = 260;

    /// <summary>A stand facing otherwise, with its terminals.</summary>
    public static Netlist Faced(Netlist netlist, int stand, Facing facing)
    {
        var old = netlist.Stands[stand];
        return netlist with
        {
            Stands = netlist.Stands.SetItem(stand, old with { Facing = facing }),
            Terminals = [.. netlist.Terminals.Select(t => t.Stand != stand ? t : Faced(t, old, facing))],
        };
    }

    /// <summary>As an earlier layout had them.</summary>
    public static Netlist AsBefore(Netlist netlist, LayoutMemory memory)
    {
        foreach (var stand in netlist.Stands.Where(s => MayMirror(s) || MaySort(s)))
            if (memory.Boxes.TryGetValue(stand.Boxes[0].Box.Id, out var known) && known.Facing != Facing.AsGiven && (known.Facing.Mirrored ? MayMirror(stand) : MaySort(stand) && known.Facing.Ways.Length == stand.Boxes[0].Box.Ways.Length))
                netlist = Faced(netlist, stand.Id, known.Facing);
        return netlist;
    }

    /// <summary>The netlist with the stands of a block facing as suits its order best, and the order that it has then.</summary>
    public static (Netlist Netlist, SeatOrder Order) Of(Netlist netlist, RowPlan rows, ImmutableArray<TextRoom> text, Block block, Lattice lattice, SeatOrder order)
    {
        int[] able = [.. block.Stands.Where(s => MayMirror(netlist.Stands[s]) || MaySort(netlist.Stands[s]))];
        if (able.Length == 0 || lattice.Seats.Length > LargestBlock) return (netlist, order);
        // What a search from here finds without turning anything is no merit of turning.
        var (given, asGiven) = (netlist, order);
        double length = Math.Min(order.Length, Tracks.Again(lattice, netlist, text, order) is var again && again.Crossings <= order.Crossings ? again.Length : order.Length);
        for (int round = 0; round < Rounds; round++)
        {
            bool better = false;
            foreach (int stand in able)
                foreach (var facing in Others(netlist.Stands[stand]))
                {
                    var tried = Faced(netlist, stand, facing);
                    var retried = Tracks.Again(Layering.Of(tried, rows, SidePins.Of(tried, rows), block), tried, text, order);
                    if (retried.Crossings > order.Crossings || (retried.Crossings == order.Crossings && retried.Length > length - Math.Max(Worth, Share * length))) continue;
                    (netlist, order, length, better) = (tried, retried, retried.Length, true);
                }
            if (!better) break;
        }
        // What was turned and turned back leaves the order as it was found.
        return able.All(s => netlist.Stands[s].Facing == given.Stands[s].Facing) ? (given, asGiven) : (netlist, order);
    }

    private static bool MayMirror(Stand stand) => stand.Boxes.All(b => b.Box.MayMirror);

    // An old and a new connector share a place only where their ways stand in the same columns.
    private static bool MaySort(Stand stand) => stand.Boxes is [{ Box.Ways.Length: > 1 }];

    private static IEnumerable<Facing> Others(Stand stand)
    {
        if (MayMirror(stand)) yield return stand.Facing.Mirrored ? Facing.AsGiven : new(true, []);
        if (!MaySort(stand)) yield break;
        var ways = stand.Facing.Ways.IsDefaultOrEmpty ? stand.Boxes[0].Box.Ways : stand.Facing.Ways;
        int[] inOrder = [.. Enumerable.Range(0, ways.Length).OrderBy(i => ways[i])];
        // A way is carried past others; they close up.
        for (int from = 0; from < ways.Length; from++)
            for (int to = 0; to < ways.Length; to++)
            {
                if (from == to || from == to + 1) continue;
                var moved = inOrder.ToList();
                moved.RemoveAt(from);
                moved.Insert(to, inOrder[from]);
                var columns = stand.Boxes[0].Box.Ways.Order().ToArray();
                var after = new int[ways.Length];
                for (int i = 0; i < moved.Count; i++) after[moved[i]] = columns[i];
                yield return after.SequenceEqual(stand.Boxes[0].Box.Ways) ? Facing.AsGiven : new(false, [.. after]);
            }
    }

    private static Terminal Faced(Terminal terminal, Stand old, Facing facing)
    {
        if (old.Facing.Mirrored != facing.Mirrored) return terminal with { X = old.Width - terminal.X, Side = terminal.Side.Mirrored() };
        if (old.Facing.Mirrored) return terminal;
        var box = old.Boxes[0].Box;
        var stood = old.Facing.Ways.IsDefaultOrEmpty ? box.Ways : old.Facing.Ways;
        int way = stood.IndexOf(terminal.X - old.Boxes[0].X);
        return way < 0 ? terminal : terminal with { X = old.Boxes[0].X + facing.ColumnOf(box.Ways[way], box) };
    }
}
