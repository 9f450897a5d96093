using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>Lines of caution with a bar beside them, in columns if they need it, each broken but never shortened.</summary>
internal static class CautionBlock
{
    private const double Indent = 10, Between = 24;
    private const int MostLines = 40, MostColumns = 4;

    /// <summary>The cautions in a width; nothing without lines.</summary>
    public static Piece Of(string head, ImmutableArray<string> lines, double width, Lettering lettering)
    {
        if (lines.IsEmpty)
            return Piece.Empty;
        Piece top = ColumnFlow.Heading(head, width - Indent, lettering);
        double widest = TextMeasure.Widest(lines, lettering.Small) + Indent + 0.1;
        int columns = ColumnFlow.Columns(widest, Between, width - Indent, 260 * lettering.Factor);
        Piece flowing = ColumnFlow.Of(lines.Length, columns, Between, width - Indent, w => [.. lines.Select(l => Row(l, w, lettering))]).Piece;
        Piece rows = lines.Length <= MostColumns && SideBySide(lines, width - Indent, lettering) is var beside && beside.Height < flowing.Height ? beside : flowing;
        double height = top.Height + rows.Height;
        return new(width, height,
        [
            Shape.Line(new(StrokeRank.Change, ColourRole.Ink), 2, 2, 2, height),
            .. top.At(Indent, 0),
            .. rows.At(Indent, top.Height),
        ]);
    }

    // A column a caution, a long one wider than a short one: as few lines as the widths allow.
    private static Piece SideBySide(ImmutableArray<string> lines, double width, Lettering lettering)
    {
        double[] widths = [];
        for (int most = 1; ; most++)
        {
            widths = [.. lines.Select(l => Indent + LeastWidth(l, most, lettering.Small))];
            if (widths.Sum() + (Between * (lines.Length - 1)) <= width || most == MostLines) break;
        }
        double spare = (width - widths.Sum() - (Between * (lines.Length - 1))) / lines.Length, x = 0, height = 0;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        foreach (var (line, least) in lines.Zip(widths))
        {
            Piece row = Row(line, least + spare, lettering);
            shapes.AddRange(row.At(x, 0));
            height = Math.Max(height, row.Height);
            x += least + spare + Between;
        }
        return new(width, height, shapes.ToImmutable());
    }

    // The least width, to a unit, at which a text takes no more than so many lines.
    private static double LeastWidth(string text, int most, TextStyle style)
    {
        double all = Math.Ceiling(TextMeasure.Width(text, style)) + 1, low = Math.Floor(all / most), high = all;
        while (high - low > 1)
        {
            double middle = Math.Floor((low + high) / 2);
            if (TextLines.Break(text, style, middle, 40).Length <= most) high = middle;
            else low = middle;
        }
        return high;
    }

    private static Piece Row(string text, double width, Lettering lettering)
    {
        TextStyle style = lettering.Small;
        ImmutableArray<string> lines = TextLines.Break(text, style, width - Indent, 40);
        double baseline = 10 * lettering.Factor;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of("•", style, 0, baseline));
        for (int i = 0; i < lines.Length; i++)
            shapes.Add(TextShape.Of(lines[i], style, Indent, baseline + (i * style.Pitch)));
        return new(width, (Math.Max(1, lines.Length) * style.Pitch) + (2 * lettering.Factor), shapes.ToImmutable());
    }
}
