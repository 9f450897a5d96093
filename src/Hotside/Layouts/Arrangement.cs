using System.Collections.Immutable;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>
/// What stands in which row and in which order: all of a layout that does not depend on spacing, made once and then laid out at any. Not to be
/// shared between threads, since it remembers what it has laid out.
/// </summary>
internal sealed class Arrangement
{
    private const int MostGap = 9, MostGrowth = 12, GrowthForOwnRun = 3, GrowthWhereOverlaid = 10;

    // Lines further apart, for labels that find no room between them.
    private static readonly int[] Wider = [0, 2, 4];

    private readonly LayoutInput input;
    private readonly Netlist netlist;
    private readonly LayoutMemory? memory;
    private readonly Recollection? known;
    private readonly RowPlan rows;
    private readonly SidePins sides;
    private readonly ImmutableArray<TextRoom> text;
    private readonly Dictionary<LayoutOptions, Layout> layouts = [];
    private readonly Dictionary<(int BoxToBox, int WireToBox, int Track), PlannedBlock[]> columns = [];

    private Arrangement(LayoutInput input, LayoutMemory? memory, CancellationToken cancel)
    {
        this.memory = memory;
        var union = Union.Of(input);
        union = Turning.Of(union, Heights.Of(union), memory);
        var heights = Heights.Of(union);
        netlist = Nets.Of(union, heights);
        // Which conductors are one net is told by each circuit; what must keep clear of each other, by what is shown together.
        if (input.IsOverlaid) (netlist, input) = (netlist.AllSeen(), input.AllSeen());
        this.input = input;
        known = memory is null ? null : new(memory, netlist);
        rows = Rows.Of(netlist, Directions.Of(netlist, Heights.Of(union), known), known);
        sides = SidePins.Of(netlist, rows);
        text = Texts(netlist, rows);
        Ordered =
        [
            // Blocks that were set side by side once stay so: all columns are solved together then.
            .. (known is null ? Blocks.Of(netlist) : Blocks.Undivided(netlist)).Select(b =>
            {
                cancel.ThrowIfCancellationRequested();
                var lattice = Layering.Of(netlist, rows, sides, b);
                return (b, lattice, known is null ? Tracks.Of(lattice, netlist, text) : Tracks.AsBefore(lattice, known));
            }),
        ];
    }

    /// <summary>The blocks with what has been decided of their order.</summary>
    public ImmutableArray<(Block Block, Lattice Lattice, SeatOrder Order)> Ordered { get; }

    /// <summary>The arrangement of an input; from a previous layout it takes over whatever need not change.</summary>
    public static Arrangement Of(LayoutInput input, Layout? previous = null, CancellationToken cancel = default) => new(input, previous?.Memory, cancel);

    /// <summary>The layout at a spacing; its natural size is kept unless the options ask to fill a larger space.</summary>
    public Layout At(LayoutOptions options, CancellationToken cancel = default)
    {
        if (layouts.TryGetValue(options, out var ready)) return ready;
        Layout? best = null;
        foreach (int more in Wider)
        {
            var spacing = memory?.Asked == options ? memory.Spacing : options;
            var layout = Spaced(spacing with { Track = spacing.Track + more, WireToBox = spacing.WireToBox + more }, options, cancel);
            if (best is null || layout.Labels.Length > best.Labels.Length) best = layout;
            if (best.Labels.Length == input.Wires.Count(w => w.HasLabel)) break;
        }
        return layouts[options] = best!;
    }

    private Layout Spaced(LayoutOptions options, LayoutOptions asked, CancellationToken cancel)
    {
        var planned = Planned(options, cancel);
        var spacing = options;
        if (options.FillWidth is { } fill && memory?.Spacing != options)
            for (int gap = options.BoxToBox + 1; gap <= MostGap; gap++)
            {
                var wider = Planned(options with { BoxToBox = gap }, cancel);
                if (WidthOf(wider) > fill) break;
                (planned, spacing) = (wider, options with { BoxToBox = gap });
            }
        return Finish(planned, spacing, asked, cancel);
    }

    private PlannedBlock[] Planned(LayoutOptions options, CancellationToken cancel)
    {
        var then = KnownAt(options);
        var key = (options.BoxToBox, options.WireToBox, options.Track);
        if (columns.TryGetValue(key, out var known)) return known;
        cancel.ThrowIfCancellationRequested();
        var set = Ordered.Select(o => (o.Lattice, Columns: Columns.Of(netlist, o.Lattice, o.Order, sides, text, options, then))).ToImmutableArray();
        var shifts = Packing.Of(set, netlist, sides, text, options, stays: then is not null);
        return columns[key] = [.. Ordered.Select((o, i) => new PlannedBlock(o.Block, o.Lattice, set[i].Columns, shifts[i]))];
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

    // At another spacing only rows and order can be kept.
    private Recollection? KnownAt(LayoutOptions spacing) => memory?.Spacing == spacing ? known : null;

    private int WidthOf(IEnumerable<PlannedBlock> blocks) =>
        blocks.SelectMany(b => b.Lattice.Seats.Select(s => b.X[s.Id] + Columns.Reach(s, netlist, sides, text, b.Columns.TextLeft.Contains(s.Stand), s.Seen).Right)).DefaultIfEmpty(0).Max();

    private Layout Finish(PlannedBlock[] blocks, LayoutOptions options, LayoutOptions asked, CancellationToken cancel)
    {
        var then = KnownAt(options);
        ImmutableArray<Growth> extra = [.. new Growth[rows.Rows + 1]];
        List<int> urgent = [];
        for (int attempt = 0; ; attempt++)
        {
            cancel.ThrowIfCancellationRequested();
            var levels = Heightening.Of(rows, netlist, blocks, options, extra, then);
            var layout = Placement.Of(input, netlist, rows, sides, text, blocks, levels, options, then);
            var room = new TakenRoom(input, layout.Boxes, layout.Wires, layout.Rails, levels.Bottom);
            var (boxes, nameless) = NodeTexts.Of(input, layout.Boxes, layout.Rails, room);
            var (labels, unplaced) = Labels.Of(input, layout.Wires, room, attempt >= (input.IsOverlaid ? GrowthWhereOverlaid : GrowthForOwnRun), urgent);
            ImmutableArray<int> failed = [.. nameless, .. unplaced];
            if (failed.IsEmpty || attempt == MostGrowth)
                return layout with { Boxes = boxes, Labels = labels, Memory = Recollection.Remembered(netlist, rows, blocks, [.. Ordered.Select(o => o.Order.Places)], layout, levels, asked, options) };
            extra = Grown(extra, failed, levels);
        }
    }

    // A channel in which a label found no room grows: above its horizontals by what is just missing, below by two modules.
    private static ImmutableArray<Growth> Grown(ImmutableArray<Growth> extra, ImmutableArray<int> wanted, Levels levels)
    {
        var places = wanted.Select(y => (Channel: Math.Max(0, levels.ChannelTop.Select((top, c) => (top, c)).Last(t => t.top <= y || t.c == 0).c), Y: y))
            .Select(p => (p.Channel, IsAbove: p.Channel > 0 && p.Y <= levels.ChannelTop[p.Channel] + levels.FirstTrack[p.Channel])).ToHashSet();
        return [.. extra.Select((e, c) => new Growth(e.Above + (places.Contains((c, true)) ? 1 : 0), e.Below + (places.Contains((c, false)) ? 2 : 0)))];
    }
}
