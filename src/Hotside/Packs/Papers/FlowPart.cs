using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Packs.Papers;

/// <summary>What flows down pages: rows that are never split, under a head that comes again on each page.</summary>
/// <param name="Rows">The rows, each as wide as the text.</param>
internal sealed record FlowPart(ImmutableArray<Piece> Rows)
{
    /// <summary>What stands above the first row, and above the first on each page.</summary>
    public Piece Head { get; init; } = Piece.Empty;

    /// <summary>Room below.</summary>
    public double After { get; init; }

    /// <summary>Whether it begins on a new page.</summary>
    public bool BeginsPage { get; init; }

    /// <summary>Whether it is worth nothing at the foot of a page without what follows.</summary>
    public bool KeepsNext { get; init; }

    /// <summary>Whether all rows stand on one page where one holds them.</summary>
    public bool IsWhole { get; init; }

    /// <summary>How high it is on one page.</summary>
    public double Height => Head.Height + Rows.Sum(r => r.Height) + After;

    /// <summary>The least that is put at the foot of a page: the head and three rows, or all of it.</summary>
    public double LeastHeight => IsWhole ? Height - After : Head.Height + Rows.Take(3).Sum(r => r.Height);
}
