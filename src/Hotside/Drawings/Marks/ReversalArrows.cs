using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>Two opposed arrows, 2.4 M high: the leads of the part beside them are swapped.</summary>
internal static class ReversalArrows
{
    private const double Air = 3;

    /// <summary>The arrows left of what a symbol draws at a height.</summary>
    public static IEnumerable<Shape> Beside(IEnumerable<Shape> symbol, double middle)
    {
        Piece arrows = Of(ColourRole.Moved);
        double left = symbol.Select(s => s.Bounds).Where(b => b.Top < middle + (arrows.Height / 2) && b.Bottom > middle - (arrows.Height / 2)).Min(b => b.Left);
        return arrows.At(left - Air - arrows.Width, middle - (arrows.Height / 2));
    }

    private static Piece Of(ColourRole colour)
    {
        Pen pen = new(StrokeRank.Heavy, colour);
        return new(15, 24,
        [
            Shape.Line(pen, 3.5, 24, 3.5, 5),
            Shape.Polygon(null, colour, (3.5, 0), (7, 6), (0, 6)),
            Shape.Line(pen, 11.5, 0, 11.5, 19),
            Shape.Polygon(null, colour, (11.5, 24), (15, 18), (8, 18)),
        ]);
    }
}
