using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Pictures;

/// <summary>Finds room for the name of a rail above it: at its left end, else right of the first line or part in the way that leaves enough.</summary>
internal static class RailName
{
    private const double Clear = 5, AboveRail = 7;

    /// <summary>The left edge of the name in units, the layout's origin at 0.</summary>
    public static double Left(PlacedRail rail, Piece name, DrawingPlan plan, Layout layout, Func<string, bool> isLineShown, SeenIn view)
    {
        double m = Symbol.Module, bottom = (rail.Y * m) - 2, top = bottom - name.Height - AboveRail + 2, first = rail.X1 * m, last = rail.X2 * m;
        var band = new Box(first, top, last + name.Width, bottom);
        Box[] inTheWay = [.. Lines(plan, layout, isLineShown).Concat(Boxes(plan, layout, view)).Where(b => b.Overlaps(band)).OrderBy(b => b.Right)];
        foreach (double left in inTheWay.Select(b => b.Right).Where(x => x + name.Width <= last).Prepend(first))
            if (!inTheWay.Any(b => b.Overlaps(new(left, top, left + name.Width, bottom)))) return left;
        return first;
    }

    private static IEnumerable<Box> Lines(DrawingPlan plan, Layout layout, Func<string, bool> isShown) =>
        from pair in plan.Input.Wires.Zip(layout.Wires)
        where isShown(pair.First.Id)
        from run in pair.Second.Points.Zip(pair.Second.Points.Skip(1))
        where run.First.X == run.Second.X
        select new Box((run.First.X * Symbol.Module) - Clear, Math.Min(run.First.Y, run.Second.Y) * Symbol.Module, (run.First.X * Symbol.Module) + Clear, Math.Max(run.First.Y, run.Second.Y) * Symbol.Module);

    private static IEnumerable<Box> Boxes(DrawingPlan plan, Layout layout, SeenIn view)
    {
        double m = Symbol.Module;
        foreach (var (box, placed) in plan.Input.Boxes.Zip(layout.Boxes).Where(p => (p.First.Seen & view) != 0 && !p.First.IsPoint))
        {
            yield return new(placed.X * m, placed.Y * m, (placed.X + box.Width) * m, (placed.Y + box.Height) * m);
            if (box.HasText) yield return new(placed.TextX * m, placed.TextY * m, ((placed.TextX + box.TextWidth) * m) + Clear, (placed.TextY + box.TextHeight) * m);
        }
    }
}
