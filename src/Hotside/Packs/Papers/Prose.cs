using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>What is written between tables: headings, paragraphs, points, boxes.</summary>
internal static class Prose
{
    private const double Indent = 14, Bar = 4, BoxPadding = 10;

    // A paragraph of more lines is cut off with an ellipsis; no one writes one.
    private const int MostLines = 60;

    /// <summary>A heading within a page.</summary>
    public static FlowPart Heading(string text, double width, PackLettering lettering) =>
        new([Lines(text, lettering.Heading, width, 4 * lettering.Factor)]) { KeepsNext = true, After = 3 * lettering.Factor };

    /// <summary>A paragraph.</summary>
    public static FlowPart Paragraph(string text, TextStyle style, double width) => new([Lines(text, style, width, 0)]) { After = style.Pitch * 0.45 };

    /// <summary>Points, each with a bullet.</summary>
    public static FlowPart Points(IEnumerable<string> texts, TextStyle style, double width) =>
        new([.. texts.Select(t => Marked(Bullet(style), t, style, width))]) { After = style.Pitch * 0.5 };

    /// <summary>Lines with a box to tick before each.</summary>
    public static FlowPart Ticks(IEnumerable<string> texts, TextStyle style, double width) =>
        new([.. texts.Select(t => Marked(Marks.TickBox, t, style, width))]) { After = style.Pitch * 0.5 };

    /// <summary>A caution: boxed, a heavy bar beside it.</summary>
    /// <param name="head">What it is about, in bold; may be empty.</param>
    /// <param name="texts">Paragraphs.</param>
    /// <param name="width">Its width.</param>
    /// <param name="lettering">Its letters.</param>
    public static Piece Boxed(string head, IEnumerable<string> texts, double width, PackLettering lettering) =>
        Boxed([.. head.Length > 0 ? [Lines(head, lettering.TextBold, Inside(width), 2)] : Array.Empty<Piece>(), .. texts.Select(t => Lines(t, lettering.Text, Inside(width), 2))], width);

    /// <summary>A caution within a table.</summary>
    public static Piece Warning(string text, double width, PackLettering lettering) => Boxed([Lines(text, lettering.CellBold, Inside(width), 1)], width);

    private static double Inside(double width) => width - (2 * BoxPadding) - Bar;

    private static Piece Boxed(Piece[] lines, double width)
    {
        var inside = Stack(lines);
        double height = inside.Height + (2 * BoxPadding) - 8;
        return new(width, height + 4,
        [
            new RectangleShape(new(0, 0, width, height), 0, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.None),
            Shape.Line(new(StrokeRank.Change, ColourRole.Ink), Bar / 2, 0, Bar / 2, height),
            .. inside.At(Bar + BoxPadding, BoxPadding - 6),
        ]);
    }

    /// <summary>Lines of a text below each other.</summary>
    public static Piece Lines(string text, TextStyle style, double width, double above)
    {
        var lines = TextLines.Break(text, style, width, MostLines);
        return new(width, above + (Math.Max(1, lines.Length) * style.Pitch), [.. lines.Select((l, i) => TextShape.Of(l, style, 0, above + style.CapHeight + Lead(style) + (i * style.Pitch)))]);
    }

    /// <summary>Pieces below each other.</summary>
    public static Piece Stack(IEnumerable<Piece> pieces)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double y = 0, width = 0;
        foreach (var piece in pieces)
        {
            shapes.AddRange(piece.At(0, y));
            (y, width) = (y + piece.Height, Math.Max(width, piece.Width));
        }
        return new(width, y, shapes.ToImmutable());
    }

    private static Piece Marked(Piece mark, string text, TextStyle style, double width)
    {
        double left = Math.Max(Indent, mark.Width + 6);
        var lines = Lines(text, style, width - left, 0);
        double middle = Lead(style) + (style.CapHeight / 2);
        return new(width, Math.Max(lines.Height, mark.Height + 2) + 3, [.. mark.At(0, Math.Max(0, middle - (mark.Height / 2))), .. lines.At(left, Math.Max(0, (mark.Height / 2) - middle))]);
    }

    private static Piece Bullet(TextStyle style) => new(6, 6, [Shape.Dot(ColourRole.Ink, 3, 3, style.CapHeight * 0.18)]);

    // Half of what a line has above its capitals and below its baseline.
    private static double Lead(TextStyle style) => (style.Pitch - style.CapHeight - style.Descent) / 2;
}
