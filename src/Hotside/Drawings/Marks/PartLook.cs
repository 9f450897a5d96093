using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>Gives a symbol the look of its part's change: in shape as well as colour, so that a grey copy says the same.</summary>
internal static class PartLook
{
    /// <summary>The colour of a state.</summary>
    public static ColourRole ColourOf(PartStyle state) => state switch
    {
        PartStyle.TakenOut => ColourRole.Out,
        PartStyle.New or PartStyle.ToBeReplaced => ColourRole.New,
        PartStyle.Moved => ColourRole.Moved,
        _ => ColourRole.Ink,
    };

    /// <summary>The shapes with the part's colour for <see cref="ColourRole.PartInk"/>, heavier where it is new, dashed where it goes.</summary>
    public static ImmutableArray<Shape> Apply(IEnumerable<Shape> shapes, PartStyle state) => [.. shapes.Select(s => Apply(s, state))];

    private static Shape Apply(Shape shape, PartStyle state)
    {
        ColourRole fill = shape.Fill == ColourRole.PartInk ? ColourOf(state) : shape.Fill;
        Pen? pen = shape.Pen is { Colour: ColourRole.PartInk } own ? Dressed(own, state, Length(shape)) : shape.Pen;
        return shape is TextShape text ? text with { Colour = fill, Fill = fill } : shape with { Pen = pen, Fill = fill };
    }

    private static Pen Dressed(Pen pen, PartStyle state, double length)
    {
        Pen coloured = pen with { Colour = ColourOf(state) };
        return state switch
        {
            PartStyle.New or PartStyle.Moved when pen.Rank == StrokeRank.Medium => coloured with { Rank = StrokeRank.Heavy },
            PartStyle.TakenOut or PartStyle.ToBeReplaced when pen.Dash.IsSolid && pen.Rank <= StrokeRank.Medium => coloured with { Dash = length > 0 ? Dash.Going.Fitted(length) : Dash.Going },
            _ => coloured,
        };
    }

    // A straight line begins and ends with ink; what is bent or closed has the plain pattern.
    private static double Length(Shape shape) => shape is PolylineShape { Closed: false, Points: [var from, var to] } ? from.To(to) : 0;
}
