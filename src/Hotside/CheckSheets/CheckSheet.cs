using System.Collections.Immutable;

namespace Hotside.CheckSheets;

/// <summary>A sheet of readings to take on a vehicle, with what is expected and what a deviation means. Immutable.</summary>
/// <remarks>Worked out from the netlist: an aid. The workshop manual, local codes and licensed practice take precedence.</remarks>
/// <param name="Title">What it is a sheet of.</param>
/// <param name="Rows">The rows in the order in which they are measured.</param>
public sealed record CheckSheet(string Title, ImmutableArray<CheckRow> Rows)
{
    /// <summary>How much it covers; of an intake sheet a row's last column says what its reading means, not what a deviation does.</summary>
    public SheetExtent Extent { get; init; }

    /// <summary>What is written down first, a line each with its blanks: battery now, meter, lead zero.</summary>
    public ImmutableArray<string> Heads { get; init; } = [];

    /// <summary>Cautions, to be read first.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>What the sheet does not show, and what its figures rest on.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
