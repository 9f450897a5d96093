using Hotside.Drawings.Marks;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Tests.Drawings.Marks;

public sealed class MarksTests
{
    private static readonly ChangeNumber Eleven = new("11", ColourRole.New);

    public static TheoryData<string> LongNames => [
        "Horn", "", "Scheinwerferreinigungsanlagenrelaishalterung", "Etulasinpyyhkijän pesulaitteen releen pistoke",
        string.Concat(Enumerable.Repeat("Long name of a part ", 5))[..90], new string('W', 10_000), "👩‍🔧 \u202E <b>&", string.Concat(Enumerable.Repeat("a ", 5_000))];

    [Theory]
    [MemberData(nameof(LongNames))]
    public void A_text_block_holds_whatever_is_written_in_it_without_overlaps(string name)
    {
        foreach (bool right in (bool[])[false, true])
        {
            foreach (Lettering lettering in (Lettering[])[Lettering.Normal, Lettering.Large])
            {
                TextBlock block = new()
                {
                    Reference = "K1", Number = Eleven, Name = name, Ratings = [name, "12 V"], StateWord = "replaced", Side = SwitchedSide.BothSides, SideText = "SWITCHED BOTH SIDES", By = name,
                    RightAligned = right, Lettering = lettering, MaxWidth = 130,
                };
                Piece piece = block.Measure();
                Box box = new(0, 0, piece.Width, piece.Height);
                Assert.All(piece.Shapes, s => Assert.True(box.Contains(s.Bounds, 0.05), $"{s}"));
                Assert.True(piece.Width < 300);
                Texts.LieApart(piece.Shapes);
            }
        }
    }

    [Fact]
    public void A_right_aligned_block_ends_in_one_line()
    {
        Piece piece = new TextBlock { Reference = "M1", Name = "Starter motor", Ratings = ["6 V series motor"], RightAligned = true }.Measure();
        Assert.All(piece.Shapes.OfType<TextShape>(), t => Assert.Equal(piece.Width, t.Bounds.Right, 1e-6));
    }

    [Fact]
    public void A_shortened_text_keeps_the_whole_for_the_reader()
    {
        string name = string.Concat(Enumerable.Repeat("Scheinwerfer ", 60)).Trim();
        Piece piece = new TextBlock { Reference = "E1", Name = name }.Measure();
        Assert.Contains(piece.Shapes.OfType<TextShape>(), t => t.Whole == name);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("45")]
    [InlineData("128")]
    public void A_number_lies_inside_its_triangle(string number)
    {
        Piece piece = Triangle.Of(new(number, ColourRole.Out), Lettering.Normal);
        Box text = piece.Shapes.OfType<TextShape>().Single().Bounds;
        // At the figures' tops the sides are furthest in.
        double half = piece.Width / 2 * (text.Top / piece.Height);
        Assert.True((piece.Width / 2) - half < text.Left && text.Right < (piece.Width / 2) + half);
    }

    [Fact]
    public void A_wire_label_has_its_triangle_next_to_the_wire()
    {
        Piece left = WireLabel.Of("14 RD", Eleven, LabelSide.Left, Lettering.Normal), right = WireLabel.Of("14 RD", Eleven, LabelSide.Right, Lettering.Normal);
        Assert.Equal(left.Width, right.Width, 1e-9);
        Assert.Equal(left.Width, Triangles(left).Bounds.Right, 1e-9);
        Assert.Equal(0, Triangles(right).Bounds.Left, 1e-9);
        Assert.Equal(Baselines(left), Baselines(right));
        Assert.Single(Baselines(left));
    }

    [Fact]
    public void The_bar_of_a_badge_lies_on_the_side_of_the_switch()
    {
        static int[] Bars(SwitchedSide v) => [.. Badge.Of(v, "ON", Lettering.Normal).Shapes.OfType<PolylineShape>().Select(p => p.Points[0].Y < 10 ? 1 : -1)];
        Assert.Equal([1], Bars(SwitchedSide.HotSwitched));
        Assert.Equal([-1], Bars(SwitchedSide.GroundSwitched));
        Assert.Equal([1, -1], Bars(SwitchedSide.BothSides));
        Assert.Empty(Bars(SwitchedSide.Unswitched));
        Dash Outline(SwitchedSide v) => Badge.Mini(v).Shapes[0].Pen!.Dash;
        Assert.Equal(3, new[] { SwitchedSide.Unswitched, SwitchedSide.InSeries, SwitchedSide.Dead }.Select(Outline).Distinct().Count());
    }

    [Theory]
    [InlineData(nameof(FlagTip.Right))]
    [InlineData(nameof(FlagTip.Left))]
    [InlineData(nameof(FlagTip.Down))]
    [InlineData(nameof(FlagTip.Up))]
    public void A_flag_has_its_text_inside_and_tip_and_back_on_opposite_sides(string tip)
    {
        Flag flag = Flag.Of("30 · fuse box", Enum.Parse<FlagTip>(tip), Lettering.Normal);
        Box text = flag.Piece.Shapes.OfType<TextShape>().Single().Bounds;
        Assert.True(new Box(0, 0, flag.Piece.Width, flag.Piece.Height).Contains(text));
        Assert.True(flag.Tip.X == flag.Back.X || flag.Tip.Y == flag.Back.Y);
        Assert.Contains(flag.Tip, ((PolylineShape)flag.Piece.Shapes[0]).Points);
    }

    [Fact]
    public void A_rail_reaches_a_module_past_its_taps() => Assert.Equal(new Box(130, 140, 320, 140), Rail.Line(140, 310, 140)[0].Bounds);

    private static PolylineShape Triangles(Piece piece) => piece.Shapes.OfType<PolylineShape>().Single();

    private static List<double> Baselines(Piece piece) => [.. piece.Shapes.OfType<TextShape>().Select(t => t.Place.Y).Distinct()];
}
