using Hotside.Studies;

namespace Hotside.Tests.Studies;

public class SimpleVerdictTests
{
    private const string HornBefore = """
        6 V, positive
        G1 battery 6V
        X1 rail
        F2 fuse 1=X1
        H1 horn 6V 8A
        S1 push-button
        w1: G1.neg to X1
        w2: G1.pos to chassis
        w3: F2.2 to H1.1
        w4: H1.2 to S1.1
        w5: S1.2 to chassis
        """;

    private const string HornAfter = """
        12 V, negative
        G1 battery 12V
        X1 rail
        F2 fuse 1=X1
        H1 horn 12V 5A
        S1 push-button
        K1 relay 12V
        w1: G1.pos to X1
        w2: G1.neg to chassis
        w4: K1.85 to S1.1
        w5: S1.2 to chassis
        w6: H1.2 to chassis
        w7: K1.87 to H1.1
        w8: K1.30 to K1.86
        w9: F2.2 to K1.30
        """;

    [Fact]
    public void A_horn_whose_button_grounds_it_is_ground_switched()
    {
        var horn = TestCircuit.Study(HornBefore).Load("H1");
        Assert.Equal(SwitchedSide.GroundSwitched, horn.Side);
        Assert.Equal("S1 pressed", horn.Control.ToString());
        Assert.Equal(["S1"], horn.SwitchedBy);
        Assert.Empty(horn.Chain);
        Assert.Equal(["w1", "w3"], horn.Paths[0].Hot);
        Assert.Equal(["w4", "w5"], horn.Paths[0].Ground);
    }

    [Fact]
    public void A_relay_makes_it_hot_switched_and_its_coil_ground_switched()
    {
        var study = TestCircuit.Study(HornAfter);
        var horn = study.Load("H1.horn");
        Assert.Equal(SwitchedSide.HotSwitched, horn.Side);
        Assert.Equal("S1 pressed", horn.Control.ToString());
        Assert.Equal(["K1"], horn.Chain);
        Assert.Empty(horn.SwitchedBy);
        var coil = study.Load("K1");
        Assert.Equal(SwitchedSide.GroundSwitched, coil.Side);
        Assert.Equal(["S1"], coil.SwitchedBy);
        Assert.Empty(coil.Chain);
        Assert.Equal(["w1", "w9", "w8"], coil.Paths[0].Hot);
    }

    [Fact]
    public void A_load_that_does_not_exist_is_answered_with_the_nearest_that_does()
    {
        var study = TestCircuit.Study(HornBefore);
        Assert.Contains("did you mean \"H1\"?", Assert.Throws<ArgumentException>(() => study.Load("H2")).Message, StringComparison.Ordinal);
    }
}
