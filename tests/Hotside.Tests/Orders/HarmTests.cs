using System.Globalization;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Orders.Harms;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>Each harm in the state that has it, and none in the nearest that has not.</summary>
public class HarmTests
{
    private static (WorkPlan Plan, HarmSearch Search) Of(string text)
    {
        var job = Job.Read(HornJob.With(text)).OrThrow();
        WorkPlan plan = new(job.Alteration);
        return (plan, new(plan, job.Study));
    }

    /// <summary>What comes to harm once the acts are done that a job would name so; <c>all but</c> some.</summary>
    private static FoundHarm[] Found(string text, string done, Battery battery = Battery.New)
    {
        var (plan, search) = Of(text);
        List<Diagnostic> wrong = [];
        HandAct[] acts = [.. plan.Acts.Take(plan.Count)];
        bool[] marks = done.StartsWith("all but ", StringComparison.Ordinal) ? [.. Progress.Read(done["all but ".Length..], acts, wrong).Select(d => !d)] : Progress.Read(done, acts, wrong);
        Assert.Empty(wrong);
        return [.. search.Of(marks, battery).Select(h => h.Harm)];
    }

    private const string TwelveVolts = """
        alteration:
          system: 12 V, negative ground
          changes:
            - replace H1: horn, 12 V, 4 A
            - replace F1: fuse, 7.5 A
            - replace G1 reversed: battery, 12 V, 60 Ah
        """;

    // By hand, Ohm's law: 12.6 V and 0.01 ohm in the battery; w1 0.3, F1 4.8, w3 11.6, w4 14.5, w5 2.6 mohm; H1 6 V / 8 A = 0.75 ohm. 12.6 V x 0.75 / 0.794 = 11.9 V.
    [Fact]
    public void A_horn_of_6_V_gets_nearly_all_of_12()
    {
        var harm = Assert.Single(Found(TwelveVolts, ""));
        Assert.Equal((HarmKind.OverVoltage, Severity.Stop, "H1"), (harm.Kind, harm.Severity, harm.Item));
        string[] words = harm.What.Split(' ');
        Assert.Equal(11.9, double.Parse(words[1], CultureInfo.InvariantCulture), 0.1);
        Assert.EndsWith("on 6 V", harm.What, StringComparison.Ordinal);
        Assert.Empty(Found(TwelveVolts, "H1 replaced"));
        Assert.Empty(Found(TwelveVolts, "", Battery.Old));
    }

    // It gives by itself whenever it is light, and no engine is started for it.
    [Fact]
    public void A_panel_is_no_machine_and_feeds_a_free_end_by_day()
    {
        const string text = """
            parts:
              G2: solar-panel, 18 V, 6 A, neg on chassis
              N1: solar-regulator, 12 V, 10 A, 31 on chassis
            wires:
              w8: G2.pos to N1.in, 14 RD, 3 m
              w9: N1.out to X1, 14 RD, 1 m
            system: 12 V, negative ground, sizes in AWG
            alteration:
              changes:
                - move w8: N1.in to X1
            """;
        var job = Job.Read(HornJob.With(text)).OrThrow();
        Assert.DoesNotContain(job.WorkOrder.Steps.SelectMany(s => s.Acts), a => a.Text.Contains("engine", StringComparison.Ordinal));
        Assert.Contains(job.WorkOrder.Cautions, c => c.StartsWith("G2 gives current in daylight with the battery out: cover it", StringComparison.Ordinal));
        Assert.Contains(HarmSettings.Of(job.Study), s => s.Positions.Any(p => p.Position == "bright"));
    }

    private const string Fed = """
        wires:
          w6: X1 to H1.1, 14 RD, 1 m
        alteration:
          changes:
            - fit K1: relay, Horn relay, 6 V, 30 A, coil 0.3 A
            - move w3: H1.1 to K1.30
            - move w6: H1.1 to K1.30
            - run w7: K1.87 to H1.1, 14 RD, 0.3 m
        """;

    // Through 50 mohm from a battery of 6.3 V and some 20 mohm flow about 90 A, six times what F1 carries.
    [Fact]
    public void A_free_end_that_is_live_stops_unless_a_fuse_opens()
    {
        var fused = Assert.Single(Found(Fed, "K1, w3 off"));
        Assert.Equal((HarmKind.LiveFreeEnd, Severity.Error, "w3"), (fused.Kind, fused.Severity, fused.Item));
        Assert.Equal("free end of w3: 6.3 V, blows F1", fused.What);
        var bare = Assert.Single(Found(Fed, "K1, w6 off"));
        Assert.Equal(("free end of w6: 6.3 V, no fuse", Severity.Stop), (bare.What, bare.Severity));
        Assert.Empty(Found(Fed, "K1, w3 off, w3 on"));
    }

    // 6.3 V through 600 ohm is 10 mA: no spark, though a voltmeter shows 6.3 V.
    [Fact]
    public void A_free_end_behind_a_coil_is_live_and_harmless() => Assert.Empty(Found("""
        parts:
          K2: relay, 6 V, 10 A, coil 600 ohm, 86 on X1
        wires:
          w6: K2.85 to chassis, 16 BK, 0.5 m
        alteration:
          changes:
            - renew w6: 14 BK
        """, "w6 off chassis"));

    [Fact]
    public void An_end_that_the_job_says_is_insulated_is_no_harm()
    {
        const string text = """
            alteration:
              changes:
                - do w3: insulate its end before anything else
                - fit K1: relay, Horn relay, 6 V, 30 A, coil 0.3 A
                - move w3: H1.1 to K1.30
            """;
        Assert.Single(Found(text, "K1, w3 off"));
        Assert.Empty(Found(text, "K1, w3 off, w3 done"));
    }

    private const string Led = """
        parts:
          E1: lamp, 6 V, 5 W
        wires:
          w6: X1 to E1.1, 16 RD, 1 m
          w7: E1.2 to chassis, 16 BK, 1 m
        alteration:
          system: 12 V, negative ground
          changes:
            - replace E1: led-lamp, 12 V, 1 W
            - replace H1: horn, 12 V, 4 A
            - replace G1 reversed: battery, 12 V, 60 Ah
        """;

    [Fact]
    public void What_a_wrong_sign_destroys_minds_the_old_battery_and_not_the_new_one()
    {
        var harm = Assert.Single(Found(Led, "1, 2", Battery.Old));
        Assert.Equal((HarmKind.Reversed, Severity.Stop, "E1"), (harm.Kind, harm.Severity, harm.Item));
        Assert.Empty(Found(Led, "1, 2"));
        Assert.Contains(Found(Led, "2"), h => h is { Kind: HarmKind.OverVoltage, Item: "E1" });
    }

    [Fact]
    public void A_magnet_motor_that_turns_backward_is_a_warning()
    {
        var harm = Assert.Single(Found("""
            parts:
              M1: motor-magnet, 12 V, 4 A
              S2: switch
            wires:
              w6: F1.2 to S2.1, 14 RD, 1 m
              w7: S2.2 to M1.1, 14 RD, 1 m
              w8: M1.2 to chassis, 14 BK, 1 m
            alteration:
              system: 12 V, negative ground
              changes:
                - replace H1: horn, 12 V, 4 A
                - replace G1 reversed: battery, 12 V, 60 Ah
            """, "1, 2"));
        Assert.Equal((HarmKind.RunsBackward, Severity.Warning, "M1", false), (harm.Kind, harm.Severity, harm.Item, harm.IsUnsafe));
    }

    [Fact]
    public void Feed_and_return_that_meet_are_a_short_circuit() => Assert.Contains(Found("""
        alteration:
          changes:
            - run w6: X1 to chassis, 4 BK, 0.3 m
        """, "1"), h => h is { Kind: HarmKind.Short, Severity: Severity.Stop });

    [Fact]
    public void A_second_battery_of_other_volts_beside_the_first_is_a_fight() => Assert.Contains(Found("""
        parts:
          G2: battery, 12 V, 60 Ah
        wires:
          w6: G2.pos to chassis, 4 BK, 0.3 m
        alteration:
          changes:
            - run w7: G2.neg to X1, 8 BK, 2 m
        """, "1"), h => h is { Kind: HarmKind.SourceFight, Item: "G1", Severity: Severity.Stop });

    private const string Reducer = """
        parts:
          P1: gauge, Fuel, 6 V, 20 ohm
          B1: sender, Fuel, 0..90 ohm
        wires:
          w6: F1.2 to P1.I, 16 GN, 1 m
          w7: P1.S to B1.1, 16 VT, 1 m
        alteration:
          system: 12 V, negative ground
          changes:
            - replace H1: horn, 12 V, 4 A
            - fit N1: reducer, 12 V, out 6 V, out 0.5 A, case insulated
            - run w8: N1.case to chassis, 16 BK, 0.3 m
            - move w6: P1.I to N1.in
            - run w9: N1.out to P1.I, 16 GN, 0.3 m
            - replace G1 reversed: battery, 12 V, 60 Ah
        """;

    [Fact]
    public void A_reducer_that_is_fed_without_its_ground_is_told()
    {
        Assert.Contains(Found(Reducer, "all but w8 on"), h => h is { Kind: HarmKind.NoReference, Item: "N1", Severity: Severity.Stop });
        Assert.DoesNotContain(Found(Reducer, "all but w9"), h => h.Kind == HarmKind.NoReference);
        Assert.Empty(Found(Reducer, "all but G1"));
        // By the rules its ground is on before its feed.
        var (plan, _) = Of(Reducer);
        string[] order = OrderJobs.Named(plan);
        Assert.True(Array.IndexOf(order, "w8 on N1.case") < Array.IndexOf(order, "w6 on N1.in"));
    }

    // 18 AWG may carry 10 A where nothing is known of its insulation (33 CFR 183.425, table 5, 60 °C); the two horns take 20 A, and F1 carries 15 A.
    [Fact]
    public void A_wire_over_its_table_value_is_a_warning() => Assert.Contains(Found("""
        alteration:
          changes:
            - fit H2: horn, 6 V, 12 A
            - renew w3: 18 BK
            - run w6: H1.1 to H2.1, 14 BK, 0.3 m
            - run w7: H2.2 to H1.2, 14 BK, 0.3 m
        """, "1, 2, 3, 4"), h => h is { Kind: HarmKind.OverCurrent, Item: "w3", Severity: Severity.Warning });

    [Fact]
    public void A_feed_that_will_be_fused_and_is_not_yet_is_a_warning()
    {
        const string text = """
            parts:
              E1: lamp, 6 V, 5 W, 2 on chassis
              S2: switch
            wires:
              w6: X1 to S2.1, 16 RD, 1 m
              w7: S2.2 to E1.1, 16 RD, 1 m
            alteration:
              changes:
                - fit F2: fuse, 5 A, 1 on X1
                - move w6: X1 to F2.2
            """;
        Assert.Contains(Found(text, ""), h => h is { Kind: HarmKind.Unprotected, Item: "w6", IsUnsafe: false });
        Assert.Empty(Found(text, "1, 2"));
    }

    [Fact]
    public void A_part_of_the_old_volts_that_stays_is_harm_that_no_step_ends()
    {
        var order = Job.Read(HornJob.With("alteration:\n  system: 12 V, positive ground\n  changes:\n    - replace G1: battery, 12 V, 60 Ah\n")).OrThrow().WorkOrder;
        Assert.Null(order.NewBatteryFrom);
        Assert.Contains(order.Findings, f => f is { Code: "HS4202", Severity: Severity.Error });
        Assert.Contains(order.Steps[^1].Harms, h => h is { Item: "H1", EndsWithStep: null });
    }
}
