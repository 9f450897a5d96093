using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>
/// What stands in which row and in which order: all of a layout that does not depend on spacing, made once and then laid out at any. Not to be
/// shared between threads, since it remembers what it has laid out.
/// </summary>
internal sealed class Arrangement
{
    private const int MostPassers = 4, MostGap = 9, MostGrowth = 12, GrowthForOwnRun = 3, GrowthInVain = 4, GrowthWhereOverlaid = 10, RoundsForDoubt = 3;

    // Lines further apart, for labels that find no room between them.
    private static readonly int[] Wider = [0, 2, 4];

    private readonly LayoutInput input;
    private readonly ImmutableArray<SeenIn> seen;
    private readonly LayoutMemory? memory;
    private readonly Arranged arranged;
    private Netlist netlist;
    private Recollection? known;
    private RowPlan rows;
    private SidePins sides;
    private ImmutableArray<TextRoom> text;
    private ImmutableHashSet<int> apart;
    private readonly Dictionary<LayoutOptions, Layout> layouts = [];
    private readonly Dictionary<(int BoxToBox, int WireToBox, int Track), PlannedBlock[]> columns = [];

    private Arrangement(LayoutInput input, LayoutMemory? memory, Union union, Heights heights, Arranged arranged, CancellationToken cancel)
    {
        this.memory = memory;
        this.arranged = arranged;
        this.input = input.IsOverlaid ? input.AllSeen() : input;
        seen = [.. input.Wires.Select(w => w.Seen)];
        Take(arranged);
        if (memory is null) PutBack(union, heights, input, cancel);
        if (input.TellsPins && memory is null) SetApart(union, heights, cancel);
    }

    /// <summary>The blocks with what has been decided of their order.</summary>
    public ImmutableArray<(Block Block, Lattice Lattice, SeatOrder Order)> Ordered { get; private set; }

    /// <summary>The arrangement of an input; from a previous layout it takes over whatever need not change.</summary>
    public static Arrangement Of(LayoutInput input, Layout? previous = null, CancellationToken cancel = default) => Of(input, previous?.Memory, null, cancel);

    /// <summary>The arrangement of the same circuits with parts or loads otherwise: this one where nothing comes out otherwise.</summary>
    public Arrangement With(LayoutInput otherwise, CancellationToken cancel = default) => Of(otherwise, memory, this, cancel);

    /// <summary>The layout at a spacing; its natural size is kept unless the options ask to fill a larger space.</summary>
    public Layout At(LayoutOptions options, CancellationToken cancel = default)
    {
        if (layouts.TryGetValue(options, out var ready)) return ready;
        Layout? best = null;
        foreach (int more in Wider)
        {
            var spacing = memory?.Asked == options ? memory.Spacing : options;
            var layout = Spaced(spacing with { Track = spacing.Track + more, WireToBox = spacing.WireToBox + more }, options, cancel);
            if (best is null || (layout.Labels.Length, -layout.SharedLabels).CompareTo((best.Labels.Length, -best.SharedLabels)) > 0) best = layout;
            // In an overlay what a conductor shares with others may be hidden by them.
            if (best.Labels.Length == input.Wires.Count(w => w.HasLabel) && (best.SharedLabels == 0 || !input.IsOverlaid)) break;
        }
        return layouts[options] = best!;
    }

    private static Arrangement Of(LayoutInput input, LayoutMemory? memory, Arrangement? like, CancellationToken cancel)
    {
        var union = Union.Of(input);
        union = Turning.Of(union, Heights.Of(union), memory);
        var heights = Heights.Of(union);
        var arranged = Arranged.Of(union, heights, memory, input, like?.arranged, cancel);
        return like is not null && ReferenceEquals(arranged, like.arranged) ? like : new(input, memory, union, heights, arranged, cancel);
    }

    [MemberNotNull(nameof(netlist), nameof(rows), nameof(sides), nameof(apart))]
    private void Take(Arranged taken)
    {
        (netlist, rows, text, Ordered) = taken;
        apart = taken.Apart;
        known = memory is null ? null : new(memory, netlist);
        sides = SidePins.Of(netlist, rows);
        layouts.Clear();
        columns.Clear();
    }

    // Where something lay, across what it was joined to, four arms would meet: there it ends on the trunk.
    private void PutBack(Union union, Heights heights, LayoutInput asGiven, CancellationToken cancel)
    {
        var old = OldPlaces.Of(asGiven);
        for (ImmutableHashSet<int> kept = []; !old.Except(kept).IsEmpty;)
        {
            var crossing = Passers.Crossing(netlist, WiresOf(Planned(new(), cancel))).Intersect(old);
            if (crossing.IsEmpty) return;
            Take(Arranged.Of(union, heights, null, asGiven, null, cancel, kept = kept.Union(crossing)));
        }
    }

    // Conductors that seem to end at a strange pin run beside their net, unless they would cross it there: first all together, then one by one what is left.
    private void SetApart(Union union, Heights heights, CancellationToken cancel)
    {
        var found = new Arranged(netlist, rows, text, Ordered) { Apart = apart };
        var asFound = Planned(new(), cancel);
        var (kept, keptAs) = (found, asFound);
        ImmutableHashSet<int> passing = Passers.Of(found, asFound).Union(Passers.Lost(netlist, WiresOf(asFound)));
        if (passing.IsEmpty) return;
        for (int round = 0; round < MostPassers && !passing.IsEmpty && Aside(passing) is { IsEmpty: false } crossing; round++) passing = passing.Except(crossing);
        int[] left = [.. Passers.Lost(netlist, WiresOf(keptAs)).Order().Take(MostPassers)];
        foreach (int line in left.Where(l => Passers.Lost(netlist, WiresOf(keptAs)).Contains(l))) Aside(kept.Apart.Add(line));

        // What crosses then; where nothing does it stays so.
        ImmutableHashSet<int>? Aside(ImmutableHashSet<int> lines)
        {
            if (Passers.SetApart(union, heights, found, lines.Union(found.Apart), input.IsOverlaid) is not { } aside) return null;
            Take(aside);
            var planned = Planned(new(), cancel);
            var crossing = Passers.Crossing(netlist, WiresOf(planned)).Except(found.Apart);
            if (crossing.IsEmpty) (kept, keptAs) = (aside, planned);
            else
            {
                Take(kept);
                columns[KeyOf(new())] = keptAs;
            }
            return crossing;
        }
    }

    private ImmutableArray<PlacedWire> WiresOf(PlannedBlock[] planned) => Placed(planned, new(), NoGrowth, Unhung, false).Layout.Wires;

    private Layout Spaced(LayoutOptions options, LayoutOptions asked, CancellationToken cancel)
    {
        var planned = Planned(options, cancel);
        var spacing = options;
        if (options.FillWidth is { } fill && memory?.Spacing != options)
            for (int gap = options.BoxToBox + 1; gap <= MostGap; gap++)
            {
                var wider = Planned(options with { BoxToBox = gap }, cancel);
                if (WidthOf(wider) > fill) break;
                // White space is worth no bend.
                if (TurnsOf(wider) > TurnsOf(planned)) continue;
                (planned, spacing) = (wider, options with { BoxToBox = gap });
            }
        return Finish(planned, spacing, asked, cancel);
    }

    private PlannedBlock[] Planned(LayoutOptions options, CancellationToken cancel)
    {
        var then = KnownAt(options);
        var key = KeyOf(options);
        if (columns.TryGetValue(key, out var known)) return known;
        cancel.ThrowIfCancellationRequested();
        var set = Ordered.Select(o => (o.Block, o.Lattice, Columns: Columns.Of(netlist, o.Lattice, o.Order, sides, text, options, then))).ToImmutableArray();
        var shifts = Packing.Of(set, netlist, sides, text, line => (int)Math.Ceiling(input.Wires[line].LabelWidth), OnBodies, options, then is not null, IsNoWorse);
        return columns[key] = At(shifts);

        PlannedBlock[] At(IEnumerable<int> shifts) => [.. set.Zip(shifts, (s, shift) => new PlannedBlock(s.Block, s.Lattice, s.Columns, shift))];

        // A later layout must be able to tell what stands between what.
        bool IsNoWorse(int[] shifts, int[] than) =>
            Interleaved(At(shifts)).Hold && Trial(At(shifts)) is var tried && Trial(At(than)) is var known && tried.Missing <= known.Missing && tried.Height <= known.Height;

        // Before any channel grows for the sake of a label.
        (int Missing, int Height) Trial(PlannedBlock[] blocks)
        {
            var (layout, levels) = Placed(blocks, options, NoGrowth, Unhung, atPins: true);
            var (room, passing) = RoomOf(layout, levels);
            int nameless = NodeTexts.Of(input, layout.Boxes, layout.Rails, room, near: true).Failed.Length;
            return (nameless + Labels.Of(input, layout.Wires, layout.Rails, room, shared: false, passing, []).Failed.Length, levels.Bottom);
        }
    }

    // By body, the stands whose signs name it.
    private ILookup<int, int> OnBodies =>
        (from line in netlist.Lines
         where input.Wires[line.Id].NamesSign && HungLead.PinOf(line) is not null
         from body in netlist.Stands
         where body.Boxes.Any(b => b.Box.Id == input.Wires[line.Id].SignOf)
         select (Body: body.Id, On: netlist.Terminals[HungLead.PinOf(line)!.Value].Stand)).ToLookup(p => p.Body, p => p.On);

    private (ImmutableArray<ImmutableArray<int>> Places, bool Hold) Interleaved(PlannedBlock[] blocks) => Interleaving.Of(blocks, [.. Ordered.Select(o => o.Order.Places)]);

    private static (int BoxToBox, int WireToBox, int Track) KeyOf(LayoutOptions options) => (options.BoxToBox, options.WireToBox, options.Track);

    // At another spacing only rows and order can be kept.
    private Recollection? KnownAt(LayoutOptions spacing) => memory?.Spacing == spacing ? known : null;

    private static int TurnsOf(IEnumerable<PlannedBlock> blocks) => blocks.Sum(b => b.Columns.Turns);

    private int WidthOf(IEnumerable<PlannedBlock> blocks) =>
        blocks.SelectMany(b => b.Lattice.Seats.Select(s => b.X[s.Id] + Columns.Reach(s, netlist, sides, text, b.Columns.TextLeft.Contains(s.Stand), s.Seen).Right)).DefaultIfEmpty(0).Max();

    private Layout Finish(PlannedBlock[] blocks, LayoutOptions options, LayoutOptions asked, CancellationToken cancel)
    {
        var extra = NoGrowth;
        var longer = new Dictionary<int, int>();
        List<int> urgent = [];
        bool atPins = memory?.Levels.AtPins ?? true;
        (Layout Layout, int Missing, int Doubtful, int Attempt)? best = null;
        int sure = 0;
        for (int attempt = 0; ; attempt++)
        {
            cancel.ThrowIfCancellationRequested();
            var (layout, levels) = Placed(blocks, options, extra, longer, atPins);
            var (room, passing) = RoomOf(layout, levels);
            var (boxes, nameless) = NodeTexts.Of(input, layout.Boxes, layout.Rails, room, near: attempt < GrowthForOwnRun);
            var plan = Labels.Of(input, layout.Wires, layout.Rails, room, attempt >= Sharing, passing, urgent);
            var (labels, longLines, unplaced, shared) = plan;
            // A lead to a sign of its own grows by itself until its label finds room.
            var told = labels.Select(l => l.Wire).ToHashSet(StringComparer.Ordinal);
            int[] lost = [.. Enumerable.Range(0, input.Wires.Length).Where(i => input.Wires[i].HasLabel && !told.Contains(input.Wires[i].Id))], leads = [.. lost.Where(netlist.Signs.Contains)];
            foreach (int lead in leads) longer[lead] = longer.GetValueOrDefault(lead) + 1;
            ImmutableArray<int> failed = [.. nameless, .. unplaced.Where((_, i) => !netlist.Signs.Contains(lost[i]))];
            int missing = failed.Length + leads.Length;
            int doubtful = levels.Bottom <= options.FillHeight || sure <= 1 ? plan.Doubtful.Length : int.MaxValue;
            if (best is null || (missing, doubtful).CompareTo((best.Value.Missing, best.Value.Doubtful)) < 0)
                best = (layout with { Boxes = boxes, Labels = labels, LongLines = longLines, SharedLabels = shared, Memory = Recollection.Remembered(netlist, rows, blocks, Interleaved(blocks).Places, layout, levels, asked, options, apart) }, missing, doubtful, attempt);
            // Room that helps no label would be a hole in the drawing; where things stood they should not be moved for want of a label.
            // So that a label is not taken for another line's it chooses before the others; then what a sheet leaves free goes to its channel.
            if (missing == 0 && plan.Doubtful.Length > 0 && memory is null && attempt < MostGrowth && sure++ < (options.FillHeight is null ? 1 : RoundsForDoubt))
            {
                if (sure == 1) urgent.InsertRange(0, plan.Doubtful.Select(d => d.Wire).Except(urgent));
                else extra = Grown(extra, [.. plan.Doubtful.Select(d => d.Y)], levels);
                continue;
            }
            if (missing == 0 || attempt == MostGrowth || (!atPins && memory is null && attempt > Math.Max(best.Value.Attempt, Sharing) + GrowthInVain)) return best.Value.Layout;
            if (failed.IsEmpty) continue;
            // Labels come before branches that meet close to their pin.
            if (atPins) (atPins, attempt, best) = (false, -1, null);
            else extra = Grown(extra, failed, levels);
            if (attempt < 0) urgent.Clear();
        }
    }

    // With the conductors that a reader would take to end where they do not.
    private (TakenRoom Room, IReadOnlyDictionary<int, (int X, int Y)> Passing) RoomOf(Layout layout, Levels levels)
    {
        // In an overlay the joints are those of the circuit as it will be.
        SeenIn[] views = !input.TellsPins ? [] : input.IsOverlaid ? [SeenIn.After] : Extents.Views;
        var joints = views.Select(view => (View: view, Lines: Enumerable.Range(0, seen.Length).Where(i => (seen[i] & view) != 0).ToArray())).Select(v => (v.View, v.Lines,
            Slants: JointSlants.Of([.. v.Lines.Select(i => layout.Wires[i].Points)], layout.Rails.Where(r => (r.Seen & v.View) != 0).Select(r => ImmutableArray.Create((r.X1, r.Y), (r.X2, r.Y)))))).ToArray();
        return (new(input, layout.Boxes, layout.Wires, layout.Rails, joints.Select(j => (j.View, j.Slants)), levels.Bottom),
            joints.SelectMany(j => j.Slants.Passing.Select(p => (Line: j.Lines[p.Line], p.Dot))).DistinctBy(p => p.Line).ToDictionary(p => p.Line, p => p.Dot));
    }

    // From this attempt on a label may stand where several conductors share a stretch.
    private int Sharing => input.IsOverlaid ? GrowthWhereOverlaid : GrowthForOwnRun;

    private static IReadOnlyDictionary<int, int> Unhung => ImmutableDictionary<int, int>.Empty;

    private ImmutableArray<Growth> NoGrowth => [.. new Growth[rows.Rows + 1]];

    private (Layout Layout, Levels Levels) Placed(PlannedBlock[] blocks, LayoutOptions options, ImmutableArray<Growth> extra, IReadOnlyDictionary<int, int> longer, bool atPins)
    {
        var leads = HungLead.Of(netlist, rows, sides, input, longer);
        var levels = Heightening.Of(rows, netlist, blocks, leads, options, extra, atPins, KnownAt(options));
        return (RailMounts.Of(input, Placement.Of(input, netlist, rows, sides, text, blocks, levels, leads, options, KnownAt(options))), levels);
    }

    // A channel in which a label found no room grows: above its horizontals by what is just missing, below by two modules.
    private static ImmutableArray<Growth> Grown(ImmutableArray<Growth> extra, ImmutableArray<int> wanted, Levels levels)
    {
        var places = wanted.Select(y => (Channel: Math.Max(0, levels.ChannelTop.Select((top, c) => (top, c)).Last(t => t.top <= y || t.c == 0).c), Y: y))
            .Select(p => (p.Channel, IsAbove: p.Channel > 0 && p.Y <= levels.ChannelTop[p.Channel] + levels.FirstTrack[p.Channel])).ToHashSet();
        return [.. extra.Select((e, c) => new Growth(e.Above + (places.Contains((c, true)) ? 1 : 0), e.Below + (places.Contains((c, false)) ? 2 : 0)))];
    }
}
