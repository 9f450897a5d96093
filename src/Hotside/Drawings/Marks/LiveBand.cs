using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The band under a conductor that carries current: a pale stripe for each straight run, below the line itself.</summary>
internal static class LiveBand
{
    // 1.9 mm in all: past the widest line on both sides, short of the labels beside it.
    private const double Half = 3.8;

    /// <summary>The stripes.</summary>
    public static ImmutableArray<Shape> Of(IReadOnlyList<Point> corners) =>
    [
        .. corners.Zip(corners.Skip(1)).Where(r => r.First != r.Second).Select(r => new RectangleShape(
            new(Math.Min(r.First.X, r.Second.X) - Half, Math.Min(r.First.Y, r.Second.Y) - Half, Math.Max(r.First.X, r.Second.X) + Half, Math.Max(r.First.Y, r.Second.Y) + Half), 0, null, ColourRole.Live)),
    ];
}
