using System.Collections.Immutable;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>The badge of a verdict, always in ink, since it is a finding and no change: a heavy bar lies on the side where the switch is.</summary>
internal static class Badge
{
    private const double Bar = 4;

    /// <summary>The badge with its words; the bars lie half outside its outline, within its size.</summary>
    public static Piece Of(SwitchedSide side, string text, Lettering lettering)
    {
        TextStyle style = lettering.Badge;
        double width = Math.Ceiling(TextMeasure.Width(text, style) + (15 * lettering.Factor)), height = Math.Ceiling(17 * lettering.Factor) + Bar;
        double baseline = (height / 2) + (style.CapHeight / 2);
        // Letter spacing follows each character, the last one too: half of it keeps the words in the middle.
        return new(width, height, [.. Outline(side, width, height, 2), TextShape.Of(text, style, (width + style.Spacing) / 2, baseline, Anchor.Middle)]);
    }

    /// <summary>The badge without words, 2.2 M wide, for a reference line, a table or a legend.</summary>
    public static Piece Mini(SwitchedSide side) => new(22, MiniHeight, Outline(side, 22, MiniHeight, 1.5));

    /// <summary>The height of a badge without words.</summary>
    public const double MiniHeight = 14;

    private static ImmutableArray<Shape> Outline(SwitchedSide side, double width, double height, double radius)
    {
        Dash dash = side switch { SwitchedSide.InSeries => Dash.Dots, SwitchedSide.Dead => new Dash(5, 3), SwitchedSide.Elsewhere => Dash.Enclosure, _ => default };
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new RectangleShape(new(0, Bar / 2, width, height - (Bar / 2)), radius, new(StrokeRank.Thin, ColourRole.Ink, dash), ColourRole.Paper));
        Pen bar = new(StrokeRank.Change, ColourRole.Ink);
        if (side is SwitchedSide.HotSwitched or SwitchedSide.BothSides)
            shapes.Add(Shape.Line(bar, 0, Bar / 2, width, Bar / 2));
        if (side is SwitchedSide.GroundSwitched or SwitchedSide.BothSides)
            shapes.Add(Shape.Line(bar, 0, height - (Bar / 2), width, height - (Bar / 2)));
        return shapes.ToImmutable();
    }
}
