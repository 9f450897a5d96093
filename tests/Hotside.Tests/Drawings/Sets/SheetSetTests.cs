using System.Globalization;
using System.Text.RegularExpressions;
using Hotside.Drawings;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings.Sets;

/// <summary>A vehicle on several sheets, judged by the finished pictures alone.</summary>
public sealed partial class SheetSetTests
{
    private static readonly Lazy<Drawing[]> Van = new(() => [.. GalleryJobs.Read("van").DrawSheets(View.After, new() { Page = Page.A3 })]);

    public static TheoryData<string, View, Page, TextSize> Sets => new()
    {
        { "van", View.After, Page.A3, TextSize.Normal },
        { "headlamps", View.Pair, Page.A4, TextSize.Normal },
        { "headlamps", View.Overlay, Page.A4, TextSize.Normal },
        { "launch", View.After, Page.A4, TextSize.Normal },
        { "launch", View.Pair, Page.Letter, TextSize.Normal },
        { "charging", View.Pair, Page.A4, TextSize.Large },
        { "tractor", View.Before, Page.A4, TextSize.Large },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public void Nothing_lies_over_anything_else_on_any_sheet(string job, View view, Page page, TextSize text)
    {
        var sheets = SheetsOf(job, view, page, text);
        Assert.True(sheets.Length > 1, "it fits on one");
        Assert.Equal("", string.Join('\n', sheets.SelectMany((s, i) => Clearance.Faults(s.Scene).Select(f => $"{i + 1}: {f}"))));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_part_and_conductor_is_on_some_sheet_and_every_change_in_the_list(string name, View view, Page page, TextSize text)
    {
        var alteration = GalleryJobs.Read(name).Alteration;
        var sheets = SheetsOf(name, view, page, text);
        var drawn = sheets.SelectMany(s => s.Boxes).Select(b => (b.Id, b.View)).ToHashSet();
        foreach (var (shown, circuit) in new[] { (View.Before, alteration.Before), (View.After, alteration.After) }.Where(c => view == View.Pair || view == c.Item1))
            Assert.All(circuit.Conductors.Select(c => c.Id).Concat(circuit.Parts.Where(p => !p.Kind.Terminals.IsEmpty).Select(p => p.Id)), id => Assert.Contains((id, shown), drawn));
        string[] listed = [.. sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Classes.Contains("changes")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor == Anchor.End).Select(t => t.Text)];
        Assert.Equal(alteration.Changes.Select(c => c.Number.ToString(CultureInfo.InvariantCulture)), listed);
    }

    // Sheet and zone are read off the flags and looked for there, in the fields of the frame.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_flag_names_the_zone_of_one_that_names_its_own(string job, View view, Page page, TextSize text)
    {
        var sheets = SheetsOf(job, view, page, text);
        var flags = sheets.SelectMany((s, i) => s.Scene.Groups.Where(g => g.Classes.Contains("flag")).Select(g => (Sheet: i + 1, g.View, Zone: ZoneOf(s, g), Text: string.Join(' ', g.Shapes.OfType<TextShape>().Select(t => t.Text))))).ToArray();
        Assert.NotEmpty(flags);
        Assert.All(flags, f => Assert.False(f.Text.Contains('…'), f.Text));
        foreach (var flag in flags)
        {
            var named = Zone().Matches(flag.Text).Select(m => m.Value).ToArray();
            Assert.NotEmpty(named);
            foreach (string zone in named)
                Assert.Contains(flags, f => f.View == flag.View && $"{f.Sheet}.{f.Zone}" == zone && Zone().Matches(f.Text).Any(m => m.Value == $"{flag.Sheet}.{flag.Zone}"));
        }
    }

    [Fact]
    public void Sheets_are_numbered_and_the_first_says_who_switches_what()
    {
        var sheets = Van.Value;
        for (int i = 0; i < sheets.Length; i++)
            Assert.Contains(TextsOf(sheets[i]), t => t == $"{i + 1} / {sheets.Length}");
        string[] first = TextsOf(sheets[0]);
        Assert.Contains("Who switches what, and on which side", first);
        // Worked out by hand: the horn's current came over the button and comes over the relay; F0 and F4 lie before it.
        int row = Array.IndexOf(first, "H1, Horn");
        Assert.Equal(["H1, Horn", "by S7, which carries 8 A", "by K5: 5 A", "F0, F4"], first[row..(row + 4)]);
        Assert.Equal("none", first[Array.IndexOf(first, "M1, Starter motor") + 3]);
        string where = first[row + 4];
        var (sheet, zone) = (int.Parse(where.Split('.')[0], CultureInfo.InvariantCulture), where.Split('.')[1]);
        Assert.Contains(sheets[sheet - 1].Scene.Groups, g => g.Data.Contains(("ref", "H1")) && Near(ZoneOf(sheets[sheet - 1], g), zone));
    }

    [Fact]
    public void What_fits_on_one_paper_takes_one()
    {
        var sheet = Assert.Single(GalleryJobs.Read("horn").DrawSheets(View.Pair, new() { Page = Page.A4 }));
        Assert.Equal(GalleryJobs.HornPair.ToSvg(), sheet.ToSvg());
        Assert.Single(GalleryJobs.Read("headlamps").DrawSheets(View.After));
    }

    [Fact]
    public void One_sheet_that_is_too_small_is_told_with_one_that_is_large_enough() =>
        Assert.Contains("does not fit on one A4; it needs A3", Assert.Throws<ArgumentException>(() => GalleryJobs.Read("headlamps").Draw(View.After, new() { Page = Page.A4 })).Message, StringComparison.Ordinal);

    [Fact]
    public void The_same_bytes_come_again() =>
        Assert.Equal(SheetsOf("launch", View.After, Page.A4, TextSize.Normal).Select(s => s.ToSvg()), GalleryJobs.Read("launch").DrawSheets(View.After, new() { Page = Page.A4 }).Select(s => s.ToSvg()));

    private static readonly Dictionary<(string, View, Page, TextSize), Drawing[]> Known = [];

    private static Drawing[] SheetsOf(string job, View view, Page page, TextSize text)
    {
        if (job == "van") return Van.Value;
        lock (Known)
            return Known.TryGetValue((job, view, page, text), out var known) ? known
                : Known[(job, view, page, text)] = [.. GalleryJobs.Read(job).DrawSheets(view, new() { Page = page, Text = text })];
    }

    private static string ZoneOf(Drawing sheet, SceneGroup group)
    {
        var box = Box.Around(group.Shapes.Where(s => s is not TextShape).Select(s => s.Bounds));
        return new SheetFrame(new("", sheet.WidthInMillimetres * 4, sheet.HeightInMillimetres * 4)).ZoneAt((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    // A symbol's drawn middle and that of its box may lie on two sides of a field's edge.
    private static bool Near(string a, string b) => Math.Abs(a[0] - b[0]) <= 1 && Math.Abs(int.Parse(a[1..], CultureInfo.InvariantCulture) - int.Parse(b[1..], CultureInfo.InvariantCulture)) <= 1;

    private static string[] TextsOf(Drawing sheet) => [.. sheet.Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text)];

    [GeneratedRegex(@"\d+\.[A-Z]+\d+")]
    private static partial Regex Zone();
}
