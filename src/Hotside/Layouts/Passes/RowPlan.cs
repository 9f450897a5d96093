using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Rows of stands, numbered from 1 downwards, and the channel of each net's trunk: channel n lies under row n, channel 0 under the
/// feed rail.
/// </summary>
/// <param name="Above">By tap: lies above its trunk.</param>
/// <param name="Climbs">By tap: its trunk lies on the wrong side, so its conductor turns round beside the stand.</param>
internal sealed record RowPlan(
    int Rows, ImmutableArray<int> RowOf, ImmutableArray<int> TrunkOf, ImmutableArray<bool> Above, ImmutableArray<bool> Climbs)
{
    /// <summary>Whether everything stands in the same row and leads the same way.</summary>
    public bool IsAs(RowPlan other) =>
        Rows == other.Rows && RowOf.SequenceEqual(other.RowOf) && TrunkOf.SequenceEqual(other.TrunkOf) && Above.SequenceEqual(other.Above) && Climbs.SequenceEqual(other.Climbs);
}
