using SkiaSharp;

namespace Hotside.Outputs;

/// <summary>Writes drawings as PDF, one a page: lines stay lines, text stays text, and no date is told, so that the bytes come again.</summary>
internal static class PdfOutput
{
    private const double PointsAMillimetre = 72 / 25.4;

    // Skia rounds a page to whole dots of this fineness, though nothing on it is made of dots.
    private const float PageFineness = 7200;

    public static byte[] Write(IReadOnlyCollection<Drawing> drawings)
    {
        if (drawings.Count == 0 || drawings.Contains(null)) throw new ArgumentException("A document has at least one drawing, and none of them is null.", nameof(drawings));
        using var file = new MemoryStream();
        using (var target = new SKManagedWStream(file))
        using (var document = SKDocument.CreatePdf(target, new SKDocumentPdfMetadata { Title = drawings.First().Scene.Title, Creator = "Hotside", RasterDpi = PageFineness, EncodingQuality = 101 }))
        {
            foreach (var drawing in drawings)
            {
                double width = drawing.WidthInMillimetres * PointsAMillimetre, height = drawing.HeightInMillimetres * PointsAMillimetre;
                using var picture = new SkiaPicture(drawing);
                picture.Paint(document.BeginPage((float)width, (float)height), width, height);
                document.EndPage();
            }
            document.Close();
        }
        return file.ToArray();
    }
}
