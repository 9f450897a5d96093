using System.Collections.Immutable;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>Where everything is drawn, in modules; made once for both circuits, so that what stands in both stands in one place.</summary>
internal sealed record Layout(
    ImmutableArray<PlacedBox> Boxes, ImmutableArray<PlacedWire> Wires, ImmutableArray<PlacedLabel> Labels, ImmutableArray<PlacedRail> Rails,
    ImmutableArray<PlacedDot> Dots, int Width, int Height)
{
    private const int MostGap = 9, MostGrowth = 12, GrowthForOwnRun = 3;

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
    private static ImmutableArray<TextRoom> Texts(Netlist netlist, RowPlan rows)
    {
        TextRoom[] text = [.. netlist.Stands.Select(s => new TextRoom(s.TextModules(SeenIn.Before), s.TextModules(SeenIn.After)))];
        foreach (var net in netlist.Nets)
            foreach (var twins in net.Taps.Select(t => netlist.StandOf(netlist.Taps[t])).Where(s => s >= 0 && netlist.Stands[s].Shape.Length > 0).Distinct()
                .GroupBy(s => (netlist.Stands[s].Shape, rows.RowOf[s])).Where(g => g.Count() > 1))
            {
                var widest = new TextRoom(twins.Max(s => text[s].Before), twins.Max(s => text[s].After));
                foreach (int stand in twins) text[stand] = widest;
            }
        return [.. text];
    }

    private static int WidthOf(IEnumerable<PlannedBlock> blocks, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> text) =>
        blocks.SelectMany(b => b.Lattice.Seats.Select(s => b.X[s.Id] + Columns.Reach(s, netlist, sides, text, b.Columns.TextLeft.Contains(s.Stand), s.Seen).Right)).DefaultIfEmpty(0).Max();

    private static Layout Finish(
        LayoutInput input, Netlist netlist, RowPlan rows, SidePins sides, ImmutableArray<TextRoom> text, PlannedBlock[] blocks, LayoutOptions options, CancellationToken cancel)
    {
        ImmutableArray<Growth> extra = [.. new Growth[rows.Rows + 1]];
        for (int attempt = 0; ; attempt++)
        {
            cancel.ThrowIfCancellationRequested();
            var levels = Heightening.Of(rows, netlist, blocks, options, extra);
            var layout = Placement.Of(input, netlist, rows, sides, text, blocks, levels, options);
            var (labels, failed) = Passes.Labels.Of(input, layout.Boxes, layout.Wires, layout.Rails, levels.Bottom, attempt >= GrowthForOwnRun);
            if (failed.IsEmpty || attempt == MostGrowth) return layout with { Labels = labels };
            extra = Grown(extra, failed, levels);
        }
    }

    // A channel in which a label found no room grows: above its horizontals by what is just missing, below by two modules.
    private static ImmutableArray<Growth> Grown(ImmutableArray<Growth> extra, ImmutableArray<int> wanted, Levels levels)
    {
        var places = wanted.Select(y => (Channel: Math.Max(0, levels.ChannelTop.Select((top, c) => (top, c)).Last(t => t.top <= y || t.c == 0).c), Y: y))
            .Select(p => (p.Channel, IsAbove: p.Channel > 0 && p.Y < levels.ChannelTop[p.Channel] + levels.FirstTrack[p.Channel])).ToHashSet();
        return [.. extra.Select((e, c) => new Growth(e.Above + (places.Contains((c, true)) ? 1 : 0), e.Below + (places.Contains((c, false)) ? 2 : 0)))];
    }
}
