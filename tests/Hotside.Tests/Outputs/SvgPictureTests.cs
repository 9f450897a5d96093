using Hotside.Drawings;
using Hotside.Outputs;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using SkiaSharp;
using Svg.Skia;
using Svg.Skia.TypefaceProviders;

namespace Hotside.Tests.Outputs;

public sealed class SvgPictureTests
{
    [Theory]
    [InlineData("AVAVAVAV To fi rv", false)]
    [InlineData("Scheinwerferhalterung", true)]
    public void Ink_is_as_wide_as_was_measured(string text, bool bold)
    {
        TextStyle style = new("x", 69.8, bold, 0);
        double measured = TextMeasure.Width(text, style);
        Scene scene = new(measured + 100, 150, "t", "d", [new(Layer.Notes, [TextShape.Of(text, style, 50, 100)])]);
        (int first, int last) = InkColumns(SvgOutput.Write(scene));
        // Side bearings of the first and last letter are a few hundredths of the size.
        Assert.InRange(first, 48, 62);
        Assert.InRange(last, measured + 50 - 12, measured + 50 + 2);
    }

    [Fact]
    public void A_shortened_text_is_drawn_without_its_title()
    {
        TextStyle style = Lettering.Normal.Body;
        Scene scene = new(300, 60, "t", "d", [new(Layer.Notes, [TextShape.Of(new string('m', 10_000), style, 50, 40, width: 120)])]);
        (int first, int last) = InkColumns(SvgOutput.Write(scene));
        Assert.InRange(first, 49, 53);
        Assert.InRange(last, 140, 171);
    }

    [Fact]
    public void Plain_values_paint_the_picture_where_custom_properties_are_unknown()
    {
        Scene scene = new(20, 20, "t", "d", [new(Layer.Parts, [Shape.Polygon(null, ColourRole.New, (0, 0), (20, 0), (20, 20), (0, 20))])]);
        using SKBitmap bitmap = Draw(SvgOutput.Write(scene));
        Assert.Equal(new SKColor(0x00, 0x72, 0xb2), bitmap.GetPixel(10, 10));
    }

    private static (int First, int Last) InkColumns(string svg)
    {
        using SKBitmap bitmap = Draw(svg);
        List<int> columns = [.. Enumerable.Range(0, bitmap.Width).Where(x => Enumerable.Range(0, bitmap.Height).Any(y => bitmap.GetPixel(x, y).Red < 128))];
        Assert.NotEmpty(columns);
        return (columns[0], columns[^1]);
    }

    // One pixel a unit, whatever the millimetres say.
    private static SKBitmap Draw(string svg)
    {
        using var picture = new SKSvg();
        picture.Settings.TypefaceProviders!.Clear();
        picture.Settings.TypefaceProviders.Add(new OwnFaces());
        SKPicture drawn = picture.FromSvg(svg)!;
        float scale = (float)(double.Parse(svg.Split("viewBox=\"0 0 ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) / drawn.CullRect.Width);
        var bitmap = new SKBitmap((int)Math.Round(drawn.CullRect.Width * scale), (int)Math.Round(drawn.CullRect.Height * scale));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale(scale);
        canvas.DrawPicture(drawn);
        return bitmap;
    }

    private sealed class OwnFaces : ITypefaceProvider
    {
        private readonly SKTypeface _regular = SKTypeface.FromData(SKData.CreateCopy(FontFace.Regular.TrueType()));
        private readonly SKTypeface _bold = SKTypeface.FromData(SKData.CreateCopy(FontFace.Bold.TrueType()));

        public SKTypeface? FromFamilyName(string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle) =>
            fontWeight >= SKFontStyleWeight.SemiBold ? _bold : _regular;
    }
}
