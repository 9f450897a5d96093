using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Sizing.Tables;

/// <summary>What a conductor may carry for good, and how that comes about.</summary>
/// <param name="Row">The table's row: a gauge, or a small metric size.</param>
/// <param name="Column">The table's column in °C.</param>
/// <param name="InTable">The table's amperes.</param>
internal sealed record Ampacity(string Row, double Column, double InTable)
{
    /// <summary>The temperature of the air in the table's conditions, and in an engine space, in °C.</summary>
    public const double Air = 30, EngineSpaceAir = 50;

    /// <summary>The factor of the engine space; 1 elsewhere.</summary>
    public double SpaceFactor { get; init; } = 1;

    /// <summary>The factor of the loom; 1 for a single conductor.</summary>
    public double BundleFactor { get; init; } = 1;

    /// <summary>The table it is from.</summary>
    public required string Source { get; init; }

    /// <summary>Amperes of the conductor by itself.</summary>
    public double Alone => InTable * SpaceFactor;

    /// <summary>Amperes of the conductor in its loom.</summary>
    public double Amperes => Alone * BundleFactor;

    /// <summary>The temperature of the air around it in °C: as the job states, else the table's or that of an engine space.</summary>
    public double Ambient { get; init; } = Air;

    /// <summary>Whether the job states it; then the factor follows from it (NFPA 70, 310.15(B), from memory) and not from the table of engine spaces.</summary>
    public bool IsAmbientStated { get; init; }

    /// <summary>Whether the table is one that warns only.</summary>
    public bool WarnsOnly { get; init; }

    /// <summary>What a size may carry.</summary>
    /// <param name="size">The size.</param>
    /// <param name="insulation">Its insulation.</param>
    /// <param name="isInEngineSpace">Whether it runs in the engine space.</param>
    /// <param name="ambient">The temperature that the job states where it runs, in °C; <see langword="null"/>: none.</param>
    /// <param name="bundled">How many conductors of its loom carry current, itself among them.</param>
    /// <returns><see langword="null"/> where no table has the size, or the insulation stands less than every column, or no more than the air around it.</returns>
    public static Ampacity? Of(WireSize size, Insulation insulation, bool isInEngineSpace, int bundled, double? ambient = null)
    {
        var found = InTableOf(size, insulation.Celsius);
        if (ambient >= insulation.Celsius) return null;
        return found is null ? null : found with
        {
            // Cold is not counted on: it is not always so cold.
            SpaceFactor = ambient is { } air ? Math.Min(1, Math.Sqrt((insulation.Celsius - air) / (insulation.Celsius - Air))) : isInEngineSpace ? EngineSpaceFactor(insulation.Celsius) : 1,
            Ambient = ambient ?? (isInEngineSpace ? EngineSpaceAir : Air),
            IsAmbientStated = ambient is not null,
            BundleFactor = BundleFactorOf(bundled),
        };
    }

    /// <summary>The factor of the engine space by the temperature that an insulation stands.</summary>
    public static double EngineSpaceFactor(double celsius) =>
        DataTable.Named("engine-space").Rows.Where(r => DataTable.FigureOf(r[0]) <= celsius).Select(r => DataTable.FigureOf(r[1])!.Value).LastOrDefault(0.58);

    /// <summary>The factor of a number of conductors that carry current together.</summary>
    public static double BundleFactorOf(int bundled) =>
        DataTable.Named("bundles").Rows.Where(r => DataTable.FigureOf(r[0]) <= bundled).Select(r => DataTable.FigureOf(r[1])!.Value).LastOrDefault(1);

    private static Ampacity? InTableOf(WireSize size, double celsius)
    {
        if (size.Gauge is { } gauge) return Cell("ampacity", r => DataTable.GaugeOf(r[0]) == gauge, celsius, WarnsOnly: false);
        var metric = DataTable.Named("metric").Rows.LastOrDefault(r => DataTable.FigureOf(r[0]) <= size.Area);
        return metric.IsDefault ? Cell("small-metric", r => DataTable.FigureOf(r[0]) <= size.Area, celsius, WarnsOnly: true)
            : Cell("ampacity", r => r[0] == metric[1], celsius, WarnsOnly: false);
    }

    private static Ampacity? Cell(string name, Func<ImmutableArray<string>, bool> isRow, double celsius, bool WarnsOnly)
    {
        var table = DataTable.Named(name);
        var row = table.Rows.FirstOrDefault(isRow);
        string? column = table.Columns.Skip(1).LastOrDefault(c => DataTable.FigureOf(c) <= celsius);
        return row.IsDefault || column is null ? null
            : new(row[0] + " " + table.Columns[0], DataTable.FigureOf(column)!.Value, table.Figure(row, column)!.Value) { Source = table.Source, WarnsOnly = WarnsOnly };
    }
}
