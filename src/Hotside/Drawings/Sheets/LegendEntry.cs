using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>One row of the legend: a sample and what it means.</summary>
/// <param name="Sample">The sample, at most <see cref="SampleWidth"/> wide.</param>
/// <param name="Text">What it means.</param>
internal sealed record LegendEntry(Piece Sample, string Text)
{
    private const double ShortSample = 28;

    /// <summary>Whether readers of diagrams know it: where room is short it is left out.</summary>
    public bool IsUsual { get; init; }

    /// <summary>The sample where room is short.</summary>
    public Piece Short { get; init; } = Sample;

    /// <summary>Width of a line's sample: 4.2 M.</summary>
    public const double SampleWidth = 42;

    /// <summary>The line of a conductor.</summary>
    public static LegendEntry Of(LineStyle state, string text) => new(Line(state, SampleWidth), text) { Short = Line(state, ShortSample) };

    /// <summary>The triangle of a change.</summary>
    public static LegendEntry OfTriangle(string text, Lettering lettering)
    {
        return new(Sample(15.5), text) { Short = Sample(13.5) };

        Piece Sample(double height) => new(18, height,
        [
            Shape.Polygon(new(StrokeRank.Medium, ColourRole.Ink, Round: true), ColourRole.Paper, (9, 0), (18, height), (0, height)),
            TextShape.Of("n", lettering.SmallBold with { CapHeight = 7.2 }, 9, height - 1.8, Anchor.Middle),
        ]);
    }

    /// <summary>A verdict's badge.</summary>
    public static LegendEntry Of(SwitchedSide side, string text) => new(Badge.Mini(side), text);

    /// <summary>A written sample, such as a wire's label or a zone.</summary>
    public static LegendEntry Written(string sample, string text, Lettering lettering)
    {
        TextShape shape = TextShape.Of(sample, lettering.Small, 0, lettering.Small.CapHeight, width: SampleWidth * lettering.Factor);
        return new(new(shape.Width, lettering.Small.CapHeight, [shape]), text);
    }

    /// <summary>The band under what carries current.</summary>
    public static LegendEntry OfBand(string text)
    {
        static Piece Sample(double width) => new(width, 8, [.. LiveBand.Of([(4, 4), (width - 4, 4)]), .. ConductorLine.Of([(0, 4), (width, 4)], LineStyle.Kept)]);
        return new(Sample(SampleWidth), text) { Short = Sample(ShortSample) };
    }

    /// <summary>A stud, on which wires are bolted.</summary>
    public static LegendEntry OfStud(string text) => new(new(8, 8, [new CircleShape((4, 4), 3, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.Paper)]), text);

    /// <summary>A sign with a name below it: what it stands for in the place of the chassis.</summary>
    public static LegendEntry OfNamedSign(string name, string text, Lettering lettering)
    {
        TextShape shape = TextShape.Of(name, lettering.Small, 28, 4 + (lettering.Small.CapHeight / 2));
        return new(new(28 + shape.Width, 9, [.. ChassisSign.At(14, 1), shape]), text);
    }

    /// <summary>A part with its lead.</summary>
    public static LegendEntry OfLead(string text)
    {
        Pen pen = new(StrokeRank.Medium, ColourRole.Ink);
        return new(new(28, 8, [new RectangleShape(new(0, 0, 8, 8), 0, pen, ColourRole.Paper), Shape.Line(new(StrokeRank.Medium, ColourRole.Wire), 8, 4, 28, 4)]), text);
    }

    /// <summary>The sign of the chassis.</summary>
    public static LegendEntry OfChassis(string text) => new(new(24, 9, ChassisSign.At(14, 1)), text);

    /// <summary>The bar of a splice or stud.</summary>
    public static LegendEntry OfBar(string text) => new(new(30, 8, [.. Rail.Bar((0, 4), (30, 4), PartStyle.Kept), JointDot.At(6, 4), JointDot.At(24, 4)]), text);

    /// <summary>A line that slants into another.</summary>
    public static LegendEntry OfSlant(string text)
    {
        Pen pen = new(StrokeRank.Medium, ColourRole.Wire);
        return new(Sample(14), text) { Short = Sample(12) };

        Piece Sample(double height) => new(30, height, [Shape.Line(pen, 6, 0, 6, height), Shape.Polyline(pen, (30, 1), (height, 1), (6, height - 5)), JointDot.At(6, height - 5)]);
    }

    /// <summary>Two lines that meet close to the pin of a part.</summary>
    public static LegendEntry OfSquare(string text)
    {
        Pen pen = new(StrokeRank.Medium, ColourRole.Wire), part = new(StrokeRank.Medium, ColourRole.Ink);
        return new(new(30, 11, [Shape.Line(part, 0, 3, 0, 11), Shape.Line(pen, 0, 7, 30, 7), Shape.Polyline(pen, (10, 7), (10, 1), (30, 1)), JointDot.At(10, 7)]), text);
    }

    /// <summary>The outline of a part that is fitted, replaced, or to be replaced.</summary>
    public static LegendEntry OfPart(PartStyle look, string text) => new(Outline(look, 26, 12), text) { Short = Outline(look, 26, 9) };

    /// <summary>A box as a part of a look is outlined.</summary>
    public static Piece Outline(PartStyle look, double width, double height) =>
        new(width, height, [.. PartLook.Apply([new RectangleShape(new(0, 0, width, height), 0, new(StrokeRank.Medium, ColourRole.PartInk), ColourRole.Paper)], look)]);

    /// <summary>The ring where wires met before.</summary>
    public static LegendEntry OfOldJoint(string text) => new(new(8, 8, [JointDot.Was(4, 4)]), text);

    /// <summary>A lead that ends in a ring.</summary>
    public static LegendEntry OfFreeTerminal(string text)
    {
        Pen pen = new(StrokeRank.Medium, ColourRole.Ink);
        return new(new(20, 6, [Shape.Line(pen, 0, 3, 15, 3), new CircleShape((17, 3), FreeTerminals.Radius, pen, ColourRole.Paper)]), text);
    }

    /// <summary>Metal on which cases stand.</summary>
    public static LegendEntry OfMetal(string text)
    {
        var hatch = Enumerable.Range(0, 5).Select(i => (Shape)Shape.Line(new(StrokeRank.Thin, ColourRole.Ink), 7 + (7 * i), 0, 2 + (7 * i), 8));
        return new(new(40, 8, [new RectangleShape(new(0, 0, 40, 8), 0, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.Paper), .. hatch]), text);
    }

    /// <summary>The flag of a wire that goes on elsewhere.</summary>
    public static LegendEntry OfFlag(string text) => new(
        new(34, 12, [Shape.Polygon(new(StrokeRank.Thin, ColourRole.Ink), ColourRole.Paper, (0, 0), (28, 0), (34, 6), (28, 12), (0, 12))]), text);

    /// <summary>A flag with the sheet and zone where its line goes on.</summary>
    public static LegendEntry Flagged(string zone, string text, Lettering lettering)
    {
        TextShape shape = TextShape.Of(zone, lettering.SmallBold, 4, 3 + lettering.Small.CapHeight);
        double right = shape.Width + 8, height = lettering.Small.CapHeight + 6;
        return new(new(right + 6, height, [Shape.Polygon(new(StrokeRank.Thin, ColourRole.Ink), ColourRole.Paper, (0, 0), (right, 0), (right + 6, height / 2), (right, height), (0, height)), shape]), text);
    }

    /// <summary>The arrows of swapped leads.</summary>
    public static LegendEntry OfReversal(string text)
    {
        Pen pen = new(StrokeRank.Heavy, ColourRole.Ink);
        return new(
            new(15, 14,
            [
                Shape.Line(pen, 3.5, 14, 3.5, 5), Shape.Polygon(null, ColourRole.Ink, (3.5, 0), (7, 6), (0, 6)),
                Shape.Line(pen, 11.5, 0, 11.5, 9), Shape.Polygon(null, ColourRole.Ink, (11.5, 14), (15, 8), (8, 8)),
            ]),
            text);
    }

    /// <summary>A sample of a conductor's line.</summary>
    public static Piece Line(LineStyle state, double width) => new(width, 4, ConductorLine.Of([(0, 2), (width, 2)], state));
}
