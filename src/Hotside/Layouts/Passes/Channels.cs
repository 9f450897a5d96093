using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Gives the horizontals of each channel their tracks: an order that crosses least, then as few tracks as keep strange nets apart. Two columns
/// that would lie on each other ask for a distance between them.
/// </summary>
internal static class Channels
{
    private const int OnEachOther = 1000, BesideRail = 3, EndsApart = 6;

    /// <summary>The track of each piece, from 0 downwards; and the ends that must not share a column, left one first.</summary>
    /// <param name="lattice">The block.</param>
    /// <param name="x">Where its seats stand.</param>
    /// <param name="spans">How far its pieces reach there.</param>
    /// <param name="before">The tracks of an earlier layout, −1 where there was none; they are left only where it must be.</param>
    /// <param name="besideRails">Whether what shares a pin with a rail's feed is asked to go down beside the rail.</param>
    public static (int[] Levels, List<(End Left, End Right)> Apart) Of(Lattice lattice, int[] x, PieceSpans spans, int[]? before = null, bool besideRails = true)
    {
        int[] levels = before is null ? new int[lattice.Pieces.Length] : [.. before.Select(t => Math.Max(t, 0))];
        var apart = new List<(End, End)>();
        foreach (var channel in lattice.Pieces.Where(spans.HasHorizontal).GroupBy(p => p.Channel))
        {
            Piece[] pieces = [.. channel.OrderBy(p => before is null ? 0 : (uint)before[p.Id]).ThenBy(p => p.Bottoms.Length > p.Tops.Length ? 1 : 0).ThenBy(p => p.Id)];
            int[,] cost = new int[pieces.Length, pieces.Length];
            for (int i = 0; i < pieces.Length; i++)
                for (int j = 0; j < pieces.Length; j++)
                    if (i != j) cost[i, j] = Above(pieces[i], pieces[j], x, spans);
            int[] order = Ordered(cost);
            for (int i = 0; i < order.Length; i++)
            {
                var piece = pieces[order[i]];
                for (int j = 0; j < i; j++)
                {
                    var over = pieces[order[j]];
                    bool tied = cost[order[i], order[j]] >= OnEachOther || cost[order[j], order[i]] >= OnEachOther;
                    // Two ways to one trunk that must cross lie on each other rather: four arms never meet.
                    if (tied || (Meet(piece, over, spans) && (piece.Net.Id != over.Net.Id || cost[order[j], order[i]] == 0))) levels[piece.Id] = Math.Max(levels[piece.Id], levels[over.Id] + over.Splits(x).Length + 1);
                    if (cost[order[j], order[i]] >= OnEachOther) apart.AddRange(Conflicts(over, piece, x));
                }
            }
            if (before is null) Lower(pieces, lattice, levels, spans);
        }
        foreach (var rail in lattice.Pieces.Where(p => p.IsRail && besideRails)) apart.AddRange(Aside(rail, lattice, x, spans));
        return (levels, apart);
    }

    /// <summary>Crossings as they are drawn, both views.</summary>
    public static int Crossings(Lattice lattice, int[] x, PieceSpans spans, int[] levels)
    {
        int total = 0;
        foreach (var channel in lattice.Pieces.GroupBy(p => p.Channel))
        {
            Piece[] spanning = [.. channel.Where(spans.HasHorizontal)];
            for (int i = 0; i < spanning.Length; i++)
                for (int j = i + 1; j < spanning.Length; j++)
                {
                    var (a, b) = levels[spanning[i].Id] <= levels[spanning[j].Id] ? (spanning[i], spanning[j]) : (spanning[j], spanning[i]);
                    total += Above(a, b, x, spans) % OnEachOther;
                }
            foreach (var straight in channel.Where(p => !spans.HasHorizontal(p) && !p.Tops.IsEmpty && !p.Bottoms.IsEmpty))
            {
                int column = straight.Tops[0].X(x);
                foreach (var other in spanning)
                    foreach (var view in Extents.Views)
                        if (spans.Low(other, view) < column && column < spans.High(other, view) && (straight.Net.Strange(other.Net) & straight.Seen & other.Seen & view) != 0) total++;
            }
        }
        return total;
    }

    // Insertion into an order that costs least, a few rounds.
    private static int[] Ordered(int[,] cost)
    {
        var order = Enumerable.Range(0, cost.GetLength(0)).ToList();
        for (int round = 0; round < 6; round++)
        {
            bool changed = false;
            for (int k = 0; k < cost.GetLength(0); k++)
            {
                int home = order.IndexOf(k);
                order.RemoveAt(home);
                int now = order.Sum(o => cost[k, o]), best = now, place = 0, atHome = home == 0 ? now : -1;
                for (int i = 0; i < order.Count; i++)
                {
                    now += cost[order[i], k] - cost[k, order[i]];
                    if (i + 1 == home) atHome = now;
                    if (now < best) (best, place) = (now, i + 1);
                }
                if (atHome == best) place = home;
                order.Insert(place, k);
                changed |= place != home;
            }
            if (!changed) break;
        }
        return [.. order];
    }

    // Where something lay, it is seen to end at its pin when it lies below what else leads there, as low as nothing is in its way; two that end close to each other at one height look like one.
    private static void Lower(Piece[] pieces, Lattice lattice, int[] levels, PieceSpans spans)
    {
        foreach (var old in pieces.Where(p => p.Net is { RunsApart: true, Circuits: SeenIn.Before } && p.Bottoms.Any(b => lattice.Seats[b.Seat].IsStand)).OrderByDescending(p => levels[p.Id]).ThenBy(p => p.Id))
        {
            var others = pieces.Where(p => p.Id != old.Id).ToArray();
            int lowest = others.Where(p => levels[p.Id] > levels[old.Id] && Meet(p, old, spans)).Select(p => levels[p.Id] - 1).Append(pieces.Max(p => levels[p.Id])).Min();
            for (int level = lowest; level > levels[old.Id]; level--)
                if (others.All(p => levels[p.Id] != level || spans.Low(p, SeenIn.Before) > spans.High(old, SeenIn.Before) + EndsApart || spans.High(p, SeenIn.Before) < spans.Low(old, SeenIn.Before) - EndsApart)) levels[old.Id] = level;
        }
    }

    private static bool Meet(Piece a, Piece b, PieceSpans spans)
    {
        var strange = a.Strange(b);
        return strange != 0 && (((strange & SeenIn.Before) != 0 && spans.Touch(a, b, SeenIn.Before)) || ((strange & SeenIn.After) != 0 && spans.Touch(a, b, SeenIn.After)));
    }

    // A conductor that shares a pin with what feeds a rail leaves above the rail and goes down beside its end, where it stands outermost in its row.
    private static IEnumerable<(End Left, End Right)> Aside(Piece rail, Lattice lattice, int[] x, PieceSpans spans)
    {
        foreach (var piece in lattice.Pieces.Where(p => p.Channel == rail.Channel && PassesBeside(p, rail, x)))
            foreach (var end in piece.Bottoms)
            {
                int at = end.X(x), low = spans.Low(rail, SeenIn.Both), high = spans.High(rail, SeenIn.Both);
                if (at <= low - BesideRail || at >= high + BesideRail) continue;
                if (rail.Bottoms.All(b => b.X(x) > at))
                    foreach (var other in rail.Ends.Where(e => e.Seat != end.Seat && e.X(x) < at + BesideRail)) yield return (end, other with { Offset = other.Offset - BesideRail + 1 });
                else if (rail.Bottoms.All(b => b.X(x) < at))
                    foreach (var other in rail.Ends.Where(e => e.Seat != end.Seat && e.X(x) > at - BesideRail)) yield return (other with { Offset = other.Offset + BesideRail - 1 }, end);
            }
    }

    private static bool PassesBeside(Piece piece, Piece rail, int[] x) =>
        piece.Net.RunsApart && piece.Net.Id != rail.Net.Id && piece.Tops.Any(t => rail.Tops.Any(r => r.Seat == t.Seat && r.X(x) == t.X(x)));

    // What it costs to draw one piece above another.
    private static int Above(Piece a, Piece b, int[] x, PieceSpans spans)
    {
        // What leaves a rail's feed beside it leaves above it.
        int cost = a.IsRail && PassesBeside(b, a, x) ? 2 : 0;
        var strange = a.Strange(b);
        foreach (var view in Extents.Views)
        {
            if ((strange & view) == 0 || !spans.Touch(a, b, view)) continue;
            int low = spans.Low(a, view), high = spans.High(a, view), lowB = spans.Low(b, view), highB = spans.High(b, view);
            foreach (var end in b.Tops)
            {
                if ((end.Seen & view) == 0) continue;
                int at = end.X(x);
                if (low < at && at < high) cost++;
                foreach (var other in a.Bottoms)
                    if ((other.Seen & view) != 0 && other.X(x) == at) cost += OnEachOther;
            }
            foreach (var end in a.Bottoms)
                if ((end.Seen & view) != 0 && lowB < end.X(x) && end.X(x) < highB) cost++;
        }
        return cost;
    }

    private static IEnumerable<(End Left, End Right)> Conflicts(Piece over, Piece under, int[] x) =>
        from top in under.Tops
        from bottom in over.Bottoms
        where top.X(x) == bottom.X(x) && (top.Seen & bottom.Seen & over.Net.Strange(under.Net)) != 0
        let leftwards = over.Low(x, SeenIn.Both) + over.High(x, SeenIn.Both) >= 2 * top.X(x)
        select leftwards ? (top, bottom) : (bottom, top);
}
