using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>Rows of unlike height in columns filled downwards, the columns as even as the order of the rows allows.</summary>
/// <param name="Piece">The columns.</param>
internal sealed record ColumnFlow(Piece Piece)
{
    /// <summary>Greatest number of columns that leaves each the width it wants; where even one is too narrow for that, as many as leave each the least width.</summary>
    public static int Columns(double wanted, double between, double width, double least)
    {
        int without = (int)Math.Floor((width + between) / (wanted + between));
        int wrapped = (int)Math.Floor((width + between) / (Math.Min(wanted, Math.Max(least, wanted / 2)) + between));
        return Math.Max(1, Math.Max(without, Math.Min(wrapped, 3)));
    }

    /// <summary>Flows rows into columns.</summary>
    /// <param name="count">How many rows.</param>
    /// <param name="columns">Greatest number of columns.</param>
    /// <param name="between">Room between columns.</param>
    /// <param name="width">Width of all.</param>
    /// <param name="rows">Makes the rows for the width of a column.</param>
    public static ColumnFlow Of(int count, int columns, double between, double width, Func<double, ImmutableArray<Piece>> rows)
    {
        int used = Math.Max(1, Math.Min(columns, count));
        double each = (width - ((used - 1) * between)) / used;
        ImmutableArray<Piece> pieces = rows(each);
        double limit = Lowest(pieces, used);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = 0, y = 0, height = 0;
        foreach (Piece piece in pieces)
        {
            if (y > 0 && y + piece.Height > limit + 0.001)
                (x, y) = (x + each + between, 0);
            shapes.AddRange(piece.At(x, y));
            y += piece.Height;
            height = Math.Max(height, y);
        }

        return new(new Piece(width, height, shapes.ToImmutable()));
    }

    /// <summary>A heading in bold, broken if it must be, with room below.</summary>
    public static Piece Heading(string text, double width, Lettering lettering)
    {
        if (text.Length == 0)
            return Piece.Empty;
        var rows = new TextRows(false);
        foreach (string line in TextLines.Break(text, lettering.SmallBold, width, 3))
            rows.Text(line, lettering.SmallBold, ColourRole.Ink, null);
        Piece lines = rows.Gap(3 * lettering.Factor).Done();
        return lines with { Width = width };
    }

    // The least height at which the rows, in order, need no more columns than there are: one of the sums of neighbours.
    private static double Lowest(ImmutableArray<Piece> pieces, int columns)
    {
        var heights = new SortedSet<double>();
        for (int i = 0; i < pieces.Length; i++)
        {
            double sum = 0;
            for (int j = i; j < pieces.Length; j++)
                heights.Add(sum += pieces[j].Height);
        }

        return heights.FirstOrDefault(h => Needed(pieces, h) <= columns, heights.Max);
    }

    private static int Needed(ImmutableArray<Piece> pieces, double height)
    {
        int columns = 1;
        double y = 0;
        foreach (Piece piece in pieces)
        {
            if (piece.Height > height + 0.001)
                return int.MaxValue;
            if (y + piece.Height > height + 0.001)
                (columns, y) = (columns + 1, 0);
            y += piece.Height;
        }

        return columns;
    }
}
