using Hotside.Symbols.Shapes;
using Hotside.Tests.Drawings;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Packs;

/// <summary>Whatever is written in a job file, its pack is set without anything over anything else, on either paper, in either size.</summary>
public sealed class PackLayoutTests
{
    public static TheoryData<string, string> Texts => new()
    {
        { "the horn", PackJobs.HornText },
        { "a name of ninety characters", PackJobs.Named(PackJobs.Ninety) },
        { "German words", PackJobs.Named(PackJobs.German) },
        { "Finnish words", PackJobs.Named(PackJobs.Finnish) },
        { "a long title", PackJobs.HornText.Replace("title: Horn circuit", $"title: {PackJobs.Ninety} {PackJobs.German}", StringComparison.Ordinal) },
        { "no change", PackJobs.HornText.Split("alteration:")[0] },
        { "forty-five changes", PackJobs.Lamps(45) },
        { "a long reason", PackJobs.HornText.Replace("because S1 then carries 0.15 A, not 8 A", "because " + string.Join(" ", Enumerable.Repeat("the old contact has carried eight amperes for sixty years and is burnt", 12)), StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Nothing_lies_over_anything_else_and_all_stays_on_the_sheet(string what, string job)
    {
        var read = Job.Read(job).OrThrow();
        foreach (var options in new PackOptions[] { new(), new() { Page = Page.Letter, Words = Words.British, Text = TextSize.Large } })
            foreach (var sheet in read.Pack(options with { Only = [.. PackJobs.Quick] }).Sheets)
                Check($"{what}, {options.Page}, {options.Text}, sheet {sheet.Number}", sheet);
    }

    [Fact]
    public void The_pack_of_a_whole_vehicle_is_set_as_well()
    {
        foreach (var sheet in PackJobs.Van.Sheets) Check($"van, sheet {sheet.Number}", sheet);
    }

    [Fact]
    public void Check_sheets_are_set_as_well()
    {
        foreach (var sheet in PackJobs.Horn.Sheets.Where(s => s.Number != 2)) Check($"sheet {sheet.Number}", sheet);
        foreach (var sheet in GalleryJobs.Read("horn").Pack(new() { Page = Page.Letter, Text = TextSize.Large, Only = ["check-dead", "check-live"] }).Sheets) Check($"large, sheet {sheet.Number}", sheet);
    }

    [Fact]
    public void A_table_that_goes_on_has_its_head_again()
    {
        var wires = PackJobs.Van.Sheets.Where(s => s.Drawing.Scene.Groups.Any(g => g.Classes.Contains("wires"))).ToArray();
        Assert.True(wires.Length > 1);
        foreach (var sheet in wires)
        {
            string[] texts = [.. sheet.Drawing.Scene.Groups.Where(g => g.Classes.Contains("wires")).SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text)];
            Assert.Contains("What becomes of it", texts);
            Assert.Contains(sheet == wires[0] ? "Wire list" : "Wire list, continued", texts);
        }
    }

    [Fact]
    public void Pages_are_cut_at_other_places_on_the_other_paper_but_no_line_is_broken_otherwise()
    {
        string[] Lines(Page page) => [.. GalleryJobs.Read("headlamps").Pack(new() { Page = page, Only = ["changes", "wires", "materials", "loads"] }).Sheets.SelectMany(s => s.Drawing.Scene.Groups).Where(g => g.Id != "foot")
            .SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text).Where(t => !t.EndsWith(", continued", StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(Lines(Page.A4), Lines(Page.Letter));
    }

    [Fact]
    public void No_sheet_but_the_last_of_a_page_that_stands_alone_is_half_empty()
    {
        // Labels and what follows them begin sheets of their own; the end of a page may be anywhere.
        foreach (var sheet in PackJobs.Van.Sheets)
        {
            bool isEnd = PackJobs.Van.Pages.Any(p => p.LastSheet == sheet.Number);
            double bottom = sheet.Drawing.Scene.Groups.Where(g => g.Id != "foot").SelectMany(g => g.Shapes).Max(s => s.Bounds.Bottom);
            Assert.True(isEnd || bottom > 0.7 * sheet.Drawing.Scene.Height, $"sheet {sheet.Number} ends at {bottom}");
        }
    }

    private static void Check(string what, PackSheet sheet)
    {
        var scene = sheet.Drawing.Scene;
        Assert.Equal("", string.Join('\n', Clearance.Faults(scene).Select(f => $"{what}: {f}")));
        // 20 mm for the holes, 10 mm clear.
        Box clear = new(80, 40, scene.Width - 40, scene.Height - 40);
        foreach (var shape in scene.Groups.SelectMany(g => g.Shapes))
            Assert.True(clear.Contains(shape.Bounds, 1.5), $"{what}: {(shape as TextShape)?.Text} {shape.Bounds}");
    }
}
