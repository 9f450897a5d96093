using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>Whether an actuator is in one of some positions.</summary>
/// <param name="Actuator">The actuator's name within the kind.</param>
/// <param name="Positions">The positions that pass; at least one.</param>
public sealed record PositionTest(string Actuator, ImmutableArray<string> Positions)
{
    /// <summary>As it is written in a kind: <c>key run or start</c>.</summary>
    public override string ToString() => Actuator + " " + string.Join(" or ", Positions);
}
