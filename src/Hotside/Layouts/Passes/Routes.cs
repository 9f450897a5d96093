using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>A block with all that has been decided about it.</summary>
internal sealed record PlannedBlock(Block Block, Lattice Lattice, ColumnPlan Columns, int Shift)
{
    /// <summary>The columns of the seats on the sheet.</summary>
    public int[] X { get; } = [.. Columns.X.Select(c => c + Shift)];
}

/// <summary>Draws the conductors: from the terminal by its passages to the trunk, along it, and on to the other terminal; and sets the joints.</summary>
internal sealed class Routes
{
    private readonly Netlist netlist;
    private readonly SidePins sides;
    private readonly Levels levels;
    private readonly LayoutOptions options;
    private readonly Func<int, (int X, int Y)> placeOfStand;
    private readonly Recollection? known;
    private readonly Dictionary<int, (int X, int Y)> joints = [];
    private readonly Dictionary<int, ImmutableArray<(int X, int Y)>> lines = [];

    private Routes(Netlist netlist, SidePins sides, Levels levels, LayoutOptions options, Func<int, (int X, int Y)> placeOfStand, Recollection? known) =>
        (this.netlist, this.sides, this.levels, this.options, this.placeOfStand, this.known) = (netlist, sides, levels, options, placeOfStand, known);

    /// <summary>The place of each joint and the points of each line, by their numbers.</summary>
    public static (IReadOnlyDictionary<int, (int X, int Y)> Joints, IReadOnlyDictionary<int, ImmutableArray<(int X, int Y)>> Lines) Of(
        Netlist netlist, SidePins sides, Levels levels, LayoutOptions options, IEnumerable<PlannedBlock> blocks, Func<int, (int X, int Y)> placeOfStand, Recollection? known)
    {
        var routes = new Routes(netlist, sides, levels, options, placeOfStand, known);
        PlannedBlock[] all = [.. blocks];
        var spanning = all.SelectMany(b => b.Lattice.Pieces.Where(p => p.Spans(b.X)).Select(p => p.Channel)).ToHashSet();
        foreach (var block in all)
            for (int n = 0; n < block.Block.Nets.Length; n++) routes.Draw(block, netlist.Nets[block.Block.Nets[n]], block.Lattice.Pieces[block.Lattice.TrunkOf[n]], spanning);
        return (routes.joints, routes.lines);
    }

    private void Draw(PlannedBlock block, Net net, Piece trunk, HashSet<int> spanning)
    {
        int height = Heightening.Y(trunk, block.X, block.Columns, levels, options, spanning.Contains(trunk.Channel));
        var trace = new TrunkLine(trunk.Splits(block.X), height, options.Track);
        var ways = block.Lattice.Ways.Where(w => netlist.Taps[w.Tap].Net == net.Id).ToDictionary(w => w.Tap);
        var branches = net.Taps.ToDictionary(t => t, t => Branch(block, ways[t], netlist.Taps[t], spanning));
        SetJoints(net, trace, branches);
        foreach (int number in net.Lines)
        {
            var line = netlist.Lines[number];
            var (first, start) = Half(line, true, net, branches);
            var (last, stop) = Half(line, false, net, branches);
            var along = new TrunkLine(SplitsFor(line), height, options.Track);
            IEnumerable<(int, int)> points = first.Concat(along.Along(start, stop)).Concat(Enumerable.Reverse(last));
            lines[number] = Simplified(points);
        }

        // What one view alone shows steps aside only where four arms meet in that view, or where a line that both show has stepped aside.
        ImmutableArray<int> SplitsFor(Line line) => line.Seen == SeenIn.Both || !net.Joints.IsEmpty ? trunk.Splits(block.X)
            : [.. trunk.Splits(block.X).Where(s => trunk.Splits(block.X, line.Seen).Contains(s) || net.Lines.Any(l => netlist.Lines[l].Seen == SeenIn.Both && ReachesBehind(netlist.Lines[l], s)))];

        bool ReachesBehind(Line line, int split) => Half(line, true, net, branches).Column > split || Half(line, false, net, branches).Column > split;
    }

    // From a tap to the trunk: the points, and the column in which it arrives.
    private (List<(int X, int Y)> Points, int Column) Branch(PlannedBlock block, Way way, Tap tap, HashSet<int> spanning)
    {
        var points = new List<(int, int)>();
        int column = block.X[way.Seat] + way.Offset;
        if (tap.Kind == EndKind.Feed) points.Add((column, 0));
        else if (tap.Kind == EndKind.Chassis) points.Add((column, levels.Bottom));
        else
        {
            var terminal = netlist.Terminals[tap.Terminal];
            var (x, y) = placeOfStand(terminal.Stand);
            points.Add((x + terminal.X, y + terminal.Y));
            if (sides.ColumnOf[tap.Terminal] != terminal.X) points.Add((column, y + terminal.Y));
        }
        foreach (var step in way.Steps)
        {
            int next = block.X[step.Seat];
            if (next == column) continue;
            int y = Heightening.Y(block.Lattice.Pieces[step.Piece], block.X, block.Columns, levels, options, spanning.Contains(block.Lattice.Pieces[step.Piece].Channel));
            points.Add((column, y));
            points.Add((next, y));
            column = next;
        }
        return (points, column);
    }

    // A joint lies on the trunk, in the column of one of its own taps if one is free.
    private void SetJoints(Net net, TrunkLine trace, Dictionary<int, (List<(int X, int Y)> Points, int Column)> branches)
    {
        var taken = new HashSet<int>();
        foreach (int joint in net.Joints.OrderBy(j => Own(j).Count()).ThenBy(j => j))
        {
            // In a column that both views have, or one of them shows the joint at the end of a stub.
            var taps = Own(joint).ToArray();
            int[] always = [.. taps.Where(t => t.Seen == SeenIn.Both).Select(t => t.Column).Order()], own = [.. taps.Select(t => t.Column).Order()];
            int[] others = [.. branches.Values.Select(b => b.Column).Distinct().Order()];
            int wish = Middle(always) ?? Middle(own) ?? Middle(others) ?? 0;
            int[] then = known?.ColumnOf(netlist.Joints[joint]) is { } stood && own.Concat(others).Contains(stood) ? [stood] : [];
            int column = then.Concat(always).Concat(own).Append(wish).Concat(others).OrderBy(c => IsReached(c, netlist.Joints[joint].Seen) ? 0 : 1).ThenBy(c => then.Contains(c) ? 0 : 1)
                // Where most of its wires meet.
                .ThenByDescending(c => taps.Where(t => t.Column == c).Sum(t => t.Seen == SeenIn.Both ? 2 : 1)).FirstOrDefault(c => !taken.Contains(c), wish);
            for (int step = 4; taken.Contains(column); step++) column = wish + (step % 2 == 0 ? step : -step);
            taken.Add(column);
            joints[joint] = (column, trace.Before(column));
        }

        // A trunk that one view draws short would be drawn out to the joint, across what stands there in that view.
        bool IsReached(int column, SeenIn seen)
        {
            foreach (var view in Extents.Views.Where(v => (seen & net.Seen & v) != 0))
            {
                int[] reach = [.. branches.Where(b => (netlist.Taps[b.Key].Seen & view) != 0).Select(b => b.Value.Column)];
                if (reach.Length > 0 && (column < reach.Min() || column > reach.Max())) return false;
            }
            return true;
        }

        int? Middle(int[] columns) => columns.Length > 0 ? columns[columns.Length / 2] : null;

        IEnumerable<(int Column, SeenIn Seen)> Own(int joint) =>
            from number in net.Lines
            let line = netlist.Lines[number]
            from far in new[] { true, false }
            where (far ? line.To : line.From).Joint == joint && !(far ? line.From : line.To).OnJoint
            select (branches[TapOf(line, far, net)].Column, line.Seen);
    }

    private (List<(int X, int Y)> Points, int Column) Half(Line line, bool isFrom, Net net, Dictionary<int, (List<(int X, int Y)> Points, int Column)> branches)
    {
        var end = isFrom ? line.From : line.To;
        if (end.OnJoint && joints.TryGetValue(end.Joint, out var place)) return ([place], place.X);
        return branches[TapOf(line, isFrom, net)];
    }

    private int TapOf(Line line, bool isFrom, Net net) => net.Taps.First(t => netlist.Taps[t].Ends.Contains(new(line.Id, isFrom)));

    private static ImmutableArray<(int X, int Y)> Simplified(IEnumerable<(int X, int Y)> points)
    {
        var line = new List<(int X, int Y)>();
        foreach (var point in points)
        {
            if (line.Count > 0 && line[^1] == point) continue;
            while (line.Count >= 2 && ((line[^2].X == line[^1].X && line[^1].X == point.X) || (line[^2].Y == line[^1].Y && line[^1].Y == point.Y))) line.RemoveAt(line.Count - 1);
            if (line.Count > 0 && line[^1] == point) continue;
            line.Add(point);
        }
        if (line.Count == 1) line.Add(line[0]);
        return [.. line];
    }
}

/// <summary>A trunk as it lies: one horizontal, or parts of it a track lower behind each place where four arms would meet.</summary>
internal sealed class TrunkLine(ImmutableArray<int> splits, int y, int track)
{
    /// <summary>Its height left of a column.</summary>
    public int Before(int column) => y + (track * splits.Count(s => s < column));

    private int Behind(int column) => y + (track * splits.Count(s => s <= column));

    /// <summary>The points from one column to another.</summary>
    public IEnumerable<(int X, int Y)> Along(int from, int to)
    {
        if (from == to) yield return (from, Before(from));
        else if (from < to)
        {
            yield return (from, Behind(from));
            foreach (int split in splits.Where(s => s > from && s < to))
            {
                yield return (split, Before(split));
                yield return (split, Behind(split));
            }
            yield return (to, Before(to));
        }
        else
            foreach (var point in Along(to, from).Reverse()) yield return point;
    }
}
