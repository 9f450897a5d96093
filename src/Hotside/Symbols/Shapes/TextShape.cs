using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Shapes;

/// <summary>Which point of a text its place names.</summary>
internal enum Anchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}

/// <summary>A line of text, always horizontal and upright. It holds the text as drawn, cleaned and perhaps shortened.</summary>
/// <param name="Place">The anchor on the baseline.</param>
/// <param name="Text">The text as drawn.</param>
/// <param name="Style">Lettering.</param>
/// <param name="Anchor">What of the text stands at its place.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Whole">The text as it was before it was shortened; <see langword="null"/> when nothing is missing.</param>
internal sealed record TextShape(Point Place, string Text, TextStyle Style, Anchor Anchor, ColourRole Colour, string? Whole = null) : Shape(null, Colour)
{
    /// <summary>Width as drawn.</summary>
    public double Width => TextMeasure.Width(Text, Style);

    /// <summary>The box from the top of the capitals to the foot of a g.</summary>
    public override Box Bounds
    {
        get
        {
            double width = Width;
            double left = Anchor switch { Anchor.Start => Place.X, Anchor.Middle => Place.X - (width / 2), _ => Place.X - width };
            return new(left, Place.Y - Style.CapHeight, left + width, Place.Y + Style.Descent);
        }
    }

    /// <summary>A text at a place, shortened to a width if one is given.</summary>
    public static TextShape Of(string text, TextStyle style, double x, double y, Anchor anchor = Anchor.Start, ColourRole colour = ColourRole.Ink, double width = double.PositiveInfinity)
    {
        string drawn = TextMeasure.Shorten(text, style, width);
        return new((x, y), drawn, style, anchor, colour, drawn == text ? null : text);
    }

    /// <inheritdoc/>
    public override Shape At(Placing placing)
    {
        Point place = placing.Of(Place);
        // Turned over, the capitals' box keeps its place and the letters stand up in it.
        double y = placing.TurnedOver ? place.Y + Style.CapHeight : place.Y;
        Anchor anchor = !placing.Mirrored ? Anchor : Anchor switch { Anchor.Start => Anchor.End, Anchor.End => Anchor.Start, _ => Anchor };
        return this with { Place = (place.X, y), Anchor = anchor };
    }
}
