using System.Collections.Immutable;
using Hotside.Layouts.Passes;

namespace Hotside.Layouts;

/// <summary>Where everything is drawn, in modules; made once for both circuits, so that what stands in both stands in one place.</summary>
internal sealed record Layout(
    ImmutableArray<PlacedBox> Boxes, ImmutableArray<PlacedWire> Wires, ImmutableArray<PlacedLabel> Labels, ImmutableArray<PlacedRail> Rails,
    ImmutableArray<PlacedDot> Dots, int Width, int Height)
{
    private const int MostGap = 9, MostGrowth = 12;

    /// <summary>The height of the feed rail.</summary>
    public const int FeedY = 0;

    /// <summary>The height of the chassis row.</summary>
    public int ChassisY => Height;

    // Lines further apart, for labels that find no room between them.
    private static readonly int[] Wider = [0, 2, 4];

    /// <summary>The size of the picture at its natural spacing is kept unless the options ask to fill a larger space.</summary>
    public static Layout Of(LayoutInput input, LayoutOptions options, CancellationToken cancel = default)
    {
        Layout? best = null;
        foreach (int more in Wider)
        {
            var layout = Spaced(input, options with { Track = options.Track + more, WireToBox = options.WireToBox + more }, cancel);
            if (best is null || layout.Labels.Length > best.Labels.Length) best = layout;
            if (best.Labels.Length == input.Wires.Count(w => w.HasLabel)) break;
        }
        return best!;
    }

    private static Layout Spaced(LayoutInput input, LayoutOptions options, CancellationToken cancel)
    {
        var union = Union.Of(input);
        union = Turning.Of(union, Heights.Of(union));
        var heights = Heights.Of(union);
        var netlist = Nets.Of(union, heights);
        // Which conductors are one net is told by each circuit; what must keep clear of each other, by what is shown together.
        if (input.IsOverlaid) (netlist, input) = (netlist.AllSeen(), input.AllSeen());
        var rows = Rows.Of(netlist, Directions.Of(netlist, Heights.Of(union)));
        var sides = SidePins.Of(netlist, rows);
        var text = Texts(netlist, rows);
        ImmutableArray<int> owners = [.. netlist.Taps.Select(netlist.StandOf)];
        var ordered = Blocks.Of(netlist).Select(b =>
        {
            cancel.ThrowIfCancellationRequested();
            var lattice = Layering.Of(netlist, rows, sides, b);
            return (Block: b, Lattice: lattice, Order: Tracks.Of(lattice, owners));
        }).ToArray();
        var planned = Planned(options.BoxToBox);
        if (options.FillWidth is { } fill)
            for (int gap = options.BoxToBox + 1; gap <= MostGap; gap++)
            {
                var wider = Planned(gap);
                if (WidthOf(wider, netlist, sides, text) > fill) break;
                planned = wider;
            }
        return Finish(input, netlist, rows, sides, text, planned, options, cancel);

        PlannedBlock[] Planned(int gap)
        {
            cancel.ThrowIfCancellationRequested();
            var spaced = options with { BoxToBox = gap };
            var columns = ordered.Select(o => (o.Lattice, Columns: Columns.Of(netlist, o.Lattice, o.Order, sides, text, spaced))).ToImmutableArray();
            var shifts = Packing.Of(columns, netlist, sides, text, spaced);
            return [.. ordered.Select((o, i) => new PlannedBlock(o.Block, o.Lattice, columns[i].Columns, shifts[i]))];
        }
    }

    // Alike parts that hang on one net in one row get one width of text, so that they stand at one pitch.
    private static ImmutableArray<int> Texts(Netlist netlist, RowPlan rows)
    {
        int[] text = [.. netlist.Stands.Select(s => s.TextModules)];
        foreach (var net in netlist.Nets)
            foreach (var twins in net.Taps.Select(t => netlist.StandOf(netlist.Taps[t])).Where(s => s >= 0 && netlist.Stands[s].Shape.Length > 0).Distinct()
                .GroupBy(s => (netlist.Stands[s].Shape, rows.RowOf[s])).Where(g => g.Count() > 1))
            {
                int widest = twins.Max(s => text[s]);
                foreach (int stand in twins) text[stand] = widest;
            }
        return [.. text];
    }

    private static int WidthOf(IEnumerable<PlannedBlock> blocks, Netlist netlist, SidePins sides, ImmutableArray<int> text) =>
        blocks.SelectMany(b => b.Lattice.Seats.Select(s => b.X[s.Id] + Columns.Reach(s, netlist, sides, text, b.Columns.TextLeft.Contains(s.Stand)).Right)).DefaultIfEmpty(0).Max();

    private static Layout Finish(
        LayoutInput input, Netlist netlist, RowPlan rows, SidePins sides, ImmutableArray<int> text, PlannedBlock[] blocks, LayoutOptions options, CancellationToken cancel)
    {
        ImmutableArray<int> extra = [.. new int[rows.Rows + 1]];
        for (int attempt = 0; ; attempt++)
        {
            cancel.ThrowIfCancellationRequested();
            var levels = Heightening.Of(rows, netlist, blocks, options, extra);
            var layout = Placement.Of(input, netlist, rows, sides, text, blocks, levels, options);
            var (labels, failed) = Passes.Labels.Of(input, layout.Boxes, layout.Wires, layout.Rails, levels.Bottom);
            if (failed.IsEmpty || attempt == MostGrowth) return layout with { Labels = labels };
            extra = Grown(extra, layout, failed, levels);
        }
    }

    // The channel in which a line without room for its label has its longest run gets two modules more.
    private static ImmutableArray<int> Grown(ImmutableArray<int> extra, Layout layout, ImmutableArray<int> failed, Levels levels)
    {
        var channels = failed.Select(number =>
        {
            var points = layout.Wires[number].Points;
            int longest = Enumerable.Range(1, points.Length - 1).MaxBy(i => Math.Abs(points[i].X - points[i - 1].X) + Math.Abs(points[i].Y - points[i - 1].Y));
            int y = (points[longest].Y + points[longest - 1].Y) / 2;
            return Math.Max(0, levels.ChannelTop.Select((top, c) => (top, c)).Last(t => t.top <= y || t.c == 0).c);
        }).Distinct().ToHashSet();
        return [.. extra.Select((e, c) => channels.Contains(c) ? e + 2 : e)];
    }
}
