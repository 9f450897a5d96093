using Hotside.Drawings.Pictures;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Layouts;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>Papers and sizes of letters that are asked for.</summary>
public sealed class PaperTests
{
    // Cap heights of ISO 3098-1 (from memory): 1.8, 2.5, 3.5 mm; 4 units are a millimetre. Symbols' own letters and the zones of the frame included.
    private const double Least = 1.8 * 4;

    public static TheoryData<string> Jobs => [.. GalleryJobs.Names.Where(n => n != "van"), "small/06-engine-strap.yaml", "more/tractor-magneto.yaml", "small/02-self-holding-relay.yaml"];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Large_letters_are_large_and_nothing_lies_over_anything_else(string job)
    {
        var scene = Read(job).Draw(View.Pair, new() { Text = TextSize.Large }).Scene;
        Assert.Equal("", string.Join('\n', Clearance.Faults(scene)));
        // Letters that are part of a symbol have its size.
        var circuit = scene.Groups.Where(g => g.View is not null).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Text is not ("" or "3 ~" or "U=" or "p")).ToArray();
        Assert.All(circuit, t => Assert.True(t.Style.CapHeight >= 2.5 * 4, t.Text));
        // The title block has the size of its standard, and all else at least that of normal drawings.
        Assert.All(scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>(), t => Assert.True(t.Style.CapHeight >= Least, t.Text));
    }

    [Theory]
    [InlineData(Page.A3, 420, 297)]
    [InlineData(Page.A2, 594, 420)]
    [InlineData(Page.A1, 841, 594)]
    [InlineData(Page.A0, 1189, 841)]
    [InlineData(Page.Tabloid, 431.8, 279.4)]
    public void The_paper_is_the_one_asked_for(Page page, double width, double height)
    {
        var drawing = GalleryJobs.Read("horn").Draw(View.Pair, new() { Page = page });
        Assert.Equal((width, height), (Math.Round(drawing.WidthInMillimetres, 6), Math.Round(drawing.HeightInMillimetres, 6)));
        Assert.Equal("", string.Join('\n', Clearance.Faults(drawing.Scene)));
        Assert.Contains(drawing.Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>(), t => t.Text == page.ToString());
    }

    [Theory]
    [InlineData("horn", View.Pair)]
    [InlineData("horn", View.After)]
    [InlineData("headlamps", View.Overlay)]
    [InlineData("launch", View.Pair)]
    public void A_sheet_that_fits_is_as_large_as_what_stands_on_it(string job, View view)
    {
        var drawing = GalleryJobs.Read(job).Draw(view, new() { Page = Page.Fit });
        Assert.Equal("", string.Join('\n', Clearance.Faults(drawing.Scene)));
        Assert.Equal(0, drawing.WidthInMillimetres % 1);
        Assert.Equal(0, drawing.HeightInMillimetres % 1);
        // Between the frame and what is drawn there is no more than a headline's room, or the sheet is no wider than its title block.
        var drawn = Box.Around(drawing.Scene.Groups.Where(g => g.View is not null).SelectMany(g => g.Shapes).Select(s => s.Bounds));
        Assert.True((drawing.WidthInMillimetres * 4) - 60 - drawn.Right < 30 || drawing.WidthInMillimetres <= 215, $"{drawn.Right} of {drawing.WidthInMillimetres * 4}");
        Assert.True(drawn.Top < 200, $"{drawn.Top}");
    }

    // Its legend might need two entries more, for which there would be no room beside the title block of an A4.
    [Theory]
    [InlineData("horn", "A4", false)]
    [InlineData("fuel-pump", "A3", true)]
    public void A_legend_has_what_is_seen_of_joints_and_needs_no_larger_paper_for_what_might_be(string job, string paper, bool isSeen)
    {
        var texts = GalleryJobs.Read(job).Draw(View.Pair).Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text).ToArray();
        Assert.Contains(paper, texts);
        Assert.Equal((isSeen, isSeen), (texts.Contains("goes to the pin it slants to"), texts.Contains("both end at this pin")));
        var plan = LaidOutJob.OfGallery(job).Plan;
        Assert.True(ShownJoints.Possible(plan, [SeenIn.Before, SeenIn.After]) is { HaveSlant: true, HaveSquare: true });
    }

    [Theory]
    [InlineData("horn", View.Pair, TextSize.Normal, "Horn circuit")]
    [InlineData("horn", View.After, TextSize.Large, "Horn circuit")]
    [InlineData("headlamps", View.Overlay, TextSize.Normal, "Headlamps with foot dimmer")]
    public void A_bare_drawing_has_circuits_headlines_legend_and_caption_and_no_more(string job, View view, TextSize text, string caption)
    {
        var drawing = GalleryJobs.Read(job).Draw(view, new() { Page = Page.Bare, Text = text });
        Assert.Equal("", string.Join('\n', Clearance.Faults(drawing.Scene)));
        string[] others = [.. drawing.Scene.Groups.Where(g => g.View is null).Select(g => g.Id ?? g.Classes[0]).Distinct()];
        Assert.Equal(view == View.Pair ? ["caption", "legend", "headline", "divider"] : ["caption", "legend", "headline"], others);
        Assert.Equal(caption, drawing.Scene.Groups.Single(g => g.Id == "caption").Shapes.OfType<TextShape>().Single().Text);
        Assert.Contains(drawing.Scene.Groups.Single(g => g.Id == "legend").Shapes.OfType<TextShape>(), t => t.Text == "change n");
        // Margins of four modules, in whole millimetres.
        var drawn = Box.Around(drawing.Scene.Groups.SelectMany(g => g.Shapes).Select(s => s.Bounds));
        Assert.InRange((drawing.HeightInMillimetres * 4) - drawn.Bottom, 38, 48);
        Assert.True(drawn.Left >= 38 && drawn.Right <= (drawing.WidthInMillimetres * 4) - 38, $"{drawn}");
    }

    [Fact]
    public void A_single_view_stands_where_it_finds_no_room_lying()
    {
        var overlay = GalleryJobs.Read("headlamps").Draw(View.Overlay);
        Assert.Equal((297, 420), (overlay.WidthInMillimetres, overlay.HeightInMillimetres));
    }

    [Fact]
    public void Papers_and_sizes_that_there_are_not_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new DrawingOptions { Page = (Page)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new DrawingOptions { Text = (TextSize)99 });
    }

    private static Job Read(string job) => job.EndsWith(".yaml", StringComparison.Ordinal) ? Job.Read(JobFiles.Text(job)).OrThrow() : GalleryJobs.Read(job);
}
