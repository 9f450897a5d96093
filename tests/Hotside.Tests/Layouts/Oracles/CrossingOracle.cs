using Google.OrTools.Sat;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts.Oracles;

/// <summary>
/// The fewest crossings of any order of a block's seats, by constraint programming (CP-SAT of OR-Tools): a truth variable for each two seats of a row that
/// says which stands left, made an order by transitivity, and one for each two nets in a channel and view that says that they cross. Two nets cross where
/// ends of both alternate on the way round the channel. It shares no code with the search and is optimistic: two nets cross once at most, and
/// each row may choose its order for itself.
/// </summary>
internal sealed class CrossingOracle
{
    private static readonly SeenIn[] Views = [SeenIn.Before, SeenIn.After];

    private readonly CpModel model = new();
    private readonly Dictionary<(int Left, int Right), BoolVar> leftOf = [];
    private readonly Lattice lattice;

    private CrossingOracle(Lattice lattice) => this.lattice = lattice;

    /// <summary>The fewest crossings, before and after added, and whether that is proven; when it is not, the bound.</summary>
    public static (int Crossings, bool IsProven) Of(Lattice lattice, double seconds)
    {
        var oracle = new CrossingOracle(lattice);
        oracle.Order();
        oracle.model.Minimize(LinearExpr.Sum(oracle.Crossings()));
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:2 random_seed:1 max_time_in_seconds:{seconds}") };
        bool proven = solver.Solve(oracle.model) == CpSolverStatus.Optimal;
        return ((int)Math.Ceiling(solver.BestObjectiveBound - 1e-6), proven);
    }

    // What stands on a rail is compared with the row beside it, so that both are one order.
    private void Order()
    {
        foreach (int[] row in lattice.Seats.GroupBy(s => Math.Clamp(s.Row, 1, lattice.Rows), s => s.Id).Select(g => g.ToArray()))
        {
            for (int i = 0; i < row.Length; i++)
                for (int j = i + 1; j < row.Length; j++) leftOf[(row[i], row[j])] = model.NewBoolVar("");
            for (int i = 0; i < row.Length; i++)
                for (int j = i + 1; j < row.Length; j++)
                    for (int k = j + 1; k < row.Length; k++)
                    {
                        var (ij, jk, ik) = (leftOf[(row[i], row[j])], leftOf[(row[j], row[k])], leftOf[(row[i], row[k])]);
                        model.AddBoolOr([ij.Not(), jk.Not(), ik]);
                        model.AddBoolOr([ij, jk, ik.Not()]);
                    }
        }
    }

    private List<BoolVar> Crossings()
    {
        var crossings = new List<BoolVar>();
        foreach (var channel in lattice.Pieces.GroupBy(p => p.Channel).Select(g => g.ToArray()))
            for (int i = 0; i < channel.Length; i++)
                for (int j = 0; j < i; j++)
                    foreach (var view in Views.Where(v => (channel[i].Net.Strange(channel[j].Net) & channel[i].Seen & channel[j].Seen & v) != 0))
                        if (Crossing(Around(channel[i], view), Around(channel[j], view)) is { } crossing) crossings.Add(crossing);
        return crossings;
    }

    private static (End End, bool AtTop)[] Around(Piece piece, SeenIn view) =>
        [.. piece.Tops.Select(e => (e, true)).Concat(piece.Bottoms.Select(e => (e, false))).Where(e => (e.Item1.Seen & view) != 0)];

    // True where some two ends of one and two of the other alternate.
    private BoolVar? Crossing((End End, bool AtTop)[] a, (End End, bool AtTop)[] b)
    {
        BoolVar? crossing = null;
        for (int i = 0; i < a.Length; i++)
            for (int j = 0; j < i; j++)
                for (int k = 0; k < b.Length; k++)
                    for (int l = 0; l < k; l++)
                    {
                        (bool? Known, ILiteral? Open)?[] before = [Before(a[i], b[k]), Before(a[j], b[k]), Before(a[i], b[l]), Before(a[j], b[l])];
                        if (before.Any(p => p is null)) continue;
                        bool odd = before.Count(p => p!.Value.Known == true) % 2 == 1;
                        ILiteral[] open = [.. before.Where(p => p!.Value.Open is not null).Select(p => p!.Value.Open!)];
                        if (open.Length == 0 && !odd) continue;
                        crossing ??= model.NewBoolVar("");
                        for (int values = 0; values < 1 << open.Length; values++)
                            if (int.PopCount(values) % 2 == 1 != odd) model.AddBoolOr([.. open.Select((p, n) => (values >> n & 1) == 1 ? p.Not() : p), crossing]);
                    }
        return crossing;
    }

    // Whether an end comes before another on the way round the channel: along the top to the right, along the bottom back. Null where both are one point.
    private (bool? Known, ILiteral? Open)? Before((End End, bool AtTop) p, (End End, bool AtTop) q)
    {
        if (p.AtTop != q.AtTop) return (p.AtTop, null);
        if (p.End.Seat == q.End.Seat) return p.End.Offset == q.End.Offset ? null : (p.End.Offset < q.End.Offset == p.AtTop, null);
        var left = leftOf.TryGetValue((p.End.Seat, q.End.Seat), out var known) ? (ILiteral)known : leftOf[(q.End.Seat, p.End.Seat)].Not();
        return (null, p.AtTop ? left : left.Not());
    }
}
