using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Tests.Support;

namespace Hotside.Tests.Sizing;

/// <summary>
/// Two lamps behind a fuse and a switch, sized by hand figure by figure: 33 CFR 183.425 for ampacity with the guideline's factor for five live wires in a loom, 33 CFR 183.455
/// and NFPA 70, 210.20(A) for the fuse, ISO 8820-3 for its times, ABYC E-11 for the drop. Volts were confirmed with ngspice.
/// </summary>
public class WorkedExampleTests
{
    private const string InLoom = ", loom dashboard";

    private static CircuitSizes Sized(string text) => Job.Read(text).OrThrow().Sizes.After;

    [Fact]
    public void The_current_of_the_feed_is_that_of_both_lamps_at_the_volts_of_the_running_vehicle()
    {
        var w2 = Sized(TwoLamps.Text()).Conductor("w2");
        Assert.Equal(6.4239, w2.Current.Amperes, 5e-5);
        Assert.Equal(CurrentBasis.Bound, w2.Basis);
        Assert.Equal([new SetPosition("S1", "lever", "on")], w2.Positions);
        Assert.Equal(3.2119, Sized(TwoLamps.Text()).Conductor("w6").Current.Amperes, 1e-4);
    }

    [Fact]
    public void The_return_of_the_battery_carries_what_its_feed_does()
    {
        var w8 = Sized(TwoLamps.Text()).Conductor("w8");
        Assert.Equal(6.4239, w8.Current.Amperes, 5e-5);
        Assert.Equal(CurrentBasis.Bound, w8.Basis);
        Assert.False(w8.IsHot);
    }

    // Insulation of which nothing is known stands 60 °C: 14 AWG 20 A, 16 AWG 15 A, times 0.6.
    [Fact]
    public void In_a_loom_of_five_with_old_insulation_the_fuse_asks_for_fourteen_gauge()
    {
        var w2 = Sized(TwoLamps.Text(insulation: "", loom: InLoom)).Conductor("w2");
        Assert.Equal(5, w2.Bundled);
        Assert.Equal(12, w2.Ampacity!.Value.Amperes, 1e-9);
        Assert.Equal(WireSize.Awg(16), w2.By(SizingRule.Ampacity)!.LeastSize);
        Assert.Equal(WireSize.Awg(14), w2.By(SizingRule.Fuse)!.LeastSize);
        Assert.Equal(WireSize.Awg(14), w2.SizeNeeded);
        Assert.Equal(SizingRule.Fuse, w2.Binding);
        Assert.Equal(SizingOutcome.Passed, w2.Verdict);
        Assert.Equal(10.0 / 12, w2.By(SizingRule.Fuse)!.Share!.Value, 1e-9);
    }

    // GPT stands 80 °C: 14 AWG 25 A, 16 AWG 20 A, 18 AWG 15 A, times 0.6; the wire gets 30 + 50 · (6.4239 / 15)² = 39.2 °C.
    [Fact]
    public void In_a_loom_of_five_with_primary_wire_the_fuse_asks_for_sixteen_gauge()
    {
        var w2 = Sized(TwoLamps.Text(loom: InLoom)).Conductor("w2");
        Assert.Equal(15, w2.Ampacity!.Value.Amperes, 1e-9);
        Assert.Equal(25, w2.AmpacityAlone!.Value.Amperes, 1e-9);
        Assert.Equal(WireSize.Awg(18), w2.By(SizingRule.Ampacity)!.LeastSize);
        Assert.Equal(WireSize.Awg(16), w2.SizeNeeded);
        Assert.Equal(SizingRule.Fuse, w2.Binding);
        Assert.Equal(39.2, w2.Warmth!.Value.DegreesCelsius, 0.05);
    }

    [Fact]
    public void The_fuse_carries_four_fifths_of_its_rating_and_stands_cold_filaments()
    {
        var f1 = Sized(TwoLamps.Text(insulation: "", loom: InLoom)).FusesOf("F1").Single();
        Assert.Equal(8.030, f1.LeastRating.Amperes, 5e-4);
        Assert.Equal(10, f1.RatingNeeded!.Value.Amperes);
        Assert.Equal(49.16, f1.Inrush!.Value.Amperes, 0.005);
        Assert.Equal((SizingOutcome.Passed, SizingOutcome.Passed, SizingOutcome.Passed), (f1.Carries, f1.Guards, f1.StandsInrush));
        Assert.Equal(12, f1.ThinnestAmpacity!.Value.Amperes, 1e-9);
        Assert.Equal(SizingOutcome.Failed, Sized(TwoLamps.Text().Replace("fuse, 10 A", "fuse, 5 A", StringComparison.Ordinal)).FusesOf("F1").Single().Carries);
        Assert.Equal(SizingOutcome.Warning, Sized(TwoLamps.Text().Replace("fuse, 10 A", "fuse, 7.5 A", StringComparison.Ordinal)).FusesOf("F1").Single().Carries);
    }

    // 0.45048 V are 3.75 % of 12 V: "other lighting" may lose 10 %, what is vital 3 %.
    [Fact]
    public void The_circuit_loses_what_was_worked_by_hand()
    {
        var w2 = Sized(TwoLamps.Text()).Conductor("w2");
        Assert.Equal("E1", w2.DropOf);
        Assert.Equal(0.45048, w2.Drop!.Value.Volts, 3e-5);
        Assert.Equal(1.2, w2.DropLimit!.Value.Volts, 1e-9);
        (string Wire, double Volts)[] drops = [("w1", 0.00784), ("w2", 0.12878), ("w3", 0.15354), ("w4", 0.03544), ("w6", 0.01969)];
        var circuit = Sized(TwoLamps.Text());
        Assert.All(drops, d => Assert.Equal(d.Volts, w2.Tightest!.Conductors.Single(s => circuit.Conductors[s.Index].Conductor.Id == d.Wire).Volts, 1e-5));
    }

    [Theory]
    [InlineData("12 A", SizingOutcome.Passed)] [InlineData("15 A", SizingOutcome.Warning)] [InlineData("30 A", SizingOutcome.Warning)] [InlineData("40 A", SizingOutcome.Failed)]
    public void A_fuse_above_the_ampacity_warns_and_above_half_as_much_again_fails(string rating, SizingOutcome outcome) =>
        Assert.Equal(outcome, Sized(TwoLamps.Text(insulation: "", loom: InLoom).Replace("fuse, 10 A", "fuse, " + rating, StringComparison.Ordinal)).Conductor("w2").By(SizingRule.Fuse)!.Outcome);

    [Fact]
    public void The_work_is_shown_as_a_person_would_write_it() => Approve.Text(
        Job.Read(TwoLamps.Text(insulation: "", loom: InLoom)).OrThrow().ShowWork("w2"), "tests", "Hotside.Tests", "Sizing", "work-of-w2.approved.txt");

    [Fact]
    public void Work_of_an_unknown_wire_is_refused_by_its_name() =>
        Assert.Contains("no wire \"w1x\"", Assert.Throws<ArgumentException>(() => Job.Read(TwoLamps.Text()).OrThrow().ShowWork("w1x")).Message, StringComparison.Ordinal);
}
