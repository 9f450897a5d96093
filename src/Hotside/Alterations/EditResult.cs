using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>What came of applying an edit list.</summary>
/// <param name="Alteration">The alteration; <see langword="null"/> where a problem is an error.</param>
/// <param name="Problems">
/// Errors and notes in the order of the list, with the index of the group and of the edit within it; −1 where no line is at fault.
/// </param>
internal sealed record EditResult(Alteration? Alteration, ImmutableArray<(Diagnostic Diagnostic, int Group, int Edit)> Problems)
{
    /// <summary>The parts as they are after all part lines, errors or not: what a further line may name.</summary>
    public required ImmutableArray<Part> Parts { get; init; }
}
