using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Pictures;

/// <summary>The room that a laid-out circuit takes, in units. What stands at the right edge or lowest in one view may be missing in the other.</summary>
internal static class PictureBounds
{
    // Above the feed rail stands its name; below the chassis line hang the strokes of its signs.
    private const double NameAboveRail = 24, BelowChassis = 10, RailOverhang = 12;

    /// <summary>The room of one view, with its own right and lower edge.</summary>
    public static Box Of(DrawingPlan plan, Layout layout, SeenIn view)
    {
        var boxes = new List<Box>();
        double m = Symbol.Module;
        foreach (var (box, placed) in plan.Input.Boxes.Zip(layout.Boxes))
        {
            if ((box.Seen & view) == 0) continue;
            boxes.Add(new(placed.X * m, placed.Y * m, (placed.X + box.Width) * m, (placed.Y + box.Height) * m));
            var (left, right) = placed.TextIn(view, box);
            if (right > left) boxes.Add(new(left * m, placed.TextY * m, right * m, (placed.TextY + box.TextHeight) * m));
        }
        var seen = plan.Input.Wires.Where(w => (w.Seen & view) != 0).Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        boxes.AddRange(layout.Wires.Where(w => seen.Contains(w.Id)).SelectMany(w => w.Points).Select(p => new Box((p.X * m) - RailOverhang, p.Y * m, (p.X * m) + RailOverhang, p.Y * m)));
        boxes.AddRange(layout.Labels.Concat(layout.LongLines).Where(l => seen.Contains(l.Wire)).Select(l => new Box(l.X * m, l.Y * m, (l.X + l.Width) * m, (l.Y + l.Height) * m)));
        if (plan.FeedRail is not null) boxes.Add(new(0, -NameAboveRail * plan.Lettering.Factor, 0, 0));
        // Where no lead goes down to the chassis line a view ends with what hangs lowest in it.
        foreach (var (wire, placed) in plan.Input.Wires.Zip(layout.Wires).Where(w => seen.Contains(w.First.Id)))
            foreach (var (end, point) in new[] { (wire.From, placed.Points[0]), (wire.To, placed.Points[^1]) })
                if (end.Kind == EndKind.Chassis) boxes.Add(new(point.X * m, point.Y * m, point.X * m, (point.Y * m) + BelowChassis));
        if (plan.Parts.Any(p => p.Role == PlannedRole.ReturnRail)) boxes.Add(new(0, layout.ChassisY * m, 0, (layout.ChassisY * m) + BelowChassis));
        return Box.Around(boxes);
    }
}
