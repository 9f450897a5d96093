using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Two ends that want one column.</summary>
internal sealed class ColumnPull(End a, End b, int basic, int factor, bool leadsOn, bool betweenPassages)
{
    public End A { get; } = a;

    public End B { get; } = b;

    public bool LeadsOn { get; } = leadsOn;

    public bool BetweenPassages { get; } = betweenPassages;

    public int Factor { get; set; } = factor;

    public int Weight => basic * Factor;

    public int Distance(int[] x) => Math.Abs(A.X(x) - B.X(x));

    public static IEnumerable<ColumnPull> Of(Piece piece, Lattice lattice, Func<End, End, bool> wired)
    {
        End[] tops = [.. piece.Tops.Where(e => !e.Implied)], bottoms = [.. piece.Bottoms.Where(e => !e.Implied)];
        int Views(SeenIn seen) => seen == SeenIn.Both ? 2 : 1;
        if (piece.Through is var (top, bottom))
        {
            int passages = (lattice.Seats[top.Seat].IsStand ? 0 : 1) + (lattice.Seats[bottom.Seat].IsStand ? 0 : 1);
            yield return new(top, bottom, (2 + passages) * Views(piece.Seen), 4, true, passages == 2);
        }
        else if (tops.Length > 0 && bottoms.Length > 0)
        {
            foreach (var a in tops)
                foreach (var b in bottoms.Where(b => (a.Seen & b.Seen) != 0))
                    yield return new(a, b, Views(a.Seen & b.Seen), (tops.Length == 1 || bottoms.Length == 1 ? 2 : 1) * (wired(a, b) ? 3 : 1), false, false);
        }
        else
        {
            End[] all = [.. tops, .. bottoms];
            for (int i = 1; i < all.Length; i++) yield return new(all[i - 1], all[i], 1, 1, false, false);
        }
    }
}
