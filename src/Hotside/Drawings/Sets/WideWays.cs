using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;

namespace Hotside.Drawings.Sets;

/// <summary>Sets the ways of a connector apart where flags hang side by side at it: then their lines run straight.</summary>
internal static class WideWays
{
    // From a flag to the next.
    private const int Gap = 2;

    /// <summary>The plan of a sheet with its connectors as wide as their flags want them.</summary>
    /// <param name="plan">The plan of the sheet.</param>
    /// <param name="flags">Its flags.</param>
    public static DrawingPlan Of(DrawingPlan plan, IEnumerable<SheetFlag> flags)
    {
        var widths = plan.Input.Boxes.ToDictionary(b => b.Id, b => b.Width, StringComparer.Ordinal);
        var stacked = flags.Where(f => f.IsStacked).Select(f => f.Box).ToHashSet(StringComparer.Ordinal);
        // At each box the widest of the flags that its lines lead to.
        var pitches = plan.Input.Wires.SelectMany(w => new[] { (At: w.From, Flag: w.To), (At: w.To, Flag: w.From) })
            .Where(e => stacked.Contains(e.Flag.Box)).GroupBy(e => e.At.Box, StringComparer.Ordinal).Where(g => g.Count() > 1)
            .ToDictionary(g => g.Key, g => g.Max(e => widths[e.Flag.Box]) + Gap, StringComparer.Ordinal);
        return plan.Input.Boxes.Where(b => pitches.TryGetValue(b.Id, out int pitch) && PitchOf(b) < pitch && IsWhole(b, plan)).Aggregate(plan, (p, b) => Spread(p, b, pitches[b.Id]));
    }

    // The least distance of its ways; of what has none it is as large as any.
    private static int PitchOf(LayoutBox box) => box.Ways.Zip(box.Ways.Skip(1), (a, b) => b - a).DefaultIfEmpty(int.MaxValue).Min();

    // An old and a new connector of one size have one box.
    private static bool IsWhole(LayoutBox box, DrawingPlan plan) => plan.Parts.Any(p => p.Box == box.Id && BoxPlanner.Share(p));

    private static DrawingPlan Spread(DrawingPlan plan, LayoutBox box, int pitch)
    {
        ImmutableArray<int> ways = [.. box.Ways.Select((x, i) => box.Ways[0] + (i * pitch))];
        int more = ways[^1] - box.Ways[^1];
        int Now(int x) => box.Ways.IndexOf(x) is >= 0 and var way ? ways[way] : x;
        LayoutPin Moved(LayoutPin pin) => pin with { X = Now(pin.X), Name = CircuitEnds.PinName(new("", Now(pin.X), pin.Y, default)) };
        var names = box.Pins.ToDictionary(p => p.Name, p => Moved(p).Name, StringComparer.Ordinal);
        LayoutEnd At(LayoutEnd end) => end.Kind == EndKind.Pin && end.Box == box.Id ? end with { Pin = names[end.Pin] } : end;
        PartView? In(PartView? view) => view is null ? null : view with { Symbol = view.Symbol.Sorted(box.Ways, ways) with { Width = view.Symbol.Width + more } };
        var wide = box with
        {
            Width = box.Width + more,
            Ways = ways,
            WaysShown = ([.. box.WaysShown.Before.Select(Now)], [.. box.WaysShown.After.Select(Now)]),
            Pins = [.. box.Pins.Select(Moved)],
            Paths = [.. box.Paths.Select(p => p with { From = names[p.From], To = names[p.To] })],
            Poles = [.. box.Poles.Select(p => p with { Pin = names[p.Pin] })],
        };
        return plan with
        {
            Parts = [.. plan.Parts.Select(p => p.Box == box.Id ? p with { Before = In(p.Before), After = In(p.After), Overlay = In(p.Overlay) } : p)],
            Input = plan.Input with
            {
                Boxes = [.. plan.Input.Boxes.Select(b => b.Id == box.Id ? wide : b)],
                Wires = [.. plan.Input.Wires.Select(w => w with { From = At(w.From), To = At(w.To) })],
            },
        };
    }
}
