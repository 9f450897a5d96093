using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>Marks of a form: a box to tick, a line to write on, a ruler to check the print with.</summary>
internal static class Marks
{
    /// <summary>A box to tick, 3.5 mm wide.</summary>
    public static readonly Piece TickBox = new(14, 14, [new RectangleShape(new(0, 0, 14, 14), 0, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.None)]);

    /// <summary>What is asked, and a line to write the answer on.</summary>
    public static Piece Blank(string name, double width, PackLettering lettering)
    {
        var text = TextShape.Of(name, lettering.Fine, 0, 26, width: width * 0.7);
        double from = text.Width + 6;
        return new(width, 34, [text, Shape.Line(new(StrokeRank.Thin, ColourRole.Ink), from, 28, width, 28)]);
    }

    /// <summary>A ruler of a whole number of centimetres, a stroke each millimetre.</summary>
    public static Piece Ruler(int centimetres, TextStyle style)
    {
        const double millimetre = 4;
        double length = centimetres * 10 * millimetre;
        Pen thin = new(StrokeRank.Thin, ColourRole.Ink);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(Shape.Line(thin, 0, 20, length, 20));
        for (int mm = 0; mm <= centimetres * 10; mm++)
        {
            double x = mm * millimetre, high = mm % 10 == 0 ? 12 : mm % 5 == 0 ? 9 : 6;
            shapes.Add(Shape.Line(thin, x, 20 - high, x, 20));
            if (mm % 10 == 0) shapes.Add(TextShape.Of(Numbers.Whole(mm), style, x, 22 + style.CapHeight, Anchor.Middle));
        }
        return new(length, 22 + style.CapHeight + style.Descent, shapes.ToImmutable());
    }
}
