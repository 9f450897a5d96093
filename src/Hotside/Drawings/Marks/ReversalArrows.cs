using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>Two opposed arrows, 2.4 M high: the leads of the part beside them are swapped.</summary>
internal static class ReversalArrows
{
    /// <summary>The arrows.</summary>
    public static Piece Of(ColourRole colour)
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
