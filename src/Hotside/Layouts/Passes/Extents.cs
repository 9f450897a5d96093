using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>How far a piece reaches once its seats have columns, and where a trunk must step aside so that four arms never meet.</summary>
internal static class Extents
{
    public static readonly SeenIn[] Views = [SeenIn.Before, SeenIn.After];

    public static int X(this End end, int[] x) => x[end.Seat] + end.Offset;

    public static int Low(this Piece piece, int[] x, SeenIn view)
    {
        int low = int.MaxValue;
        foreach (var end in piece.Ends)
            if ((end.Seen & view) != 0) low = Math.Min(low, end.X(x));
        return low;
    }

    public static int High(this Piece piece, int[] x, SeenIn view)
    {
        int high = int.MinValue;
        foreach (var end in piece.Ends)
            if ((end.Seen & view) != 0) high = Math.Max(high, end.X(x));
        return high;
    }

    /// <summary>Whether it has a horizontal: two columns in some view, ends on one side only, or a rail.</summary>
    public static bool Spans(this Piece piece, int[] x) =>
        piece.IsRail || (piece.Low(x, SeenIn.Both) < piece.High(x, SeenIn.Both)) || (piece.IsTrunk && (piece.Tops.IsEmpty || piece.Bottoms.IsEmpty) && !(piece.Tops.IsEmpty && piece.Bottoms.IsEmpty));

    /// <summary>Columns where an end above meets one below within the horizontal: the halves of the trunk lie on two tracks there.</summary>
    public static ImmutableArray<int> Splits(this Piece piece, int[] x, SeenIn seen = SeenIn.Both)
    {
        if (!piece.IsTrunk || piece.IsRail) return [];
        var splits = new SortedSet<int>();
        foreach (var top in piece.Tops)
            foreach (var bottom in piece.Bottoms.Where(b => b.X(x) == top.X(x)))
                foreach (var view in Views.Where(v => (top.Seen & bottom.Seen & seen & v) != 0))
                    if (piece.Low(x, view) < top.X(x) && top.X(x) < piece.High(x, view)) splits.Add(top.X(x));
        return [.. splits];
    }
}
