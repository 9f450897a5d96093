using System.Text.Json;
using System.Text.RegularExpressions;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>How the order reads, and its forms.</summary>
public partial class OrderTextTests
{
    public static TheoryData<string> Cases => [.. OrderJobs.Gallery];

    [Theory]
    [InlineData("horn")]
    [InlineData("headlamps")]
    public void The_printed_order_is_what_was_read_and_found_good(string name) =>
        Approve.Text(OrderTable.Of(OrderJobs.OfGallery(name)).ToText(), "tests", "Hotside.Tests", "Orders", name + "-order.approved.txt");

    // The wording of work sheets: imperative, one sentence after the other, no "should", no "carefully".
    [Theory]
    [MemberData(nameof(Cases))]
    public void Lines_are_sentences_in_plain_words(string name)
    {
        var job = OrderJobs.OfGallery(name);
        var order = job.WorkOrder;
        string[] lines = [.. order.Steps.SelectMany(s => s.Acts).Select(a => a.Text), .. order.Steps.Select(s => s.Caution).OfType<string>(), .. order.Cautions];
        Assert.All(lines, l => Assert.EndsWith(".", l, StringComparison.Ordinal));
        Assert.All(lines, l => Assert.DoesNotMatch(SoftWords(), l));
        Assert.All(lines, l => Assert.DoesNotContain("..", l, StringComparison.Ordinal));
        Assert.Contains("workshop manual", order.Cautions[0], StringComparison.Ordinal);
        Assert.Single(order.Cautions, c => c.Contains("workshop manual", StringComparison.Ordinal));
        Assert.All(OrderTable.Of(job).ToText().Split('\n'), l => Assert.True(l.Length <= 101, l));
    }

    [Fact]
    public void Each_post_is_named_with_its_sign_and_the_grounded_one_comes_off_first_and_on_last()
    {
        string[] acts = [.. OrderJobs.OfGallery("horn").WorkOrder.Steps.SelectMany(s => s.Acts).Where(a => a.Type is WorkActType.CableOff or WorkActType.CableOn).Select(a => a.Text)];
        Assert.Equal(
        [
            "Take w2 (black) off the POSITIVE post of G1 (grounded).", "Take w1 (black) off the NEGATIVE post of G1 (hot).",
            "Put w1 (black) on the POSITIVE post of G1 (hot).", "Put w2 (black) on the NEGATIVE post of G1 (grounded), through a 12 V, 21 W lamp in series.",
        ], acts);
    }

    // Wires that are renewed come off for good; the swap of the leads is how the new ones land, not a second taking off.
    [Fact]
    public void A_part_whose_wires_are_renewed_is_turned_by_how_they_land()
    {
        var order = Job.Read("""
            hotside: 1
            title: Ammeter
            system: 6 V, positive ground, sizes in mm²
            parts:
              G1: battery, 6 V, 60 Ah
              P1: ammeter, 30 A
              X1: feed-rail
              E1: lamp, 6 V, 6 W, 2 on chassis
              S1: switch, 1 on X1
            wires:
              w1: G1.neg to P1.2, 4 BN
              w2: P1.1 to X1, 4 BN
              w3: S1.2 to E1.1, 1 BU
              w4: G1.pos to chassis, 16 BK
            alteration:
              title: Negative ground
              system: 12 V, negative ground
              changes:
                - reverse P1
                - renew w1, w2: 6 BN
                - replace E1: lamp, 12 V, 6 W
                - replace G1 reversed: battery, 12 V, 60 Ah
            """).OrThrow().WorkOrder;
        string[] acts = [.. order.Steps.SelectMany(s => s.Acts).Select(a => a.Text)];
        int turned = Array.FindIndex(acts, a => a.Contains("P1 (ammeter)", StringComparison.Ordinal));
        Assert.Equal("Leave P1 (ammeter) bare until its wires land, the other way round than before: w1 goes on P1.1, w2 goes on P1.2.", acts[turned]);
        Assert.True(turned > Array.FindLastIndex(acts, a => a.StartsWith("Tag w", StringComparison.Ordinal) && a.Contains("P1", StringComparison.Ordinal)), string.Join('\n', acts));
        Assert.True(turned < Array.FindIndex(acts, a => a.StartsWith("Put w", StringComparison.Ordinal) && a.Contains("P1", StringComparison.Ordinal)), string.Join('\n', acts));
    }

    [Fact]
    public void British_words_are_earth_and_live()
    {
        var order = OrderJobs.OfGallery("horn").OrderWork(Words.British);
        Assert.Contains("Take w2 (black) off the POSITIVE post of G1 (earthed).", order.Steps.SelectMany(s => s.Acts).Select(a => a.Text));
        Assert.DoesNotContain(order.Steps.SelectMany(s => s.Acts), a => a.Text.Contains("ground", StringComparison.Ordinal));
        Assert.Equal(OrderJobs.OfGallery("horn").WorkOrder.Mark, order.Mark);
    }

    [Fact]
    public void Csv_has_a_line_an_act_and_json_all_that_the_order_says()
    {
        var table = OrderTable.Of(OrderJobs.OfGallery("horn"));
        string[] lines = table.ToCsv().Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + table.Order.Steps.Sum(s => s.Acts.Length), lines.Length);
        Assert.StartsWith("step,phase,place,circuit,change,act,item,at,done,text,because", lines[0], StringComparison.Ordinal);
        var json = JsonDocument.Parse(table.ToJson()).RootElement;
        Assert.Equal("hotside-order/1", json.GetProperty("schema").GetString());
        Assert.Equal(table.Order.Mark, json.GetProperty("order").GetString());
        Assert.Equal(table.Order.Steps.Length, json.GetProperty("steps").GetArrayLength());
        Assert.Equal(table.Order.NewBatteryFrom, json.GetProperty("newBatteryFromStep").GetInt32());
    }

    [Fact]
    public void Electronics_that_stay_are_unplugged_before_the_volts_change_and_plugged_in_last()
    {
        var job = Job.Read(HornJob.With("""
            parts:
              P9: radio-vibrator, 6 V, 4 A
            wires:
              w6: X1 to P9.30, 14 RD, 1 m
              w7: P9.31 to chassis, 14 BK, 1 m
            alteration:
              system: 6 V, negative ground
              changes:
                - replace G1 reversed: battery, 6 V, 90 Ah
            """)).OrThrow();
        var acts = job.WorkOrder.Steps.SelectMany(s => s.Acts).Select(a => a.Type).ToList();
        Assert.True(acts.IndexOf(WorkActType.BatteryOut) < acts.IndexOf(WorkActType.Unplug));
        Assert.True(acts.IndexOf(WorkActType.Unplug) < acts.IndexOf(WorkActType.CableOn));
        Assert.True(acts.LastIndexOf(WorkActType.PowerUp) < acts.IndexOf(WorkActType.PlugIn));
    }

    // A sentence that holds for twelve lamps alike is read once, not twelve times.
    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_minded_with_several_acts_is_said_once_a_step(string name)
    {
        var order = OrderJobs.OfGallery(name).WorkOrder;
        Assert.All(order.Steps, s => Assert.Equal(s.Acts.Any(a => a.Type == WorkActType.Lay), s.Remarks.Any(r => r.Contains("sleeves", StringComparison.Ordinal))));
        Assert.All(order.Steps, s => Assert.Equal(s.Remarks.Distinct(), s.Remarks));
        Assert.All(order.Steps.SelectMany(s => s.Acts), a => Assert.DoesNotContain("sleeves", a.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void An_order_that_the_check_refuses_says_so_before_all_else()
    {
        var refused = OrderJobs.Horn("run w9: G1.neg to H1.1, 16 RD, 1 m");
        Assert.Contains(refused.Findings, f => f.Severity == Severity.Stop);
        string text = OrderTable.Of(refused).ToText();
        Assert.Contains("DO NOT WORK TO THIS ORDER", text, StringComparison.Ordinal);
        Assert.True(text.IndexOf("DO NOT WORK", StringComparison.Ordinal) < text.IndexOf("[ ] 1", StringComparison.Ordinal));
        Assert.All(OrderTable.Of(refused).Stops, s => Assert.Contains(s.Code, text, StringComparison.Ordinal));
        Assert.DoesNotContain("DO NOT WORK", OrderTable.Of(OrderJobs.OfGallery("horn")).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fuses_go_in_from_the_battery_outward()
    {
        string said = OrderJobs.OfGallery("headlamps").WorkOrder.Steps.SelectMany(s => s.Acts).Single(a => a.Type == WorkActType.PowerUp && a.Text.Contains("one by one", StringComparison.Ordinal)).Text;
        Assert.All(new[] { "F1", "F2", "F3", "F4" }, f => Assert.True(said.IndexOf("F0", StringComparison.Ordinal) < said.IndexOf(f, StringComparison.Ordinal), said));
    }

    [Fact]
    public void Where_nothing_stands_on_metal_a_post_is_on_the_return()
    {
        string[] lines = [.. OrderJobs.OfGallery("launch").WorkOrder.Steps.SelectMany(s => s.Acts).Select(a => a.Text)];
        Assert.Contains(lines, l => l.Contains("NEGATIVE post of G1 (return)", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, l => l.Contains("(grounded)", StringComparison.Ordinal) || l.Contains("on ground", StringComparison.Ordinal));
        Assert.Contains("it stays out all the same until step ", OrderTable.Of(OrderJobs.OfGallery("launch")).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_tried_on_the_bench_is_tried_before_it_is_fitted()
    {
        string[] acts = [.. OrderJobs.OfGallery("gauges").WorkOrder.Steps.SelectMany(s => s.Acts).Where(a => a.Item == "N1").Select(a => a.Type.ToString())];
        Assert.Equal(["Work", "Fit"], acts);
    }

    // Which of two studs matters even where they bear no marks.
    [Fact]
    public void What_is_bolted_to_a_meter_names_its_stud()
    {
        var job = OrderJobs.Horn("fit P1: ammeter, 20 A", "move w1: X1 to P1.1", "run w9: P1.2 to X1, 8 RD, 0.3 m", "fit F9: fuse, 10 A, 1 on P1.2");
        Assert.Contains(job.WorkOrder.Steps.SelectMany(s => s.Acts), a => a.Text == "Fit F9 (fuse): 10 A, one end on P1.2.");
    }

    [Fact]
    public void A_job_that_alters_nothing_has_no_steps()
    {
        var order = Job.Read(HornJob.Base).OrThrow().WorkOrder;
        Assert.Empty(order.Steps);
        Assert.Empty(order.Findings);
        Assert.Contains("Nothing is altered.", OrderTable.Of(Job.Read(HornJob.Base).OrThrow()).ToText(), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\b(should|carefully|please|try to)\b", RegexOptions.IgnoreCase)]
    private static partial Regex SoftWords();
}
