using System.Globalization;
using System.Text.RegularExpressions;
using Hotside.Drawings;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

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
        { "trailer", View.Pair, Page.A3, TextSize.Normal },
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
        string[] listed = [.. sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Classes.Contains("changes")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor == Anchor.End && t.Style.Bold).Select(t => t.Text)];
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

    // Flags and lists say "H2.15": who stands before the lamp must see which end that is. A source shows its poles.
    [Theory]
    [MemberData(nameof(Sets))]
    public void A_terminal_that_is_named_is_drawn(string job, View view, Page page, TextSize text)
    {
        var alteration = GalleryJobs.Read(job).Alteration;
        var circuits = new[] { (View.Before, alteration.Before), (View.After, alteration.After) }.Where(c => view is View.Pair or View.Overlay || view == c.Item1).Select(c => c.Item2).ToArray();
        var groups = SheetsOf(job, view, page, text).SelectMany(s => s.Scene.Groups).ToArray();
        var named = groups.Where(g => g.Classes.Contains("changes") || g.Classes.Contains("flag")).SelectMany(g => g.Shapes).OfType<TextShape>().SelectMany(t => Named().Matches(t.Text)).Select(m => (Part: m.Groups[1].Value, Terminal: m.Groups[2].Value)).Distinct();
        foreach (var (part, terminal) in named)
            if (circuits.Any(c => c.FindPart(part) is { } p && p.Kind.Terminals.Any(t => t.Name == terminal) && p.Kind.OnlyTerminal is null && p.Kind.Elements.All(e => !e.IsSource)))
                Assert.True(groups.Any(g => g.Data.Contains(("ref", part)) && g.Shapes.OfType<TextShape>().Any(t => t.Text == terminal)), $"{part}.{terminal}");
    }

    [Fact]
    public void Flags_side_by_side_at_a_connector_hang_right_above_its_ways()
    {
        var sheet = GalleryJobs.Read("trailer").DrawSheets(View.After, new() { Page = Page.A4 }).First(s => s.Scene.Groups.Any(g => g.Data.Contains(("ref", "X2"))));
        foreach (string wire in (string[])["w7", "w11", "w19", "w20"])
            Assert.InRange(Box.Around(sheet.Scene.Groups.Where(g => g.Data.Contains(("ref", wire))).SelectMany(g => g.Shapes).Where(s => s is not TextShape).Select(s => s.Bounds)).Width, 0, 5);
    }

    // In the order given two ways lie between theirs, and all ways apart would be too wide for the paper.
    [Fact]
    public void Flags_that_come_to_stand_side_by_side_are_narrow_and_their_lines_straight()
    {
        var sheet = GalleryJobs.Read("trailer").DrawSheets(View.Pair).First(s => s.Scene.Groups.Any(g => g.Data.Contains(("ref", "X2"))));
        foreach (string wire in (string[])["w19", "w20"])
            foreach (var view in new[] { View.Before, View.After })
                Assert.InRange(Box.Around(sheet.Scene.Groups.Where(g => g.View == view && g.Data.Contains(("ref", wire))).SelectMany(g => g.Shapes).Where(s => s is not TextShape).Select(s => s.Bounds)).Width, 0, 5);
    }

    [Fact]
    public void Flags_of_lines_have_one_form_on_a_sheet()
    {
        foreach (var sheet in GalleryJobs.VanPair)
        {
            var flags = sheet.Scene.Groups.Where(g => g.Classes.Contains("flag")).Select(g => g.Shapes.OfType<TextShape>().Count()).Order().ToArray();
            // Those of rails have one line, and are few.
            Assert.True(flags.All(n => n == 1) || flags.Count(n => n == 1) <= Rails(sheet), string.Join(' ', TextsOf(sheet)));
        }

        static int Rails(Drawing sheet) => sheet.Scene.Groups.Count(g => g.Classes.Contains("flag") && g.Shapes.OfType<TextShape>().Any(t => t.Text.StartsWith('X') && !t.Text.Split(' ')[0].Contains('.', StringComparison.Ordinal)));
    }

    [Fact]
    public void The_first_sheet_says_what_stands_on_the_others()
    {
        var sheets = Van.Value;
        var index = sheets[0].Scene.Groups.Single(g => g.Classes.Contains("sheets")).Shapes.OfType<TextShape>().ToArray();
        Assert.Equal(Enumerable.Range(2, sheets.Length - 1), index.Where(t => t.Anchor == Anchor.End).Select(t => int.Parse(t.Text, CultureInfo.InvariantCulture)));
        // The horn's row is that of the sheet which shows it.
        int row = Array.FindIndex(index, t => t.Text.Contains("H1", StringComparison.Ordinal));
        int sheet = int.Parse(index[..row].Last(t => t.Anchor == Anchor.End).Text, CultureInfo.InvariantCulture);
        Assert.Contains(sheets[sheet - 1].Scene.Groups, g => g.Data.Contains(("ref", "H1")));
    }

    // A reader who leafs through the sheets finds in each title block what the first sheet calls it.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Each_sheet_says_what_it_is_about_in_the_words_of_the_index(string job, View view, Page page, TextSize text)
    {
        var sheets = SheetsOf(job, view, page, text);
        string index = string.Join(' ', sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Classes.Contains("sheets")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor != Anchor.End).Select(t => t.Text));
        string title = GalleryJobs.Read(job).Title;
        var drawn = sheets.Where(s => s.Boxes.Length > 0).ToArray();
        string[] subjects = [.. drawn.Select(s => SubjectOf(s, title))];
        Assert.All(subjects, s => Assert.Contains(s + ":", index, StringComparison.Ordinal));
        Assert.Equal(subjects.Length, subjects.Distinct().Count());
        Assert.All(drawn.Zip(subjects), p => Assert.EndsWith(": " + p.Second, p.First.Scene.Title, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Scheinwerferreinigungsanlagenrelaissockelhalterung", "de")]
    [InlineData("Äänimerkinantolaitteen käyttökytkimen varmuusrele", "fi")]
    [InlineData("Windshield washer pump behind the left headlamp", "en")]
    public void A_long_subject_gives_way_to_the_title_block(string name, string language)
    {
        string job = File.ReadAllText(Repository.Path("gallery", "headlamps", "job.yaml")).Replace("  language: en", "  language: " + language, StringComparison.Ordinal);
        job = Regex.Replace(job, @"^(  E\d+: [a-z-]+, )(?:'[^']*'|[^,]*), ", m => $"{m.Groups[1].Value}'{name} {m.Index.ToString(CultureInfo.InvariantCulture)}', ", RegexOptions.Multiline);
        var sheets = Job.Read(job).OrThrow().DrawSheets(View.After, new() { Page = Page.A4 });
        Assert.True(sheets.Length > 1);
        foreach (var sheet in sheets)
        {
            var block = sheet.Scene.Groups.Single(g => g.Id == "title-block").Shapes.OfType<TextShape>().ToArray();
            Assert.All(block, t => Assert.Null(t.Whole));
            Assert.Equal("", string.Join('\n', Clearance.Faults(sheet.Scene)));
        }
    }

    // Worked out by hand from the list and the table of the van's first sheet.
    [Fact]
    public void The_first_sheet_explains_its_own_signs_and_no_others()
    {
        string[] legend = [.. Van.Value[0].Scene.Groups.Single(g => g.Id == "legend").Shapes.OfType<TextShape>().Select(t => t.Text)];
        Assert.Equal(
        [
            "take out", "run new", "move one end", "renew between the same ends", "part fitted or replaced", "part with leads swapped", "switched on the hot side", "switched on the ground side", "switched on both sides", "fed through another load",
        ], legend[..10]);
        Assert.Equal(12, legend.Length);
        Assert.Equal($"sheet {legend[10].Split('.')[0]}, zone {legend[10].Split('.')[1]}", legend[11]);
        Assert.Contains(legend[10], TextsOf(Van.Value[0]).SkipWhile(t => !t.StartsWith("Who switches", StringComparison.Ordinal)));
    }

    // What lies elsewhere has no symbol and no text block: its flags bear the number.
    [Fact]
    public void What_is_to_be_done_elsewhere_has_its_number_at_each_flag()
    {
        var sheets = GalleryJobs.Read("trailer").DrawSheets(View.After, new() { Page = Page.A4 });
        var flags = sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Data.Contains(("ref", "A1"))).ToArray();
        Assert.Equal(2, flags.Length);
        Assert.All(flags, f => Assert.Contains(f.Shapes.OfType<TextShape>(), t => t.Text == "7"));
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
        // The bimetal of the old flasher is no load; the timer of the new one is.
        Assert.Equal("no load of its own", first[Array.IndexOf(first, "K4, Flasher") + 1]);
        Assert.Equal("not there", first[Array.IndexOf(first, "K5, Horn relay") + 1]);
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

    internal static Drawing[] SheetsOf(string job, View view, Page page, TextSize text)
    {
        if (job == "van") return Van.Value;
        lock (Known)
            return Known.TryGetValue((job, view, page, text), out var known) ? known
                : Known[(job, view, page, text)] = [.. GalleryJobs.Read(job).DrawSheets(view, new() { Page = page, Text = text })];
    }

    // What stands below the title.
    private static string SubjectOf(Drawing sheet, string title)
    {
        string[] block = [.. sheet.Scene.Groups.Single(g => g.Id == "title-block").Shapes.OfType<TextShape>().Select(t => t.Text)];
        return block[Array.IndexOf(block, title) + 1];
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

    [GeneratedRegex(@"\b([A-Z]+\d+)\.(\w+[+-]?)")]
    private static partial Regex Named();
}
