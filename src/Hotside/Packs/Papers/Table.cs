using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>Sets a table: a head with a heavy rule, rows with thin ones, blanks between lines. No cell is cut short unless it is a page of its own.</summary>
internal sealed class Table
{
    private const double Padding = 4;
    private const int MostLines = 40;

    private readonly ImmutableArray<Column> columns;
    private readonly ImmutableArray<double> widths;
    private readonly double width;
    private readonly PackLettering lettering;

    private Table(ImmutableArray<Column> columns, ImmutableArray<TableRow> rows, double width, PackLettering lettering)
    {
        (this.columns, this.width, this.lettering) = (columns, width, lettering);
        widths = ColumnWidths.Of(columns, rows, width, Padding, lettering);
    }

    /// <summary>The table, ready to flow.</summary>
    public static FlowPart Of(ImmutableArray<Column> columns, IEnumerable<TableRow> rows, double width, PackLettering lettering)
    {
        TableRow[] all = [.. rows];
        Table table = new(columns, [.. all], width, lettering);
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        // A heading goes where its first row goes.
        Piece? heading = null;
        foreach (var row in all)
        {
            var piece = row.IsCaution ? Prose.Warning(row.Cells[0].Text, width, lettering) : row.IsHeading ? table.Spanning(row.Cells[0], lettering.CellBold, row.Least)
                : row.Cells.Length == 1 ? table.Spanning(row.Cells[0], lettering.Cell, row.Least) : table.Row(row);
            if (heading is not null) piece = Prose.Stack([heading, piece]);
            heading = row.IsHeading ? piece : null;
            if (!row.IsHeading) pieces.Add(piece);
        }
        return new(pieces.ToImmutable()) { Head = table.Head(), After = 10 * lettering.Factor };
    }

    private Piece Head()
    {
        if (columns.All(c => c.Head.Length == 0)) return new(width, 2, [Rule(StrokeRank.Heavy, 1)]);
        var style = lettering.FineBold;
        var lines = columns.Select((c, i) => TextLines.Break(c.Head, style, widths[i] - (2 * Padding), 4)).ToArray();
        int most = lines.Max(l => l.Length);
        double height = (most * style.Pitch) + 5;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = 0;
        for (int i = 0; i < columns.Length; x += widths[i++])
            // Heads stand on the rule.
            for (int j = 0; j < lines[i].Length; j++)
                shapes.Add(Placed(lines[i][j], style, i, x, height - 6 - ((lines[i].Length - 1 - j) * style.Pitch), 0));
        shapes.Add(Rule(StrokeRank.Heavy, height));
        return new(width, height + 1, shapes.ToImmutable());
    }

    private Piece Row(TableRow row)
    {
        double top = 4 * lettering.Factor;
        var styles = row.Cells.Select((c, i) => ColumnWidths.StyleOf(columns[i], c, lettering)).ToArray();
        double Room(int i) => widths[i] - (2 * Padding) - Before(row.Cells[i]);
        var lines = row.Cells.Select((c, i) => Lines(c.Text, styles[i], Room(i))).ToArray();
        var notes = row.Cells.Select((c, i) => TextLines.Break(c.Note, lettering.Fine, Room(i), MostLines)).ToArray();
        double text = lines.Select((l, i) => ((l.Length - 1) * styles[i].Pitch) + styles[i].CapHeight + styles[i].Descent + (notes[i].Length * lettering.Fine.Pitch)).Max(), mark = row.Cells.Max(c => c.Mark.Height);
        // What is one line high stands in the middle of a mark's row.
        double least = Math.Max(mark > 0 ? mark + 9 : 0, row.Least * lettering.Factor), first = Math.Max(top, (least - styles[0].CapHeight) / 2);
        double height = Math.Max(least, first + text + 4);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = 0;
        for (int i = 0; i < columns.Length; x += widths[i++])
        {
            var cell = row.Cells[i];
            if (cell.Mark.Height > 0) shapes.AddRange(cell.Mark.At(x + Padding, Math.Max(2, first + (styles[i].CapHeight / 2) - (cell.Mark.Height / 2))));
            for (int j = 0; j < lines[i].Length; j++) shapes.Add(Placed(lines[i][j].Text, styles[i], i, x, first + styles[i].CapHeight + (j * styles[i].Pitch), Before(cell) + lines[i][j].Indent));
            double below = first + styles[i].CapHeight + ((lines[i].Length - 1) * styles[i].Pitch) + lettering.Fine.Pitch;
            for (int j = 0; j < notes[i].Length; j++) shapes.Add(Placed(notes[i][j], lettering.Fine, i, x, below + (j * lettering.Fine.Pitch), Before(cell)));
            if (!columns[i].IsBlank) continue;
            foreach (double side in i + 1 < columns.Length ? new[] { x, x + widths[i] } : [x]) shapes.Add(Shape.Line(new(StrokeRank.Thin, ColourRole.Ink), side, 0, side, height));
        }
        shapes.Add(Rule(StrokeRank.Thin, height));
        return new(width, height, shapes.ToImmutable());
    }

    // Of several paragraphs each has its further lines set in, so that one sees where the next begins.
    private static (string Text, double Indent)[] Lines(string text, TextStyle style, double width)
    {
        string[] paragraphs = text.Split('\n');
        double indent = paragraphs.Length > 1 ? style.Size * 0.9 : 0;
        return [.. paragraphs.SelectMany(p => TextLines.Break(p, style, width - indent, MostLines).Select((l, i) => (l, i == 0 ? 0 : indent)))];
    }

    private Piece Spanning(Cell cell, TextStyle style, double least)
    {
        var lines = TextLines.Break(cell.Text, style, width - (2 * Padding), MostLines);
        double top = 6 * lettering.Factor, height = Math.Max(least * lettering.Factor, top + ((lines.Length - 1) * style.Pitch) + style.CapHeight + style.Descent + 3);
        return new(width, height, [.. lines.Select((l, j) => TextShape.Of(l, style, Padding, top + style.CapHeight + (j * style.Pitch))), Rule(StrokeRank.Thin, height)]);
    }

    private Shape Placed(string text, TextStyle style, int column, double x, double y, double before) => columns[column].IsRight
        ? TextShape.Of(text, style, x + widths[column] - Padding, y, Anchor.End)
        : TextShape.Of(text, style, x + Padding + before, y);

    private static double Before(Cell cell) => cell.Mark.Width > 0 ? cell.Mark.Width + 6 : 0;

    private PolylineShape Rule(StrokeRank rank, double y) => Shape.Line(new(rank, ColourRole.Ink), 0, y, width, y);
}
