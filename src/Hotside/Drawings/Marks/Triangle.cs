using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>The triangle with the number of a change: 2.8 M wide, 2.4 M high, apex up.</summary>
internal static class Triangle
{
    /// <summary>From the top to the number's baseline, on which a label beside it stands too.</summary>
    public static double Baseline(Lettering lettering) => 20.6 * lettering.Factor;

    /// <summary>The triangle; wider only for a number of three figures or more.</summary>
    public static Piece Of(ChangeNumber number, Lettering lettering)
    {
        double f = lettering.Factor, height = 24 * f;
        TextStyle style = lettering.SmallBold;
        string text = TextMeasure.Shorten(number.Text, style, 40 * f);
        // At the height of the figures' tops the triangle must still be wider than they are.
        double share = (Baseline(lettering) - style.CapHeight) / height;
        double width = Math.Max(28 * f, (TextMeasure.Width(text, style) + (2.4 * f)) / share);
        Pen pen = new(StrokeRank.Medium, number.Colour, Round: true);
        return new(width, height,
        [
            Shape.Polygon(pen, ColourRole.Paper, (width / 2, 0), (width, height), (0, height)),
            TextShape.Of(text, style, width / 2, Baseline(lettering), Anchor.Middle, number.Colour),
        ]);
    }
}
