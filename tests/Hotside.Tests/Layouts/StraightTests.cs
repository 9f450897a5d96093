using Hotside.Layouts;

namespace Hotside.Tests.Layouts;

/// <summary>No part stands beside where its line would run straight if a text on the other side, or less white, would do.</summary>
public class StraightTests
{
    private const string Shutdown = """
        hotside: 1
        title: Shutdown relay
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V, 70 Ah
          F1: fuse, 20 A
          S1: switch, Run, 10 A
          S4: temperature-switch, Water hot
          H2: warning-lamp, Hot, 12 V, 2 W
          Y1: solenoid, Fuel cut-off, 12 V, 1.5 A
          E1: lamp, Panel, 12 V, 5 W
        wires:
          w1: G1.pos to F1.1, 12 RD
          w2: G1.neg to chassis, 1/0 BK
          w6: F1.2 to S1.1, 14 RD
          w11: S1.2 to H2.1, 16 GN
          w12: H2.2 to S4.1, 16 GY
          w13: S1.2 to Y1.1, 14 GN
          w14: Y1.2 to chassis, 14 BK
          w16: S1.2 to E1.1, 16 GN
          w17: E1.2 to chassis, 16 BK
        alteration:
          title: Shutdown relay
          changes:
            - fit K2: relay-break, Shutdown relay, 12 V, 20 A, coil 0.15 A
            - move w13: S1.2 to K2.87a
            - run w20: S1.2 to K2.30, 14 GN
            - run w21: S1.2 to K2.86, 16 GN
            - run w22: K2.85 to S4.1, 16 GY
        """;

    // Its text on the right kept it two columns from the coil that it switches.
    [Fact]
    public void A_relay_turns_its_text_to_stand_above_what_it_switches() => Assert.Equal(LaidOutJob.Of(Shutdown).Pin("K2", "87a").X, LaidOutJob.Of(Shutdown).Pin("Y1", "1").X);

    [Theory]
    [InlineData("trailer")]
    [InlineData("headlamps")]
    [InlineData("launch")]
    [InlineData("turn-signals")]
    public void A_drawing_gets_no_bends_by_being_stretched(string job)
    {
        var drawn = LaidOutJob.OfGallery(job);
        var wide = Layout.Of(drawn.Plan.Input, new() { FillWidth = drawn.Layout.Width * 3 / 2 });
        var (before, after) = (drawn.Measure, BenchMeasure.Of(drawn.Plan.Input, wide));
        Assert.True(after.Bends + after.Crossings <= before.Bends + before.Crossings, $"{after} for {before}");
        Assert.True(wide.Width >= drawn.Layout.Width);
    }
}
