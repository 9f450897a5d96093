using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>What is said of a part, apart from its id; what is not said takes the kind's default.</summary>
/// <param name="Kind">The kind, its ways written out.</param>
internal sealed record PartSpec(PartKind Kind)
{
    /// <summary>The part's name, such as <c>Horn button</c>; <see langword="null"/> when it has none.</summary>
    public string? Name { get; init; }

    /// <summary>The ratings stated, in the order written.</summary>
    public ImmutableArray<Rating> Ratings { get; init; } = [];

    /// <summary>The options stated, words of <see cref="PartKind.Options"/>.</summary>
    public ImmutableArray<string> Options { get; init; } = [];

    /// <summary>Terminals bolted straight to a node.</summary>
    public ImmutableArray<Joint> Joints { get; init; } = [];

    /// <summary>What the case stands on; <see langword="null"/>: not said.</summary>
    public CaseMount? Case { get; init; }

    /// <summary>Terminals left open on purpose.</summary>
    public ImmutableArray<string> FreeTerminals { get; init; } = [];

    /// <summary>The id of the assembly it belongs to.</summary>
    public string? Assembly { get; init; }

    /// <summary>Where it is, in free words.</summary>
    public string? Place { get; init; }

    /// <summary>The part of this specification with an id, defaults filled in.</summary>
    /// <param name="id">The part's id.</param>
    public Part As(string id) => new(id, this with { Case = Case ?? Kind.DefaultMount });
}
