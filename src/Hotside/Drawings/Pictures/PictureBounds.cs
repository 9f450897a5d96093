using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Pictures;

/// <summary>The room that a laid-out circuit takes, in units, whatever view is shown: both views have one frame, so that they match.</summary>
internal static class PictureBounds
{
    // Above the feed rail stands its name; below the chassis line hang the strokes of its signs.
    private const double NameAboveRail = 24, BelowChassis = 10, RailOverhang = 12;

    public static Box Of(DrawingPlan plan, Layout layout)
    {
        var boxes = new List<Box>();
        double m = Symbol.Module;
        foreach (var (box, placed) in plan.Input.Boxes.Zip(layout.Boxes))
        {
            boxes.Add(new(placed.X * m, placed.Y * m, (placed.X + box.Width) * m, (placed.Y + box.Height) * m));
            if (box.HasText) boxes.Add(new(placed.TextX * m, placed.TextY * m, (placed.TextX + box.TextWidth) * m, (placed.TextY + box.TextHeight) * m));
        }
        boxes.AddRange(layout.Wires.SelectMany(w => w.Points).Select(p => new Box((p.X * m) - RailOverhang, p.Y * m, (p.X * m) + RailOverhang, p.Y * m)));
        boxes.AddRange(layout.Labels.Select(l => new Box(l.X * m, l.Y * m, (l.X + l.Width) * m, (l.Y + l.Height) * m)));
        if (plan.FeedRail is not null) boxes.Add(new(0, -NameAboveRail, 0, 0));
        boxes.Add(new(0, layout.ChassisY * m, 0, (layout.ChassisY * m) + BelowChassis));
        return Box.Around(boxes);
    }
}
