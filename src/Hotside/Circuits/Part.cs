using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>An instance of a part kind in a circuit.</summary>
public sealed record Part
{
    internal Part(string id, PartSpec spec)
    {
        Id = id;
        Spec = spec;
    }

    /// <summary>Its id, unique among parts and conductors; the user's own, its letter means nothing.</summary>
    public string Id { get; }

    /// <summary>Its kind.</summary>
    public PartKind Kind => Spec.Kind;

    /// <summary>Its name; <see langword="null"/> when it has none.</summary>
    public string? Name => Spec.Name;

    /// <summary>The ratings stated.</summary>
    public ImmutableArray<Rating> Ratings => Spec.Ratings;

    /// <summary>Terminals bolted straight to a node; the case apart.</summary>
    public ImmutableArray<Joint> Joints => Spec.Joints;

    /// <summary>The node its case stands on; <see langword="null"/> when it touches nothing or is no terminal.</summary>
    public End? CaseOn => Spec.Case?.On;

    /// <summary>The id of the assembly it belongs to, or <see langword="null"/>.</summary>
    public string? Assembly => Spec.Assembly;

    /// <summary>Where it is, in free words, or <see langword="null"/>.</summary>
    public string? Place => Spec.Place;

    /// <summary>All that is said of it.</summary>
    internal PartSpec Spec { get; init; }

    /// <summary>Its name, or what its kind is called when it has none: <c>Horn button</c>, <c>Push button</c>.</summary>
    public string Title => Name ?? char.ToUpperInvariant(Kind.Noun[0]) + Kind.Noun[1..];

    /// <summary>Whether it gives current by itself, as a battery does and a machine that stands does not.</summary>
    internal bool IsStandingSource => Kind.Elements.Any(e => e is { IsSource: true, When: null });

    /// <summary>The value that a rating states for an element, in that unit.</summary>
    /// <param name="element">The element's name.</param>
    /// <param name="unit">The unit asked for.</param>
    /// <returns>The value; <see langword="null"/> when none is stated.</returns>
    public double? Rated(string element, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(element);
        foreach (var rule in Kind.RulesOf(element, unit))
            if (Ratings.FirstOrDefault(r => r.Name == rule.Name) is { } rating)
                return rule.ValueFor(element, rating.Quantity);
        return null;
    }

    /// <summary>Whether an element is a cranking motor: heavy, and on for seconds. Kinds say so by bearing another voltage briefly, or by their name.</summary>
    internal bool IsStarter(Element element) =>
        element.Type == ElementType.Motor && (Kind is { Voltage: "brief", Letter: "M" } || Kind.Id.StartsWith("starter", StringComparison.Ordinal));

    /// <summary>What is stated of an element in another state than the rated one, such as a motor's current when it stands.</summary>
    internal double? RatedAside(string word, string element, Unit unit)
    {
        foreach (var rule in Kind.Ratings)
            if (rule.IsAside && rule.Unit == unit && rule.Elements.Contains(element) && rule.Name.StartsWith(word + " ", StringComparison.Ordinal)
                && Ratings.FirstOrDefault(r => r.Name == rule.Name) is { } rating)
                return rule.MiddleFor(element, rating.Quantity);
        return null;
    }

    /// <summary>The same, a range at its middle.</summary>
    internal double? RatedMiddle(string element, Unit unit)
    {
        foreach (var rule in Kind.RulesOf(element, unit))
            if (Ratings.FirstOrDefault(r => r.Name == rule.Name) is { } rating)
                return rule.MiddleFor(element, rating.Quantity);
        return null;
    }
}
