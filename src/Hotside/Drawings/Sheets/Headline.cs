using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>The headline of a view with a note beside it, on one baseline.</summary>
internal static class Headline
{
    /// <summary>The headline in a width; the note is shortened first.</summary>
    public static Piece Of(string text, string note, double width, Lettering lettering)
    {
        TextStyle large = lettering.Headline, small = lettering.Body;
        TextShape head = TextShape.Of(text, large, 0, large.CapHeight, width: width);
        double x = head.Width + (14 * lettering.Factor);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(head);
        double right = head.Width;
        if (note.Length > 0 && width - x > 40)
        {
            TextShape beside = TextShape.Of(note, small, x, large.CapHeight, colour: ColourRole.Quiet, width: width - x);
            shapes.Add(beside);
            right = x + beside.Width;
        }

        return new(right, large.CapHeight + large.Descent, shapes.ToImmutable());
    }

    /// <summary>The divider between the two views of a pair: dotted, thin, quiet.</summary>
    public static Shape Divider(double x1, double y1, double x2, double y2) =>
        Shape.Line(new(StrokeRank.Thin, ColourRole.Quiet, new Dash(0.01, 6), Round: true), x1, y1, x2, y2);
}
