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
        foreach (var end in piece.Tops)
            if ((end.Seen & view) != 0) low = Math.Min(low, end.X(x));
        foreach (var end in piece.Bottoms)
            if ((end.Seen & view) != 0) low = Math.Min(low, end.X(x));
        return low;
    }

    public static int High(this Piece piece, int[] x, SeenIn view)
    {
        int high = int.MinValue;
        foreach (var end in piece.Tops)
            if ((end.Seen & view) != 0) high = Math.Max(high, end.X(x));
        foreach (var end in piece.Bottoms)
            if ((end.Seen & view) != 0) high = Math.Max(high, end.X(x));
        return high;
    }

    /// <summary>Whether it has a horizontal: two columns in some view, ends on one side only, or a rail.</summary>
    public static bool Spans(this Piece piece, int[] x) =>
        piece.IsRail || (piece.Low(x, SeenIn.Both) < piece.High(x, SeenIn.Both)) || (piece.IsTrunk && (piece.Tops.IsEmpty || piece.Bottoms.IsEmpty) && !(piece.Tops.IsEmpty && piece.Bottoms.IsEmpty));

    /// <summary>Columns where an end above meets one below within the horizontal: the halves of the trunk lie on two tracks there.</summary>
    public static ImmutableArray<int> Splits(this Piece piece, int[] x, SeenIn seen = SeenIn.Both)
    {
        if (!piece.IsTrunk || piece.IsRail || piece.Tops.IsEmpty || piece.Bottoms.IsEmpty || piece.Tops.Length + piece.Bottoms.Length < 4) return [];
        SortedSet<int>? splits = null;
        // Asked for each piece at each step of a search, and nearly always none: plain loops.
        foreach (var top in piece.Tops)
        {
            int at = top.X(x);
            foreach (var bottom in piece.Bottoms)
                if (bottom.X(x) == at && piece.Encloses(at, x, top.Seen & bottom.Seen & seen)) (splits ??= []).Add(at);
        }
        return splits is null ? [] : [.. splits];
    }

    /// <summary>Whether a column lies within the horizontal in one of the views.</summary>
    public static bool Encloses(this Piece piece, int column, int[] x, SeenIn views)
    {
        foreach (var view in Views)
            if ((views & view) != 0 && piece.Low(x, view) < column && column < piece.High(x, view)) return true;
        return false;
    }
}

/// <summary>How far each piece reaches, found once for all that ask of a set of columns.</summary>
internal sealed class PieceSpans
{
    private readonly (int Low, int High)[] before, after;
    private readonly bool[] spans;

    public PieceSpans(Lattice lattice, int[] x)
    {
        before = [.. lattice.Pieces.Select(p => (p.Low(x, SeenIn.Before), p.High(x, SeenIn.Before)))];
        after = [.. lattice.Pieces.Select(p => (p.Low(x, SeenIn.After), p.High(x, SeenIn.After)))];
        spans = [.. lattice.Pieces.Select(p => p.Spans(x))];
    }

    /// <summary>Whether a piece has a horizontal.</summary>
    public bool HasHorizontal(Piece piece) => spans[piece.Id];

    /// <summary>How far a piece reaches in both views together.</summary>
    public int Length(Piece piece) => Math.Max(before[piece.Id].High, after[piece.Id].High) - Math.Min(before[piece.Id].Low, after[piece.Id].Low);

    public int Low(Piece piece, SeenIn view) => In(piece, view).Low;

    public int High(Piece piece, SeenIn view) => In(piece, view).High;

    /// <summary>Whether two pieces share a column in a view.</summary>
    public bool Touch(Piece a, Piece b, SeenIn view) => Low(a, view) <= High(b, view) && Low(b, view) <= High(a, view);

    private (int Low, int High) In(Piece piece, SeenIn view) => view == SeenIn.Before ? before[piece.Id] : after[piece.Id];
}
