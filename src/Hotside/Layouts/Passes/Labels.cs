using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Places the labels of conductors: beside a vertical run on a baseline that others have, else at its middle, on one side all along a column, left if it can be; above a horizontal
/// one, below only where nothing else runs there; then anywhere along the line. What finds no place is reported, and the channel that it needs grows.
/// </summary>
internal sealed class Labels
{
    // Distances of a label from its line, in modules.
    private const double FromVertical = 0.7, FromHorizontal = 0.5, BelowSign = 1.3, BesideSign = 1.6;

    // How far from the middle of its run a label may stand for the sake of a common baseline: a part of what the run leaves free, and a little.
    private const double ForRhythm = 0.5, ForRhythmAtLeast = 1.5;

    // A line without a label is followed so far with ease.
    private const int Long = 8;

    private readonly TakenRoom room;
    private readonly IReadOnlyDictionary<int, (int X, int Y)> passing;
    private readonly LabelReading reading;
    private readonly SortedSet<double> baselines = [];
    private readonly Dictionary<int, Side> sideOf = [];
    private readonly Dictionary<(int X, int Y, bool Down, SeenIn View), int> users = [];

    private readonly List<(int Wire, int Y)> doubtful = [];

    private int sharing;

    private Labels(TakenRoom room, IReadOnlyDictionary<int, (int X, int Y)> passing) => (this.room, this.passing, reading) = (room, passing, new(room));

    /// <param name="input">What is laid out.</param>
    /// <param name="wires">Where its conductors run.</param>
    /// <param name="rails">Where its rails lie: what runs along one is no wire of its own there.</param>
    /// <param name="room">What stands there already.</param>
    /// <param name="shared">Whether a label may stand where several conductors share a stretch, if it finds no room where its own runs alone.</param>
    /// <param name="passing">The conductors that a reader would take to end where they part from another, with that place: their labels name their other end.</param>
    /// <param name="urgent">Those that found no place before, and choose first now, in that order; those that find none are added.</param>
    public static LabelPlan Of(
        LayoutInput input, ImmutableArray<PlacedWire> wires, ImmutableArray<PlacedRail> rails, TakenRoom room, bool shared, IReadOnlyDictionary<int, (int X, int Y)> passing, List<int> urgent)
    {
        var labels = new Labels(room, passing);
        foreach (var (wire, line) in input.Wires.Zip(wires)) labels.Use(wire.Seen, Runs(line));
        foreach (var rail in rails) labels.Use(rail.Seen, [((rail.X1, rail.Y), (rail.X2, rail.Y))]);
        var alone = input.Wires.Zip(wires, (wire, line) => wire.HasLabel || wire.IfLong ? Runs(line).SelectMany(r => labels.Alone(wire, r)).ToArray() : []).ToArray();
        var placed = new PlacedLabel?[input.Wires.Length];
        // Those with least choice first: conductors that run alone on short stretches only.
        foreach (int number in Enumerable.Range(0, input.Wires.Length).Where(i => input.Wires[i].HasLabel).OrderBy(i => urgent.Contains(i) ? urgent.IndexOf(i) : int.MaxValue).ThenBy(i => alone[i].Select(Length).DefaultIfEmpty(0).Max()).ThenBy(i => i).ToArray())
            placed[number] = labels.PlaceOrTell(number, input.Wires[number], wires[number], alone[number], shared);
        int[] failed = [.. Enumerable.Range(0, placed.Length).Where(i => input.Wires[i].HasLabel && placed[i] is null)];
        urgent.AddRange(failed.Except(urgent));
        var lines = Enumerable.Range(0, placed.Length).Where(i => input.Wires[i].IfLong && alone[i].Any(r => Length(r) >= Long)).Select(i => labels.Place(i, input.Wires[i], wires[i], alone[i], shared: false));
        return new([.. placed.OfType<PlacedLabel>()], [.. lines.OfType<PlacedLabel>()], [.. failed.Select(i => WantedAt(wires[i], alone[i]))], labels.sharing) { Doubtful = [.. labels.doubtful] };
    }

    // The middle of the longest stretch where the conductor runs alone.
    private static int WantedAt(PlacedWire line, ((int X, int Y) A, (int X, int Y) B)[] alone)
    {
        var (a, b) = alone.DefaultIfEmpty(Runs(line).MaxBy(Length)).MaxBy(Length);
        return (a.Y + b.Y) / 2;
    }

    private static int Length(((int X, int Y) A, (int X, int Y) B) run) => Math.Abs(run.A.X - run.B.X) + Math.Abs(run.A.Y - run.B.Y);

    // The label stands on the longest stretch, and names the end beyond the place where the line parts from another; where that finds no room, none.
    private PlacedLabel? PlaceOrTell(int number, LayoutWire wire, PlacedWire line, ((int X, int Y) A, (int X, int Y) B)[] alone, bool shared)
    {
        if (!passing.TryGetValue(number, out var dot) || alone.Length == 0 || wire is { EndWidths: (<= 0, _) or (_, <= 0) }) return Place(number, wire, line, alone, shared);
        (int X, int Y)[] before = [.. LineSteps.Walk(line.Points).Select(s => s.From).TakeWhile(p => p != dot), dot];
        var parts = alone.ToLookup(r => before.Contains(r.A) && before.Contains(r.B));
        bool goesOn = parts[true].Select(Length).DefaultIfEmpty(0).Max() >= parts[false].Select(Length).DefaultIfEmpty(0).Max();
        var told = wire with { LabelWidth = wire.LabelWidth + (goesOn ? wire.EndWidths.To : wire.EndWidths.From) };
        return Place(number, told, line, [.. parts[goesOn]], shared: false) is { } label ? label with { Names = goesOn ? NamedEnd.To : NamedEnd.From } : Place(number, wire, line, alone, shared);
    }

    private PlacedLabel? Place(int number, LayoutWire wire, PlacedWire line, ((int X, int Y) A, (int X, int Y) B)[] alone, bool shared)
    {
        // A label belongs where its conductor runs alone; on a shared stretch nobody knows whose it is.
        var label = At(alone);
        if (label is null && (shared || alone.Length == 0) && At([.. Runs(line)]) is { } aside)
        {
            label = aside;
            if (alone.Length > 0) sharing++;
        }
        if (label is null) return null;
        room.Take(label.X, label.Y, label.Width, label.Height, wire.Seen);
        if (wire.HasLabel && reading.IsDoubtful(label, number, wire)) doubtful.Add((number, (int)Math.Round(label.Y + (label.Height / 2))));
        reading.Take(label, wire.Seen);
        if (label.OnVertical)
        {
            baselines.Add(Math.Round(label.Y + wire.LabelHeight - wire.LabelFoot, 3));
            sideOf.TryAdd(Column(label), label.Side);
        }
        return label;

        PlacedLabel? At(((int X, int Y) A, (int X, int Y) B)[] stretches) => reading.Clearest(Candidates(wire, line, stretches), number, wire);
    }

    private void Use(SeenIn seen, IEnumerable<((int X, int Y) A, (int X, int Y) B)> runs)
    {
        foreach (var ((ax, ay), (bx, by)) in runs)
            foreach (var view in Extents.Views.Where(v => (seen & v) != 0))
                foreach (var step in Steps(ax, ay, bx, by)) users[(step.X, step.Y, step.Down, view)] = users.GetValueOrDefault((step.X, step.Y, step.Down, view)) + 1;
    }

    private static IEnumerable<((int X, int Y) A, (int X, int Y) B)> Runs(PlacedWire line) =>
        Enumerable.Range(1, line.Points.Length - 1).Select(i => (line.Points[i - 1], line.Points[i]));

    // The steps of one module from the lesser end of a run to the greater.
    private static IEnumerable<(int X, int Y, bool Down)> Steps(int ax, int ay, int bx, int by)
    {
        for (int x = Math.Min(ax, bx); x < Math.Max(ax, bx); x++) yield return (x, ay, false);
        for (int y = Math.Min(ay, by); y < Math.Max(ay, by); y++) yield return (ax, y, true);
    }

    // The stretches of a run that no other conductor shares in a view that shows both.
    private IEnumerable<((int X, int Y) A, (int X, int Y) B)> Alone(LayoutWire wire, ((int X, int Y) A, (int X, int Y) B) run)
    {
        (int X, int Y)? start = null, last = null;
        foreach (var step in Steps(run.A.X, run.A.Y, run.B.X, run.B.Y))
        {
            bool alone = Extents.Views.Where(v => (wire.Seen & v) != 0).All(v => users[(step.X, step.Y, step.Down, v)] == 1);
            if (alone) (start, last) = (start ?? (step.X, step.Y), step.Down ? (step.X, step.Y + 1) : (step.X + 1, step.Y));
            else if (start is { } from && last is { } to)
            {
                yield return (from, to);
                (start, last) = (null, null);
            }
        }
        if (start is { } first && last is { } end) yield return (first, end);
    }

    private static int Column(PlacedLabel label) => (int)Math.Round(label.Side == Side.Left ? label.X + label.Width + FromVertical : label.X - FromVertical);

    private IEnumerable<PlacedLabel> Candidates(LayoutWire wire, PlacedWire line, IEnumerable<((int X, int Y) A, (int X, int Y) B)> along)
    {
        double w = wire.LabelWidth, h = wire.LabelHeight;
        // The name of a sign stands below it, else beside it.
        if (wire.NamesSign)
        {
            var (x, y) = wire.To.Kind == EndKind.Chassis ? line.Points[^1] : line.Points[0];
            yield return new(wire.Id, x - (w / 2), y + BelowSign, w, h, false, Side.Bottom);
            yield return new(wire.Id, x + BesideSign, y, w, h, true, Side.Right);
            yield return new(wire.Id, x - BesideSign - w, y, w, h, true, Side.Left);
        }
        var runs = along.OrderByDescending(Length).ToArray();
        // The label's own height is enough for a vertical run; a horizontal one should be as long as the label.
        foreach (bool loose in new[] { false, true })
            foreach (var (a, b) in runs)
            {
                if (a.X == b.X)
                {
                    double low = Math.Min(a.Y, b.Y), high = Math.Max(a.Y, b.Y);
                    if (!loose && high - low < h + 0.4) continue;
                    double[] places = [.. loose ? [] : InRhythm(low, high, wire), .. Places(low, high, h, loose)];
                    bool isRight = sideOf.GetValueOrDefault(a.X, Side.Left) == Side.Right;
                    foreach (bool right in new[] { isRight, !isRight })
                        foreach (double y in places)
                            yield return new(wire.Id, right ? a.X + FromVertical : a.X - FromVertical - w, y, w, h, true, right ? Side.Right : Side.Left);
                }
                else
                {
                    double low = Math.Min(a.X, b.X), high = Math.Max(a.X, b.X);
                    if (!loose && high - low < w + 0.4) continue;
                    foreach (bool above in new[] { true, false })
                        foreach (double x in Places(low, high, w, loose))
                            yield return new(wire.Id, x, above ? a.Y - FromHorizontal - h : a.Y + FromHorizontal, w, h, false, above ? Side.Top : Side.Bottom);
                }
            }
    }

    // On the baselines of labels that stand already, the nearest to the run's middle first.
    private IEnumerable<double> InRhythm(double low, double high, LayoutWire wire)
    {
        double middle = ((low + high) - wire.LabelHeight) / 2, slack = (high - low - wire.LabelHeight) / 2, far = Math.Min(slack - 0.2, Math.Max(slack * ForRhythm, ForRhythmAtLeast));
        return far < 0 ? [] : baselines.Select(b => b + wire.LabelFoot - wire.LabelHeight).Where(y => Math.Abs(y - middle) <= far).OrderBy(y => Math.Abs(y - middle)).ThenBy(y => y);
    }

    // The middle first, then the quarters, then every half module; loosely also a little beyond the run's ends.
    private static IEnumerable<double> Places(double low, double high, double size, bool loose)
    {
        double middle = ((low + high) - size) / 2, slack = (high - low - size) / 2;
        yield return middle;
        if (!loose)
        {
            for (double shift = 0.5; shift <= slack - 0.2; shift += 0.5)
            {
                yield return middle - shift;
                yield return middle + shift;
            }
            yield break;
        }
        double reach = Math.Max(Math.Abs(slack), 0) + (size * 0.4);
        for (double shift = 0.5; shift <= reach; shift += 0.5)
        {
            yield return middle - shift;
            yield return middle + shift;
        }
    }
}

/// <summary>Labels that found a place, and those that did not.</summary>
/// <param name="Placed">The labels.</param>
/// <param name="LongLines">Those that lines have only where they are long.</param>
/// <param name="Failed">For each that found no place the height at which more room would help.</param>
/// <param name="Shared">How many stand where their conductor does not run alone though it does elsewhere.</param>
internal sealed record LabelPlan(ImmutableArray<PlacedLabel> Placed, ImmutableArray<PlacedLabel> LongLines, ImmutableArray<int> Failed, int Shared)
{
    /// <summary>The conductors whose labels may be taken for another line's, and the heights at which more room would help.</summary>
    public ImmutableArray<(int Wire, int Y)> Doubtful { get; init; } = [];
}
