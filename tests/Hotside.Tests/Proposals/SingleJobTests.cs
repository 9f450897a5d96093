using Hotside.Diagnostics;
using Hotside.Proposals;

namespace Hotside.Tests.Proposals;

/// <summary>Jobs of their own, at the supply that is there.</summary>
public class SingleJobTests
{
    private static Proposal Only(string name, params string[] jobs) => Job.Read(ProposalCases.TextOf(name)).OrThrow().Proposal(new() { Only = [.. jobs] });

    public static TheoryData<string, string> Jobs => new()
    {
        { "gallery/horn", "horn" }, { "gallery/van", "horn" }, { "gallery/van", "lamps-led" }, { "gallery/starter", "fuses" }, { "gallery/headlamps", "E1" },
        { "gallery/courtesy", "lamps-led" }, { "gallery/launch", "M2" }, { "gallery/tractor", "H1" }, { "jobs/headlamps.yaml", "fuses" }, { "jobs/small/10-insulated-bracket.yaml", "horn" },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_single_job_leaves_the_supply_and_brings_no_stop(string name, string job)
    {
        var proposal = Only(name, job);
        Assert.Equal(proposal.From, proposal.To);
        Assert.False(proposal.IsEmpty, proposal.ToYaml());
        var read = Job.Read(proposal.ToYaml()).OrThrow();
        var before = Job.From(new("", read.Alteration.Before, read.Alteration.Before, []));
        Assert.Empty(read.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Code + string.Join(",", f.Items)).Except(before.Findings.Select(f => f.Code + string.Join(",", f.Items))));
        Assert.DoesNotContain(proposal.Lines, l => l.Text.Contains("battery", StringComparison.Ordinal));
    }

    [Fact]
    public void A_horn_relay_at_six_volts_has_a_six_volt_coil()
    {
        Assert.Contains(Only("gallery/horn", "horn").Lines, l => l.Text.StartsWith("fit K1: relay, Horn relay, 6 V, 30 A, coil 0.3 A", StringComparison.Ordinal));
        Assert.DoesNotContain(Only("gallery/horn", "horn").Lines, l => l.Text.StartsWith("replace", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_several_contacts_the_one_at_the_named_lamp_is_relieved() =>
        Assert.Equal(["S3", "S3"], Only("gallery/headlamps", "E1").Decisions.Where(d => d.Kind == DecisionKind.Relay).Select(d => d.Item));

    [Fact]
    public void Where_minus_is_the_feed_led_lamps_are_of_a_kind_that_minds_no_polarity()
    {
        Assert.Contains(Only("gallery/courtesy", "lamps-led").Lines, l => l.Text.StartsWith("replace E2: led-lamp-bridge, 6 V, 1 W", StringComparison.Ordinal));
        var converted = Job.Read(ProposalCases.TextOf("gallery/courtesy")).OrThrow().Proposal(new() { To = "12 V negative", Options = [("lamps", "led")] });
        Assert.Contains(converted.Lines, l => l.Text.StartsWith("replace E2: led-lamp, 12 V, 1 W", StringComparison.Ordinal));
    }

    // The pilot has two wires at one terminal, so that no diode finds its place.
    [Fact]
    public void A_lamp_through_whose_filament_another_returns_stays_a_filament()
    {
        string text = ProposalCases.TextOf("gallery/turn-signals").Replace("  w16: S5.R to E5.2, 18 GY, 0.4 m", "  w16: S5.R to E5.2, 18 GY, 0.4 m\n  w17: S5.R to E5.2, 18 GY, 0.4 m", StringComparison.Ordinal);
        var before = text[..text.IndexOf("alteration:", StringComparison.Ordinal)];
        Assert.Contains("returns through its filament", Job.Read(before).OrThrow().Proposal(new() { Only = ["lamps-led"] }).Decisions.First(d => d.Item == "E1").Reason, StringComparison.Ordinal);
    }

    // Worked by hand: minus is the feed, so that current comes out of the lamp's return and the diodes' cathodes face the switch.
    [Fact]
    public void A_pilot_between_left_and_right_gets_a_diode_from_each_side_and_a_return()
    {
        var proposal = Only("gallery/turn-signals", "lamps-led");
        Assert.Equal(
        [
            "fit V1: diode, Pilot diode, 1 A", "move w15: E5.1 to V1.K", "run w17: V1.A to E5.1, 16 AWG BU, 0.1 m", "fit V2: diode, Pilot diode, 1 A", "move w16: E5.2 to V2.K",
            "run w18: V2.A to E5.1, 16 AWG GY, 0.1 m", "run w19: E5.2 to chassis, 16 AWG BK, 0.3 m", "replace E1, E2: led-lamp-bridge, 6 V, 3 W", "replace K1: electronic-flasher, 6 V, 10 A", "run w20: K1.31 to chassis, 16 AWG BK, 0.3 m",
        ], proposal.Lines.Select(l => l.Text.Split(", because")[0]));
        var after = Job.Read(proposal.ToYaml()).OrThrow().Study.After;
        Assert.Equal("hot-switched by S5, S3; on when S3 run or start and S5 left or right", after.Load("E5").Summary());
        Assert.Equal(after.Load("E1").Summary(), Only("gallery/turn-signals", "E2") is var other ? Job.Read(other.ToYaml()).OrThrow().Study.Before.Load("E1").Summary() : "");
    }

    [Fact]
    public void A_supply_beside_a_single_job_is_not_looked_at_and_that_is_told()
    {
        var proposal = Job.Read(ProposalCases.TextOf("gallery/horn")).OrThrow().Proposal(new() { To = "12 V negative", Only = ["horn"] });
        Assert.Contains(proposal.Notes, n => n.Code == "HS4303");
        Assert.Equal("6 V, positive ground", proposal.To);
    }
}
