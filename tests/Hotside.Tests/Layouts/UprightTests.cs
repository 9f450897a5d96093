namespace Hotside.Tests.Layouts;

/// <summary>Current runs down: what is nearer to hot stands above what is nearer to the return.</summary>
public class UprightTests
{
    // What stands on the engine, which a generator and a starter stand on too, was once taken for hot.
    [Theory]
    [InlineData("van", "P3", "I", "S")]
    [InlineData("van", "P4", "I", "S")]
    [InlineData("tractor", "M1", "1", "case")]
    [InlineData("fuel-pump", "M1", "1", "case")]
    public void A_load_that_stands_on_the_engine_has_its_hot_end_above(string job, string part, string hot, string cold)
    {
        var drawn = LaidOutJob.OfGallery(job);
        Assert.True(drawn.Pin(part, hot).Y < drawn.Pin(part, cold).Y);
    }

    [Fact]
    public void A_fuse_between_the_feed_and_the_battery_hangs_from_the_feed()
    {
        var drawn = LaidOutJob.OfGallery("charging");
        Assert.True(drawn.Box("P1").Y < drawn.Box("F0").Y && drawn.Box("F0").Y < drawn.Box("G1").Y);
    }

    // All that its net has else lies above the field's terminal: no way round below the generator.
    [Fact]
    public void A_terminal_at_the_side_is_reached_from_where_its_conductor_comes()
    {
        var drawn = LaidOutJob.OfTests("more/tractor-magneto.yaml");
        var field = drawn.Pin("G2", "F");
        var wire = drawn.Plan.Input.Wires.Zip(drawn.Layout.Wires).First(w => w.Second.Points[0] == field || w.Second.Points[^1] == field);
        Assert.All(wire.Second.Points, p => Assert.True(p.Y <= field.Y));
    }

    [Fact]
    public void Where_slack_is_left_a_load_stands_on_the_chassis_row()
    {
        var drawn = LaidOutJob.OfGallery("tractor");
        var rows = new[] { "E1", "E4", "H1" }.Select(p => drawn.Layout.Memory!.Boxes[p].Row).Distinct();
        Assert.Single(rows);
    }
}
