using System.Collections.Concurrent;
using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Sizing.Tables;

/// <summary>A table of published figures: data of the library, with where they are from.</summary>
/// <param name="Source">The standard or handbook; what is from memory says so.</param>
/// <param name="Columns">The heads of the columns.</param>
/// <param name="Rows">The cells, row by row.</param>
internal sealed record DataTable(string Source, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    private static readonly ConcurrentDictionary<string, DataTable> known = new(StringComparer.Ordinal);

    private ImmutableDictionary<string, string> sources = ImmutableDictionary<string, string>.Empty;

    /// <summary>A table by the name of its file.</summary>
    public static DataTable Named(string name) => known.GetOrAdd(name, Read);

    /// <summary>The cell of a row under a head.</summary>
    public string Cell(ImmutableArray<string> row, string column) => row[Columns.IndexOf(column)];

    /// <summary>The figure of a row under a head; <see langword="null"/> where there is a dash.</summary>
    public double? Figure(ImmutableArray<string> row, string column) => FigureOf(Cell(row, column));

    /// <summary>Where the row is from whose first cell is a text.</summary>
    public string SourceOf(string first) => sources.GetValueOrDefault(first, Source);

    /// <summary>The row whose first cell is a text; default where there is none.</summary>
    public ImmutableArray<string> Row(string first)
    {
        foreach (var row in Rows)
            if (row[0] == first)
                return row;
        return default;
    }

    /// <summary>A figure as a cell has it; <see langword="null"/> for a dash.</summary>
    public static double? FigureOf(string cell) => Numbers.TryRead(cell, out double figure) ? figure : null;

    /// <summary>A gauge as a cell has it: 14, 1/0 as 0, 2/0 as −1.</summary>
    public static int GaugeOf(string cell) => cell.EndsWith("/0", StringComparison.Ordinal) ? 1 - (cell[0] - '0') : (int)FigureOf(cell)!.Value;

    private static DataTable Read(string name)
    {
        using var stream = typeof(DataTable).Assembly.GetManifestResourceStream($"sizing/{name}.txt") ?? throw new ArgumentException($"There is no table \"{name}\".", nameof(name));
        using StreamReader reader = new(stream);
        string[] lines = [.. reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n').Where(l => l.Length > 0 && l[0] != '#')];
        // "source: …" is that of the whole table, "source headlamp: …" that of a row.
        var sources = lines.Where(l => l.StartsWith("source", StringComparison.Ordinal)).Select(l => l.Split(": ", 2)).ToImmutableDictionary(l => l[0]["source".Length..].Trim(), l => l[1], StringComparer.Ordinal);
        ImmutableArray<string>[] cells = [.. lines.Where(l => !l.StartsWith("source", StringComparison.Ordinal)).Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray())];
        return new(sources[""], cells[0], [.. cells.Skip(1)]) { sources = sources };
    }
}
