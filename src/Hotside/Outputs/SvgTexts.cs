using Hotside.Drawings;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Outputs;

/// <summary>The styles of texts and their classes.</summary>
internal static class SvgTexts
{
    /// <summary>Class of a style: the height of its capitals, whether it is bold, and its spacing.</summary>
    public static string ClassOf(TextStyle style) =>
        "hs-t" + SvgOutput.Units(style.CapHeight).Replace('.', '_') + (style.Bold ? "b" : "") + (style.Spacing > 0 ? "s" + SvgOutput.Units(style.Spacing).Replace('.', '_') : "");

    /// <summary>Class of an anchor other than the start of a text.</summary>
    public static string ClassOf(Anchor anchor) => anchor == Anchor.Middle ? "hs-mid" : "hs-end";

    /// <summary>The style that most texts of a scene have: theirs is written once, for all texts without a class.</summary>
    public static TextStyle? Usual(Scene scene) =>
        Enum.GetValues<Layer>().SelectMany(scene.In).SelectMany(Texts).Where(t => t.Style.Spacing == 0).GroupBy(t => ClassOf(t.Style)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault()?.First().Style;

    private static IEnumerable<TextShape> Texts(SceneGroup group) => group.Shapes.OfType<TextShape>().Concat(group.Children.SelectMany(Texts));
}
