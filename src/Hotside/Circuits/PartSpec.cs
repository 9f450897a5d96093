using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>What is said of a part, apart from its id; what is not said takes the kind's default.</summary>
/// <param name="Kind">The kind, its ways written out.</param>
public sealed record PartSpec(PartKind Kind)
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

    /// <summary>What is said of a part of some kind; the nodes of its joints and case are looked up later.</summary>
    /// <exception cref="ArgumentException">The kind lacks a rating or terminal that <paramref name="details"/> states.</exception>
    internal static PartSpec Of(string id, PartKind kind, PartDetails details)
    {
        var ratings = details.AllRatings().ToImmutableArray();
        foreach (var rating in ratings)
            if (kind.Ratings.All(r => r.Name != rating.Name) && rating.Name != "ways")
                throw new ArgumentException(
                    $"A {kind.Id} has no rating \"{rating.Name}\"{NearestName.Suggestion(rating.Name, kind.Ratings.Select(r => r.Name))}", nameof(details));
        int? ways = ratings.FirstOrDefault(r => r.Name == "ways") is { } said ? (int)said.Quantity.Value : null;
        var whole = ways is { } count ? kind.WithWays(count) : kind;
        var joints = details.Joints.OrderBy(j => j.Key, StringComparer.Ordinal).Select(j =>
            new Joint(whole.TerminalNamed(j.Key) ?? throw new ArgumentException(whole.NoTerminal(id, j.Key), nameof(details)), End.Parse(j.Value)));
        return new(whole)
        {
            Name = details.Name,
            Ratings = ratings,
            Joints = [.. joints],
            Case = details.Case is null ? null : details.Case == "insulated" ? CaseMount.Insulated : new(End.Parse(details.Case)),
            Place = details.Place,
        };
    }

    /// <summary>The part of this specification with an id, defaults filled in.</summary>
    /// <param name="id">The part's id.</param>
    public Part As(string id) => new(id, this with { Case = Case ?? (Kind.Case == CaseKind.Grounded ? CaseMount.OnChassis : CaseMount.Insulated) });
}
