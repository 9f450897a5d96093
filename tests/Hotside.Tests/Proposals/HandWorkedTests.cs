using Hotside.Diagnostics;
using Hotside.Proposals;

namespace Hotside.Tests.Proposals;

/// <summary>Two conversions that were worked out by hand with Ohm's law before the code was there, line by line.</summary>
public class HandWorkedTests
{
    private static string[] Lines(Proposal proposal) => [.. proposal.Lines.Select(l => l.Text.Trim('\'').Split(", because ")[0])];

    // 48 W at 6 V are 4 A at 12 V; horns of 12 V take 3 to 6 A (common practice, no source), so 5 A; 1.5 x 5 A = 7.5 A; the old feed and the button's wire stay.
    [Fact]
    public void The_horn_gets_a_relay_because_its_button_has_no_rating()
    {
        var proposal = ProposalCases.Of("gallery/horn").Proposal;
        Assert.Equal(
        [
            "replace H1: horn, 12 V, 5 A",
            "fit K1: relay, Horn relay, 12 V, 30 A, coil 0.15 A",
            "move w3: H1.1 to K1.30",
            "run w6: K1.87 to H1.1, 14 AWG GN, 0.5 m",
            "move w4: H1.2 to K1.85",
            "run w7: H1.2 to chassis, 14 AWG BK, 0.3 m",
            "run w8: K1.30 to K1.86, 16 AWG RD, 0.1 m",
            "replace F2: fuse, 7.5 A",
            "do G1: prove its polarity with a meter before a cable goes on, and mark its tray 12 V NEGATIVE GROUND",
            "replace G1 reversed: battery, 12 V, 60 Ah",
        ], Lines(proposal));
        var horn = proposal.Decisions.First(d => d.Item == "H1").Figures!;
        Assert.Equal(11.9, horn.After.Volts, 0.15);
        Assert.Equal(1.97, horn.Share, 0.03);
        Assert.Equal(16, horn.CurrentAfter.Amperes, 0.4);
        var pressed = Job.Read(proposal.ToYaml()).OrThrow().Study.After.Setting("horn pressed").Figures;
        Assert.Equal(12.4, Math.Abs(pressed.Elements.First(e => e.Part.Id == "H1").Voltage.Volts), 0.15);
        Assert.Equal(5.2, pressed.Elements.First(e => e.Part.Id == "H1").Current.Amperes, 0.15);
        Assert.Equal(0.16, pressed.Elements.First(e => e.Part.Id == "S1").Current.Amperes, 0.01);
        Assert.Equal(["H1", "G1", "w1"], proposal.Questions.Select(q => q.Item));
    }

    [Fact]
    public void By_rating_a_horn_stays_ground_switched_where_its_button_is_made_for_its_current()
    {
        string rated = ProposalCases.TextOf("gallery/horn").Replace("push-button, Horn button", "push-button, Horn button, 10 A", StringComparison.Ordinal);
        var proposal = Job.Read(rated).OrThrow().Proposal(new() { To = "12 V negative", Options = [("relay", "by rating")] });
        Assert.DoesNotContain(proposal.Lines, l => l.Text.StartsWith("fit K", StringComparison.Ordinal));
        Assert.Contains(proposal.Lines.First(l => l.Text.Contains("replace H1", StringComparison.Ordinal)).Comments, c => c.Contains("stays ground-switched by S1", StringComparison.Ordinal));
    }

    // Four gauges of 20 ohm with senders at 0, 20, 10 and 0 ohm on 6 V draw 0.3 + 0.15 + 0.2 + 0.3 = 0.95 A; a quarter more is 1.19, so 1.5 A; 3 A is the next fuse over 1.5 x 1.5 A.
    [Theory]
    [InlineData("gallery/gauges")]
    [InlineData("gallery/gauges-each")]
    public void Four_gauges_get_one_reducer_at_the_lowest_point_that_feeds_them_alone(string name)
    {
        var proposal = ProposalCases.Of(name).Proposal;
        Assert.Equal(
        [
            "do N1: prove it on the bench: 12 V at in, case to minus, then 6 V at out",
            "fit N1: reducer, Gauge reducer, 12 V, out 6 V, out 1.5 A",
            "move w4: P1.I to N1.in",
            "run w14: N1.out to P1.I, 16 AWG GN, 0.3 m",
            "replace F1: fuse, 3 A",
            "do G1: prove its polarity with a meter before a cable goes on, and mark its tray 12 V NEGATIVE GROUND",
            "replace G1 reversed: battery, 12 V, 60 Ah",
        ], Lines(proposal));
        Assert.All(proposal.Decisions.Where(d => d.Item[0] == 'P'), d => Assert.Equal((DecisionKind.Protect, "gauge"), (d.Kind, d.Rule)));
        Assert.Equal(12.2, proposal.Decisions.First(d => d.Item == "P1").Figures!.After.Volts, 0.4);
        var after = Job.Read(proposal.ToYaml()).OrThrow().Study.After.Setting("half tank").Figures;
        Assert.Equal(5.9, Math.Abs(after.Terminals.First(t => t.End.ToString() == "P1.I").Voltage!.Value.Volts), 0.15);
    }

    [Fact]
    public void A_gauge_whose_sender_never_falls_low_is_protected_all_the_same() =>
        Assert.Equal(DecisionKind.Protect, ProposalCases.Of("gallery/gauges").Proposal.Decisions.First(d => d.Item == "P2").Kind);

    // The bank's middle gives 6 V, its end 12 V: the solver says that each part has its own volts already.
    [Fact]
    public void On_a_tapped_bank_each_part_keeps_the_volts_that_it_has()
    {
        const string bank = """
            hotside: 1
            title: Bank with a tap
            system: 12 V and 6 V, positive ground, sizes in AWG
            parts:
              G1: battery, 6 V, 90 Ah
              G2: battery, 6 V, 90 Ah
              F1: fuse, 10 A, Old lamps
              F2: fuse, 10 A, New lamps
              S1: switch, Old, 10 A
              S2: switch, New, 10 A
              E1: lamp, Old lamp, 6 V, 21 W, 2 on chassis
              E2: lamp, New lamp, 12 V, 21 W, 2 on chassis
              R1: led-lamp, Pilot, 12 V, 1 W, 1 on chassis
            wires:
              w1: G1.pos to chassis, 2 BK, 0.5 m
              w2: G1.neg to G2.pos, 2 BK, 0.3 m
              w3: G1.neg to F1.1, 14 BN, 0.15 m
              w4: G2.neg to F2.1, 14 RD, 0.15 m
              w5: F1.2 to S1.1, 16 BN, 1 m
              w6: S1.2 to E1.1, 16 BN, 1 m
              w7: F2.2 to S2.1, 16 RD, 1 m
              w8: S2.2 to E2.1, 16 RD, 1 m
              w9: S2.2 to R1.2, 16 RD, 1 m

            """;
        var proposal = Job.Read(bank).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.Equal(["reverse G1", "reverse G2"], proposal.Lines.Select(l => l.Text.Split(", because ")[0]).Where(t => t.StartsWith("reverse G", StringComparison.Ordinal)));
        Assert.All(proposal.Decisions.Where(d => d.Item is "E1" or "E2"), d => Assert.Equal(DecisionKind.Keep, d.Kind));
        Assert.Equal((DecisionKind.Replace, "turned-electronics"), (proposal.Decisions.First(d => d.Item == "R1").Kind, proposal.Decisions.First(d => d.Item == "R1").Rule));
        Assert.Equal("12 V and 6 V, negative ground", proposal.To);
        Assert.DoesNotContain(Job.Read(proposal.ToYaml()).OrThrow().Findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void Gauges_behind_a_limiter_of_their_own_get_no_second_one()
    {
        string job = ProposalCases.TextOf("gallery/gauges").Split("\nalteration:")[0]
            .Replace("system: 6 V", "system: 12 V", StringComparison.Ordinal).Replace("G1: battery, 6 V", "G1: battery, 12 V", StringComparison.Ordinal)
            .Replace("  P1: gauge", "  N1: gauge-limiter, 12 V, out 6 V, case on chassis\n  P1: gauge", StringComparison.Ordinal)
            .Replace("w4: S1.15 to P1.I, 16 GN, 0.5 m", "w4: S1.15 to N1.in, 16 GN, 0.5 m\n  w14: N1.out to P1.I, 16 GN, 0.1 m", StringComparison.Ordinal) + "\n";
        var proposal = Job.Read(job).OrThrow().Proposal(new() { To = "12 V negative" });
        Assert.All(proposal.Decisions.Where(d => d.Item[0] == 'P'), d => Assert.Equal(DecisionKind.Keep, d.Kind));
    }

    // An ammeter of 40 A behind a fuse that lets 50 A through for good: the owner says what it stands; with the charge led past it nothing is to be asked.
    [Fact]
    public void An_ammeter_that_its_fuse_does_not_guard_is_asked_about()
    {
        var proposal = ProposalCases.Of("gallery/charging").Proposal;
        Assert.Contains(proposal.Questions, q => q.Item == "P1" && q.ToString().Contains("lets 50 A through, and its scale ends at 40 A", StringComparison.Ordinal));
        string wider = ProposalCases.TextOf("gallery/charging").Replace("ammeter, 40 A", "ammeter, 60 A", StringComparison.Ordinal);
        Assert.DoesNotContain(Job.Read(wider).OrThrow().Proposal(new() { To = "12 V negative" }).Questions, q => q.Item == "P1");
    }

    [Fact]
    public void A_charge_lamp_is_asked_about_where_none_was_and_nobody_has_chosen()
    {
        string text = ProposalCases.TextOf("gallery/charging");
        Proposal With(params (string, string)[] options) => Job.Read(text).OrThrow().Proposal(new() { To = "12 V negative", Options = [.. options] });
        Assert.Contains(With().Questions, q => q.ToString().Contains("shows whether it charges", StringComparison.Ordinal));
        Assert.DoesNotContain(With(("alternator", "one-wire")).Questions, q => q.ToString().Contains("shows whether it charges", StringComparison.Ordinal));
    }

    // Two lamps of 21 W on one fuse, and one of 21 W without a feed: 1.8 A more at 12 V if it hangs there, too.
    [Fact]
    public void A_fuse_of_lamps_is_asked_about_while_a_lamp_has_no_feed()
    {
        const string text = """
            hotside: 1
            title: Lamps
            system: 6 V, positive ground, sizes in AWG
            parts:
              G1: battery, 6 V, 60 Ah
              F1: fuse, 20 A
              S1: switch, 10 A
              E1: lamp, 6 V, 21 W, 2 on chassis
              E2: lamp, 6 V, 21 W, 2 on chassis
              E3: lamp, 6 V, 21 W, 2 on chassis
            wires:
              w1: G1.neg to F1.1, 12 RD, 0.2 m
              w2: G1.pos to chassis, 2 BK, 0.4 m
              w3: F1.2 to S1.1, 16 RD, 1 m
              w4: S1.2 to E1.1, 16 BN, 1 m
              w5: S1.2 to E2.1, 16 BN, 1 m

            """;
        static IEnumerable<string> Asked(string job) => Job.Read(job).OrThrow().Proposal(new() { To = "12 V negative" }).Questions.Where(q => q.Item == "F1").Select(q => q.ToString());
        Assert.Contains("E3", Assert.Single(Asked(text)), StringComparison.Ordinal);
        Assert.Contains("1.8 A at 12 V", Assert.Single(Asked(text)), StringComparison.Ordinal);
        Assert.Empty(Asked(text + "  w6: S1.2 to E3.1, 16 BN, 1 m\n"));
    }
}
