using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

/// <summary>PDF files, read back by poppler's programs.</summary>
public sealed partial class PdfOutputTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    [Fact]
    public void A_page_has_the_size_of_its_sheet_and_the_file_its_title()
    {
        string told = OutsideProgram.Run("pdfinfo", Save("horn.pdf", GalleryJobs.HornPair.ToPdf()));
        Assert.Contains("Horn circuit, before and after", told, StringComparison.Ordinal);
        Assert.Matches(@"Pages:\s+1\n", told);
        var size = Size().Match(told);
        // A4 lying, 297 × 210 mm (ISO 216), in points of 1/72 inch; no printer shows a twentieth of a point.
        Assert.Equal(841.89, double.Parse(size.Groups[1].Value, CultureInfo.InvariantCulture), 0.05);
        Assert.Equal(595.28, double.Parse(size.Groups[2].Value, CultureInfo.InvariantCulture), 0.05);
    }

    [Fact]
    public void Its_text_is_text_and_its_lines_are_lines()
    {
        string path = Save("horn.pdf", GalleryJobs.HornPair.ToPdf());
        string text = OutsideProgram.Run("pdftotext", "-layout", path, "-");
        foreach (string words in new[] { "Before", "After", "Horn relay", "14 BK", "GROUND-SWITCHED", "Changes, in order of work." })
            Assert.Contains(words, text, StringComparison.Ordinal);
        // After its two heading lines the list of images is empty.
        Assert.Equal(2, OutsideProgram.Run("pdfimages", "-list", path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        string[] fonts = [.. OutsideProgram.Run("pdffonts", path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];
        Assert.Equal(2, fonts.Length);
        // Name, type, encoding, then: embedded, subset, with a table back to Unicode.
        Assert.All(fonts, f => Assert.Matches(@"Hotside.*\byes yes yes\b", f));
    }

    [Fact]
    public void Several_drawings_are_several_pages_in_their_order()
    {
        var job = GalleryJobs.Read("horn");
        string path = Save("horn.pdf", new[] { job.Draw(View.Before), job.Draw(View.After) }.ToPdf());
        Assert.Matches(@"Pages:\s+2\n", OutsideProgram.Run("pdfinfo", path));
        string[] pages = OutsideProgram.Run("pdftotext", path, "-").Split('\f');
        Assert.Contains("Before", pages[0], StringComparison.Ordinal);
        Assert.DoesNotContain("After\n", pages[0], StringComparison.Ordinal);
        Assert.Contains("After", pages[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_bytes_come_again_and_no_date_is_told()
    {
        byte[] first = GalleryJobs.HornPair.ToPdf();
        // A date has whole seconds.
        Thread.Sleep(1100);
        Assert.Equal(first, GalleryJobs.HornPair.ToPdf());
        string raw = Encoding.Latin1.GetString(first);
        Assert.StartsWith("%PDF-", raw, StringComparison.Ordinal);
        Assert.DoesNotContain("Date", raw, StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_without_a_drawing_is_refused() =>
        Assert.Equal("drawings", Assert.Throws<ArgumentException>(() => Array.Empty<Drawing>().ToPdf()).ParamName);

    [Fact]
    public async Task File_and_stream_have_the_same_bytes()
    {
        var drawing = GalleryJobs.HornPair;
        string path = Path.Combine(folder, "horn.pdf");
        drawing.SavePdf(path);
        using var stream = new MemoryStream();
        await drawing.WritePdfAsync(stream, TestContext.Current.CancellationToken);
        Assert.Equal(stream.ToArray(), File.ReadAllBytes(path));
        new[] { drawing, drawing }.SavePdf(path);
        Assert.True(new FileInfo(path).Length > stream.Length);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Save(string name, byte[] content)
    {
        string path = Path.Combine(folder, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    [GeneratedRegex(@"Page size:\s+([\d.]+) x ([\d.]+) pts")]
    private static partial Regex Size();
}
