using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Finds the conductors that run along a trunk past the branch of a pin they have nothing to do with, and so seem to end there. Those that end at a pin of
/// their own can run beside the trunk. What hangs on one pin alone hangs on one trunk all the same, as everybody draws it.
/// </summary>
internal static class Passers
{
    private static IEnumerable<int> Of(Arranged arranged, Block block, Lattice lattice, int[] x)
    {
        var netlist = arranged.Netlist;
        Net[] nets = [.. block.Nets.Select(n => netlist.Nets[n]).Where(n => n.Lines.Length > 1 && n.Joints.IsEmpty && n.Taps.All(t => netlist.Taps[t].OnTerminal))];
        if (nets.Length == 0) yield break;
        var arrives = lattice.Ways.ToDictionary(w => w.Tap, w => w.Steps.IsEmpty ? x[w.Seat] + w.Offset : x[w.Steps[^1].Seat]);
        foreach (var net in nets)
        {
            var tapOf = net.Taps.SelectMany(t => netlist.Taps[t].Ends.Select(e => (e, t))).ToDictionary(p => p.e, p => p.t);
            var ends = net.Lines.ToDictionary(l => l, l => (A: tapOf[new(l, true)], B: tapOf[new(l, false)]));
            foreach (int line in net.Lines)
                if (ends[line] is var (a, b) && a != b && Leaf(a, b) is { } leaf && net.Taps.Any(c => IsPassed(c, line, a == leaf ? b : a, leaf))) yield return line;

            // A pin with this one conductor, while the other has more and takes them from above or below.
            int? Leaf(int a, int b) => netlist.Taps[a].Ends.Length == 1 && Hub(b) ? a : netlist.Taps[b].Ends.Length == 1 && Hub(a) ? b : null;

            bool Hub(int tap) => netlist.Taps[tap].Ends.Length > 1 && !netlist.Terminals[netlist.Taps[tap].Terminal].IsSideways;

            // On its way lies the branch of another pin; or it meets amid the conductor from its hub to the next of a chain.
            bool IsPassed(int tap, int line, int hub, int leaf) =>
                tap != hub && tap != leaf && (netlist.Taps[tap].Seen & netlist.Lines[line].Seen) != 0 && !HangsOn(hub, tap)
                && (IsBetween(arrives[tap], arrives[hub], arrives[leaf]) || (IsBetween(arrives[leaf], arrives[hub], arrives[tap]) && netlist.Taps[hub].Ends.Any(e => ends[e.Line] is var (a, b) && (a == tap || b == tap))));

            // What hangs on the same pin and on nothing else may hang on the way.
            bool HangsOn(int hub, int tap) => netlist.Taps[tap].Ends is [var end] && ends[end.Line] is var (a, b) && (a == hub || b == hub);
        }
    }

    /// <summary>All of them, by number.</summary>
    public static ImmutableHashSet<int> Of(Arranged arranged, IEnumerable<PlannedBlock> planned) => [.. planned.SelectMany(p => Of(arranged, p.Block, p.Lattice, p.X))];

    /// <summary>
    /// Those by which a drawing would tell more if they ran apart: they lie on a stretch with others and not all of these end at one pin or joint, or they go straight on where another
    /// comes that they do not belong to.
    /// </summary>
    public static ImmutableHashSet<int> Lost(Netlist netlist, ImmutableArray<PlacedWire> wires)
    {
        var lost = ImmutableHashSet.CreateBuilder<int>();
        foreach (var view in Extents.Views)
            foreach (var net in netlist.Nets.Where(n => n is { RunsApart: false, Lines.Length: > 1 }))
            {
                var on = net.Lines.Where(l => (netlist.Lines[l].Seen & view) != 0).SelectMany(l => LineSteps.Of(wires[l].Points).Distinct().Select(s => (s, l))).ToLookup(p => p.s, p => p.l);
                foreach (var step in on)
                    if (step.Skip(1).Any() && !Ends(step.First()).Any(e => step.All(l => Ends(l).Contains(e)))) lost.UnionWith(step.Where(IsLeaf));
                foreach (var (x, y, down) in on.Select(s => s.Key))
                    if (down && on.Contains((x, y - 1, true)) && on.Contains((x, y, false)) != on.Contains((x - 1, y, false)) && !on[(x, y, true)].Intersect(on[(x, y - 1, true)]).Any())
                        lost.UnionWith(on[(x, y, true)].Concat(on[(x, y - 1, true)]).Where(IsLeaf));
            }
        return lost.ToImmutable();

        LineEnd[] Ends(int line) => [netlist.Lines[line].From, netlist.Lines[line].To];

        // It alone ends at one of its pins, and its other pin has more and takes them from above or below.
        bool IsLeaf(int line) => Ends(line) is [{ OnTerminal: true } a, { OnTerminal: true } b] && ((LinesOn(a) == 1 && IsHub(b)) || (LinesOn(b) == 1 && IsHub(a)));

        int LinesOn(LineEnd end) => netlist.Taps.Where(t => t.Terminal == end.Terminal).Sum(t => t.Ends.Length);

        bool IsHub(LineEnd end) => LinesOn(end) > 1 && !netlist.Terminals[end.Terminal].IsSideways;
    }

    /// <summary>Those that share a pin with what feeds a rail and end elsewhere: on one trunk with the rail they would be drawn through it.</summary>
    public static ImmutableHashSet<int> OfRails(Union union)
    {
        var rails = union.Lines.SelectMany(l => new[] { (Line: l, Rail: l.From, Pin: l.To), (Line: l, Rail: l.To, Pin: l.From) }).Where(e => e.Rail.OnJoint && union.Joints[e.Rail.Joint].IsRail && e.Pin.OnTerminal)
            .ToLookup(e => e.Pin.Terminal, e => e.Line.Seen);
        return [.. union.Lines.Where(l => l.From.OnTerminal && l.To.OnTerminal && new[] { l.From, l.To }.Any(e => rails[e.Terminal].Any(seen => (seen & l.Seen) != 0))).Select(l => l.Id)];
    }

    /// <summary>Those that cross what they belong to: a reader would take that for a joint.</summary>
    public static ImmutableHashSet<int> Crossing(Netlist netlist, ImmutableArray<PlacedWire> wires)
    {
        var crossing = ImmutableHashSet.CreateBuilder<int>();
        foreach (var view in Extents.Views)
            foreach (var joined in netlist.Nets.Where(n => n.ElectricIn(view) >= 0).GroupBy(n => n.ElectricIn(view)).Where(g => g.Any(n => n.RunsApart)))
            {
                var steps = joined.SelectMany(n => n.Lines.Where(l => (netlist.Lines[l].Seen & view) != 0).Select(l => (Line: l, n.RunsApart, Steps: LineSteps.Of(wires[l].Points).ToHashSet()))).ToArray();
                var arms = steps.SelectMany(s => s.Steps).Distinct().SelectMany(s => new[] { (s.X, s.Y), s.Down ? (s.X, s.Y + 1) : (s.X + 1, s.Y) }).CountBy(p => p).Where(p => p.Value > 3).Select(p => p.Key).ToArray();
                foreach (var (x, y) in arms)
                    crossing.UnionWith(steps.Where(s => s.RunsApart && (s.Steps.Contains((x, y, true)) || s.Steps.Contains((x, y, false)) || s.Steps.Contains((x, y - 1, true)) || s.Steps.Contains((x - 1, y, false)))).Select(s => s.Line));
            }
        return crossing.ToImmutable();
    }

    /// <summary>The same rows and the same order with some conductors on tracks of their own; nothing where that cannot be done.</summary>
    public static Arranged? SetApart(Union union, Heights heights, Arranged before, ImmutableHashSet<int> apart, bool isOverlaid)
    {
        var netlist = Nets.Of(union, heights, apart, before.Netlist.Signs);
        if (isOverlaid) netlist = netlist.Overlaid();
        if (netlist.Stands.Length != before.Netlist.Stands.Length) return null;
        netlist = netlist with { Stands = before.Netlist.Stands, Terminals = before.Netlist.Terminals };
        var tapOf = before.Netlist.Taps.SelectMany(t => t.Ends.Select(e => (e, t.Id))).ToDictionary(p => p.e, p => p.Id);
        var netOf = before.Netlist.Nets.SelectMany(n => n.Lines.Select(l => (l, n.Id))).ToDictionary(p => p.l, p => p.Id);
        int[] stood = [.. netlist.Taps.Select(t => tapOf[t.Ends[0]])];
        var rows = before.Rows with
        {
            TrunkOf = [.. netlist.Nets.Select(n => before.Rows.TrunkOf[netOf[n.Lines[0]]])],
            Above = [.. stood.Select(t => before.Rows.Above[t])],
            Climbs = [.. stood.Select(t => before.Rows.Climbs[t])],
        };
        var sides = SidePins.Of(netlist, rows);
        var blocks = Blocks.Of(netlist);
        if (blocks.Length != before.Ordered.Length) return null;
        var ordered = ImmutableArray.CreateBuilder<(Block, Lattice, SeatOrder)>();
        foreach (var (block, old) in blocks.Zip(before.Ordered))
        {
            if (!block.Stands.SequenceEqual(old.Block.Stands)) return null;
            var places = old.Lattice.Seats.GroupBy(s => (s.Stand, s.Tap)).ToDictionary(g => g.Key, g => old.Order.Places[g.First().Id]);
            var lattice = Layering.Of(netlist, rows, sides, block);
            ordered.Add((block, lattice, Tracks.InPlace(lattice, s => places.TryGetValue((s.Stand, s.IsStand ? -1 : stood[s.Tap]), out int place) ? place : null)));
        }
        return before with { Netlist = netlist, Rows = rows, Ordered = ordered.ToImmutable(), Apart = apart };
    }

    private static bool IsBetween(int at, int one, int other) => (one < at && at < other) || (other < at && at < one);
}
