using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings.Sets;

/// <summary>The first sheet of a set says where things are; whether that is true is read off the other sheets.</summary>
public sealed partial class OverviewTests
{
    private static readonly Lettering L = Lettering.Normal;

    public static TheoryData<string, View, Page, TextSize> Sets => SheetSetTests.Sets;

    [Theory]
    [MemberData(nameof(Sets))]
    public void Each_change_names_the_sheets_that_bear_its_number(string job, View view, Page page, TextSize text) => NamesItsSheets([.. SheetSetTests.SheetsOf(job, view, page, text)]);

    [Fact]
    public void Each_change_of_the_van_before_and_after_names_its_sheets_too()
    {
        NamesItsSheets(GalleryJobs.VanPair);
        // What comes and what goes is drawn in one view or the other: every number has its sheet, and some have several.
        var places = Places(GalleryJobs.VanPair);
        Assert.DoesNotContain("", places.Values);
        Assert.Contains(places.Values, p => Several().IsMatch(p));
    }

    // After the work nothing is left of what is taken out.
    [Fact]
    public void A_change_that_is_drawn_on_no_sheet_names_none()
    {
        var places = Places([.. SheetSetTests.SheetsOf("van", View.After, Page.A3, TextSize.Normal)]);
        Assert.Equal("", places["4"]);
        Assert.Contains(places.Values, p => p.Length > 0);
    }

    [Fact]
    public void One_sheet_alone_names_none() =>
        Assert.DoesNotContain(GalleryJobs.HornPair.Scene.Groups.Single(g => g.Classes.Contains("changes")).Shapes.OfType<TextShape>(), t => t.Text.StartsWith("sheet", StringComparison.Ordinal));

    [Fact]
    public void Sheets_of_a_longer_document_are_named_by_its_numbers()
    {
        var sheets = GalleryJobs.Read("headlamps").DrawSheets(View.Pair, new() { Page = Page.A4, FirstSheet = 9 });
        NamesItsSheets([.. sheets], 9);
        Assert.Contains(Places([.. sheets]).Values, p => p.StartsWith("sheet 1", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void All_that_stands_on_a_sheet_is_named_in_the_order_of_the_file(string job, View view, Page page, TextSize text)
    {
        var alteration = GalleryJobs.Read(job).Alteration;
        Part[] parts = [.. alteration.Before.Parts.Concat(alteration.After.Parts).DistinctBy(p => p.Id)];
        var sheets = SheetSetTests.SheetsOf(job, view, page, text);
        var contents = Contents(sheets);
        for (int i = sheets.Count(s => s.Boxes.Length == 0); i < sheets.Length; i++)
        {
            var drawn = sheets[i].Boxes.Select(b => b.Id).ToHashSet();
            string said = contents[i + 1], names = string.Join(", ", parts.Where(p => drawn.Contains(p.Id)).Select(p => p.Kind.Id == "feed-rail" ? $"{p.Id} ({p.Name})" : p.Id));
            Assert.EndsWith(": " + names, said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_rail_on_several_sheets_is_named_on_each() =>
        Assert.True(Contents([.. GalleryJobs.VanPair]).Values.Count(t => t.Contains("X1 (30, battery feed)", StringComparison.Ordinal)) > 2);

    // The one page holds all of it, and none of it twice.
    [Fact]
    public void The_overview_of_a_whole_van_is_one_sheet() => Assert.Single(GalleryJobs.VanPair, s => s.Boxes.Length == 0);

    [Theory]
    [InlineData(400)]
    [InlineData(190)]
    [InlineData(120)]
    [InlineData(100)]
    public void A_place_stands_at_the_right_edge_and_over_nothing(double width)
    {
        (string Text, string Place)[] told = [("fit F1", ""), ("run 14 BK from K5.87 to H1", "sheet 2"), ("replace the lamps of the left side and of the right one", "sheets 2, 3"), ("take out w1", "sheets 2, 3, 4, 5, 6, 7")];
        ImmutableArray<ListLine> lines = [.. told.Select((t, i) => new ListLine(new((i + 1).ToString(CultureInfo.InvariantCulture), ColourRole.New), LineStyle.New, t.Text) { Place = t.Place })];
        var texts = ChangeList.Of("", lines, width, L, mostColumns: 1).Shapes.OfType<TextShape>().ToArray();
        var places = texts.Where(t => t.Fill == ColourRole.Quiet).ToArray();
        Assert.Equal("sheet 2 sheets 2, 3 sheets 2, 3, 4, 5, 6, 7", string.Join(' ', places.Select(p => p.Text)));
        Assert.All(places, p => Assert.InRange(p.Bounds.Right, width - 1, width + 0.1));
        Assert.All(texts, t => Assert.DoesNotContain(texts, o => o != t && o.Bounds.Left < t.Bounds.Right && t.Bounds.Left < o.Bounds.Right && o.Bounds.Top < t.Bounds.Bottom - t.Style.Descent && t.Bounds.Top < o.Bounds.Bottom - o.Style.Descent));
    }

    private static void NamesItsSheets(ImmutableArray<Drawing> sheets, int first = 1)
    {
        var told = Places(sheets);
        Assert.NotEmpty(told);
        string[][] numbers = [.. sheets.Select(s => ChangeColourTests.Triangles(s.Scene).Select(t => t.Number).ToArray())];
        foreach (var (number, place) in told)
        {
            string[] on = [.. Enumerable.Range(0, sheets.Length).Where(i => numbers[i].Contains(number)).Select(i => (i + first).ToString(CultureInfo.InvariantCulture))];
            Assert.Equal((number, on.Length == 0 ? "" : $"sheet{(on.Length > 1 ? "s" : "")} {string.Join(", ", on)}"), (number, place));
        }
    }

    // The numbers of the list stand left in bold, the places right in quiet letters, where need be on several lines.
    private static Dictionary<string, string> Places(ImmutableArray<Drawing> sheets)
    {
        var places = new Dictionary<string, string>();
        string last = "";
        foreach (var text in sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Classes.Contains("changes")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor == Anchor.End))
            if (text.Style.Bold) places[last = text.Text] = "";
            else places[last] = $"{places[last]} {text.Text}".Trim();
        return places;
    }

    // What the overview says below the number of each sheet.
    private static Dictionary<int, string> Contents(Drawing[] sheets)
    {
        var contents = new Dictionary<int, string>();
        int last = 0;
        foreach (var text in sheets.SelectMany(s => s.Scene.Groups).Where(g => g.Classes.Contains("sheets")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor == Anchor.End || !t.Style.Bold))
            if (text.Anchor == Anchor.End) contents[last = int.Parse(text.Text, CultureInfo.InvariantCulture)] = "";
            else contents[last] = $"{contents[last]} {text.Text}".Trim();
        return contents;
    }

    [GeneratedRegex(@"^sheets \d+(, \d+)+$")]
    private static partial Regex Several();
}
