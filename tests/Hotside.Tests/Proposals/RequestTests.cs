using Hotside.Diagnostics;
using Hotside.Proposals;

namespace Hotside.Tests.Proposals;

/// <summary>What may be asked, and what is told of what may not.</summary>
public class RequestTests
{
    private static Job Horn => Job.Read(ProposalCases.TextOf("gallery/horn")).OrThrow();

    [Theory]
    [InlineData("12 V negative")]
    [InlineData("12V negative ground")]
    [InlineData("12 V, negative ground")]
    [InlineData("Negative, 12 volts")]
    [InlineData("12 V neg")]
    public void A_supply_is_read_as_people_write_it(string to) => Assert.Equal("12 V, negative ground", Horn.Proposal(new() { To = to }).To);

    [Fact]
    public void What_is_not_said_of_a_supply_stays() => Assert.Multiple(
        () => Assert.Equal("12 V, positive ground", Horn.Proposal(new() { To = "12 V" }).To),
        () => Assert.Equal("6 V, negative ground", Horn.Proposal(new() { To = "negative" }).To),
        () => Assert.Equal("24 V, negative ground", Horn.Proposal(new() { To = "24 V negative" }).To));

    // Each answer of each option on the whole van: what it changes, and no stop.
    [Theory]
    [InlineData("charging=generator", "replace G2: generator, 12 V, 15 A")]
    [InlineData("alternator=lamp-excited", "fit H2: charge-lamp, Charge lamp, 12 V, 2 W")]
    [InlineData("ammeter=bypass", "1 on K2.BAT")]
    [InlineData("lamps=led", "replace K4: electronic-flasher, 12 V, 10 A")]
    [InlineData("motor=dropper", "fit R1: dropping-resistor, Heater dropper, 1 ohm, ")]
    [InlineData("starter=replace", "replace M1: starter, 12 V, 100 A")]
    [InlineData("starter relay=keep", "do K2: stays; never hold it on longer than 10 s")]
    [InlineData("gauges=replace", "replace P2: gauge, 12 V, 80 ohm")]
    [InlineData("relay=always", "fit K3: relay, Horn relay, 12 V, 30 A")]
    [InlineData("relay=by rating", null)]
    [InlineData("fuses=as found", null)]
    public void Every_choice_has_its_lines_and_brings_no_stop(string option, string? line)
    {
        string[] choice = option.Split('=');
        var proposal = Job.Read(ProposalCases.TextOf("gallery/van")).OrThrow().Proposal(new() { To = "12 V negative", Options = [(choice[0], choice[1])] });
        if (line is not null) Assert.Contains(proposal.Lines, l => l.Text.Contains(line, StringComparison.Ordinal));
        if (option == "relay=by rating") Assert.DoesNotContain(proposal.Lines, l => l.Text.StartsWith("fit K", StringComparison.Ordinal));
        if (option == "fuses=as found") Assert.Equal(["F0"], proposal.Decisions.Where(d => d.Item[0] == 'F' && d.Kind == DecisionKind.Replace).Select(d => d.Item));
        Assert.DoesNotContain(proposal.Findings, f => f.Severity >= Severity.Error);
        Assert.NotNull(Job.Read(proposal.ToYaml()).Job);
    }

    [Fact]
    public void Where_the_feed_is_minus_a_generator_of_the_new_volts_charges()
    {
        var van = Job.Read(ProposalCases.TextOf("gallery/van")).OrThrow();
        Assert.Contains(van.Proposal(new() { To = "12 V positive" }).Lines, l => l.Text.StartsWith("replace G2: generator, 12 V", StringComparison.Ordinal));
        Assert.Contains("take charging=generator", Assert.Throws<ArgumentException>(() => van.Proposal(new() { To = "12 V positive", Options = [("charging", "alternator")] })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_bolted_to_a_regulator_that_goes_finds_another_post()
    {
        string job = ProposalCases.TextOf("gallery/charging").Split("\nalteration:")[0].Replace("F1: fuse, 5 A, Ignition feed, 1 on X1", "F1: fuse, 5 A, Ignition feed, 1 on K1.BAT", StringComparison.Ordinal) + "\n";
        var proposal = Job.Read(job).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.Equal("X1", proposal.Alteration.After.TextOf(proposal.Alteration.After.FindPart("F1")!.Joints[0].On));
        Assert.DoesNotContain(Job.Read(proposal.ToYaml()).OrThrow().Findings, f => f.Severity >= Severity.Error);
    }

    [Fact]
    public void What_must_suit_the_volts_and_cannot_be_computed_is_asked()
    {
        string job = ProposalCases.TextOf("gallery/horn").Split("\nalteration:")[0].Replace("  S1: push-button", "  C1: suppressor, 1 on H1.1\n  E1: lamp, Map lamp, 6 V, 5 W, 2 on chassis, 1 free\n  F3: breaker, 10 A, 1 on X1, 2 free\n  S1: push-button", StringComparison.Ordinal) + "\n";
        var proposal = Job.Read(job).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.All(proposal.Decisions.Where(d => d.Item is "C1" or "E1" or "F3"), d => Assert.Equal(DecisionKind.Check, d.Kind));
        Assert.Equal(["C1", "E1", "F3"], proposal.Questions.Select(q => q.Item).Where(i => i is "C1" or "E1" or "F3").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_without_a_battery_is_told_so()
    {
        string job = ProposalCases.TextOf("gallery/horn").Split("\nalteration:")[0].Replace("  G1: battery, 6 V, 90 Ah\n", "  G1: elsewhere\n", StringComparison.Ordinal) + "\n";
        Assert.Contains("no battery in the file", Assert.Throws<ArgumentException>(() => Job.Read(job).OrThrow().Proposal(new() { To = "12 V negative" })).Message, StringComparison.Ordinal);
    }

    // TM 5-3810-300-24&P-3: a generator is magnetised for its new ground by its own field circuit; TM 9-8000, 17-2a: a meter turns with its current.
    [Fact]
    public void A_change_of_polarity_alone_keeps_the_machine_and_every_load()
    {
        var proposal = Job.Read(ProposalCases.TextOf("gallery/charging")).OrThrow().Proposal(new() { To = "negative" });
        Assert.Contains(proposal.Lines, l => l.Text.Contains("do G2: polarise it", StringComparison.Ordinal) && l.Text.Contains("join GEN and BAT", StringComparison.Ordinal));
        Assert.Equal(["do G2", "do K1", "reverse P1", "do G1", "reverse G1"], proposal.Lines.Select(l => l.Text.Trim('\'').Split([":", ", because "], 2, StringSplitOptions.None)[0]));
        Assert.DoesNotContain(Job.Read(proposal.ToYaml()).OrThrow().Findings, f => f.Severity >= Severity.Error);
    }

    // A regulator feeds the vehicle beyond its cut-out; what hangs on the machine itself is its lamp.
    [Theory]
    [InlineData("A")]
    [InlineData("61")]
    public void A_charge_lamp_on_the_machine_excites_the_alternator_and_is_no_feed(string mark)
    {
        var proposal = Job.Read($"""
            hotside: 1
            system: 6 V, positive ground, sizes in AWG
            parts:
              G1: battery, 6 V, 90 Ah
              X1: feed-rail
              G2: generator, 6 V, 20 A
              N1: regulator, 6 V, 20 A
              S1: ignition-switch, 30 A
              P1: charge-lamp, 6 V, 2 W
            wires:
              w1: G1.neg to X1, 2 BK, 0.6 m
              w2: G1.pos to chassis, 2 BK, 0.6 m
              w3: X1 to N1.BAT, 10 BN, 1 m
              w4: N1.GEN to G2.{mark}, 10 YE, 1 m
              w5: N1.FLD to G2.F, 14 GN, 1 m
              w6: X1 to S1.30, 12 BN, 1 m
              w7: S1.15 to P1.15, 16 WH, 1 m
              w8: P1.61 to G2.{mark}, 16 YE, 1 m
            """).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.Contains(proposal.Lines, l => l.Text.Contains($"move w8: G2.{mark} to G3.D+", StringComparison.Ordinal));
        Assert.DoesNotContain("lamp wanted", proposal.ToYaml(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3 V", "lower volts are not proposed")]
    [InlineData("12 V negatve", "did you mean \"negative\"?")]
    [InlineData("12 V 24 V", "two figures")]
    [InlineData("negative positive", "two grounds")]
    [InlineData("ground", "neither volts nor which pole")]
    [InlineData("230 V", "no supply of a vehicle")]
    [InlineData("12 V isolated", "which node would be the return")]
    public void A_wrong_supply_is_told_with_what_was_meant(string to, string told) =>
        Assert.Contains(told, Assert.Throws<ArgumentException>(() => Horn.Proposal(new() { To = to })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_wrong_option_answer_part_or_none_at_all_is_told_with_the_nearest() => Assert.Multiple(
        () => Assert.Contains("did you mean \"relay\"?", Told(new() { To = "12 V", Options = [("realy", "always")] }), StringComparison.Ordinal),
        () => Assert.Contains("did you mean \"always\"?", Told(new() { To = "12 V", Options = [("relay", "alwyas")] }), StringComparison.Ordinal),
        () => Assert.Contains("given twice", Told(new() { To = "12 V", Options = [("relay", "always"), ("relay", "by rule")] }), StringComparison.Ordinal),
        () => Assert.Contains("did you mean \"horn\"?", Told(new() { Only = ["hron"] }), StringComparison.Ordinal),
        () => Assert.Contains("neither a job", Told(new() { Only = ["Z9"] }), StringComparison.Ordinal),
        () => Assert.Contains("Say which supply is to come", Told(new()), StringComparison.Ordinal),
        () => Assert.Contains("charging=keep", Assert.Throws<ArgumentException>(() => Job.Read(ProposalCases.TextOf("gallery/charging")).OrThrow().Proposal(new() { To = "12 V", Options = [("charging", "keep")] })).Message, StringComparison.Ordinal));

    private static string Told(ProposalRequest request) => Assert.Throws<ArgumentException>(() => Horn.Proposal(request)).Message;

    [Fact]
    public void Options_are_listed_with_their_answers_and_names_may_have_hyphens()
    {
        var proposal = Horn.Proposal(new() { To = "12 V negative", Options = [("old-feed", "renew"), ("relay", "by-rule")] });
        Assert.Contains("#   old feed=renew\n#     # old feed=keep\n", proposal.ToYaml(), StringComparison.Ordinal);
        Assert.Contains(proposal.Lines, l => l.Text.StartsWith("take out w3", StringComparison.Ordinal));
        Assert.Contains(proposal.Options, o => o is { Name: "lamps", IsUsed: false });
    }

    [Fact]
    public void Windows_line_ends_stay_and_what_is_added_has_them_too()
    {
        string text = ProposalCases.TextOf("gallery/horn").Replace("\n", "\r\n", StringComparison.Ordinal);
        string proposed = Job.Read(text).OrThrow().Proposal(new() { To = "12 V negative" }).ToYaml();
        Assert.Equal(proposed.Count(c => c == '\n'), proposed.Split("\r\n").Length - 1);
        Assert.NotNull(Job.Read(proposed).Job);
    }

    [Fact]
    public void An_alteration_and_what_it_accepts_are_left_out_and_comments_behind_it_stay()
    {
        string text = ProposalCases.TextOf("gallery/horn") + "accept:\n  HS3352 K1: because\n# last line\n";
        var proposal = Job.Read(text).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.Contains(proposal.Notes, n => n.Code == "HS4301");
        Assert.DoesNotContain("accept:", proposal.ToYaml(), StringComparison.Ordinal);
        Assert.DoesNotContain("with a horn relay", proposal.ToYaml(), StringComparison.Ordinal);
        Assert.Contains("\n# last line\n", proposal.ToYaml(), StringComparison.Ordinal);
        Assert.Contains("# expect before H1.horn", proposal.ToYaml(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_setting_that_only_the_old_alteration_knew_becomes_a_comment()
    {
        var proposal = ProposalCases.Of("jobs/small/13-back-feed.yaml").Proposal;
        Assert.Contains(proposal.Notes, n => n.Code == "HS4302");
        Assert.Contains("\n#   away, bilge full", proposal.ToYaml(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_circuit_after_is_written_anew_and_may_be_altered_in_its_turn()
    {
        var proposal = Horn.Proposal(new() { To = "12 V positive", From = ProposalBase.After });
        Assert.Equal("12 V, negative ground", proposal.From);
        Assert.Contains(proposal.Lines, l => l.Text.StartsWith("reverse G1", StringComparison.Ordinal));
        Assert.NotNull(Job.Read(proposal.ToYaml()).Job);
    }

    [Fact]
    public void A_job_made_in_code_is_proposed_for_too()
    {
        var job = Job.From(Horn.Alteration);
        Assert.Contains("replace G1 reversed", job.Proposal(new() { To = "12 V negative" }).ToYaml(), StringComparison.Ordinal);
    }
}
