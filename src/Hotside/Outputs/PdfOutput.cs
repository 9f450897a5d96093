using SkiaSharp;

namespace Hotside.Outputs;

/// <summary>Writes drawings as PDF, one a page: lines stay lines, text stays text, and no date is told, so that the bytes come again.</summary>
internal static class PdfOutput
{
    private const double PointsAMillimetre = 72 / 25.4;

    // Skia rounds a page to whole dots of this fineness, though nothing on it is made of dots.
    private const float PageFineness = 7200;

    /// <summary>The drawings as pages of one file.</summary>
    /// <param name="drawings">The drawings, at least one.</param>
    /// <param name="title">What the file is called; the first drawing's title where nothing is said.</param>
    /// <param name="bookmarks">Names in the list beside the pages; none by default.</param>
    public static byte[] Write(IReadOnlyList<Drawing> drawings, string? title = null, IReadOnlyList<PdfBookmark>? bookmarks = null)
    {
        bookmarks ??= [];
        if (drawings.Count == 0 || drawings.Contains(null)) throw new ArgumentException("A document has at least one drawing, and none of them is null.", nameof(drawings));
        using var file = new MemoryStream();
        using (var target = new SKManagedWStream(file))
        using (var document = SKDocument.CreatePdf(target, new SKDocumentPdfMetadata { Title = title ?? drawings[0].Scene.Title, Creator = "Hotside", RasterDpi = PageFineness, EncodingQuality = 101 }))
        {
            for (int page = 0; page < drawings.Count; page++)
            {
                var drawing = drawings[page];
                double width = drawing.WidthInMillimetres * PointsAMillimetre, height = drawing.HeightInMillimetres * PointsAMillimetre;
                using var picture = new SkiaPicture(drawing);
                var canvas = document.BeginPage((float)width, (float)height);
                foreach (var (bookmark, index) in bookmarks.Select((b, i) => (b, i)).Where(b => b.b.Page == page))
                    canvas.DrawNamedDestinationAnnotation(new(0, (float)(bookmark.Top * PointsAMillimetre)), PdfOutline.NameOf(index)).Dispose();
                picture.Paint(canvas, width, height);
                document.EndPage();
            }
            document.Close();
        }
        return PdfOutline.Add(file.ToArray(), bookmarks);
    }
}
