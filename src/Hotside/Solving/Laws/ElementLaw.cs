using System.Collections.Immutable;

namespace Hotside.Solving.Laws;

/// <summary>By which laws an element of a part draws or gives current; parallel ones add up.</summary>
/// <param name="Closed">While its condition holds, or always.</param>
/// <param name="Open">While its condition does not hold.</param>
internal sealed record ElementLaw(ImmutableArray<Law> Closed, ImmutableArray<Law> Open)
{
    /// <summary>An element that never conducts, as a capacitor at direct current.</summary>
    public static ElementLaw None { get; } = new([], []);

    /// <summary>An element that conducts by a law.</summary>
    public static ElementLaw By(params ImmutableArray<Law> laws) => new(laws, []);

    /// <summary>In the first moment, when filaments are cold and motors stand, in place of <see cref="Closed"/>; the same where nothing differs.</summary>
    public ImmutableArray<Law> AtOnce { get => field.IsDefault ? Closed : field; init; }

    /// <summary>The power that it draws at any voltage, in watts, beside its laws; 0 for most.</summary>
    public double Watts { get; init; }
}
