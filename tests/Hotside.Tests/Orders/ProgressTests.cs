using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>What is done, the vehicle in between, and what was fitted otherwise.</summary>
public class ProgressTests
{
    private static readonly string[] Relay =
    [
        "fit K1: relay, Horn relay, 6 V, 30 A, coil 0.3 A", "move w4: H1.2 to K1.85", "run w6: F1.2 to K1.30, 14 RD, 0.2 m", "run w7: K1.87 to H1.2, 14 GN, 0.9 m", "run w8: F1.2 to K1.86, 16 RD, 0.2 m",
    ];

    private static ReadResult Read(string more, params string[] changes) =>
        Job.Read(HornJob.With("alteration:\n" + more + "  changes:\n" + string.Concat(changes.Select(c => $"    - {c}\n"))));

    [Fact]
    public void What_is_done_is_ticked_and_comes_first()
    {
        var order = Read("  done: 1, w6 laid, w6 on K1.30\n", Relay).OrThrow().WorkOrder;
        string[] done = [.. order.Steps.SelectMany(s => s.Acts).TakeWhile(a => a.IsDone).Where(a => a.Change is not null).Select(a => $"{a.Type} {a.Item} {a.At}".Trim())];
        Assert.Equal(["Fit K1", "Lay w6", "WireOn w6 K1.30"], done);
        Assert.DoesNotContain(order.Steps.SelectMany(s => s.Acts).SkipWhile(a => a.IsDone), a => a.IsDone);
        Assert.Contains(order.Steps, s => !s.IsDone && s.Acts.Any(a => a is { Type: WorkActType.WireOn, Item: "w6", At: "F1.2" }));
    }

    [Fact]
    public void An_act_that_is_done_without_what_comes_before_is_an_error_that_names_the_missing_one()
    {
        var finding = Assert.Single(Read("  done: w6 laid, w6 on K1.30\n", Relay).OrThrow().Findings, f => f.Code == "HS4203");
        Assert.Equal("w6 on K1.30 is done, but K1 fitted is not: a wire lands only on what is there", finding.Message);
        Assert.NotNull(finding.Span);
    }

    [Theory]
    [InlineData("9")]
    [InlineData("w4 painted")]
    [InlineData("w99")]
    public void Progress_that_names_nothing_is_told(string done) => Assert.Contains(Read($"  done: {done}\n", Relay).OrThrow().Findings, f => f.Code == "HS4204");

    [Fact]
    public void As_of_a_step_the_vehicle_has_what_is_done_and_wires_that_hang()
    {
        var job = OrderJobs.OfGallery("horn");
        var order = job.WorkOrder;
        int off = order.Steps.First(s => s.Acts.Any(a => a is { Type: WorkActType.WireOn, Item: "w9" })).Number;
        var state = job.AsOf(off).Alteration;
        Assert.Same(state.Before, state.After);
        Assert.True(state.After.FindConductor("w9")!.From.IsFree);
        Assert.Equal("K1.30", state.After.FindConductor("w9")!.To.ToString());
        Assert.Null(state.After.FindConductor("w3"));
        Assert.Contains("horn pressed", state.After.Settings.Select(s => s.Name));
        Assert.Contains("as of step", job.AsOf(off).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void As_of_the_first_and_the_last_step_it_is_the_vehicle_before_and_after()
    {
        var job = OrderJobs.OfGallery("horn");
        string[] Wires(Circuit circuit) => [.. circuit.Conductors.Select(c => $"{c.Id} {c.From} {c.To}")];
        Assert.Equal(Wires(job.Alteration.Before), Wires(job.AsOf(0).Alteration.After));
        Assert.Equal(Wires(job.Alteration.After), Wires(job.AsOf(job.WorkOrder.Steps.Length).Alteration.After));
        Assert.Equal(job.Alteration.After.System.ToString(), job.AsOf(job.WorkOrder.Steps.Length).Alteration.After.System.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => job.AsOf(job.WorkOrder.Steps.Length + 1));
    }

    [Fact]
    public void As_of_a_step_the_battery_is_as_the_order_has_it_there()
    {
        var job = OrderJobs.OfGallery("horn");
        var steps = job.WorkOrder.Steps;
        int Step(Func<WorkAct, bool> has) => steps.First(s => s.Acts.Any(has)).Number;
        int ground = Step(a => a is { Type: WorkActType.CableOff, At: "G1 positive" or "G1.pos" }), lifted = Step(a => a.Type == WorkActType.BatteryOut), cables = steps.Last(s => s.Acts.Any(a => a.Type == WorkActType.CableOn)).Number;
        string Posts(int step) => string.Join(", ", job.AsOf(step).Alteration.After.Conductors.Where(c => c.Id is "w1" or "w2").Select(c => $"{c.From} {c.To}"));
        Assert.Equal("G1.neg X1.1, G1.pos chassis", Posts(ground - 1));
        Assert.Equal("G1.neg X1.1, free chassis", Posts(ground));
        Assert.Equal("free X1.1, free chassis", Posts(lifted));
        Assert.Equal("free X1.1, free chassis", Posts(cables - 2));
        Assert.Equal("G1.pos X1.1, G1.neg chassis", Posts(cables));
        for (int step = 0; step <= steps.Length; step++) Assert.Equal(step < ground || step >= cables, job.AsOf(step).IsPowered);
        Assert.EndsWith("battery disconnected", job.AsOf(lifted).Title, StringComparison.Ordinal);
        Assert.DoesNotContain("battery", job.AsOf(cables).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void As_of_a_step_another_battery_may_be_connected_in_thought()
    {
        var job = OrderJobs.OfGallery("horn");
        var old = job.AsOf(6, StandingBattery.Old).Alteration.After;
        Assert.Equal("6 V, positive ground", old.System.ToString().Split(", sizes")[0]);
        Assert.Equal("G1.pos", old.FindConductor("w2")!.From.ToString());
        var fresh = job.AsOf(6, StandingBattery.New).Alteration.After;
        Assert.Equal("12 V, negative ground", fresh.System.ToString().Split(", sizes")[0]);
        Assert.Equal("G1.neg", fresh.FindConductor("w2")!.From.ToString());
        Assert.True(job.AsOf(0, StandingBattery.Out).Alteration.After.FindConductor("w2")!.From.IsFree);
        Assert.Throws<ArgumentOutOfRangeException>(() => job.AsOf(6, (StandingBattery)9));
    }

    // What joins two batteries comes out with them, and is no cable that hangs.
    [Fact]
    public void A_link_between_batteries_stays_on_them()
    {
        var job = Job.Read(HornJob.With("""
            parts:
              G2: battery, 6 V, 90 Ah
            wires:
              w1: G2.neg to X1, 2 BK, 0.6 m
              w9: G1.neg to G2.pos, 2 BK, 0.2 m
            system: 12 V, positive ground, sizes in AWG
            alteration:
              changes:
                - renew w5: 14 BK
            """.Replace("w1:", "w8:", StringComparison.Ordinal)).Replace("  w1: G1.neg to X1, 2 BK, 0.6 m\n", "", StringComparison.Ordinal)).OrThrow();
        int lifted = job.WorkOrder.Steps.Last(s => s.Acts.Any(a => a.Type == WorkActType.BatteryOut)).Number;
        var circuit = job.AsOf(lifted).Alteration.After;
        Assert.Equal("G1.neg G2.pos", $"{circuit.FindConductor("w9")!.From} {circuit.FindConductor("w9")!.To}");
        Assert.True(circuit.FindConductor("w8")!.From.IsFree && circuit.FindConductor("w2")!.From.IsFree);
    }

    [Theory]
    [InlineData("horn")]
    [InlineData("headlamps")]
    [InlineData("charging")]
    public void Told_as_done_until_a_step_the_job_can_be_written_read_and_gone_on_with(string name)
    {
        var job = OrderJobs.OfGallery(name);
        for (int step = 0; step <= job.WorkOrder.Steps.Length; step += 3)
        {
            var again = Job.Read(job.DoneUntil(step).ToYaml()).OrThrow();
            Assert.DoesNotContain(again.Findings, f => f.Code is "HS4203" or "HS4204");
            Assert.Equal(job.Plan.DoneAfter(step).Take(job.Plan.Count), again.Plan.Done);
            Assert.Equal(job.Alteration.Changes.Select(c => c.Label), again.Alteration.Changes.Select(c => c.Label));
        }
        Assert.Throws<ArgumentOutOfRangeException>(() => job.DoneUntil(-1));
    }

    [Fact]
    public void The_vehicle_as_of_a_step_can_be_written_and_read_its_hanging_wires_as_spares()
    {
        var job = OrderJobs.OfGallery("horn");
        // As of the first step with which one end of w9 is on.
        var state = job.AsOf(job.WorkOrder.Steps.First(s => s.Acts.Any(a => a is { Type: WorkActType.WireOn, Item: "w9" })).Number);
        string text = state.ToYaml();
        var again = Job.Read(text).OrThrow();
        Assert.Contains("w9: free to K1.30, 14 AWG RD, 0.2 m, spare", text, StringComparison.Ordinal);
        Assert.Equal(text, again.ToYaml());
    }

    // A picture, a wire list and a study of every state: nothing that hangs free trips them.
    [Fact]
    public void Every_state_can_be_drawn_listed_and_studied()
    {
        var job = OrderJobs.OfGallery("horn");
        for (int step = 0; step <= job.WorkOrder.Steps.Length; step += 2)
        {
            var state = job.AsOf(step);
            Assert.NotEmpty(state.Draw().ToSvg());
            Assert.Contains("w1", WireList.Of(state).ToText(), StringComparison.Ordinal);
            Assert.Contains(state.Study.After.Loads, l => l.Name == "H1");
        }
    }

    [Fact]
    public void As_it_stands_is_what_the_job_says_is_done()
    {
        var state = Read("  done: 1, w6 laid, w6 on K1.30\n", Relay).OrThrow().AsItStands().Alteration.After;
        Assert.NotNull(state.FindPart("K1"));
        Assert.Equal("H1.2", state.FindConductor("w4")!.From.ToString());
        Assert.True(state.FindConductor("w6")!.From.IsFree);
    }

    [Fact]
    public void What_was_fitted_otherwise_has_numbers_of_its_own_and_is_in_the_after_circuit()
    {
        var job = Read("  as fitted:\n    date: 1954-07-01\n    by: KR\n    changes:\n      - replace K1: relay, Horn relay, 6 V, 40 A, coil 0.4 A\n      - take out w8\n      - run w10: K1.86 to K1.30, 16 RD, 0.1 m\n", Relay).OrThrow();
        Assert.DoesNotContain(job.Findings, f => f.Severity >= Severity.Error && f.Code.StartsWith("HS4", StringComparison.Ordinal));
        Assert.Null(job.Alteration.After.FindConductor("w8"));
        Assert.Equal(40, job.Alteration.After.FindPart("K1")!.Rated("contact", Unit.Ampere));
        Assert.Equal(["1", "2", "3", "4", "5", "A1", "A2", "A3"], job.Alteration.Changes.Select(c => c.Label));
        Assert.Equal("1,A1", job.Alteration.LabelsOf("K1"));
        Assert.Contains(">A3<", job.Draw().ToSvg(), StringComparison.Ordinal);
        Assert.Contains(" A3  w10 ", WireList.Of(job).ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain(job.WorkOrder.Steps.SelectMany(s => s.Acts), a => a.Item == "w8");
    }

    [Fact]
    public void A_job_that_is_written_out_keeps_progress_rules_and_what_was_fitted_otherwise()
    {
        var job = Read("  done: 1, w6 laid\n  order:\n    - { id: far-end-first, told: no }\n  as fitted:\n    date: 1954-07-01\n    by: KR\n    changes:\n      - take out w8\n      - run w10: K1.86 to K1.30, 16 RD, 0.1 m\n", Relay).OrThrow();
        string text = job.ToYaml();
        var again = Job.Read(text).OrThrow();
        Assert.Equal(text, again.ToYaml());
        Assert.Equal(job.WorkOrder.Mark, again.WorkOrder.Mark);
        Assert.Contains("  done: 1, w6 laid\n", text, StringComparison.Ordinal);
        Assert.Contains("  as fitted:\n    date: 1954-07-01\n    by: KR\n    changes:\n      - take out w8\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_of_the_job_takes_the_place_of_the_library_s()
    {
        string[] Reasons(string more) => [.. Read(more, Relay).OrThrow().WorkOrder.Steps.SelectMany(s => s.Reasons).Distinct()];
        Assert.Contains("a free end is never live", Reasons(""));
        Assert.DoesNotContain("a free end is never live", Reasons("  order:\n    - { id: far-end-first, told: no }\n    - { id: near-off-first, told: no }\n"));
    }

    [Fact]
    public void Rules_in_a_circle_are_told_with_acts_and_reasons_and_an_order_is_given_all_the_same()
    {
        var job = Read("  order:\n    - { id: mine, before: on, after: lay, same: wire, hard: yes, reason: the owner wants it so }\n", Relay).OrThrow();
        var circle = job.WorkOrder.Findings.First(f => f.Code == "HS4201");
        Assert.Equal(
            "no order meets all rules: \"lay w6\" waits for \"w6 on F1.2\" (mine: the owner wants it so); \"w6 on F1.2\" for \"lay w6\" (lay-before-on: a wire is laid before it lands)", circle.Message);
        Assert.NotEmpty(job.WorkOrder.Steps);
    }
}
