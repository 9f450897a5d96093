using SkiaSharp;
using Svg.Skia;

namespace Hotside.Outputs;

/// <summary>A drawing as Skia plays it back. It is read from our own SVG, so that the SVG is the one source of every picture.</summary>
internal sealed class SkiaPicture : IDisposable
{
    private readonly SKSvg svg = new();
    private readonly SKPicture picture;

    public SkiaPicture(Drawing drawing)
    {
        var providers = svg.Settings.TypefaceProviders ??= [];
        providers.Clear();
        providers.Add(new OwnFaces());
        picture = svg.FromSvg(SvgOutput.Write(drawing.Scene, new() { Theme = drawing.Theme, Font = SvgFont.Provided }))
            ?? throw new InvalidOperationException("The drawing cannot be painted.");
    }

    /// <summary>Paints the whole picture into a width and height, in the units of the canvas.</summary>
    public void Paint(SKCanvas canvas, double width, double height)
    {
        var whole = picture.CullRect;
        canvas.Scale((float)(width / whole.Width), (float)(height / whole.Height));
        canvas.DrawPicture(picture);
    }

    public void Dispose() => svg.Dispose();
}
