using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>A battery disconnect cuts everything; the side of a load is that of its own switch.</summary>
public class DisconnectTests
{
    private const string Siren = """
        12 V, negative
        G1 battery 12V
        Q1 disconnect
        X1 rail
        H1 horn 12V 4A
        S1 push-button
        E1 lamp 12V 10W
        E2 lamp 12V 10W
        S2 switch
        """;

    private const string Behind = """
        - X1 to H1.1
        - H1.2 to S1.1
        - S1.2 to chassis
        - X1 to E1.1
        - E1.2 to chassis
        - X1 to S2.1
        - S2.2 to E2.1
        - E2.2 to chassis
        """;

    [Theory]
    [InlineData("- G1.pos to Q1.1\n- Q1.2 to X1\n- G1.neg to chassis")]
    [InlineData("- G1.pos to X1\n- G1.neg to Q1.1\n- Q1.2 to chassis")]
    public void In_either_lead_it_leaves_a_load_the_side_of_its_own_switch(string leads)
    {
        var study = TestCircuit.Study($"{Siren}\n{leads}\n{Behind}");
        LoadStudy horn = study.Load("H1"), always = study.Load("E1"), hot = study.Load("E2");
        Assert.Equal((SwitchedSide.GroundSwitched, SwitchedSide.BothSides), (horn.Side, horn.SideWithDisconnects));
        Assert.Equal(["Q1"], horn.DisconnectedBy);
        Assert.Contains("S1", horn.SwitchedBy);
        Assert.Equal("Q1 on and S1 pressed", horn.Control.ToString());
        // Where nothing else is in the way it is the switch.
        Assert.Equal((SwitchedSide.HotSwitched, SwitchedSide.HotSwitched), (always.Side, always.SideWithDisconnects));
        Assert.Empty(always.DisconnectedBy);
        Assert.Equal((SwitchedSide.HotSwitched, SwitchedSide.HotSwitched), (hot.Side, hot.SideWithDisconnects));
        Assert.Equal(["Q1"], hot.DisconnectedBy);
    }

    [Fact]
    public void Any_other_switch_that_cuts_everything_colors_the_side()
    {
        var horn = TestCircuit.Study($"{Siren.Replace("Q1 disconnect", "Q1 switch", StringComparison.Ordinal)}\n- G1.pos to Q1.1\n- Q1.2 to X1\n- G1.neg to chassis\n{Behind}").Load("H1");
        Assert.Equal(SwitchedSide.BothSides, horn.Side);
        Assert.Empty(horn.DisconnectedBy);
    }

    [Fact]
    public void It_is_named_after_the_switch()
    {
        string text = TestCircuit.Study($"{Siren}\n- G1.pos to Q1.1\n- Q1.2 to X1\n- G1.neg to chassis\n{Behind}").Load("H1").Summary();
        Assert.Equal("ground-switched by S1 (behind Q1); on when Q1 on and S1 pressed", text);
    }
}
