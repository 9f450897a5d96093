using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>A feed rail: a wide line past its taps, a dot at each, its name and potential above the left end.</summary>
internal static class Rail
{
    /// <summary>How far it reaches past its first and last tap.</summary>
    public const double Overhang = 10;

    // How much wider letters may be where a reader's program lacks the font: by eye, with a common substitute.
    private const double Substitute = 0.12;

    // The label of an inner rail on one line, in units at normal lettering.
    private const double LongestInner = 160;

    /// <summary>The line alone; a new one is double, as new conductors are.</summary>
    public static ImmutableArray<Shape> Line(double firstTap, double lastTap, double y, PartStyle style = PartStyle.Kept) => Bar((firstTap - Overhang, y), (lastTap + Overhang, y), style);

    /// <summary>The bar of a joint between two points: a rail without ends.</summary>
    public static ImmutableArray<Shape> Bar(Point from, Point to, PartStyle style)
    {
        bool isNew = style == PartStyle.New;
        var line = Shape.Line(new(isNew ? StrokeRank.Change : StrokeRank.Rail, PartLook.ColourOf(style)), from.X, from.Y, to.X, to.Y);
        return isNew ? [line, line with { Pen = new(StrokeRank.Thin, ColourRole.Paper) }] : [line];
    }

    /// <summary>As <see cref="Label"/>, with the potential below the name where both would reach far beyond a short rail: what is read first stands by the rail, too.</summary>
    public static Piece InnerLabel(string name, string potential, ChangeNumber? number, Lettering lettering)
    {
        Piece whole = Label(name, potential, number, lettering);
        if (potential.Length == 0 || whole.Width <= LongestInner * lettering.Factor) return whole;
        Piece above = Label(name, "", number, lettering);
        TextShape below = TextShape.Of(potential, lettering.Small, 0, above.Height + lettering.Small.Pitch, colour: ColourRole.Quiet, width: 300 * lettering.Factor);
        return new(Math.Max(above.Width, below.Width), above.Height + lettering.Small.Pitch, [.. above.Shapes, below]);
    }

    /// <summary>Name, potential and perhaps the triangle of its change; to be placed with its bottom 7 units above the rail.</summary>
    public static Piece Label(string name, string potential, ChangeNumber? number, Lettering lettering, double maxWidth = 300)
    {
        double x = 0, gap = 0, baseline = number is null ? lettering.Small.CapHeight : Triangle.Baseline(lettering);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        if (number is not null)
        {
            Piece triangle = Triangle.Of(number, lettering);
            shapes.AddRange(triangle.Shapes);
            x = triangle.Width + (5 * lettering.Factor);
        }

        foreach ((string text, TextStyle style, ColourRole colour) in ((string, TextStyle, ColourRole)[])[(name, lettering.SmallBold, ColourRole.Ink), (potential, lettering.Small, ColourRole.Quiet)])
        {
            if (text.Length == 0)
                continue;
            TextShape shape = TextShape.Of(text, style, x, baseline, colour: colour, width: maxWidth * lettering.Factor);
            shapes.Add(shape);
            gap = (6 * lettering.Factor) + (shape.Width * Substitute);
            x += shape.Width + gap;
        }

        return new(x - gap, number is null ? baseline : 24 * lettering.Factor, shapes.ToImmutable());
    }
}
