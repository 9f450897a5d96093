using System.Collections.Immutable;

namespace Hotside.Layouts;

/// <summary>How a box faces: with left and right exchanged, or with its ways in another order.</summary>
/// <param name="Mirrored">Left and right are exchanged.</param>
/// <param name="Ways">By way, in the order given: the column in which it stands now; empty = as they are.</param>
internal readonly record struct Facing(bool Mirrored, ImmutableArray<int> Ways)
{
    /// <summary>As the box was given.</summary>
    public static Facing AsGiven { get; } = new(false, []);

    /// <summary>Where a column of a box stands.</summary>
    public int ColumnOf(int x, LayoutBox box)
    {
        int way = Ways.IsDefaultOrEmpty ? -1 : box.Ways.IndexOf(x);
        return way >= 0 ? Ways[way] : Mirrored ? box.Width - x : x;
    }
}
