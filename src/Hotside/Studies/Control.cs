using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies;

/// <summary>What feeds a load: the minimal combinations of positions, any one of which does.</summary>
/// <param name="Any">The combinations in a fixed order; one empty combination means always, none means never.</param>
public sealed record Control(ImmutableArray<Combination> Any)
{
    /// <summary>The most combinations that a sentence lists: where there are more, it has <see cref="Whole"/>. So many are listed where there are too many to list them all.</summary>
    public const int Most = 16;

    /// <summary>All of it as one expression where there are more combinations than <see cref="Most"/>; else <see langword="null"/>.</summary>
    public ControlTerm? Whole { get; init; }

    /// <summary>Whether there are more combinations than are listed, which are too many to list (over a hundred): <see cref="Whole"/> has them all.</summary>
    public bool IsCut { get; init; }

    /// <summary>Whether it stands in every state.</summary>
    public bool IsAlways => Any.Any(c => c.All.IsEmpty);

    /// <summary>As a setting would be written: <c>S1 run and S2 on, or S3 on</c>; <c>always</c>, <c>never</c>.</summary>
    public override string ToString() => Any.IsEmpty ? "never" : IsAlways ? "always" : Whole?.ToString() ?? string.Join(", or ", Any);

    /// <summary>Whether it stands in a choice of positions.</summary>
    /// <param name="isIn">Whether the variable of some positions stands in one of them.</param>
    internal bool Holds(Predicate<PositionSet> isIn) => Whole?.Holds(isIn) ?? Any.Any(c => c.All.All(s => isIn(s)));
}

/// <summary>Positions that together feed a load.</summary>
/// <param name="All">A set of positions for each variable concerned, in the order of the circuit's variables.</param>
public sealed record Combination(ImmutableArray<PositionSet> All)
{
    /// <summary>As a setting would be written: <c>S1 run or start and S2 on</c>.</summary>
    public override string ToString() => string.Join(" and ", All);
}

/// <summary>The positions of one variable that a combination allows.</summary>
/// <param name="Variable">The actuator or condition.</param>
/// <param name="Positions">Its positions, in the kind's order; not all of them.</param>
public sealed record PositionSet(Variable Variable, ImmutableArray<string> Positions)
{
    /// <summary>As a setting would be written: <c>S1 run or start</c>.</summary>
    public override string ToString() => Variable + " " + string.Join(" or ", Positions);
}
