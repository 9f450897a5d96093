using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Proposals;
using Hotside.Reading;

namespace Hotside.Tests.Proposals;

/// <summary>What holds for every proposal, whatever the circuit.</summary>
public class ProposalLawTests
{
    public static TheoryData<string> Cases => [.. ProposalCases.All];

    private static string[] Stops(Job job) => [.. job.Findings.Where(f => f is { Severity: Severity.Stop, Accepted: null }).Select(f => f.Code + " " + string.Join(",", f.Items)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_proposal_is_a_job_file_in_which_check_finds_no_stop_that_was_not_there(string name)
    {
        var (job, proposal) = ProposalCases.Of(name);
        var read = ProposalCases.Read(name);
        Assert.True(read.Job is not null, string.Join('\n', read.Diagnostics) + proposal.ToYaml());
        string[] stops = Stops(read.Job);
        if (stops.Length > 0) Assert.Empty(stops.Except(Stops(Job.From(new("", job.Alteration.Before, job.Alteration.Before, [])))));
        Assert.Empty(read.Diagnostics.Where(d => d.Severity > Severity.Note).Select(d => d.ToString()));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Reading_the_file_gives_the_proposed_circuit(string name)
    {
        var (_, proposal) = ProposalCases.Of(name);
        var read = ProposalCases.Read(name).OrThrow();
        Assert.Equal(Body(JobWriter.Text(proposal.Alteration.After)), Body(JobWriter.Text(read.Alteration.After)));
        Assert.Equal(Body(JobWriter.Text(proposal.Alteration.Before)), Body(JobWriter.Text(read.Alteration.Before)));
    }

    // Parts and wires, in whatever order; which settings stand in the file is another matter.
    private static string Body(string text) => string.Join('\n', text.Split("\nsettings:")[0].Split("\nsequences:")[0].TrimEnd().Split('\n').Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Proposed_again_for_its_own_after_circuit_it_is_empty(string name)
    {
        var again = ProposalCases.Read(name).OrThrow().Proposal(new() { To = "12 V negative", From = ProposalBase.After });
        Assert.True(again.IsEmpty, again.ToYaml());
        Assert.Empty(again.Questions);
        Assert.Contains(again.Notes, n => n.Code == "HS4305");
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_owners_text_of_the_circuit_before_stays_byte_for_byte(string name)
    {
        string owner = ProposalCases.TextOf(name), proposed = ProposalCases.Of(name).Proposal.ToYaml();
        int at = owner.IndexOf("\nalteration:", StringComparison.Ordinal) + 1;
        string kept = at > 0 ? owner[..at] : owner;
        // Lines of settings that only the old alteration knew are comments now.
        string[] was = kept.Split('\n'), now = proposed.Split('\n');
        for (int i = 0; i < was.Length - 1; i++) Assert.True(now[i] == was[i] || now[i] == "# " + was[i], $"line {i + 1}: {now[i]}");
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_is_decided_silently(string name)
    {
        var (job, proposal) = ProposalCases.Of(name);
        Assert.Equal([], job.Alteration.Before.Parts.Select(p => p.Id).Except(proposal.Decisions.Select(d => d.Item)));
        Assert.All(proposal.Decisions, d => Assert.False(string.IsNullOrWhiteSpace(d.Reason), d.ToString()));
        foreach (var decision in proposal.Decisions.Where(_ => !proposal.IsEmpty)) Assert.Contains(decision.Item, proposal.ToYaml().Split("# Decisions:")[1], StringComparison.Ordinal);
        foreach (var question in proposal.Questions) Assert.Contains($"ask {question.Item}:", proposal.ToYaml(), StringComparison.Ordinal);
        Assert.All(proposal.Lines.Where(l => l.Text.StartsWith("fit ", StringComparison.Ordinal)), l => Assert.Contains(l.Change.Acts[0].Items[0], proposal.Decisions.Select(d => d.Item)));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Numbers_stand_in_the_order_of_work(string name) =>
        Assert.DoesNotContain(ProposalCases.Read(name).Diagnostics, d => d.Code is "HS4110" or "HS4111" or "HS4112" or "HS4113" or "HS4114" or "HS4115" or "HS4102");

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_vehicle_of_twelve_volts_and_negative_ground_is_left_alone(string name)
    {
        var (job, proposal) = ProposalCases.Of(name);
        var system = job.Alteration.Before.System;
        if (system.Volts[0] == 12 && system.Ground != Ground.Positive) Assert.True(proposal.IsEmpty, proposal.ToYaml());
        else Assert.False(proposal.IsEmpty);
    }

    // Turned round is what the same loads would get from the other pole: the volts decide, not the sign.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Turning_the_polarity_of_the_circuit_before_changes_no_decision_by_volts(string name)
    {
        var (job, proposal) = ProposalCases.Of(name);
        if (job.Alteration.Before.System.Ground != Ground.Positive) return;
        string before = ProposalCases.TextOf(name).Split("\nalteration:")[0] + "\n";
        string turned = before.Replace("positive ground", "negative ground", StringComparison.Ordinal).Replace("ground: positive", "ground: negative", StringComparison.Ordinal)
            .Replace("G1.neg", "G1.x", StringComparison.Ordinal).Replace("G1.pos", "G1.neg", StringComparison.Ordinal).Replace("G1.x", "G1.pos", StringComparison.Ordinal);
        var other = Job.Read(turned).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.Equal(ByVolts(proposal), ByVolts(other));
    }

    private static string[] ByVolts(Proposal proposal) =>
        [.. proposal.Decisions.Where(d => d.Rule.Length > 0 && !d.Rule.StartsWith("turned-", StringComparison.Ordinal) && d.Rule != "battery").Select(d => $"{d.Item} {d.Kind} {d.Rule}")];
}
