using Hotside.Drawings;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings.Sets;

/// <summary>Sheets that are bound together: one paper, lying or standing all alike, and title blocks that lie over each other.</summary>
public sealed class SetFormatTests
{
    private static readonly Lazy<Drawing[]> Trailer = new(() => [.. GalleryJobs.Read("trailer").DrawSheets(View.Pair, new() { Page = Page.A3 })]);

    private static readonly Lazy<Drawing[]> Launch = new(() => [.. GalleryJobs.Read("launch").DrawSheets(View.After, new() { Page = Page.A4 })]);

    // Who binds them turns none: not one sheet lies where another has to stand.
    [Theory]
    [InlineData("van")]
    [InlineData("trailer")]
    [InlineData("launch")]
    public void All_sheets_of_a_set_lie_or_all_stand(string job) =>
        Assert.Single((job == "van" ? [.. GalleryJobs.VanPair] : job == "trailer" ? Trailer.Value : Launch.Value).Select(s => (s.WidthInMillimetres, s.HeightInMillimetres)).Distinct());

    // One of the van's sheets holds its views only standing.
    [Fact]
    public void Where_one_sheet_has_to_stand_all_stand()
    {
        Assert.True(GalleryJobs.VanPair.Length > 2);
        Assert.All(GalleryJobs.VanPair, s => Assert.Equal((297, 420), (Math.Round(s.WidthInMillimetres), Math.Round(s.HeightInMillimetres))));
    }

    [Fact]
    public void The_lists_have_the_paper_of_the_circuits_and_letters_that_fill_it()
    {
        double Heights(Drawing sheet) => sheet.Scene.Groups.Single(g => g.Classes.Contains("changes")).Shapes.OfType<TextShape>().Select(t => t.Style.CapHeight).Distinct().Single();
        Assert.Equal(10, Heights(Trailer.Value[0]));
        var bottom = Trailer.Value[0].Scene.Groups.Single(g => g.Classes.Contains("loads")).Shapes.Max(s => s.Bounds.Bottom);
        Assert.InRange(bottom / (Trailer.Value[0].HeightInMillimetres * 4), 0.7, 0.9);
    }

    [Theory]
    [InlineData("trailer")]
    [InlineData("launch")]
    public void The_fields_of_the_title_block_have_one_place_in_all_sheets(string job)
    {
        var sheets = job == "trailer" ? Trailer.Value : Launch.Value;
        var lines = sheets.Select(s => Lines(s.Scene.Groups.Single(g => g.Id == "title-block"))).ToArray();
        Assert.All(lines, l => Assert.Equal(lines[0], l));
        // And what stands there stands in full.
        Assert.All(sheets.SelectMany(s => s.Scene.Groups.Single(g => g.Id == "title-block").Shapes).OfType<TextShape>(), t => Assert.Null(t.Whole));
    }

    [Fact]
    public void The_widest_supplementary_title_of_a_set_says_how_wide_all_are()
    {
        var few = new Dictionary<string, string> { ["title"] = "Van", ["supplementary title"] = "Horn", ["sheet"] = "2 / 12" };
        var many = new Dictionary<string, string>(few) { ["supplementary title"] = "12 V negative ground, alternator, relays, fuse for every circuit", ["sheet"] = "10 / 12" };
        Assert.NotEqual(Lines(TitleBlock.Of(few).Shapes), Lines(TitleBlock.Of(many).Shapes));
        Assert.Equal(Lines(TitleBlock.Of(few, [few, many]).Shapes), Lines(TitleBlock.Of(many, [few, many]).Shapes));
    }

    private static string Lines(SceneGroup block) => Lines(block.Shapes.Select(s => s.Shifted(-block.Shapes[0].Bounds.Left, -block.Shapes[0].Bounds.Top)));

    private static string Lines(IEnumerable<Shape> shapes) => string.Join('\n', shapes.Where(s => s is not TextShape).Select(s => s.Bounds));
}
