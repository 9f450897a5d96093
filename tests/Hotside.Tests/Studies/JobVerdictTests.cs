using Hotside.Alterations;
using Hotside.Studies;

namespace Hotside.Tests.Studies;

public class JobVerdictTests
{
    [Theory]
    [InlineData(JobCircuits.LostGround)]
    [InlineData(JobCircuits.SelfHolding)]
    [InlineData(JobCircuits.WiperPark)]
    [InlineData(JobCircuits.TwoWindingSolenoid)]
    [InlineData(JobCircuits.Latching)]
    [InlineData(JobCircuits.Overdrive)]
    [InlineData(JobCircuits.PumpBefore)]
    [InlineData(JobCircuits.Generator)]
    [InlineData(JobCircuits.Alternator)]
    [InlineData(JobCircuits.Launch)]
    public void The_verdicts_are_those_written_beside_the_wiring(string text)
    {
        Assert.NotEmpty(ExpectedVerdicts.Parse(text));
        Assert.Empty(ExpectedVerdicts.Differences(text, "before", TestCircuit.Study(text)));
    }

    [Fact]
    public void A_reader_of_expectations_sees_a_wrong_one()
    {
        string text = JobCircuits.SelfHolding.Replace("E1.lamp: hot-switched, when S1 pressed and S2 released", "E1.lamp: ground-switched by K7, when S1 pressed", StringComparison.Ordinal)
            .Replace("until S2 pressed", "until S1 pressed", StringComparison.Ordinal);
        Assert.Equal(
        [
            "before K1.coil: released by {S2 pressed} differs at S1 released, S2 pressed (not expected)",
            "before E1.lamp: is hot-switched, expected ground-switched",
            "before E1.lamp: goes by , expected K7",
            "before E1.lamp: {S1 pressed and S2 released} differs at S1 pressed, S2 pressed (expected)",
            "before E1.lamp: released by {S2 pressed} differs at S1 released, S2 pressed (not expected)",
        ], ExpectedVerdicts.Differences(text, "before", TestCircuit.Study(text)));
    }

    [Fact]
    public void A_second_feed_that_comes_back_past_the_disconnect_is_found()
    {
        var before = TestCircuit.Read(JobCircuits.PumpBefore);
        var after = TestCircuit.Read(JobCircuits.PumpAfter);
        var study = Study.Of(new Alteration("A feed of its own", before, after, []), TestContext.Current.CancellationToken);
        Assert.Empty(ExpectedVerdicts.Differences(JobCircuits.PumpAfter, "after", study.After));
        Assert.Equal(
        [
            "warning HS3009: E1 is now fed when S3 on and S4 on and S5 on, past Q1 on, which cut it off before",
            "note HS3014: M2 has a feed of its own when S5 on, past Q1 on, which cut it off before",
        ], study.Findings.Except(study.After.Findings).Select(f => f.ToString().Split('\n')[0]));
    }

    [Fact]
    public void A_machine_that_also_feeds_is_told_apart_from_the_verdict() =>
        Assert.Equal(["G3"], TestCircuit.Study(JobCircuits.Launch).Load("E1").AlsoFedBy);

    [Fact]
    public void A_filament_whose_ground_is_lost_is_found()
    {
        var findings = TestCircuit.Study(JobCircuits.LostGround).Findings;
        Assert.Contains("warning HS3017: E3.tail has no return of its own: its current goes back through E3.stop and E4.tail and E4.stop", findings.Select(f => f.ToString().Split('\n')[0]));
    }

    [Fact]
    public void Both_coils_of_a_latching_relay_at_once_are_found() =>
        Assert.Contains(TestCircuit.Study(JobCircuits.Latching).Findings, f => f.Code == "HS3004" && f.Items[0] == "K1");
}
