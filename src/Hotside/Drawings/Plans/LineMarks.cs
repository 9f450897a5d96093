using System.Collections.Immutable;

namespace Hotside.Drawings.Plans;

/// <summary>What stands at conductors of one circuit in the place of their sizes and colours and at its parts, and which conductors have a band: suspects of a fault.</summary>
/// <param name="IsBefore">Whether of the before circuit.</param>
/// <param name="Texts">The texts by the conductors' ids.</param>
/// <param name="Banded">The conductors, and the bolted terminals such as <c>F2.1</c>, that have a band.</param>
internal sealed record LineMarks(bool IsBefore, ImmutableDictionary<string, string> Texts, ImmutableHashSet<string> Banded)
{
    /// <summary>What stands at parts, by their ids.</summary>
    public ImmutableDictionary<string, string> AtParts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>What the texts are, for the legend.</summary>
    public required string Meaning { get; init; }

    /// <summary>What the band means, for the legend.</summary>
    public required string BandMeaning { get; init; }

    /// <summary>What the headline adds; begins with a semicolon where it is not empty.</summary>
    public required string Note { get; init; }
}
