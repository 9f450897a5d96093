using Hotside.Symbols.Texts;
using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace Hotside.Outputs;

/// <summary>Answers every wish for a typeface with one of the two embedded faces, so that a bare machine and a furnished one draw the same text.</summary>
internal sealed class OwnFaces : ITypefaceProvider
{
    private static readonly Lazy<SKTypeface> Regular = new(() => Face(FontFace.Regular)), Bold = new(() => Face(FontFace.Bold));

    public SKTypeface? FromFamilyName(string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle) =>
        fontWeight >= SKFontStyleWeight.SemiBold ? Bold.Value : Regular.Value;

    private static SKTypeface Face(FontFace face) =>
        SKTypeface.FromData(SKData.CreateCopy(face.TrueType())) ?? throw new InvalidOperationException("The embedded font cannot be read.");
}
