using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>The left-to-right order of the seats in each row of a block, and what it costs.</summary>
/// <param name="Rows">By row, from 0 (on the feed) to one more than the last (on chassis): the seats in order.</param>
/// <param name="Crossings">Crossings of both views.</param>
internal sealed record SeatOrder(ImmutableArray<ImmutableArray<int>> Rows, int Crossings)
{
    /// <summary>By seat: where it stands in the one order from which all rows follow.</summary>
    public ImmutableArray<int> Places { get; init; } = [];
}
