using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Tests.Symbols.Shapes;

public sealed class PlacingTests
{
    [Fact]
    public void A_mirrored_text_is_upright_and_ends_where_it_began()
    {
        TextShape text = TextShape.Of("87", Lettering.Normal.Small, 6, 12);
        var mirrored = (TextShape)text.At(new(0, 0, Mirrored: true));
        Assert.Equal(-text.Bounds.Left, mirrored.Bounds.Right, 1e-9);
        Assert.Equal(text.Bounds.Top, mirrored.Bounds.Top, 1e-9);
    }

    [Fact]
    public void A_text_turned_over_keeps_the_box_of_its_capitals()
    {
        TextShape text = TextShape.Of("87", Lettering.Normal.Small, 6, 12);
        var over = (TextShape)text.At(new(0, 0, TurnedOver: true));
        Assert.Equal(-12, over.Bounds.Top, 1e-9);
        Assert.Equal(-12 + 7.2, over.Place.Y, 1e-9);
    }

    [Fact]
    public void An_arc_bulges_to_the_other_side_in_a_mirror()
    {
        CurveShape arc = CurveShape.Open(Pen.Medium, (0, 0), new CurveStep((0, 10), 5, Clockwise: true));
        Assert.Equal(new Box(0, 0, 5, 10), arc.Bounds);
        Assert.Equal(new Box(-5, 0, 0, 10), arc.At(new(0, 0, Mirrored: true)).Bounds);
        Assert.Equal(new Box(0, -10, 5, 0), arc.At(new(0, 0, TurnedOver: true)).Bounds);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(226)]
    [InlineData(1000.5)]
    public void A_fitted_dash_begins_and_ends_with_ink(double length)
    {
        Dash dash = new Dash(9, 5).Fitted(length);
        double gaps = (length - dash.On) / (dash.On + dash.Off);
        Assert.Equal(Math.Round(gaps), gaps, 1e-6);
        Assert.InRange(dash.On, 6, 13);
    }

    [Fact]
    public void A_line_too_short_for_two_dashes_is_solid() => Assert.True(new Dash(9, 5).Fitted(12).IsSolid);
}
