using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Tests.Alterations;
using Hotside.Wording;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Wording;

public class CautionTests
{
    [Fact]
    public void Turning_a_six_volt_system_round_calls_for_the_whole_list() =>
        Assert.Equal(
            """
            This list is an aid: the workshop manual, local codes and licensed practice come first.
            Rings, watch and chains off; eye protection on. Air the place, no flame and no spark near the battery: it gives off hydrogen.
            Wheels chocked, out of gear, brake on. The battery is out before any wire is moved; prove the wiring dead with a meter that was proved on a known source.
            Before work: the grounded cable comes off first (w2). On this vehicle that is the one on the positive post of G1; a slipped wrench on the other post then meets a chassis that leads nowhere.
            Clean and tighten w4 first: all current of M1 goes back through the ground strap of engine.
            A new feed gets its fuse before it gets its other end.
            M1 stays and now gets more than the rated voltage: a few seconds at a time, then let it cool.
            Mark the new positive cable, w1, as such and the other as negative: they have traded posts. The positive post is the thicker one, so the old clamps cannot trade places.
            Check the polarity at the posts with a meter before the cables go back on; never trust the colour of a cable.
            After work: the grounded cable is now the one on the negative post of G1, no longer on the positive one. It goes on last (w2), after the hot one; the first time through a fuse of 5 to 10 A or a lamp in series, with an eye on a voltmeter.
            Label the battery tray, the filler and the charging point: 12 V, NEGATIVE GROUND. Old bulbs and fuses leave the vehicle.
            """, string.Join('\n', Cautions.Of(Samples.StarterAltered(), Words.American).Select(c => c.Text)));

    // TM 10-3930-671-24: on a negative-ground vehicle the negative cable comes off first.
    [Fact]
    public void The_grounded_cable_is_named_by_the_polarity_of_the_vehicle_at_hand()
    {
        Assert.Contains("the one on the positive post of G1;", Texts(Made(Samples.Horn(), TakeOut("w3"))), StringComparison.Ordinal);
        Assert.Contains("After work: the cable on the positive post of G1 goes on last (w2)", Texts(Made(Samples.Horn(), TakeOut("w3"))), StringComparison.Ordinal);
        var negative = Made(Samples.HornAltered().After, TakeOut("w9"));
        Assert.Contains("the one on the negative post of G1;", Texts(negative), StringComparison.Ordinal);
        Assert.DoesNotContain("positive", Texts(negative), StringComparison.Ordinal);
    }

    [Fact]
    public void An_alternator_never_runs_without_its_battery_and_is_never_polarised()
    {
        string text = Texts(Made(Samples.Horn(), Fit("G3", TestKinds.Alternator, "12 V")), Words.British);
        Assert.Contains("Never run G3 with the battery off", text, StringComparison.Ordinal);
        Assert.Contains("Never polarise G3: an alternator takes its polarity from the battery", text, StringComparison.Ordinal);
        Assert.DoesNotContain("G3", Texts(Made(Samples.Horn(), TakeOut("w3"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_generator_that_stays_is_polarised_once_the_system_is_turned_round()
    {
        var before = Made(Samples.Horn(), Fit("G2", TestKinds.Generator, "6 V")).After;
        Assert.Contains("Polarize G2 as its manual says", Texts(Made(before, ReplaceReversed("G1", TestKinds.Battery, "6 V"))), StringComparison.Ordinal);
        Assert.DoesNotContain("Polarize", Texts(Made(before, TakeOut("w3"))), StringComparison.Ordinal);
    }

    [Fact]
    public void What_wrong_polarity_destroys_is_named()
    {
        string text = Texts(Made(Samples.Horn(), Fit("N1", TestKinds.Reducer, "12 V")));
        Assert.Contains("N1: the wrong polarity destroys it. Ground before feed", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_engine_without_a_strap_is_told_of()
    {
        string text = Texts(Made(Samples.Starter(), TakeOut("w4")));
        Assert.Contains("engine has no strap to the chassis: fit one before M1 is used", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Brittle_wires_that_are_touched_may_give_off_dust()
    {
        var before = Made(Samples.Horn(), Run("w9", "X1", "chassis", "14 BK brittle")).After;
        Assert.Contains("no dust when handling w9", Texts(Made(before, TakeOut("w9"))), StringComparison.Ordinal);
        Assert.DoesNotContain("dust", Texts(Made(before, TakeOut("w3"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_boat_takes_the_cable_of_its_return_off_first()
    {
        var boat = new CircuitBuilder(ElectricPotential.FromVolts(12), Ground.Isolated, "X2").Part("G1", TestKinds.Battery).Part("X2", TestKinds.FeedRail)
            .Wire("w1", "G1.neg", "X2").Build();
        string text = Texts(Made(boat, Fit("F1", TestKinds.Fuse)));
        Assert.Contains("take the cable off the negative post of G1, the return, first (w1)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("chassis", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_do_needs_no_caution() => Assert.Empty(Cautions.Of(Made(Samples.Horn()), Words.American));

    private static string Texts(Alteration alteration, Words words = Words.American) => string.Join('\n', Cautions.Of(alteration, words).Select(c => c.Text));
}
