using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>The badge of a verdict, always in ink, since it is a finding and no change: a heavy bar lies on the side where the switch is.</summary>
internal static class Badge
{
    private const double Bar = 4;

    /// <summary>The words on a badge.</summary>
    public static string TextOf(Verdict verdict) => verdict switch
    {
        Verdict.Hot => "HOT-SWITCHED",
        Verdict.Ground => "GROUND-SWITCHED",
        Verdict.Both => "SWITCHED BOTH SIDES",
        Verdict.Unswitched => "UNSWITCHED",
        Verdict.InSeries => "IN SERIES",
        // Not "dead": its terminals may well be hot.
        _ => "NEVER ON",
    };

    /// <summary>The badge with its words; the bars lie half outside its outline, within its size.</summary>
    public static Piece Of(Verdict verdict, Lettering lettering)
    {
        TextStyle style = lettering.Badge;
        string text = TextOf(verdict);
        double width = Math.Ceiling(TextMeasure.Width(text, style) + (15 * lettering.Factor)), height = Math.Ceiling(17 * lettering.Factor) + Bar;
        double baseline = (height / 2) + (style.CapHeight / 2);
        // Letter spacing follows each character, the last one too: half of it keeps the words in the middle.
        return new(width, height, [.. Outline(verdict, width, height, 2), TextShape.Of(text, style, (width + style.Spacing) / 2, baseline, Anchor.Middle)]);
    }

    /// <summary>The badge without words, 2.2 M wide, for a reference line, a table or a legend.</summary>
    public static Piece Mini(Verdict verdict) => new(22, 14, Outline(verdict, 22, 14, 1.5));

    private static ImmutableArray<Shape> Outline(Verdict verdict, double width, double height, double radius)
    {
        Dash dash = verdict switch { Verdict.InSeries => Dash.Dots, Verdict.Dead => new Dash(5, 3), _ => default };
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new RectangleShape(new(0, Bar / 2, width, height - (Bar / 2)), radius, new(StrokeRank.Thin, ColourRole.Ink, dash), ColourRole.Paper));
        Pen bar = new(StrokeRank.Change, ColourRole.Ink);
        if (verdict is Verdict.Hot or Verdict.Both)
            shapes.Add(Shape.Line(bar, 0, Bar / 2, width, Bar / 2));
        if (verdict is Verdict.Ground or Verdict.Both)
            shapes.Add(Shape.Line(bar, 0, height - (Bar / 2), width, height - (Bar / 2)));
        return shapes.ToImmutable();
    }
}
