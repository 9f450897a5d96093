using System.Collections.Immutable;
using Hotside.Layouts;

namespace Hotside.Drawings.Plans;

/// <summary>Sets the ways of a connector further apart.</summary>
internal static class SpreadWays
{
    /// <summary>The least distance of the ways of a box; of what has none it is as large as any.</summary>
    public static int PitchOf(LayoutBox box) => box.Ways.Zip(box.Ways.Skip(1), (a, b) => b - a).DefaultIfEmpty(int.MaxValue).Min();

    /// <summary>Whether a box may be set apart: an old and a new connector of different sizes have boxes of their own.</summary>
    public static bool IsWhole(LayoutBox box, DrawingPlan plan) => plan.Parts.Any(p => p.Box == box.Id && BoxPlanner.Share(p));

    /// <summary>The plan with the ways of a connector evenly so far apart.</summary>
    public static DrawingPlan Of(DrawingPlan plan, LayoutBox box, int pitch) => Of(plan, box, [.. box.Ways.Select((_, i) => box.Ways[0] + (i * pitch))]);

    /// <summary>The plan with the ways of a connector in other columns, in the same order.</summary>
    public static DrawingPlan Of(DrawingPlan plan, LayoutBox box, ImmutableArray<int> ways)
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
