using Hotside.Drawings.Pictures;

namespace Hotside.Tests.Drawings.Pictures;

/// <summary>A joint whose wires meet in several places is a bar through them.</summary>
public class JointBarTests
{
    [Fact]
    public void Three_wires_that_meet_in_one_place_need_no_bar() =>
        Assert.Empty(JointBars.Of([[(5, 0), (5, 4)], [(5, 4), (5, 9)], [(5, 4), (9, 4), (9, 9)]]));

    [Fact]
    public void The_bar_ends_where_the_last_two_wires_part() =>
        Assert.Equal([(2, 4), (9, 4)], Assert.Single(JointBars.Of([[(2, 0), (2, 4)], [(2, 4), (5, 4), (5, 9)], [(2, 4), (9, 4), (9, 9)], [(2, 4), (14, 4), (14, 9)]])));

    [Fact]
    public void A_step_aside_belongs_to_the_bar_and_a_common_lead_does_not()
    {
        var bars = JointBars.Of([[(0, 4), (4, 4), (4, 6), (8, 6), (8, 9)], [(0, 4), (4, 4), (4, 6), (12, 6), (12, 9)], [(0, 4), (4, 4), (4, 6), (8, 6), (8, 12)]]);
        Assert.Equal([[(0, 4), (4, 4)], [(4, 6), (8, 6)], [(4, 4), (4, 6)]], bars);
    }
}
