using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>A dashed line through corners: each straight run begins and ends with ink, and corners are closed.</summary>
internal static class DashedLine
{
    private const double Corner = 2;

    /// <summary>The line with its corners.</summary>
    public static ImmutableArray<Shape> Of(ImmutableArray<Point> points, Pen pen)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(Runs(points, pen));
        // Two runs that end at a corner leave a notch there; a small solid angle closes it.
        bool isClosed = points.Length > 2 && points[0] == points[^1];
        for (int i = isClosed ? 0 : 1; i < points.Length - 1; i++)
            shapes.Add(Shape.Polyline(pen with { Dash = default }, Towards(points[i], points[i == 0 ? ^2 : i - 1]), points[i], Towards(points[i], points[i + 1])));
        return shapes.ToImmutable();
    }

    /// <summary>Its straight runs alone.</summary>
    public static IEnumerable<Shape> Runs(ImmutableArray<Point> points, Pen pen) =>
        points.Zip(points.Skip(1)).Select(run => Shape.Polyline(pen with { Dash = pen.Dash.Fitted(run.First.To(run.Second)) }, run.First, run.Second));

    private static Point Towards(Point from, Point to)
    {
        double length = from.To(to), step = Math.Min(Corner, length);
        return new(from.X + ((to.X - from.X) * step / length), from.Y + ((to.Y - from.Y) * step / length));
    }
}
