using System.Collections.Immutable;

namespace Hotside.Packs.Papers;

/// <summary>A row of a table.</summary>
/// <param name="Cells">A cell a column; one cell alone spans all.</param>
internal sealed record TableRow(ImmutableArray<Cell> Cells)
{
    /// <summary>The least height, for a pencil.</summary>
    public double Least { get; init; }

    /// <summary>Whether the one cell is a heading over the rows that follow.</summary>
    public bool IsHeading { get; init; }

    /// <summary>Whether it is a caution, boxed, before the row that it concerns.</summary>
    public bool IsCaution { get; init; }

    /// <summary>A caution before the row that follows.</summary>
    public static TableRow Caution(string text) => new([text]) { IsHeading = true, IsCaution = true };

    /// <summary>A row of cells.</summary>
    public static TableRow Of(params Cell[] cells) => new([.. cells]);

    /// <summary>A heading over the rows that follow.</summary>
    public static TableRow Heading(string text) => new([text]) { IsHeading = true };
}
