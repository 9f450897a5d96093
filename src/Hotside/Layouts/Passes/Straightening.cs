using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>One jog at a time is made as dear as can be; kept when the whole gets cheaper. A text block in the way changes sides.</summary>
internal sealed class Straightening(ColumnSettling columns, StraighteningPolicy policy)
{
    private const int Straight = 400, Tries = 60, WorkPerTry = 4500, LongestForced = 40, MostTurns = 3, Slip = 2;

    private int settlesLeft;

    /// <summary>The columns with what could be straightened.</summary>
    public ColumnState Of(ColumnState best)
    {
        int seats = columns.Lattice.Seats.Length, left = Math.Min(Tries, WorkPerTry / Math.Max(20, seats));
        settlesLeft = policy.Settles(seats);
        bool better = true;
        for (int pass = 0; pass < 3 && better && left > 0; pass++)
        {
            better = false;
            foreach (var pull in columns.Pulls.Where(p => p.A.Seat != p.B.Seat && p.Distance(best.X) is > 0 and <= LongestForced).OrderBy(p => p.Distance(best.X)).ToArray())
            {
                if (left-- <= 0 || settlesLeft <= 0) break;
                if (pull.Distance(best.X) == 0) continue;
                ColumnPull[] forced = [pull, .. policy.MovesLine ? InLineWith(pull, best.X) : []];
                int[] old = [.. forced.Select(p => p.Factor)];
                foreach (var straight in forced) straight.Factor = Straight;
                columns.Last = best.X;
                if (Straightened(pull, best) is { } straighter)
                {
                    (best, better) = (straighter, true);
                    continue;
                }
                columns.TextLeft = [.. best.TextLeft];
                for (int i = 0; i < forced.Length; i++) forced[i].Factor = old[i];
            }
        }
        return best;
    }

    private ColumnState? Settle()
    {
        settlesLeft--;
        return columns.Settle();
    }

    private ColumnState? Straightened(ColumnPull pull, ColumnState best)
    {
        if (Settle() is { } straight && policy.IsBetter(straight, best)) return straight;
        if (WithTextAside(pull, best) is { } turned) return turned;
        columns.TextLeft = [.. best.TextLeft];
        return pull.Distance(best.X) <= Slip ? WithLineClose(pull, best) : null;
    }

    // A line that need not step aside by a module or two runs closer to the body beside it.
    private ColumnState? WithLineClose(ColumnPull pull, ColumnState best)
    {
        var (seats, close) = (columns.Lattice.Seats, columns.Close);
        var added = new List<(int, int)>();
        foreach (var end in new[] { pull.A, pull.B })
        {
            var row = columns.Order.Rows[seats[end.Seat].Row];
            int at = row.IndexOf(end.Seat);
            foreach (int next in new[] { at - 1, at + 1 })
                if (next >= 0 && next < row.Length && seats[row[next]].IsStand != seats[end.Seat].IsStand
                    && (next < at ? (row[next], row[at]) : (row[at], row[next])) is var pair && close.Add(pair)) added.Add(pair);
        }
        if (added.Count > 0 && Settle() is { } closer && closer.Cost < best.Cost - 1e-9) return closer;
        foreach (var pair in added) close.Remove(pair);
        return null;
    }

    // A text that keeps two ends from one column changes sides; so does one that is still in the way then, or in the way of what has been straight until then.
    private ColumnState? WithTextAside(ColumnPull pull, ColumnState best)
    {
        foreach (int first in TextsInTheWay(pull, best.X).Take(policy.MostTexts).ToArray())
        {
            columns.TextLeft = [.. best.TextLeft];
            HashSet<int> turned = [];
            for (int? stand = first; stand is { } next && turned.Count < MostTurns && settlesLeft > 0;)
            {
                turned.Add(next);
                columns.TextLeft = [.. columns.TextLeft];
                if (!columns.TextLeft.Remove(next)) columns.TextLeft.Add(next);
                if (Settle() is not { } now) break;
                if (policy.IsBetter(now, best)) return now;
                var blocked = policy.MovesLine && pull.Distance(now.X) > 0 ? pull : columns.Pulls.FirstOrDefault(p => p.LeadsOn && p.Distance(best.X) == 0 && p.Distance(now.X) > 0);
                stand = blocked is null ? null : TextsInTheWay(blocked, now.X).Select(s => (int?)s).FirstOrDefault(s => !turned.Contains(s!.Value));
            }
        }
        return null;
    }

    // The stands whose text keeps two ends from one column: at either end its own, or that of its neighbour on the side to which it should go; then those beside what moves with the ends.
    private IEnumerable<int> TextsInTheWay(ColumnPull pull, int[] x)
    {
        (End End, End Other)[] ways = [(pull.A, pull.B), (pull.B, pull.A)];
        var direct = ways.SelectMany(w => Beside(w.End.Seat, w.Other.X(x) > w.End.X(x)));
        return !policy.MovesLine ? direct : direct.Concat(ways.SelectMany(w => InLineWith(w.End.Seat, x).SelectMany(s => Beside(s, w.Other.X(x) > w.End.X(x))))).Distinct();
    }

    private IEnumerable<int> Beside(int seat, bool rightwards)
    {
        var seats = columns.Lattice.Seats;
        var row = columns.Order.Rows[seats[seat].Row];
        int at = row.IndexOf(seat);
        int own = seats[seat].Stand, next = rightwards ? at + 1 < row.Length ? seats[row[at + 1]].Stand : -1 : at > 0 ? seats[row[at - 1]].Stand : -1;
        if (own >= 0 && columns.TextOf[own].In(SeenIn.Both) > 0 && columns.TextLeft.Contains(own) != rightwards) yield return own;
        if (next >= 0 && columns.TextOf[next].In(SeenIn.Both) > 0 && columns.TextLeft.Contains(next) == rightwards) yield return next;
    }

    // The pulls that hold straight what hangs in line with the ends: it moves with them.
    private IEnumerable<ColumnPull> InLineWith(ColumnPull pull, int[] x)
    {
        HashSet<int> line = [.. InLineWith(pull.A.Seat, x), .. InLineWith(pull.B.Seat, x)];
        return columns.Pulls.Where(p => p.LeadsOn && p.Distance(x) == 0 && line.Contains(p.A.Seat));
    }

    // What hangs on a seat by straight lines.
    private List<int> InLineWith(int seat, int[] x)
    {
        List<int> line = [seat];
        for (int i = 0; i < line.Count; i++)
            foreach (var pull in columns.Pulls.Where(p => p.LeadsOn && p.Distance(x) == 0 && (p.A.Seat == line[i] || p.B.Seat == line[i])))
            {
                int next = pull.A.Seat == line[i] ? pull.B.Seat : pull.A.Seat;
                if (!line.Contains(next)) line.Add(next);
            }
        return line;
    }
}
