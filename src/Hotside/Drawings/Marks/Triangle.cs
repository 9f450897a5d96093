using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>The triangle with the number of a change: 2.8 M wide, 2.4 M high, apex up.</summary>
internal static class Triangle
{
    private const int Most = 4;
    private const double Gap = 2;

    /// <summary>From the top to the number's baseline, on which a label beside it stands too.</summary>
    public static double Baseline(Lettering lettering) => 20.6 * lettering.Factor;

    /// <summary>A triangle for each of the numbers, side by side, so that all have one shape; wider only for a number of three figures or more.</summary>
    public static Piece Of(ChangeNumber number, Lettering lettering)
    {
        string[] all = number.Text.Split(',');
        // What is left out is in the list.
        if (all.Length > Most) all = [.. all.Take(Most - 1), "…"];
        double x = 0, gap = Gap * lettering.Factor;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        for (int i = 0; i < all.Length; i++)
        {
            var one = One(all[i], i < number.Colours.Length ? number.Colours[i] : number.Colour, lettering);
            shapes.AddRange(one.At(x, 0));
            x += one.Width + gap;
        }
        return new(x - gap, 24 * lettering.Factor, shapes.ToImmutable());
    }

    private static Piece One(string number, ColourRole colour, Lettering lettering)
    {
        double f = lettering.Factor, height = 24 * f;
        TextStyle style = lettering.SmallBold;
        string text = TextMeasure.Shorten(number, style, 40 * f);
        // At the height of the figures' tops the triangle must still be wider than they are.
        double share = (Baseline(lettering) - style.CapHeight) / height;
        double width = Math.Max(28 * f, (TextMeasure.Width(text, style) + (2.4 * f)) / share);
        Pen pen = new(StrokeRank.Medium, colour, Round: true);
        return new(width, height,
        [
            Shape.Polygon(pen, ColourRole.Paper, (width / 2, 0), (width, height), (0, height)),
            TextShape.Of(text, style, width / 2, Baseline(lettering), Anchor.Middle, colour),
        ]);
    }
}
