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
    /// <param name="narrow">The sheet as it is laid out without: where all ways apart are too wide, those apart that have flags side by side there.</param>
    public static DrawingPlan Of(DrawingPlan plan, IEnumerable<SheetFlag> flags, Layout? narrow = null)
    {
        var widths = plan.Input.Boxes.ToDictionary(b => b.Id, b => b.Width, StringComparer.Ordinal);
        var stacked = flags.Where(f => f.IsStacked).Select(f => f.Box).ToHashSet(StringComparer.Ordinal);
        var flagged = plan.Input.Wires.SelectMany(w => new[] { (At: w.From, Flag: w.To), (At: w.To, Flag: w.From) })
            .Where(e => stacked.Contains(e.Flag.Box)).GroupBy(e => e.At.Box, StringComparer.Ordinal).Where(g => g.Count() > 1).ToDictionary(g => g.Key, StringComparer.Ordinal);
        foreach (var box in plan.Input.Boxes.Where(b => b.Ways.Length > 1 && flagged.ContainsKey(b.Id) && IsWhole(b, plan)))
        {
            // The widest of the flags that its lines lead to.
            int pitch = flagged[box.Id].Max(e => widths[e.Flag.Box]) + Gap;
            var pins = flagged[box.Id].Select(e => box.Pins.First(p => p.Name == e.At.Pin)).ToArray();
            var ways = narrow?.Boxes.FirstOrDefault(b => b.Id == box.Id) is { } placed ? Apart(box, pins, placed.Facing, pitch) : Apart(box, pitch);
            if (!ways.SequenceEqual(box.Ways)) plan = Spread(plan, box, ways);
        }
        return plan;
    }

    private static ImmutableArray<int> Apart(LayoutBox box, int pitch) => PitchOf(box) >= pitch ? box.Ways : [.. box.Ways.Select((x, i) => box.Ways[0] + (i * pitch))];

    // The order of the ways is found among their columns, whatever these are: it will be the same again.
    private static ImmutableArray<int> Apart(LayoutBox box, LayoutPin[] pins, Facing facing, int pitch)
    {
        int[] columns = [.. box.Ways.Order()], apart = [.. columns];
        var with = pins.Select(p => (p.Side, Column: facing.ColumnOf(p.X, box))).ToHashSet();
        for (int i = 1; i < columns.Length; i++)
        {
            bool isBetweenFlags = with.Any(p => p.Column == columns[i] && with.Contains((p.Side, columns[i - 1])));
            apart[i] = apart[i - 1] + Math.Max(columns[i] - columns[i - 1], isBetweenFlags ? pitch : 0);
        }
        return [.. box.Ways.Select(x => apart[Array.IndexOf(columns, x)])];
    }

    // The least distance of its ways; of what has none it is as large as any.
    private static int PitchOf(LayoutBox box) => box.Ways.Zip(box.Ways.Skip(1), (a, b) => b - a).DefaultIfEmpty(int.MaxValue).Min();

    // An old and a new connector of one size have one box.
    private static bool IsWhole(LayoutBox box, DrawingPlan plan) => plan.Parts.Any(p => p.Box == box.Id && BoxPlanner.Share(p));

    private static DrawingPlan Spread(DrawingPlan plan, LayoutBox box, ImmutableArray<int> ways)
    {
        int more = ways.Max() - box.Ways.Max();
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
