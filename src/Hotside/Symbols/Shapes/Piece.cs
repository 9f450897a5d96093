using System.Collections.Immutable;

namespace Hotside.Symbols.Shapes;

/// <summary>Shapes with a size, measured before they are placed; their own top left corner is the origin.</summary>
internal sealed record Piece(double Width, double Height, ImmutableArray<Shape> Shapes)
{
    /// <summary>Nothing, taking no room.</summary>
    public static readonly Piece Empty = new(0, 0, []);

    /// <summary>The shapes with the piece's top left corner at a place.</summary>
    public ImmutableArray<Shape> At(double x, double y) => [.. Shapes.Select(s => s.Shifted(x, y))];
}
