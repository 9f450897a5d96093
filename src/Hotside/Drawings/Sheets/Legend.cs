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
        if (entries.IsEmpty)
            return Piece.Empty;
        int fewest = Math.Max(1, (int)Math.Ceiling(entries.Length * Row(lettering) / height));
        for (int columns = Math.Min(fewest, entries.Length); ; columns--)
        {
            foreach (bool close in new[] { false, true })
                if (InColumns(entries, columns, close, double.PositiveInfinity, lettering) is var piece && piece.Width <= width)
                    return piece;
            if (columns == 1)
                break;
        }

        return InColumns(entries, 1, close: true, width, lettering);
    }

    private static double Row(Lettering lettering) => 18 * lettering.Factor;

    private static Piece InColumns(ImmutableArray<LegendEntry> entries, int columns, bool close, double width, Lettering lettering)
    {
        int rows = (entries.Length + columns - 1) / columns;
        double x = 0, right = 0, row = Row(lettering);
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
