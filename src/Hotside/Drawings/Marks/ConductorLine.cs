using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The line of a conductor through its corners.</summary>
internal static class ConductorLine
{
    private static readonly Dash OutDash = new(9, 5), LayDash = new(2, 4), CoreDash = new(7, 5);

    /// <summary>The colour of a state.</summary>
    public static ColourRole ColourOf(LineStyle state) => state switch
    {
        LineStyle.TakenOut => ColourRole.Out,
        LineStyle.New or LineStyle.Renewed => ColourRole.New,
        LineStyle.Moved or LineStyle.WhereItLay => ColourRole.Moved,
        _ => ColourRole.Wire,
    };

    /// <summary>The shapes of a line; every dash pattern is fitted to each straight run, so that it begins and ends with ink at pins, rails and corners.</summary>
    public static ImmutableArray<Shape> Of(IReadOnlyList<Point> corners, LineStyle state)
    {
        ColourRole colour = ColourOf(state);
        ImmutableArray<Point> points = WithoutRepeats(corners);
        if (points.Length < 2)
            return [];
        return state switch
        {
            LineStyle.TakenOut => Dashed(points, new(StrokeRank.Heavy, colour, OutDash)),
            LineStyle.WhereItLay => Dashed(points, new(StrokeRank.Heavy, colour, LayDash)),
            LineStyle.New => [Whole(points, new(StrokeRank.Change, colour)), Whole(points, new(StrokeRank.Medium, ColourRole.Paper))],
            LineStyle.Renewed => [Whole(points, new(StrokeRank.Change, colour)), .. Runs(points, new(StrokeRank.Medium, ColourRole.Paper, CoreDash))],
            LineStyle.Moved => [Whole(points, new(StrokeRank.Change, colour))],
            _ => [Whole(points, new(StrokeRank.Medium, colour))],
        };
    }

    private static ImmutableArray<Point> WithoutRepeats(IReadOnlyList<Point> corners) => [.. corners.Where((p, i) => i == 0 || p != corners[i - 1])];

    private static PolylineShape Whole(ImmutableArray<Point> points, Pen pen) => new(points, false, pen, ColourRole.None);

    private static IEnumerable<Shape> Runs(ImmutableArray<Point> points, Pen pen) =>
        points.Zip(points.Skip(1)).Select(run => Shape.Polyline(pen with { Dash = pen.Dash.Fitted(run.First.To(run.Second)) }, run.First, run.Second));

    // Two runs that end at a corner leave a notch there; a small solid angle closes it.
    private static ImmutableArray<Shape> Dashed(ImmutableArray<Point> points, Pen pen)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(Runs(points, pen));
        for (int i = 1; i < points.Length - 1; i++)
            shapes.Add(Shape.Polyline(pen with { Dash = default }, Towards(points[i], points[i - 1]), points[i], Towards(points[i], points[i + 1])));
        return shapes.ToImmutable();
    }

    private static Point Towards(Point from, Point to)
    {
        double length = from.To(to), step = Math.Min(2, length);
        return new(from.X + ((to.X - from.X) * step / length), from.Y + ((to.Y - from.Y) * step / length));
    }
}
