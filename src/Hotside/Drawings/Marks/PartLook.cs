using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>Gives a symbol the look of its part's change: in shape as well as colour, so that a grey copy says the same.</summary>
internal static class PartLook
{
    private const double LargestRing = 3;

    // Two dashes and the gap between them.
    private static readonly double SmallestDashed = (2 * Dash.Going.On) + Dash.Going.Off;

    /// <summary>The colour of a state.</summary>
    public static ColourRole ColourOf(PartStyle state) => state switch
    {
        PartStyle.TakenOut => ColourRole.Out,
        PartStyle.New or PartStyle.ToBeReplaced => ColourRole.New,
        PartStyle.Moved => ColourRole.Moved,
        _ => ColourRole.Ink,
    };

    /// <summary>The shapes with the part's colour for <see cref="ColourRole.PartInk"/>, heavier where it is new, dashed where it is taken out.</summary>
    public static ImmutableArray<Shape> Apply(IEnumerable<Shape> shapes, PartStyle state) => [.. shapes.SelectMany(s => Apply(s, state))];

    private static IEnumerable<Shape> Apply(Shape shape, PartStyle state)
    {
        ColourRole fill = shape.Fill == ColourRole.PartInk ? ColourOf(state) : shape.Fill;
        Pen? pen = shape.Pen is { Colour: ColourRole.PartInk } own ? Dressed(own, state) : shape.Pen;
        // A ring would lose its shape, and the wire its end; so would any small stroke, and a winding its bows.
        if (pen is not null && (shape is CircleShape { Radius: <= LargestRing } or CurveShape || IsSmall(shape.Bounds))) pen = pen with { Dash = default };
        if (shape is TextShape text) return [text with { Colour = fill, Fill = fill }];
        // What goes is dashed run by run, so that corners are ink.
        if (pen is { Dash: var dash } && dash == Dash.Going && CornersOf(shape) is { } corners)
            return [.. fill == ColourRole.None ? [] : new[] { shape with { Pen = null, Fill = fill } }, .. DashedLine.Of(corners, pen)];
        return [shape with { Pen = pen, Fill = fill }];
    }

    private static bool IsSmall(Box bounds) => Math.Max(bounds.Right - bounds.Left, bounds.Bottom - bounds.Top) < SmallestDashed;

    private static Pen Dressed(Pen pen, PartStyle state)
    {
        Pen coloured = pen with { Colour = ColourOf(state) };
        return state switch
        {
            PartStyle.New or PartStyle.Moved when pen.Rank == StrokeRank.Medium => coloured with { Rank = StrokeRank.Heavy },
            PartStyle.TakenOut when pen.Dash.IsSolid && pen.Rank <= StrokeRank.Medium => coloured with { Dash = Dash.Going },
            _ => coloured,
        };
    }

    // The corners of what is straight; a closed outline ends where it begins.
    private static ImmutableArray<Point>? CornersOf(Shape shape) => shape switch
    {
        PolylineShape { Points.Length: > 1 } line => line.Closed ? line.Points.Add(line.Points[0]) : line.Points,
        RectangleShape { Radius: 0, Box: var b } => [(b.Left, b.Top), (b.Right, b.Top), (b.Right, b.Bottom), (b.Left, b.Bottom), (b.Left, b.Top)],
        _ => null,
    };
}
