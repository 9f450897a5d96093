using System.Text;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace Hotside.Tests.Packs;

/// <summary>The pack as a PDF file, read back by a library that shares no code with the one that writes it.</summary>
public sealed class PackPdfTests
{
    private const double Millimetre = 72 / 25.4;

    private static readonly Lazy<byte[]> Horn = new(PackJobs.Horn.ToPdf);

    // ISO 216: A4 is 210 × 297 mm; ANSI/ASME Y14.1: size A is 8.5 × 11 in. Both are known to everyone who buys paper; a point is 1/72 in.
    [Theory]
    [InlineData(Page.A4, 210 / 25.4, 297 / 25.4)]
    [InlineData(Page.Letter, 8.5, 11)]
    public void A_written_sheet_has_the_size_of_its_paper(Page page, double widthInInches, double heightInInches)
    {
        using var document = PdfDocument.Open(GalleryJobs.Read("horn").Pack(new() { Page = page, Only = ["cover", "wires"] }).ToPdf());
        foreach (var sheet in document.GetPages())
        {
            Assert.Equal(widthInInches * 72, sheet.Width, 0.05);
            Assert.Equal(heightInInches * 72, sheet.Height, 0.05);
        }
    }

    [Fact]
    public void Each_page_of_the_list_has_a_bookmark_that_leads_to_its_sheet()
    {
        using var document = PdfDocument.Open(Horn.Value);
        Assert.Equal(PackJobs.Horn.Sheets.Length, document.NumberOfPages);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var found = bookmarks.Roots.Cast<DocumentBookmarkNode>().Select(b => (b.Title, b.PageNumber));
        Assert.Equal(PackJobs.Horn.Pages.Select(p => (p.Key == "cover" ? "Cover" : p.Title, p.FirstSheet)), found);
        // A page begins where its title stands.
        foreach (var page in PackJobs.Horn.Pages.Where(p => p.Key is not ("cover" or "schematics")))
            Assert.Contains(page.Title.Split(' ')[0].TrimEnd(','), document.GetPage(page.FirstSheet).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_programs_read_the_bookmarks_and_find_no_damage()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("hotside").FullName, "pack.pdf");
        File.WriteAllBytes(path, Horn.Value);
        string told = OutsideProgram.Run("pdfinfo", path);
        Assert.Matches($@"Pages:\s+{PackJobs.Horn.Sheets.Length}\n", told);
        Assert.Contains("Horn circuit: work pack", told, StringComparison.Ordinal);
        string[] fonts = [.. OutsideProgram.Run("pdffonts", path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];
        // Name, type, encoding, then: embedded, subset, with a table back to Unicode.
        Assert.All(fonts, f => Assert.Matches(@"Hotside.*\byes yes yes\b", f));
    }

    [Fact]
    public void Every_change_and_every_wire_can_be_searched_for()
    {
        using var document = PdfDocument.Open(Horn.Value);
        string TextOf(string key) => string.Join(" ", PackJobs.Horn.Pages.Where(p => p.Key == key).SelectMany(p => Enumerable.Range(p.FirstSheet, p.LastSheet - p.FirstSheet + 1)).SelectMany(s => document.GetPage(s).GetWords()).Select(w => w.Text));
        var alteration = GalleryJobs.Read("horn").Alteration;
        foreach (var change in alteration.Changes)
            Assert.Matches($@"\b{change.Number} {change.Acts[0].Items[0]}\b", TextOf("changes"));
        foreach (var wire in alteration.After.Conductors)
        {
            Assert.Matches($@"\b{wire.Id} {alteration.After.TextOf(wire.From)}\b", TextOf("wires"));
            // Two labels, each with its text twice.
            Assert.Equal(4, TextOf("labels").Split(' ').Count(w => w == wire.Id));
        }
    }

    [Fact]
    public void No_capital_is_lower_than_1_8_mm_and_those_of_labels_are_2_5_mm_high()
    {
        using var document = PdfDocument.Open(Horn.Value);
        foreach (var page in document.GetPages())
            Assert.All(page.Letters.Where(l => l.Value is "H" or "K" or "F"), l => Assert.True(l.BoundingBox.Height >= 1.79 * Millimetre, $"{l.Value} of {l.BoundingBox.Height} pt on {page.Number}"));
        var labels = document.GetPage(PackJobs.Horn.Pages.Single(p => p.Key == "labels").FirstSheet);
        var bold = labels.GetWords().Where(w => w.Text.StartsWith("K1.", StringComparison.Ordinal)).Select(w => w.Letters[0]).MaxBy(l => l.BoundingBox.Height)!;
        Assert.Equal(2.5, bold.BoundingBox.Height / Millimetre, 0.03);
    }

    [Fact]
    public void The_ruler_is_50_mm_long_and_a_label_strip_90_mm()
    {
        using var document = PdfDocument.Open(Horn.Value);
        var paths = document.GetPage(PackJobs.Horn.Pages.Single(p => p.Key == "labels").FirstSheet).Paths;
        // Lines of one stroke may be one path.
        var boxes = paths.Select(p => p.GetBoundingRectangle()).Concat(paths.SelectMany(p => p).Select(line => line.GetBoundingRectangle())).Where(b => b is not null).Select(b => b!.Value).ToArray();
        double Nearest(double millimetres) => boxes.Where(b => b.Height < 1).MinBy(b => Math.Abs(b.Width - (millimetres * Millimetre))).Width / Millimetre;
        Assert.Equal(50, Nearest(50), 0.05);
        Assert.Equal(90, Nearest(90), 0.05);
        // And its strokes are a millimetre apart: 51 of them.
        var strokes = boxes.Where(b => b.Width < 0.5 && b.Height is > 1.4 * Millimetre and < 3.2 * Millimetre).Select(b => Math.Round(b.Left / Millimetre, 1)).Distinct().Order().ToArray();
        Assert.Equal(51, strokes.Length);
        Assert.All(strokes.Zip(strokes.Skip(1), (a, b) => b - a), d => Assert.Equal(1, d, 0.11));
    }

    [Theory]
    [InlineData(Page.A4)]
    [InlineData(Page.Letter)]
    public void Ten_millimetres_stay_clear_on_every_side_of_a_written_sheet(Page page)
    {
        using var document = PdfDocument.Open(GalleryJobs.Read("horn").Pack(new() { Page = page, Only = [.. PackJobs.Quick] }).ToPdf());
        foreach (var sheet in document.GetPages())
            foreach (var letter in sheet.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)))
            {
                // The page's axes are turned for drawing, so a box may stand on its head.
                var box = letter.BoundingBox;
                double[] x = [box.BottomLeft.X, box.TopRight.X], y = [box.BottomLeft.Y, box.TopRight.Y];
                Assert.True(x.Min() >= 9.9 * Millimetre && y.Min() >= 9.9 * Millimetre && x.Max() <= sheet.Width - (9.9 * Millimetre) && y.Max() <= sheet.Height - (9.9 * Millimetre), $"{letter.Value} at {box} on {sheet.Number}");
            }
    }

    [Fact]
    public void Every_sheet_says_which_of_how_many_it_is()
    {
        using var document = PdfDocument.Open(Horn.Value);
        foreach (var (sheet, page) in PackJobs.Horn.Sheets.Zip(document.GetPages()))
        {
            string text = string.Join(" ", page.GetWords().Select(w => w.Text));
            Assert.Contains(sheet.Name.EndsWith("schematics", StringComparison.Ordinal) ? $"{sheet.Number} / {document.NumberOfPages}" : $"Sheet {sheet.Number} of {document.NumberOfPages}", text, StringComparison.Ordinal);
            Assert.Contains("1954-03-02", text, StringComparison.Ordinal);
            Assert.Contains("Horn circuit", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_bytes_come_again_and_no_date_is_told()
    {
        byte[] first = Horn.Value;
        // A date has whole seconds.
        Thread.Sleep(1100);
        Assert.Equal(first, GalleryJobs.Read("horn").Pack().ToPdf());
        Assert.DoesNotContain("Date (", Encoding.Latin1.GetString(first), StringComparison.Ordinal);
    }
}
