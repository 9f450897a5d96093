using Hotside.Diagnostics;
using Hotside.Proposals;
using Hotside.Tests.Support;

namespace Hotside.Tests.Proposals;

/// <summary>What a whole conversion asks, fits and leaves, beside the loads themselves.</summary>
public class WholeJobTests
{
    private static Proposal To(string text, string to, params (string, string)[] options) => Job.Read(text).OrThrow().Proposal(new() { To = to, Options = [.. options] });

    // 8 A at 6 V is 48 W; the usual horn of 12 V takes 5 A: less than its button breaks already.
    [Fact]
    public void A_horn_button_whose_rating_bears_the_new_current_stays_and_the_reason_has_the_figures()
    {
        string rated = HornJob.Base.Replace("push-button, Horn button", "push-button, Horn button, 10 A", StringComparison.Ordinal);
        var decision = To(rated, "12 V negative").Decisions.First(d => d.Item == "S1");
        Assert.Equal((DecisionKind.Keep, "rated-contact"), (decision.Kind, decision.Rule));
        Assert.Matches("^it breaks 5.* A then, [78].* A before, and is made for 10 A", decision.Reason);
        Assert.DoesNotContain(To(rated, "12 V negative").Lines, l => l.Text.Contains("relay", StringComparison.Ordinal));
        Assert.Contains(To(rated.Replace("10 A", "4 A", StringComparison.Ordinal), "12 V negative").Lines, l => l.Text.StartsWith("fit K1: relay", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cable_as_thick_as_a_starter_s_without_a_fuse_is_asked_about_and_a_thinner_one_gets_its_fuse()
    {
        Assert.Contains(To(HornJob.Base, "12 V negative").Questions, q => q.Item == "w1" && q.Text.StartsWith("a main fuse or a fusible link?", StringComparison.Ordinal));
        var thin = To(HornJob.Base.Replace("w1: G1.neg to X1, 2 BK", "w1: G1.neg to X1, 8 BK", StringComparison.Ordinal), "12 V negative");
        Assert.DoesNotContain(thin.Questions, q => q.Item == "w1");
        Assert.Contains(thin.Lines, l => l.Text.Contains("Main fuse", StringComparison.Ordinal));
    }

    [Fact]
    public void A_short_lead_is_not_renewed_for_the_fuses_ahead_but_gets_one_of_its_own()
    {
        var (_, proposal) = ProposalCases.Of("jobs/more/tractor-magneto.yaml");
        Assert.DoesNotContain(proposal.Lines, l => l.Text.StartsWith("renew", StringComparison.Ordinal));
        Assert.Contains(proposal.Lines, l => l.Text.StartsWith("move w8: P1.", StringComparison.Ordinal));
        Assert.DoesNotContain(proposal.Findings, f => f.Severity >= Severity.Error);
    }

    [Fact]
    public void Old_feeds_that_the_fuses_ahead_no_longer_guard_get_fuses_where_they_leave_the_rail()
    {
        var (_, proposal) = ProposalCases.Of("gallery/van");
        Assert.Equal(["w13", "w29"], proposal.Lines.Where(l => l.Text.StartsWith("move w13: X1 to F", StringComparison.Ordinal) || l.Text.StartsWith("move w29: X1 to F", StringComparison.Ordinal)).Select(l => l.Text.Split(' ')[1].TrimEnd(':')));
        Assert.DoesNotContain(proposal.Findings, f => f.Code == "HS3394");
    }

    [Fact]
    public void Metal_without_a_strap_gets_one_as_heavy_as_what_stands_on_it_asks_for()
    {
        string loose = ProposalCases.TextOf("gallery/gauges").Replace("  w12: engine to chassis, 2 braid, 0.3 m\n", "", StringComparison.Ordinal);
        loose = loose[..loose.IndexOf("alteration:", StringComparison.Ordinal)];
        var proposal = To(loose, "12 V negative");
        var strap = Assert.Single(proposal.Lines, l => l.Text.Contains("engine to chassis", StringComparison.Ordinal));
        Assert.Contains("14 AWG BK", strap.Text, StringComparison.Ordinal);
        Assert.Contains("B2, B3 stand on engine", strap.Text, StringComparison.Ordinal);
        var heavy = To(loose.Replace("  tank: metal", "  M9: starter, 6 V, 150 A, case on engine, 30 on X0\n  tank: metal", StringComparison.Ordinal), "12 V negative");
        Assert.Contains(heavy.Lines, l => l.Text.Contains(": engine to chassis, 2 AWG braid", StringComparison.Ordinal));
        // What stands on it is decided as it will be fed.
        Assert.Equal("starter", heavy.Decisions.First(d => d.Item == "M9").Rule);
    }

    [Fact]
    public void A_sender_goes_with_its_gauge()
    {
        string gauges = ProposalCases.TextOf("gallery/gauges");
        Assert.All(To(gauges, "12 V negative").Decisions.Where(d => d.Item[0] == 'B'), d => Assert.Equal(DecisionKind.Keep, d.Kind));
        var replaced = To(gauges, "12 V negative", ("gauges", "replace"));
        Assert.All(replaced.Decisions.Where(d => d.Item[0] == 'B'), d => Assert.Equal((DecisionKind.Check, "sender"), (d.Kind, d.Rule)));
        Assert.Contains(replaced.Questions, q => q.Item == "B1");
        Assert.DoesNotContain(replaced.Questions, q => q.Item == "P1");
        Assert.DoesNotContain("reduced volts", replaced.ToYaml(), StringComparison.Ordinal);
    }

    // TM 9-8000, 17-3: the sender keeps the mean heat, so that the reading holds; its contact carries what the volts drive.
    [Fact]
    public void A_heated_sender_is_looked_at_when_its_gauge_is_replaced()
    {
        string heated = ProposalCases.TextOf("gallery/gauges").Replace("B4: sender, Reserve tank, 0..90 ohm, case on tank", "B4: sender-heated, Reserve tank, 20 ohm, case on tank", StringComparison.Ordinal).Replace(", B4 45 ohm", "", StringComparison.Ordinal);
        heated = heated[..heated.IndexOf("alteration:", StringComparison.Ordinal)];
        Assert.Equal("selfregulating", To(heated, "12 V negative", ("gauges", "replace")).Decisions.First(d => d.Item == "B4").Rule);
        Assert.NotEqual("selfregulating", To(heated, "12 V negative").Decisions.First(d => d.Item == "B4").Rule);
    }

    [Fact]
    public void Where_plus_is_to_be_the_feed_no_longer_an_alternator_is_asked_about_and_nothing_is_proposed_for_it()
    {
        var proposal = Job.Read(ProposalCases.TextOf("gallery/van")).OrThrow().Proposal(new() { To = "12 V positive", From = ProposalBase.After });
        var decision = proposal.Decisions.First(d => d.Item == "G3");
        Assert.Equal((DecisionKind.Check, "positive-alternator"), (decision.Kind, decision.Rule));
        Assert.Contains(proposal.Questions, q => q.Item == "G3" && q.Text.Contains("the battery must stay off", StringComparison.Ordinal));
        Assert.Contains(proposal.Findings, f => f.Severity == Severity.Stop && f.Items.Contains("G3"));
    }

    // Nothing is doubled: no reason, caution or choice speaks of twice the volts, of four times the heat or of a new battery.
    [Fact]
    public void A_polarity_alone_is_told_without_a_word_of_other_volts()
    {
        string twelve = HornJob.Base.Replace("6 V", "12 V", StringComparison.Ordinal);
        string told = To(twelve, "12 V negative").ToYaml();
        foreach (string word in new[] { "twice", "four times", "would stand on", "the new one", "starter relay=" }) Assert.DoesNotContain(word, told, StringComparison.Ordinal);
        Assert.Contains("reverse G1, because the supply is 12 V, negative ground", told, StringComparison.Ordinal);
        var charging = ProposalCases.TextOf("gallery/charging");
        charging = charging[..charging.IndexOf("alteration:", StringComparison.Ordinal)];
        Assert.Contains("#   charging=keep\n", To(charging, "negative ground").ToYaml(), StringComparison.Ordinal);
    }
}
