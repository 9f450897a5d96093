using Hotside.Alterations;

namespace Hotside.Tests.Alterations;

public class EditListTests
{
    [Fact]
    public void The_horn_list_makes_the_circuit_that_the_reference_sheet_shows()
    {
        var after = Samples.HornAltered().After;
        Assert.Equal(
            """
            12 V, negative ground
            G1: battery, V=12 V, Ah=60 Ah
            X1: feed-rail, Battery feed
            F2: fuse, A=10 A, 1 on X1.1
            H1: horn, V=12 V, A=5 A
            S1: push-button, Horn button
            K1: relay, Horn relay, V=12 V, A=30 A, coil A=0.15 A
            w1: G1.pos to X1.1, 2 BK, 0.6 m
            w2: G1.neg to chassis, 2 BK, 0.5 m
            w4: K1.85 to S1.1, 16 YE, 1.1 m
            w5: S1.2 to chassis, 16 BK, 0.2 m
            w6: H1.2 to chassis, 14 BK, 0.4 m
            w7: K1.87 to H1.1, 14 GN, 0.9 m
            w8: K1.30 to K1.86, 16 RD, 0.1 m
            w9: F2.2 to K1.30, 14 RD, 0.2 m
            """, CircuitText.Of(after));
        Assert.True(Assert.Single(after.Sources).PlusIsFeed);
        Assert.Equal(["horn pressed"], after.Settings.Select(s => s.Name));
    }

    [Fact]
    public void The_horn_list_keeps_its_order_and_says_nothing()
    {
        var result = Lines.Apply(Samples.Horn(), Samples.TwelveNegative, Samples.HornLines());
        Assert.Empty(Lines.Problems(result));
        Assert.Equal(["w3", "F2", "H1", "K1", "w4", "w6", "w7", "w8", "w9", "G1"], result.Alteration!.Changes.Select(c => c.Acts[0].Items[0]));
        Assert.Equal(Enumerable.Range(1, 10), result.Alteration.Changes.Select(c => c.Number));
        Assert.Equal("S1 then carries 0.15 A, not 8 A", result.Alteration.Changes[3].Reason);
    }

    [Fact]
    public void Every_item_of_the_horn_circuit_has_the_state_that_its_line_gives_it()
    {
        var horn = Samples.HornAltered();
        Assert.Equal(PartState.ReplacedReversed, horn.StateOf("G1"));
        Assert.Equal(PartState.Left, horn.StateOf("X1"));
        Assert.Equal(PartState.Replaced, horn.StateOf("F2"));
        Assert.Equal(PartState.Fitted, horn.StateOf("K1"));
        Assert.Equal(PartState.Left, horn.StateOf("S1"));
        Assert.Equal(ConductorState.LeftAsIs, horn.StateOfConductor("w1"));
        Assert.Equal(ConductorState.TakenOut, horn.StateOfConductor("w3"));
        Assert.Equal(ConductorState.Moved, horn.StateOfConductor("w4"));
        Assert.Equal(ConductorState.RunNew, horn.StateOfConductor("w6"));
        Assert.Equal([5], horn.NumbersOf("w4"));
        Assert.Empty(horn.NumbersOf("w5"));
    }

    [Fact]
    public void The_starter_list_carries_wires_over_by_its_map_and_bolts_the_fuse_to_the_new_terminal()
    {
        var starter = Samples.StarterAltered();
        Assert.Equal(
            """
            12 V, negative ground
            G1: battery, V=12 V, Ah=60 Ah
            engine: metal, Engine block
            K2: starter-relay, Starter relay, V=12 V, coil A=4 A
            M1: starter, A=180 A, V=6 V, case on engine.1
            S2: push-button, Starter button
            F0: fuse, Main fuse, A=50 A
            A1: elsewhere, Fuse box
            F1: fuse, A=5 A, 1 on K2.30
            w1: G1.pos to K2.30, 1/0 BK, 0.7 m
            w2: G1.neg to chassis, 1/0 braid, 0.4 m
            w3: K2.87 to M1.1, 1/0 BK, 0.6 m
            w4: engine.1 to chassis, 1/0 braid, 0.3 m, 0.0004 ohm
            w5: K2.85 to S2.1, 16 YE, 1.2 m
            w6: S2.2 to chassis, 16 BK, 0.2 m
            w7: K2.30 to F0.1, 8 BN, 0.15 m
            w8: F0.2 to A1.30, 8 BN, 2.1 m
            w10: F1.2 to K2.86, 16 RD, 0.1 m
            """, CircuitText.Of(starter.After));
        Assert.Equal(ConductorState.LeftAsIs, starter.StateOfConductor("w5"));
        Assert.Equal([4], starter.NumbersOf("M1"));
        Assert.Equal(PartState.Left, starter.StateOf("M1"));
    }
}
