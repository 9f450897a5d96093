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

    /// <summary>Whether its line has gaps.</summary>
    public static bool IsDashed(LineStyle state) => state is LineStyle.TakenOut or LineStyle.WhereItLay;

    /// <summary>Whether its line has the width of a change.</summary>
    public static bool IsThick(LineStyle state) => state is LineStyle.New or LineStyle.Renewed or LineStyle.Moved;

    /// <summary>The shapes of a line; every dash pattern is fitted to each straight run, so that it begins and ends with ink at pins, rails and corners.</summary>
    public static ImmutableArray<Shape> Of(IReadOnlyList<Point> corners, LineStyle state)
    {
        ColourRole colour = ColourOf(state);
        ImmutableArray<Point> points = WithoutRepeats(corners);
        if (points.Length < 2)
            return [];
        return state switch
        {
            LineStyle.TakenOut => DashedLine.Of(points, new(StrokeRank.Heavy, colour, OutDash)),
            LineStyle.WhereItLay => DashedLine.Of(points, new(StrokeRank.Heavy, colour, LayDash)),
            LineStyle.New => [Whole(points, new(StrokeRank.Change, colour)), Whole(points, new(StrokeRank.Medium, ColourRole.Paper))],
            LineStyle.Renewed => [Whole(points, new(StrokeRank.Change, colour)), .. DashedLine.Runs(points, new(StrokeRank.Medium, ColourRole.Paper, CoreDash))],
            LineStyle.Moved => [Whole(points, new(StrokeRank.Change, colour))],
            _ => [Whole(points, new(StrokeRank.Medium, colour))],
        };
    }

    private static ImmutableArray<Point> WithoutRepeats(IReadOnlyList<Point> corners) => [.. corners.Where((p, i) => i == 0 || p != corners[i - 1])];

    private static PolylineShape Whole(ImmutableArray<Point> points, Pen pen) => new(points, false, pen, ColourRole.None);
}
