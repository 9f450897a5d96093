using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>When an element conducts or gives: every test holds.</summary>
/// <param name="Tests">At least one test.</param>
public sealed record ElementCondition(ImmutableArray<PositionTest> Tests)
{
    /// <summary>As it is written in a kind: <c>key run or start</c>.</summary>
    public override string ToString() => string.Join(" and ", Tests);
}
