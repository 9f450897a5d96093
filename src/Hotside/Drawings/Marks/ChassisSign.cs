using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The chassis under a wire.</summary>
internal static class ChassisSign
{
    /// <summary>The sign with the wire's end in the middle of its bar.</summary>
    public static ImmutableArray<Shape> At(double x, double y, PartStyle state = PartStyle.Kept)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(Shape.Line(Pen.Heavy, x - 10, y, x + 10, y));
        for (int i = 0; i < 4; i++)
            shapes.Add(Shape.Line(Pen.Thin, x - 9 + (6 * i), y, x - 14 + (6 * i), y + 8));
        return PartLook.Apply(shapes, state);
    }
}
