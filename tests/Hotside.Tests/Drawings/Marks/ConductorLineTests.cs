using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Drawings.Marks;

public sealed class ConductorLineTests
{
    private static readonly Point[] Bent = [(0, 0), (0, 100), (70, 100), (70, 131)];

    [Theory]
    [InlineData(nameof(LineStyle.TakenOut))]
    [InlineData(nameof(LineStyle.WhereItLay))]
    public void Each_straight_run_of_a_broken_line_begins_and_ends_with_ink_and_corners_are_closed(string state)
    {
        PolylineShape[] shapes = [.. ConductorLine.Of(Bent, Enum.Parse<LineStyle>(state)).Cast<PolylineShape>()];
        Assert.Equal(3, shapes.Count(s => s.Points.Length == 2));
        foreach (PolylineShape run in shapes.Where(s => s.Points.Length == 2))
        {
            double length = run.Points[0].To(run.Points[1]), gaps = (length - run.Pen!.Dash.On) / (run.Pen.Dash.On + run.Pen.Dash.Off);
            Assert.Equal(Math.Round(gaps), gaps, 1e-6);
        }

        Assert.Equal([new Point(0, 100), new Point(70, 100)], shapes.Where(s => s.Points.Length == 3).Select(s => s.Points[1]));
    }

    [Fact]
    public void A_new_conductor_is_a_wide_line_with_a_core_of_paper()
    {
        var shapes = ConductorLine.Of(Bent, LineStyle.New);
        Assert.Equal([(StrokeRank.Change, ColourRole.New), (StrokeRank.Medium, ColourRole.Paper)], shapes.Select(s => (s.Pen!.Rank, s.Pen.Colour)));
    }

    [Fact]
    public void A_repeated_corner_is_drawn_once_and_a_single_point_not_at_all()
    {
        Assert.Empty(ConductorLine.Of([(5, 5), (5, 5)], LineStyle.TakenOut));
        Assert.Equal(2, ((PolylineShape)ConductorLine.Of([(5, 5), (5, 5), (9, 5)], LineStyle.Kept)[0]).Points.Length);
    }
}
