using System.Collections.Immutable;

namespace Hotside.Drawings.Charts;

/// <summary>A cell with its column in a row, and the heading that begins above it.</summary>
internal sealed record ChartPlace(KindCell Cell, int Column, string? Heading);

/// <summary>Sets cells into rows of columns. A class goes on in the row of the one before if its heading has room there.</summary>
internal static class ChartFlow
{
    /// <summary>The rows.</summary>
    /// <param name="classes">The classes with their cells; none is empty.</param>
    /// <param name="columns">Columns of a row.</param>
    /// <param name="headingColumns">How many columns a heading needs.</param>
    public static ImmutableArray<ImmutableArray<ChartPlace>> Rows(
        IEnumerable<(string Heading, ImmutableArray<KindCell> Cells)> classes, int columns, Func<string, int> headingColumns)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<ChartPlace>>();
        var row = ImmutableArray.CreateBuilder<ChartPlace>();
        int used = 0, headingEnd = 0;
        void Break()
        {
            if (row.Count > 0) rows.Add(row.ToImmutable());
            row.Clear();
            used = headingEnd = 0;
        }

        foreach (var (heading, cells) in classes)
        {
            int begin = Math.Max(used, headingEnd), needs = Math.Max(headingColumns(heading), cells[0].Columns);
            if (begin + needs > columns) Break();
            else used = begin;
            headingEnd = used + headingColumns(heading);
            for (int i = 0; i < cells.Length; i++)
            {
                if (used > 0 && used + cells[i].Columns > columns) Break();
                row.Add(new(cells[i], used, i == 0 ? heading : null));
                used += cells[i].Columns;
            }
        }

        Break();
        return rows.ToImmutable();
    }
}
