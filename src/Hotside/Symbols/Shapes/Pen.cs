namespace Hotside.Symbols.Shapes;

/// <summary>How a line is drawn.</summary>
/// <param name="Rank">Width.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Dash">Pattern; solid by default.</param>
/// <param name="Round">Round ends and joins instead of cut ends and mitred joins.</param>
internal sealed record Pen(StrokeRank Rank, ColourRole Colour, Dash Dash = default, bool Round = false)
{
    /// <summary>Enclosure strokes and link lines of a symbol.</summary>
    public static readonly Pen Thin = new(StrokeRank.Thin, ColourRole.PartInk);

    /// <summary>The ordinary stroke of a symbol.</summary>
    public static readonly Pen Medium = new(StrokeRank.Medium, ColourRole.PartInk);

    /// <summary>Moving blade, polarity mark.</summary>
    public static readonly Pen Heavy = new(StrokeRank.Heavy, ColourRole.PartInk, Round: true);

    /// <summary>Short plate of a battery.</summary>
    public static readonly Pen Plate = new(StrokeRank.Rail, ColourRole.PartInk);

    /// <summary>Mechanical link.</summary>
    public static readonly Pen Link = new(StrokeRank.Thin, ColourRole.PartInk, Dash.Link);

    /// <summary>Outline of an enclosure.</summary>
    public static readonly Pen Enclosure = new(StrokeRank.Thin, ColourRole.PartInk, Dash.Enclosure);

    /// <summary>Width in units.</summary>
    public double Width => WidthOf(Rank);

    /// <summary>Width of a rank in units of 0.25 mm.</summary>
    public static double WidthOf(StrokeRank rank) => rank switch
    {
        StrokeRank.Thin => 1,
        StrokeRank.Medium => 1.4,
        StrokeRank.Heavy => 2,
        StrokeRank.Rail => 2.8,
        _ => 4,
    };
}
