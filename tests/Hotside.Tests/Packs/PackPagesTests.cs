using System.Globalization;
using Hotside.CheckSheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Packs;

/// <summary>What stands on the pages: that which holds for this job, and nothing else.</summary>
public sealed class PackPagesTests
{
    [Fact]
    public void A_page_of_which_there_is_nothing_to_say_is_left_out_with_its_number()
    {
        var pack = Job.Read(PackJobs.HornText.Split("alteration:")[0]).OrThrow().Pack(new() { Only = [.. PackJobs.Quick] });
        Assert.Equal(["cover", "cautions", "loads", "wires", "labels", "faults", "fuses"], pack.Pages.Select(p => p.Key));
        Assert.Equal(Enumerable.Range(1, pack.Sheets.Length), pack.Sheets.Select(s => s.Number));
        Assert.Empty(pack.Materials);
    }

    [Fact]
    public void The_cover_says_where_each_page_is()
    {
        string[] texts = PackJobs.TextsOf(PackJobs.Van, "cover");
        foreach (var page in PackJobs.Van.Pages.Skip(1))
        {
            int at = Array.IndexOf(texts, page.Title);
            Assert.Equal(page.FirstSheet == page.LastSheet ? $"{page.FirstSheet}" : $"{page.FirstSheet} to {page.LastSheet}", texts[at + 1]);
        }
    }

    [Fact]
    public void The_grounded_post_is_named_for_each_polarity()
    {
        string text = string.Join(" ", PackJobs.TextsOf(PackJobs.Horn, "cautions"));
        // It was positive ground: its positive post comes off first, and the negative one goes on last (TM 10-3930-671-24 for negative ground).
        Assert.Contains("First off: the cable of the POSITIVE post", text, StringComparison.Ordinal);
        Assert.Contains("Last on: the cable of the NEGATIVE post", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_owner_is_told_which_post_is_grounded_and_not_to_join_bodies_in_a_positive_ground_vehicle()
    {
        string Owner(string job) => string.Join(" ", PackJobs.TextsOf(Job.Read(job).OrThrow().Pack(new() { Only = ["owner"] }), "owner"));
        string kept = PackJobs.HornText.Split("alteration:")[0] + "alteration:\n  title: A smaller fuse\n  changes:\n    - replace F2: fuse, 10 A\n";
        Assert.Contains("The POSITIVE post is the one on ground", Owner(kept), StringComparison.Ordinal);
        Assert.Contains("body must not touch", Owner(kept), StringComparison.Ordinal);
        Assert.Contains("The NEGATIVE post is the one on ground", Owner(PackJobs.HornText), StringComparison.Ordinal);
        Assert.DoesNotContain("body must not touch", Owner(PackJobs.HornText), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stack_of_batteries_is_charged_as_a_whole()
    {
        // Two batteries of 6 V, one on the other: from common practice, what is in series is charged in series.
        string text = PackJobs.HornText.Split("alteration:")[0].Replace("  G1: battery, 6 V, 90 Ah", "  G1: battery, 6 V, 90 Ah\n  G9: battery, 6 V, 90 Ah", StringComparison.Ordinal)
            .Replace("system: 6 V", "system: 12 V", StringComparison.Ordinal).Replace("w2: G1.pos to chassis", "w2: G9.pos to chassis", StringComparison.Ordinal).Replace("wires:", "wires:\n  w99: G1.pos to G9.neg, 2 BK, 0.2 m", StringComparison.Ordinal);
        string owner = string.Join(" ", PackJobs.TextsOf(Job.Read(text + "alteration:\n  title: A fuse\n  changes:\n    - replace F2: fuse, 10 A\n").OrThrow().Pack(new() { Only = ["owner"] }), "owner"));
        Assert.Contains("Charger: 12 V, across the whole stack of batteries", owner, StringComparison.Ordinal);
        Assert.Contains("The POSITIVE post is the one on ground", owner, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("horn", "Fuel", false)]
    [InlineData("horn", "It may move", false)]
    [InlineData("van", "Fuel", true)]
    [InlineData("van", "It may move", true)]
    [InlineData("van", "High tension", true)]
    [InlineData("horn", "High tension", false)]
    [InlineData("horn", "All batteries", false)]
    [InlineData("launch", "All batteries", true)]
    public void A_caution_stands_there_only_where_its_condition_holds(string job, string head, bool isThere) =>
        Assert.Equal(isThere, PackJobs.TextsOf(job switch { "horn" => PackJobs.Horn, "van" => PackJobs.Van, _ => GalleryJobs.Read(job).Pack(new() { Only = ["cautions"] }) }, "cautions").Contains(head));

    [Fact]
    public void The_workshop_manual_comes_first_and_is_named_on_every_written_sheet()
    {
        Assert.Equal("Comes first", PackJobs.TextsOf(PackJobs.Horn, "cautions")[2]);
        foreach (var sheet in PackJobs.Van.Sheets)
            Assert.Contains(sheet.Drawing.Scene.Groups.Single(g => g.Id == "foot").Shapes.OfType<TextShape>(), t => t.Text.Contains("workshop manual", StringComparison.Ordinal));
    }

    [Fact]
    public void What_stops_the_work_stands_on_the_cover()
    {
        string shorted = PackJobs.HornText.Replace("  w5: S1.2 to chassis, 16 BK, 0.2 m", "  w5: S1.2 to chassis, 16 BK, 0.2 m\n  w30: G1.neg to chassis, 2 BK, 0.1 m", StringComparison.Ordinal);
        string text = string.Join(" ", PackJobs.TextsOf(Job.Read(shorted).OrThrow().Pack(new() { Only = ["cover"] }), "cover"));
        Assert.Contains("Do not begin before these are settled", text, StringComparison.Ordinal);
        Assert.Contains("No finding stops the work", string.Join(" ", PackJobs.TextsOf(PackJobs.Horn, "cover")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_change_list_says_where_a_change_is_drawn()
    {
        // K1 stands in the right half of the pair, which is the second sheet: its zone is that of the frame's letters and numbers there.
        string[] texts = PackJobs.TextsOf(PackJobs.Horn, "changes");
        var drawing = PackJobs.Horn.Sheets[1].Drawing;
        var box = drawing.Boxes.Last(b => b.Id == "K1" && b.View == View.After);
        Assert.True(box.Left > drawing.WidthInMillimetres / 2);
        Assert.Contains(texts, t => t is "2.B4" or "2.B5" or "2.B6");
    }

    [Fact]
    public void Every_step_of_the_work_order_has_its_box_and_each_caution_stands_before_its_step()
    {
        string[] texts = PackJobs.TextsOf(PackJobs.Horn, "work-order");
        var order = GalleryJobs.Read("horn").WorkOrder;
        foreach (var step in order.Steps) Assert.Contains(Text(step.Number), texts);
        Assert.Equal(order.Steps.Length, PackJobs.Horn.Sheets.SelectMany(s => s.Drawing.Scene.Groups).Where(g => g.Classes.Contains("work-order")).SelectMany(g => g.Shapes).OfType<RectangleShape>().Count(r => r.Box.Width == 14));
        int caution = Array.FindIndex(texts, t => t.Contains("hydrogen", StringComparison.Ordinal)), act = Array.FindIndex(texts, t => t.Contains("off the POSITIVE post", StringComparison.Ordinal));
        Assert.InRange(caution, 0, act);
    }

    [Fact]
    public void The_foot_says_how_far_the_work_is_and_by_which_order()
    {
        static string Foot(string job) => string.Join(" ", Job.Read(job).OrThrow().Pack(new() { Only = ["labels"] }).Sheets[0].Drawing.Scene.Groups.Single(g => g.Id == "foot").Shapes.OfType<TextShape>().Select(t => t.Text));
        Assert.Contains($"nothing done yet, order {GalleryJobs.Read("horn").WorkOrder.Mark}", Foot(PackJobs.HornText), StringComparison.Ordinal);
        Assert.Contains("as of step ", Foot(PackJobs.HornText.Replace("  changes:", "  done: 1\n  changes:", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    // Ohm's law by hand: the horn of 12 V, 5 A has 2.4 Ω, so on a full battery of 12.6 V it takes a little more than 5 A, and a metre or two of 14 AWG (8.3 mΩ/m, ASTM B258) loses some
    // hundredths of a volt: the feed has the battery's volts less a few tenths, the return next to none.
    [Fact]
    public void The_fault_page_tells_where_to_measure_first_and_what_a_sound_circuit_shows()
    {
        string[] texts = PackJobs.TextsOf(PackJobs.Horn, "faults");
        Assert.Contains("H1.1: +12.45 V", texts);
        double Volts(string at) => double.Parse(texts.First(t => t.StartsWith(at + ": ", StringComparison.Ordinal))[(at.Length + 2)..^2], CultureInfo.InvariantCulture);
        Assert.InRange(Volts("F2.2"), 12.2, 12.6);
        Assert.InRange(Volts("H1.1"), 12.2, Volts("F2.2"));
        Assert.InRange(Volts("H1.2"), 0, 0.1);
    }

    [Fact]
    public void Every_row_of_the_check_sheet_is_on_one_of_its_two_pages()
    {
        string[] dead = PackJobs.TextsOf(PackJobs.Horn, "check-dead"), live = PackJobs.TextsOf(PackJobs.Horn, "check-live");
        foreach (var row in GalleryJobs.Read("horn").CheckSheet().Rows) Assert.Contains(Text(row.Number), row.Stage <= CheckStage.DeadLoads ? dead : live);
        Assert.Contains(dead, t => t.StartsWith("THE BATTERY IS OUT", StringComparison.Ordinal));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    [Fact]
    public void Every_part_has_a_decision()
    {
        string text = string.Join(" ", PackJobs.TextsOf(PackJobs.Van, "decisions"));
        var alteration = GalleryJobs.Read("van").Alteration;
        foreach (var part in alteration.Before.Parts.Concat(alteration.After.Parts).Where(p => p.Kind.Elements.Length > 0))
            Assert.Matches($@"\b{part.Id}\b", text);
    }

    [Fact]
    public void Words_are_those_that_were_asked_for()
    {
        var pack = GalleryJobs.Read("horn").Pack(new() { Words = Words.British, Only = [.. PackJobs.Quick] });
        // The owner's own words stay.
        string title = GalleryJobs.Read("horn").Alteration.Title;
        string text = string.Join(" ", PackJobs.Written.SelectMany(p => PackJobs.TextsOf(pack, p)).Where(t => t != title));
        Assert.Contains("earth", text, StringComparison.Ordinal);
        Assert.DoesNotContain("color", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(@"\bground", text);
    }

    [Fact]
    public void A_page_that_is_not_there_is_told_with_the_nearest() =>
        Assert.Contains("did you mean \"labels\"", Assert.Throws<ArgumentException>(() => new PackOptions { Only = ["label"] }).Message, StringComparison.Ordinal);

    [Fact]
    public void Other_papers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new PackOptions { Page = Page.A3 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new PackOptions { Schematics = Page.Fit });
    }
}
