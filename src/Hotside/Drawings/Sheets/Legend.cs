using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>The legend: what the sheet uses and nothing else, in columns filled downwards.</summary>
internal static class Legend
{
    /// <summary>The legend within a width, and if it can be within a height.</summary>
    /// <param name="entries">Its rows, in order.</param>
    /// <param name="width">Greatest width in units.</param>
    /// <param name="height">Height in units that it should not exceed; it does so only when no columns are left.</param>
    /// <param name="lettering">Lettering.</param>
    public static Piece Of(ImmutableArray<LegendEntry> entries, double width, double height, Lettering lettering)
    {
        var (needed, row) = Within([.. entries.Where(e => !e.IsUsual)], width, height, lettering);
        // What everybody knows is told where that takes no room and brings nothing closer.
        return Within(entries, width, height, lettering) is var (all, rowOfAll) && rowOfAll == row && all.Width <= width && all.Height <= Math.Max(needed.Height, height) ? all : needed;
    }

    /// <summary>Whether its rows are as close as they can be.</summary>
    public static bool IsCrowded(ImmutableArray<LegendEntry> entries, double width, double height, Lettering lettering) => Within([.. entries.Where(e => !e.IsUsual)], width, height, lettering).Row == ClosestRow;

    private static (Piece Legend, double Row) Within(ImmutableArray<LegendEntry> entries, double width, double height, Lettering lettering)
    {
        if (entries.IsEmpty) return (Piece.Empty, Row);
        // Within the height, in rows that come closer if they must.
        foreach (double row in new[] { Row, CloseRow, ClosestRow })
            if ((int)(height / (row * lettering.Factor)) is > 0 and var rows)
                foreach (bool close in row == ClosestRow ? [true] : new[] { false, true })
                    if (InColumns(entries, (entries.Length + rows - 1) / rows, row, close, double.PositiveInfinity, lettering) is var piece && piece.Width <= width) return (piece, row);
        // Else as low as the width allows.
        for (int columns = entries.Length; columns > 1; columns--)
            foreach (bool close in new[] { false, true })
                if (InColumns(entries, columns, Row, close, double.PositiveInfinity, lettering) is var piece && piece.Width <= width) return (piece, Row);
        return (InColumns(entries, 1, Row, close: true, width, lettering), Row);
    }

    // 1.4 to 1.8 M.
    private const double Row = 18, CloseRow = 16.5, ClosestRow = 14;

    private static Piece InColumns(ImmutableArray<LegendEntry> entries, int columns, double pitch, bool close, double width, Lettering lettering)
    {
        int rows = (entries.Length + columns - 1) / columns;
        double x = 0, right = 0, row = pitch * lettering.Factor;
        TextStyle style = lettering.Small;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        foreach (LegendEntry[] column in entries.Chunk(rows))
        {
            double samples = column.Max(e => Sample(e).Width), text = x + samples + (close ? 6 : 8);
            for (int i = 0; i < column.Length; i++)
            {
                Piece sample = Sample(column[i]);
                double middle = (i * row) + (row / 2);
                shapes.AddRange(sample.At(x + ((samples - sample.Width) / 2), middle - (sample.Height / 2)));
                TextShape words = TextShape.Of(column[i].Text, style, text, middle + (style.CapHeight / 2), width: width - text);
                shapes.Add(words);
                right = Math.Max(right, text + words.Width);
            }

            x = right + (close ? 14 : 22);
        }

        return new(right, rows * row, shapes.ToImmutable());

        Piece Sample(LegendEntry entry) => close ? entry.Short : entry.Sample;
    }
}
