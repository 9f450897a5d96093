using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Seats that move together in the order: a stand or the passages of one tap; or a whole track of such in one line.</summary>
/// <param name="Parts">The single strands a track is made of.</param>
internal sealed record Strand(int Id, ImmutableArray<int> Seats, ImmutableArray<int> Parts)
{
    /// <summary>Every stand, and every tap's column of passages, by itself.</summary>
    public static ImmutableArray<Strand> Singles(Lattice lattice) =>
        [.. lattice.Seats.GroupBy(s => (s.Stand, s.Tap)).Select((g, i) => new Strand(i, [.. g.Select(s => s.Id)], [i]))];

    /// <summary>Single strands joined along pieces that merely lead on, those of both views first.</summary>
    public static ImmutableArray<Strand> Tracks(Lattice lattice, ImmutableArray<Strand> singles)
    {
        int[] strandOf = new int[lattice.Seats.Length];
        foreach (Strand strand in singles)
            foreach (int seat in strand.Seats) strandOf[seat] = strand.Id;
        DisjointSets sets = new(singles.Length);
        HashSet<int>[] rows = [.. singles.Select(s => s.Seats.Select(i => lattice.Seats[i].Row).ToHashSet())];
        IEnumerable<(Piece Piece, int A, int B)> links =
            from piece in lattice.Pieces
            where piece.Through is not null
            let ends = piece.Through!.Value
            orderby piece.Seen == Symbols.SeenIn.Both ? 0 : 1,
                lattice.Seats[ends.Top.Seat].IsStand && lattice.Seats[ends.Bottom.Seat].IsStand ? 0 : 1, piece.Id
            select (piece, strandOf[ends.Top.Seat], strandOf[ends.Bottom.Seat]);
        foreach ((_, int a, int b) in links)
        {
            (int x, int y) = (sets.Find(a), sets.Find(b));
            if (x == y || rows[x].Overlaps(rows[y])) continue;
            sets.Join(x, y);
            rows[Math.Min(x, y)].UnionWith(rows[Math.Max(x, y)]);
        }
        return [.. singles.GroupBy(s => sets.Find(s.Id)).Select((g, i) => new Strand(i, [.. g.SelectMany(s => s.Seats)], [.. g.Select(s => s.Id)]))];
    }
}
