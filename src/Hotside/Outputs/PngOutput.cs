using System.Runtime.InteropServices;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using SkiaSharp;

namespace Hotside.Outputs;

/// <summary>Writes a drawing as PNG: painted by Skia; the file itself, which says its resolution and title, by ImageSharp.</summary>
internal static class PngOutput
{
    public const double Least = 10, Greatest = 4800;
    public const int MostPixels = 1 << 28;
    private const double MillimetresAnInch = 25.4;
    private const int BytesAPixel = 4;

    public static byte[] Write(Drawing drawing, double resolution)
    {
        var (width, height) = SizeOf(drawing, resolution);
        byte[] pixels = Paint(drawing, width, height);
        using var image = Image.WrapMemory<Rgba32>(pixels, width, height);
        image.Metadata.ResolutionUnits = PixelResolutionUnit.PixelsPerInch;
        image.Metadata.HorizontalResolution = image.Metadata.VerticalResolution = resolution;
        image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Title", drawing.Scene.Title, "", ""));
        using var file = new MemoryStream();
        // Lines on flat paper: no filter is both quicker and smaller here.
        image.Save(file, new PngEncoder { ColorType = PngColorType.Rgb, BitDepth = PngBitDepth.Bit8, FilterMethod = PngFilterMethod.None });
        return file.ToArray();
    }

    private static (int Width, int Height) SizeOf(Drawing drawing, double resolution)
    {
        if (!(resolution is >= Least and <= Greatest))
            throw new ArgumentOutOfRangeException(nameof(resolution), resolution, "A resolution is 10 to 4800 dots per inch.");
        double width = Math.Round(drawing.WidthInMillimetres / MillimetresAnInch * resolution), height = Math.Round(drawing.HeightInMillimetres / MillimetresAnInch * resolution);
        if (width * height > MostPixels)
            throw new ArgumentOutOfRangeException(nameof(resolution), resolution, "The sheet is too large for this resolution: it would have more than 268 million pixels.");
        return ((int)width, (int)height);
    }

    private static byte[] Paint(Drawing drawing, int width, int height)
    {
        byte[] pixels = new byte[width * height * BytesAPixel];
        var pinned = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul), pinned.AddrOfPinnedObject(), width * BytesAPixel);
            using var picture = new SkiaPicture(drawing);
            // What the paper does not cover to the last pixel is paper all the same.
            var ground = drawing.Theme.Ground;
            surface.Canvas.Clear(new SKColor(ground.Red, ground.Green, ground.Blue));
            picture.Paint(surface.Canvas, width, height);
        }
        finally
        {
            pinned.Free();
        }
        return pixels;
    }
}
