using Hotside.Circuits;
using Hotside.Faults;
using Hotside.Tests.Sizing;

namespace Hotside.Tests.Faults;

/// <summary>
/// Single faults of two lamps behind a fuse, worked by hand and confirmed with ngspice; adiabatic heating by IEC 60364-4-43, the fuse's times by ISO 8820-3.
/// </summary>
public class FaultTests
{
    private static CircuitFaults Of(string conductor) => CircuitFaults.OfConductor(Job.Read(TwoLamps.Text()).OrThrow().Sizes.After, conductor);

    private static FaultStudy Fault(string conductor, FaultKind kind) => Of(conductor).Faults.Single(f => f.Kind == kind);

    [Fact]
    public void An_open_feed_takes_both_lamps_and_an_open_branch_one()
    {
        Assert.Equal([("E1", LoadEffect.Dead), ("E2", LoadEffect.Dead)], Fault("w2", FaultKind.Open).Loads.Select(l => (l.Load, l.Effect)));
        Assert.Equal([("E2", LoadEffect.Dead)], Fault("w5", FaultKind.Open).Loads.Select(l => (l.Load, l.Effect)));
    }

    [Fact]
    public void A_bad_joint_weakens_and_burns()
    {
        var joint = Fault("w2", FaultKind.BadJoint);
        Assert.Equal([("E1", LoadEffect.Weak), ("E2", LoadEffect.Weak)], joint.Loads.Select(l => (l.Load, l.Effect)));
        Assert.Equal(9.58494, joint.Loads[0].Now.Volts, 1e-4);
        Assert.Equal(12.10264, joint.Loads[0].Before.Volts, 1e-4);
        Assert.Equal(2.57757, joint.JointDrop.Volts, 1e-4);
        Assert.Equal(13.29, (double)joint.JointHeat.Watts, 0.005);
        Assert.True(joint.IsHotToTouch);
        Assert.Equal(["HS3152"], Of("w2").Findings.Select(f => f.Code));
    }

    // 12.6 V over 75.4574 mΩ; 144.51 A with the wires at 80 °C: 16.7 and 14.5 times 10 A, so at most 0.1 s.
    [Fact]
    public void A_short_behind_the_switch_opens_the_fuse_before_the_wire_takes_harm()
    {
        var fault = Fault("w3", FaultKind.ShortAtSecondEnd);
        Assert.Equal(166.98, fault.Current.Amperes, 0.01);
        Assert.Equal(144.51, fault.CurrentWhenHot!.Value.Amperes, 0.01);
        Assert.Equal(FaultEnd.Cleared, fault.End);
        var opening = Assert.Single(fault.Openings);
        Assert.Equal(("F1", 16.7), (opening.Part, Math.Round(opening.Multiple, 1)));
        Assert.Equal((0, 0.1), (opening.Earliest!.Value.Seconds, opening.Latest!.Value.Seconds));
        var strain = fault.Strains.Single(s => s.Conductor == "w3");
        Assert.Equal(2788.0, strain.LetThrough!.Value, 1.0);
        Assert.Equal(50_134.0, strain.Stands!.Value, 20.0);
        Assert.Equal(1.80, strain.Stands.Value / (166.98 * 166.98), 0.005);
        Assert.All(fault.Strains, s => Assert.Equal(Survival.Survives, s.Survival));
        Assert.Equal([LoadEffect.Dead, LoadEffect.Dead], fault.Loads.Select(l => l.Effect));
    }

    // 12.6 V over 87.5513 mΩ: 143.92 A, the other lamp beside it left out; 16 AWG: 2071 of 19 829 A²s.
    [Fact]
    public void A_short_at_the_lamp_leaves_the_thinner_branch_whole()
    {
        var fault = Fault("w4", FaultKind.ShortAtSecondEnd);
        Assert.Equal(143.92, fault.Current.Amperes, 1.0);
        var strain = fault.Strains.Single(s => s.Conductor == "w4");
        Assert.Equal(2071.0, strain.LetThrough!.Value, 30.0);
        Assert.Equal(19_829.0, strain.Stands!.Value, 10.0);
    }

    [Fact]
    public void Nothing_protects_the_lead_of_the_battery()
    {
        var fault = Fault("w1", FaultKind.ShortAtSecondEnd);
        Assert.Equal(FaultEnd.Unprotected, fault.End);
        Assert.Empty(fault.Openings);
        Assert.Equal(("w1", Survival.Melts), (fault.Strains[0].Conductor, fault.Strains[0].Survival));
        Assert.Contains("HS3150", Of("w1").Findings.Select(f => f.Code));
    }

    [Fact]
    public void A_return_is_at_the_chassis_already() =>
        Assert.DoesNotContain(FaultKind.ShortAtSecondEnd, Of("w6").Faults.Select(f => f.Kind));

    // A lamp in series with another that has lost its return: 0.823 V and 11.177 V on 12 V by I ∝ U^0.55, an own case worked by hand; the small voltage is outside the law's range.
    [Fact]
    public void A_lost_ground_lights_another_lamp()
    {
        var sizes = Job.Read("""
            hotside: 1
            title: Lost ground
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12.0001 V, 0.001 mohm, neg on chassis
              F1: fuse, 5 A
              S1: switch
              J1: splice
              E1: lamp, 12 V, 21 W
              E2: lamp, 12 V, 5 W, 1 on chassis
            wires:
              w1: G1.pos to F1.1, 0 ohm
              w2: F1.2 to S1.1, 0 ohm
              w3: S1.2 to E1.1, 0 ohm
              w4: E1.2 to J1, 0 ohm
              w5: J1 to E2.2, 0 ohm
              w6: J1 to chassis, 0 ohm
            """).OrThrow().Sizes.After;
        var lost = CircuitFaults.OfConductor(sizes, "w6").Faults.Single(f => f.Kind == FaultKind.Open);
        Assert.Equal([("E1", LoadEffect.Dead), ("E2", LoadEffect.OnThoughOff)], lost.Loads.Select(l => (l.Load, l.Effect)));
        Assert.Equal(11.177, Math.Abs(lost.Loads[1].Now.Volts), 0.05);
    }

    [Fact]
    public void A_grounded_button_wire_sounds_the_horn_and_no_fuse_opens()
    {
        var sizes = Job.Read("""
            hotside: 1
            title: Horn
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah, neg on chassis
              F1: fuse, 10 A
              H1: horn, 12 V, 5 A
              S1: push-button
            wires:
              w1: G1.pos to F1.1, 12 RD, 0.1 m
              w2: F1.2 to H1.1, 14 RD, 1 m
              w3: H1.2 to S1.1, 16 YE, 1 m
              w4: S1.2 to chassis, 16 BK, 0.2 m
            """).OrThrow().Sizes.After;
        var fault = CircuitFaults.Of(sizes, new Setting("at rest", [], [])).Faults.Single(f => f.Conductor.Id == "w3" && f.Kind == FaultKind.ShortAtFirstEnd);
        Assert.Equal([("H1", LoadEffect.OnThoughOff)], fault.Loads.Select(l => (l.Load, l.Effect)));
        Assert.Equal(FaultEnd.LimitedByLoads, fault.End);
        Assert.Empty(fault.Openings);
    }

    [Fact]
    public void A_fuse_that_is_far_too_large_lets_its_wire_burn()
    {
        var sizes = Job.Read(TwoLamps.Text().Replace("fuse, 10 A", "fuse, 100 A", StringComparison.Ordinal).Replace("16 RD, 0.9 m", "18 RD, 0.9 m", StringComparison.Ordinal)).OrThrow().Sizes.After;
        var fault = CircuitFaults.OfConductor(sizes, "w4").Faults.Single(f => f.Kind == FaultKind.ShortAtSecondEnd);
        Assert.True(fault.Strains.Single(s => s.Conductor == "w4").Survival >= Survival.Overheats);
        Assert.Contains("HS3151", CircuitFaults.OfConductor(sizes, "w4").Findings.Select(f => f.Code));
    }

    [Fact]
    public void A_bad_joint_without_resistance_and_an_unknown_wire_are_refused()
    {
        var sizes = Job.Read(TwoLamps.Text()).OrThrow().Sizes.After;
        Assert.Throws<ArgumentOutOfRangeException>(() => CircuitFaults.OfEach(sizes, UnitsNet.ElectricResistance.Zero));
        Assert.Throws<ArgumentException>(() => CircuitFaults.OfConductor(sizes, "w99"));
    }

    private static FuseOpening Opening(string device, string wire)
    {
        var sizes = Job.Read("hotside: 1\ntitle: One\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 10 mohm, neg on chassis\n"
            + $"  F1: {device}, 1 on G1.pos\n  E1: lamp, 12 V, 21 W, 2 on chassis\nwires:\n  w1: F1.2 to E1.1, {wire}\n").OrThrow().Sizes.After;
        return Assert.Single(CircuitFaults.OfConductor(sizes, "w1").Faults.Single(f => f.Kind == FaultKind.ShortAtSecondEnd).Openings);
    }

    // Breakers: 60 s at twice the rating (SAE J553), and I²·t is no more beyond it. Hot, a wire of 80 °C carries less than its 12.6 V / (10 mΩ + 20 mΩ).
    [Fact]
    public void A_breaker_and_a_glass_fuse_open_within_their_own_bands()
    {
        var breaker = Opening("breaker, 20 A", "14 RD, 20 mohm");
        Assert.Equal(12.6 / 0.03, breaker.Current.Amperes, 0.1);
        Assert.Equal((0, 60 * 4 / Math.Pow(12.6 / 0.03 / 20, 2)), (breaker.Earliest!.Value.Seconds, breaker.Latest!.Value.Seconds), (a, b) => a.Item1 == b.Item1 && Math.Abs(a.Item2 - b.Item2) < 1e-3);
        Assert.False(breaker.MayNeverOpen);
        // UL 248-14: 120 s at twice the rating; a blade of the same rating 0.1 s from six times on (ISO 8820-3).
        double glass = 12.6 / (0.01 + 0.02 + 0.0034);
        Assert.Equal(120 * 4 / Math.Pow(glass / 20, 2), Opening("fuse, 20 A, glass", "14 RD, 20 mohm").Latest!.Value.Seconds, 1e-2);
        Assert.Equal(0.1, Opening("fuse, 20 A", "14 RD, 20 mohm").Latest!.Value.Seconds, 1e-9);
    }

    // 18 AWG: 226²·ln(1317.5 / 264.5) · 0.823² A²s to melt without loss; Preece: 80 · 1.024^1.5 = 82.9 A.
    [Fact]
    public void A_fusible_link_melts_no_sooner_than_its_copper_can_and_below_its_current_perhaps_never()
    {
        double area = Math.PI / 4 * 1.0237 * 1.0237, melts = 80.0 * Math.Pow(1.0237, 1.5), amperes = 12.6 / 0.03;
        double least = 226 * 226 * Math.Log(1317.5 / 264.5) * area * area / amperes / amperes, x = Math.Pow(1.5 * melts / amperes, 2);
        var link = Opening("fusible-link, 18 AWG", "10 RD, 20 mohm");
        Assert.Equal(least, link.Earliest!.Value.Seconds, 0.01 * least);
        Assert.Equal(least * -Math.Log(1 - x) / x, link.Latest!.Value.Seconds, 0.02 * least);
        var slow = Opening("fusible-link, 18 AWG", "10 RD, 100 mohm");
        Assert.True(slow.MayNeverOpen);
        Assert.Null(slow.Latest);
    }

    // What a bound counts names no setting where loads may always be on; the faults are then shown where the wire carries most of what is asked for.
    [Fact]
    public void A_wire_of_a_vehicle_is_open_in_a_setting_in_which_it_carries_something()
    {
        var sizes = Job.Read(File.ReadAllText(Support.Repository.Path("gallery", "van", "job.yaml"))).OrThrow().Sizes.After;
        Assert.Contains("M1", CircuitFaults.OfConductor(sizes, "w1").Faults.Single(f => f.Kind == FaultKind.Open).Loads.Select(l => l.Load));
        Assert.Contains("E5", CircuitFaults.OfConductor(sizes, "w47").Faults.Single(f => f.Kind == FaultKind.Open).Loads.Select(l => l.Load));
        Assert.All(CircuitFaults.OfEach(sizes).Findings, f => Assert.NotEqual("HS3151", f.Code));
    }
}
