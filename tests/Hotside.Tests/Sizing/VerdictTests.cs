using Hotside.Circuits;
using Hotside.Sizing;

namespace Hotside.Tests.Sizing;

/// <summary>What is said of conductors and fuses in small circuits.</summary>
public class VerdictTests
{
    private static CircuitSizes Sized(string parts, string wires, string system = "12 V, negative ground, sizes in AWG") => Job.Read($"""
        hotside: 1
        title: Small
        system: {system}
        parts:
          G1: battery, 12 V, 60 Ah, neg on chassis
        {Lines(parts)}
        wires:
        {Lines(wires)}
        """).OrThrow().Sizes.After;

    private static string Lines(string text) => string.Join('\n', text.Split('\n').Select(l => "  " + l.Trim()));

    // Printed in a marine catalogue, formula ABYC E-11 (from memory): bilge pump, 10 A, 21 ft in all, 12 V, 10 %: 16 AWG.
    [Fact]
    public void The_pump_of_the_catalogue_needs_sixteen_gauge_by_its_drop()
    {
        var w1 = Sized("M1: pump-under-test, 12 V, 10 A, 2 on chassis".Replace("pump-under-test", "heater", StringComparison.Ordinal), "w1: G1.pos to M1.1, 16 RD, 6.4008 m").Conductor("w1");
        Assert.Equal(WireSize.Awg(16), w1.By(SizingRule.Drop)!.LeastSize);
    }

    [Fact]
    public void Low_and_high_beam_are_not_on_together()
    {
        var sizes = Sized("F1: fuse, 15 A\nS1: switch\nS2: dimmer\nE1: headlamp, 12 V, 60/55 W, 31 on chassis",
            "w1: G1.pos to F1.1, 12 RD, 0.1 m\nw2: F1.2 to S1.1, 14 RD, 1 m\nw3: S1.2 to S2.56, 14 RD, 1 m\nw4: S2.56a to E1.56a, 14 WH, 1 m\nw5: S2.56b to E1.56b, 14 YE, 1 m");
        double high = 5 * Math.Pow(14.3 / 12, 0.541);
        Assert.Equal(high, sizes.Conductor("w2").Current.Amperes, 1e-3);
        Assert.Equal(high, sizes.Conductor("w4").Current.Amperes, 1e-3);
        Assert.Equal("headlamp", sizes.Conductor("w4").Tightest!.Limit.Circuit);
        Assert.Equal(0.5, sizes.Conductor("w4").DropLimit!.Value.Volts, 1e-9);
    }

    [Theory]
    [InlineData(15, 25, 15, "F1")]
    [InlineData(25, 15, 15, "F2")]
    [InlineData(20, 20, 20, "F2")]
    public void Of_two_fuses_one_behind_the_other_the_smaller_guards(int first, int second, double amperes, string guards)
    {
        var w3 = Sized($"F1: fuse, {first} A\nF2: fuse, {second} A\nE1: lamp, 12 V, 21 W, 2 on chassis", "w1: G1.pos to F1.1, 12 RD, 0.1 m\nw2: F1.2 to F2.1, 12 RD, 1 m\nw3: F2.2 to E1.1, 14 RD, 1 m").Conductor("w3");
        Assert.Equal((guards, amperes), (string.Join(' ', w3.ProtectedBy), w3.Protection!.Value.Amperes));
    }

    // A ring: current comes from both sides, each through a fuse of its own, and both through the first.
    [Theory]
    [InlineData(30, 20, "F2 F3")]
    [InlineData(10, 10, "F1")]
    public void Fuses_beside_each_other_let_through_what_both_do_but_no_more_than_the_one_before_them(int first, double amperes, string guards)
    {
        var w5 = Sized($"F1: fuse, {first} A\nF2: fuse, 10 A\nF3: fuse, 10 A\nX1: splice\nE1: lamp, 12 V, 21 W, 2 on chassis",
            "w1: G1.pos to F1.1, 12 RD, 0.1 m\nw2: F1.2 to F2.1, 12 RD, 1 m\nw3: F1.2 to F3.1, 12 RD, 1 m\nw4: F2.2 to X1, 14 RD, 1 m\nw6: F3.2 to X1, 14 RD, 1 m\nw5: X1 to E1.1, 14 RD, 1 m").Conductor("w5");
        Assert.Equal((guards, amperes), (string.Join(' ', w5.ProtectedBy), w5.Protection!.Value.Amperes));
    }

    [Fact]
    public void A_horn_may_use_the_whole_rating_of_its_fuse()
    {
        var f1 = Sized("F1: fuse, 10 A\nS1: push-button\nH1: horn, 12 V, 8 A", "w1: G1.pos to F1.1, 12 RD, 0.1 m\nw2: F1.2 to H1.1, 14 RD, 1 m\nw3: H1.2 to S1.1, 14 RD, 1 m\nw4: S1.2 to chassis, 14 BK, 0.2 m").FusesOf("F1").Single();
        Assert.Equal(f1.Current, f1.LeastRating);
        Assert.Equal(SizingOutcome.Passed, f1.Carries);
    }

    [Fact]
    public void Two_ways_share_a_current_that_is_enumerated()
    {
        var sizes = Sized("S1: switch\nE1: lamp, 12 V, 21 W, 2 on chassis", "w1: G1.pos to S1.1, 14 RD, 1 m\nw2: S1.2 to E1.1, 14 RD, 1 m\nw3: S1.2 to E1.1, 14 RD, 3 m");
        Assert.Equal(CurrentBasis.Enumerated, sizes.Conductor("w2").Basis);
        // By their lengths: three quarters and one.
        Assert.Equal(3, sizes.Conductor("w2").Current / sizes.Conductor("w3").Current, 1e-6);
        Assert.Equal(CurrentBasis.Bound, sizes.Conductor("w1").Basis);
    }

    [Fact]
    public void A_machine_charges_through_its_lead_as_much_as_it_gives()
    {
        var w1 = Sized("G2: alternator, 12 V, 45 A\nF1: fuse, 60 A\nE1: lamp, 12 V, 5 W, 2 on chassis", "w1: G2.B+ to F1.1, 6 RD, 1 m\nw2: F1.2 to G1.pos, 6 RD, 0.1 m\nw3: F1.1 to E1.1, 16 RD, 1 m").Conductor("w2");
        Assert.Equal(45, w1.Current.Amperes);
        Assert.True(w1.IsUnprotected);
    }

    [Fact]
    public void What_lies_behind_two_fuses_is_guarded_by_the_nearer()
    {
        var sizes = Sized("F0: fuse, 40 A\nX1: feed-rail\nF1: fuse, 10 A, 1 on X1\nE1: lamp, 12 V, 21 W", "w1: G1.pos to F0.1, 8 RD, 0.1 m\nw2: F0.2 to X1, 8 RD, 1 m\nw3: F1.2 to E1.1, 16 RD, 1 m\nw4: E1.2 to chassis, 16 BK, 1 m");
        Assert.Equal(["F0"], sizes.Conductor("w2").ProtectedBy);
        Assert.Equal(["F1"], sizes.Conductor("w3").ProtectedBy);
        Assert.True(sizes.Conductor("w1") is { IsUnprotected: true, IsHot: true, FeedsStarter: false });
        Assert.True(sizes.Conductor("w4") is { IsHot: false, ProtectedBy.IsEmpty: true });
        Assert.Equal("w3", sizes.FusesOf("F1").Single().Thinnest!.Id);
    }

    // Common practice, no source: a link is four gauge numbers thinner than the wire it protects, 14 for 10.
    [Fact]
    public void A_fusible_link_is_four_gauge_numbers_thinner_than_its_wire()
    {
        var sizes = Sized("F1: fusible-link, 14 AWG\nR1: heater, 12 V, 20 A, 2 on chassis", "w1: G1.pos to F1.1, 10 RD, 0.1 m\nw2: F1.2 to R1.1, 12 RD, 1 m");
        Assert.Equal(WireSize.Awg(10), sizes.Conductor("w2").By(SizingRule.Fuse)!.LeastSize);
        Assert.True(sizes.Conductor("w2").By(SizingRule.Fuse)!.Outcome >= SizingOutcome.Warning);
        Assert.Equal(WireSize.Awg(16), sizes.FusesOf("F1").Single().LinkNeeded);
    }

    [Fact]
    public void A_wire_without_a_size_gets_the_one_that_it_needs()
    {
        var sizes = Sized("F1: fuse, 30 A\nR1: heater, 12 V, 20 A, 2 on chassis", "w1: G1.pos to F1.1, 8 RD, 0.1 m\nw2: F1.2 to R1.1, 2 m", "12 V, negative ground, sizes in AWG, insulation GXL");
        Assert.Equal(SizingOutcome.NotJudged, sizes.Conductor("w2").Verdict);
        // 33 CFR 183.425, 125 °C: 16 AWG carries 30 A.
        Assert.Equal(WireSize.Awg(16), sizes.Conductor("w2").SizeNeeded);
        var longer = Sized("F1: fuse, 30 A\nR1: heater, 12 V, 20 A, 2 on chassis", "w1: G1.pos to F1.1, 8 RD, 0.1 m\nw2: F1.2 to R1.1, 13 m", "12 V, negative ground, sizes in AWG, insulation GXL").Conductor("w2");
        // 12.6 V over 0.6 Ω, 10 mΩ of the battery and 13 m of 12 AWG (5.3 mΩ/m, NBS Circular 31, times 1.02) drive 18.5 A, which lose 1.28 V of 1.2 V.
        Assert.Equal(WireSize.Awg(10), longer.SizeNeeded);
        Assert.Equal(SizingRule.Drop, longer.Binding);
    }

    [Fact]
    public void Metric_sizes_climb_their_own_ladder()
    {
        var w2 = Sized("F1: fuse, 30 A\nR1: heater, 12 V, 20 A, 2 on chassis", "w1: G1.pos to F1.1, 6 RD, 0.1 m\nw2: F1.2 to R1.1, 1.5 RD, 1 m", "12 V, negative ground, sizes in mm²").Conductor("w2");
        // 60 °C: 30 A of fuse need the row of 10 AWG (40 A), which serves 6 mm².
        Assert.Equal(WireSize.SquareMillimetres(6), w2.SizeNeeded);
        Assert.Equal(SizingOutcome.Failed, w2.Verdict);
    }

    [Fact]
    public void A_lead_that_is_too_thin_by_itself_only_warns_of_its_strength()
    {
        var sizes = Sized("F1: fuse, 3 A\nE1: lamp, 12 V, 2 W, 2 on chassis", "w1: G1.pos to F1.1, 16 RD, 0.1 m\nw2: F1.2 to E1.1, 18 RD, 1 m\nw3: F1.2 to E1.1, 18 RD, 0.15 m");
        Assert.Equal(SizingOutcome.Warning, sizes.Conductor("w2").By(SizingRule.Strength)!.Outcome);
        Assert.Equal(WireSize.Awg(16), sizes.Conductor("w2").By(SizingRule.Strength)!.LeastSize);
        // A pigtail of less than 7 inches needs no least size (33 CFR 183.425).
        Assert.Equal(SizingOutcome.Passed, sizes.Conductor("w3").By(SizingRule.Strength)!.Outcome);
    }

    [Fact]
    public void Cranking_is_judged_by_its_own_drop_and_needs_no_fuse()
    {
        var sizes = Sized("K1: starter-relay-internal, 12 V, 300 A, coil 4 A\nM1: starter, 12 V, 250 A, case on chassis\nS1: push-button",
            "w1: G1.pos to K1.BAT, 2/0 RD, 1.5 m\nw2: K1.MOT to M1.1, 2/0 RD, 0.6 m\nw3: K1.S to S1.1, 16 YE, 1 m\nw4: S1.2 to chassis, 16 BK, 0.2 m");
        var w2 = sizes.Conductor("w2");
        Assert.True(w2.FeedsStarter);
        Assert.Equal(0, w2.Current.Amperes);
        Assert.Equal("M1", w2.DropOf);
        // TM 10-3930-671-24: 0.2 V for each 100 A; 250 A over 2.1 m of solid 2/0 lose 0.134 V by the copper tables, stranded 1.02 times that.
        Assert.Equal(0.5, w2.DropLimit!.Value.Volts, 0.005);
        Assert.Equal(0.134 * 1.02, w2.Drop!.Value.Volts, 0.004);
        Assert.Equal(SizingOutcome.Passed, w2.By(SizingRule.Drop)!.Outcome);
    }

    [Fact]
    public void High_voltage_and_resistance_wires_have_no_size()
    {
        var sizes = Sized("T1: ignition-coil, 12 V, 3.4 ohm\nS9: distributor, case on chassis", "w1: G1.pos to T1.15, 14 RD, 1 m, 1.5 ohm\nw2: T1.1 to S9.1, 16 BK, 0.4 m\nw3: T1.4 to S9.4, high-voltage lead, 0.4 m");
        Assert.Equal(SizingRefusal.ResistanceWire, sizes.Conductor("w1").Refusal);
        Assert.Equal(SizingRefusal.IgnitionSecondary, sizes.Conductor("w3").Refusal);
        Assert.Null(sizes.Conductor("w3").SizeNeeded);
        Assert.Equal(["HS3103"], sizes.Findings.Select(f => f.Code));
    }

    [Fact]
    public void The_engine_space_and_the_loom_lower_what_a_wire_may_carry()
    {
        var w1 = Sized("R1: heater, 12 V, 20 A, 2 on chassis", "w1: G1.pos to R1.1, 10 RD, 1 m, at engine bay, insulation GXL").Conductor("w1");
        // 33 CFR 183.425: 70 A at 125 °C, 0.89 in an engine space.
        Assert.Equal(62.3, w1.Ampacity!.Value.Amperes, 1e-9);
    }
}
