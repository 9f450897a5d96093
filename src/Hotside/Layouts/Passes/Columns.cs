using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Where the seats of a block stand, the tracks of its pieces, and which stands have their text on the left.</summary>
internal sealed record ColumnPlan(ImmutableArray<int> X, ImmutableArray<int> Levels, ImmutableHashSet<int> TextLeft)
{
    /// <summary>How many bends and crossings its lines have, before and after added.</summary>
    public int Turns { get; init; }
}

/// <summary>
/// Sets the columns of a block: neighbours of a row keep their distance in every view that shows both, ends of a conductor pull at each other.
/// Least pull is not least bends, so short jogs are made dearer, long ones cheaper, and then single jogs are forced straight while that helps.
/// </summary>
internal sealed class Columns
{
    private const int Straight = 400, AsItStood = 300, Tries = 60, WorkPerTry = 4500, SettlesAtLength = 30, WorkAtLength = 120_000, LongestForced = 40, MostTexts = 6, MostTurns = 3, Slip = 2;

    // What a module of width costs beyond its share in the whole.
    private const double Wider = 1;

    // Two signs of the chassis side by side do not touch.
    private const int ChassisSigns = 3;

    private readonly Netlist netlist;
    private readonly Lattice lattice;
    private readonly SeatOrder order;
    private readonly SidePins sides;
    private readonly LayoutOptions options;
    private readonly ImmutableArray<TextRoom> textOf;
    private readonly int?[] stood;
    private readonly int[]? tracks;
    private readonly List<Pull> pulls = [];
    private readonly List<(End Left, End Right)> apart = [];
    private readonly HashSet<(int, int)> wired;
    private readonly HashSet<int> distinct = [];
    private readonly HashSet<(int Left, int Right)> close = [];
    private HashSet<int> textLeft = [];
    private int[]? last;
    private bool besideRails = true;
    private int settlesLeft;

    private Columns(Netlist netlist, Lattice lattice, SeatOrder order, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options, Recollection? known)
    {
        stood = [.. lattice.Seats.Select(s => known?.ColumnOf(s))];
        tracks = known is null ? null : [.. lattice.Pieces.Select(p => known.TrackOf(p, lattice))];
        if (known is not null) textLeft = [.. netlist.Stands.Where(s => known.Of(s) is { TextOnLeft: true }).Select(s => s.Id)];
        (this.netlist, this.lattice, this.order, this.sides, this.textOf, this.options) = (netlist, lattice, order, sides, textOf, options);
        wired = Wired();
        foreach (var piece in lattice.Pieces) pulls.AddRange(Pull.Of(piece, lattice, AreWired));
    }

    // Stands that a conductor joins directly: where a net hangs on one terminal, its own conductor should run straight.
    private HashSet<(int, int)> Wired() =>
        [.. netlist.Lines.Where(l => l.From.OnTerminal && l.To.OnTerminal).Select(l => (netlist.Terminals[l.From.Terminal].Stand, netlist.Terminals[l.To.Terminal].Stand)).SelectMany(p => new[] { p, (p.Item2, p.Item1) })];

    private bool AreWired(End a, End b) => wired.Contains((OwnerOf(a), OwnerOf(b)));

    private int OwnerOf(End end) => lattice.Seats[end.Seat] is { IsStand: true } seat ? seat.Stand : netlist.StandOf(netlist.Taps[lattice.Seats[end.Seat].Tap]);

    public static ColumnPlan Of(Netlist netlist, Lattice lattice, SeatOrder order, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options, Recollection? known) =>
        lattice.Seats.IsEmpty ? new([], [], []) : new Columns(netlist, lattice, order, sides, textOf, options, known).Solve();

    /// <summary>How far a seat reaches left and right of its own column, text included, in the views asked for.</summary>
    public static (int Left, int Right) Reach(Seat seat, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, bool textLeft, SeenIn seen)
    {
        if (!seat.IsStand) return (0, 0);
        var stand = netlist.Stands[seat.Stand];
        int left = sides.ReachLeft[seat.Stand], right = sides.ReachRight[seat.Stand], text = textOf[seat.Stand].In(seen);
        return (left + (textLeft ? text : 0), stand.Width + (right > 0 ? right + 1 : 0) + (textLeft ? 0 : text));
    }

    private ColumnPlan Solve()
    {
        var best = Settle() ?? WithoutAsides() ?? throw new InvalidOperationException("The columns of a block contradict each other.");
        if (tracks is not null) return Plan(best);
        for (int round = 0; round < 3; round++)
        {
            bool changed = false;
            foreach (var pull in pulls.Where(p => p.LeadsOn))
            {
                int distance = pull.Distance(best.X), old = pull.Factor;
                pull.Factor = distance == 0 ? old : distance <= 6 || pull.BetweenPassages ? Math.Min(64, old * 3) : Math.Max(1, old / 2);
                changed |= pull.Factor != old;
            }
            if (!changed) break;
            if (Settle() is { } next && next.Cost < best.Cost) best = next;
        }
        // First what costs little; then every text that may be in the way of what is still crooked.
        best = ForcedStraight(best, anyText: false);
        best = ForcedStraight(best, anyText: true);
        return Plan(best);
    }

    private static ColumnPlan Plan(State state) => new([.. state.X], [.. state.Levels], [.. state.TextLeft]) { Turns = state.Turns };

    // What should run beside a rail runs through it where it finds no place there.
    private State? WithoutAsides()
    {
        besideRails = false;
        return Settle();
    }

    // One jog at a time is made as dear as can be; kept when the whole gets cheaper. A text block in the way changes sides.
    private State ForcedStraight(State best, bool anyText)
    {
        int left = Math.Min(Tries, WorkPerTry / Math.Max(20, lattice.Seats.Length));
        // Twice the seats take four times as long to settle.
        settlesLeft = anyText ? Math.Min(SettlesAtLength, WorkAtLength / (lattice.Seats.Length * lattice.Seats.Length)) : int.MaxValue;
        bool better = true;
        for (int pass = 0; pass < 3 && better && left > 0; pass++)
        {
            better = false;
            foreach (var pull in pulls.Where(p => p.A.Seat != p.B.Seat && p.Distance(best.X) is > 0 and <= LongestForced).OrderBy(p => p.Distance(best.X)).ToArray())
            {
                if (left-- <= 0 || settlesLeft <= 0) break;
                if (pull.Distance(best.X) == 0) continue;
                var line = anyText ? InLineWith(pull, best.X) : [];
                // What hangs in line with the ends moves with them.
                Pull[] forced = anyText ? [pull, .. pulls.Where(p => p.LeadsOn && p.Distance(best.X) == 0 && line.Contains(p.A.Seat))] : [pull];
                int[] old = [.. forced.Select(p => p.Factor)];
                foreach (var straight in forced) straight.Factor = Straight;
                last = best.X;
                if (Straightened(pull, best, anyText) is { } straighter)
                {
                    (best, better) = (straighter, true);
                    continue;
                }
                textLeft = [.. best.TextLeft];
                for (int i = 0; i < forced.Length; i++) forced[i].Factor = old[i];
            }
        }
        return best;
    }

    private State? Straightened(Pull pull, State best, bool anyText)
    {
        if (Settle() is { } straight && IsBetter(straight, best, anyText)) return straight;
        if (WithTextAside(pull, best, anyText) is { } turned) return turned;
        textLeft = [.. best.TextLeft];
        return pull.Distance(best.X) <= Slip ? WithLineClose(pull, best) : null;
    }

    // What is tried at length saves bends and makes the drawing hardly wider: else more moves than it is worth.
    private static bool IsBetter(State now, State than, bool anyText) =>
        now.Cost + (anyText ? Wider * (now.Width - than.Width) : 0) < than.Cost - 1e-9 && (!anyText || (now.Turns < than.Turns && now.Width - than.Width <= than.Turns - now.Turns));

    // A line that need not step aside by a module or two runs closer to the body beside it.
    private State? WithLineClose(Pull pull, State best)
    {
        var added = new List<(int, int)>();
        foreach (var end in new[] { pull.A, pull.B })
        {
            var row = order.Rows[lattice.Seats[end.Seat].Row];
            int at = row.IndexOf(end.Seat);
            foreach (int next in new[] { at - 1, at + 1 })
                if (next >= 0 && next < row.Length && lattice.Seats[row[next]].IsStand != lattice.Seats[end.Seat].IsStand
                    && (next < at ? (row[next], row[at]) : (row[at], row[next])) is var pair && close.Add(pair)) added.Add(pair);
        }
        if (added.Count > 0 && Settle() is { } closer && closer.Cost < best.Cost - 1e-9) return closer;
        foreach (var pair in added) close.Remove(pair);
        return null;
    }

    // A text that keeps two ends from one column changes sides; so does one that is still in the way then, or in the way of what has been straight until then.
    private State? WithTextAside(Pull pull, State best, bool anyText)
    {
        foreach (int first in TextsInTheWay(pull, best.X, anyText).Take(anyText ? MostTexts : 1).ToArray())
        {
            textLeft = [.. best.TextLeft];
            HashSet<int> turned = [];
            for (int? stand = first; stand is { } next && turned.Count < MostTurns && settlesLeft > 0;)
            {
                turned.Add(next);
                textLeft = [.. textLeft];
                if (!textLeft.Remove(next)) textLeft.Add(next);
                if (Settle() is not { } now) break;
                if (IsBetter(now, best, anyText)) return now;
                var blocked = anyText && pull.Distance(now.X) > 0 ? pull : pulls.FirstOrDefault(p => p.LeadsOn && p.Distance(best.X) == 0 && p.Distance(now.X) > 0);
                stand = blocked is null ? null : TextsInTheWay(blocked, now.X, anyText).Select(s => (int?)s).FirstOrDefault(s => !turned.Contains(s!.Value));
            }
        }
        return null;
    }

    // The stands whose text keeps two ends from one column: at either end its own, or that of its neighbour on the side to which it should go; then those beside what moves with the ends.
    private IEnumerable<int> TextsInTheWay(Pull pull, int[] x, bool anyText)
    {
        (End End, End Other)[] ways = [(pull.A, pull.B), (pull.B, pull.A)];
        var direct = ways.SelectMany(w => Beside(w.End.Seat, w.Other.X(x) > w.End.X(x)));
        return !anyText ? direct : direct.Concat(ways.SelectMany(w => InLineWith(w.End.Seat, x).SelectMany(s => Beside(s, w.Other.X(x) > w.End.X(x))))).Distinct();

        IEnumerable<int> Beside(int seat, bool rightwards)
        {
            var row = order.Rows[lattice.Seats[seat].Row];
            int at = row.IndexOf(seat);
            int own = lattice.Seats[seat].Stand, next = rightwards ? at + 1 < row.Length ? lattice.Seats[row[at + 1]].Stand : -1 : at > 0 ? lattice.Seats[row[at - 1]].Stand : -1;
            if (own >= 0 && textOf[own].In(SeenIn.Both) > 0 && textLeft.Contains(own) != rightwards) yield return own;
            if (next >= 0 && textOf[next].In(SeenIn.Both) > 0 && textLeft.Contains(next) == rightwards) yield return next;
        }
    }

    private HashSet<int> InLineWith(Pull pull, int[] x) => [.. InLineWith(pull.A.Seat, x), .. InLineWith(pull.B.Seat, x)];

    // What hangs on a seat by straight lines.
    private List<int> InLineWith(int seat, int[] x)
    {
        List<int> line = [seat];
        for (int i = 0; i < line.Count; i++)
            foreach (var pull in pulls.Where(p => p.LeadsOn && p.Distance(x) == 0 && (p.A.Seat == line[i] || p.B.Seat == line[i])))
            {
                int next = pull.A.Seat == line[i] ? pull.B.Seat : pull.A.Seat;
                if (!line.Contains(next)) line.Add(next);
            }
        return line;
    }

    // Columns and channels together: columns that would lie on each other are set apart and solved again.
    private State? Settle()
    {
        apart.Clear();
        settlesLeft--;
        for (int round = 0; round < 25; round++)
        {
            if (SolveOnce() is not { } x) return null;
            var spans = new PieceSpans(lattice, x);
            var (levels, conflicts) = Channels.Of(lattice, x, spans, tracks, besideRails);
            if (conflicts.Count == 0) return At(x, spans, levels);
            apart.AddRange(conflicts);
        }
        return null;
    }

    private int[]? SolveOnce()
    {
        var simplex = new NetworkSimplex();
        for (int i = 0; i < lattice.Seats.Length; i++) simplex.AddVariable();
        foreach (var row in order.Rows) Separate(simplex, row);
        foreach (var (left, right) in apart) simplex.AtLeast(left.Seat, right.Seat, 1 + left.Offset - right.Offset);
        foreach (var pull in pulls.Where(p => p.A.Seat != p.B.Seat)) simplex.Near(pull.A.Seat, pull.A.Offset, pull.B.Seat, pull.B.Offset, pull.Weight);
        int origin = Array.Exists(stood, s => s is not null) ? simplex.AddVariable() : -1;
        for (int i = 0; i < stood.Length; i++)
            if (stood[i] is { } then) simplex.Near(i, 0, origin, then, AsItStood);
        return last = simplex.Solve(last)?[..lattice.Seats.Length];
    }

    private void Separate(NetworkSimplex simplex, ImmutableArray<int> row)
    {
        for (int i = 0; i < row.Length; i++)
        {
            var seat = lattice.Seats[row[i]];
            SeenIn wanted = seat.Seen;
            for (int j = i - 1; j >= 0 && wanted != 0; j--)
            {
                var other = lattice.Seats[row[j]];
                SeenIn shared = other.Seen & wanted;
                if (shared == 0) continue;
                foreach (var view in Extents.Views.Where(v => (v & shared) != 0))
                {
                    int needed = Reach(other, view).Right + Gap(other, seat, view) + Reach(seat, view).Left;
                    // What stood closer by the module that a line may stands so still.
                    if (stood[other.Id] is { } left && stood[seat.Id] is { } right && right - left == needed - 1 && other.IsStand != seat.IsStand) needed--;
                    simplex.AtLeast(other.Id, seat.Id, needed);
                }
                wanted &= ~shared;
            }
        }
    }

    private (int Left, int Right) Reach(Seat seat, SeenIn view) => Reach(seat, netlist, sides, textOf, textLeft.Contains(seat.Stand), view);

    // A text's width is rounded up to modules, so that one more keeps a passing line clear of it; a body asks for two.
    private int Gap(Seat left, Seat right, SeenIn view) => close.Contains((left.Id, right.Id)) ? 1 :
        left.IsStand && right.IsStand ? options.BoxToBox : !left.IsStand && !right.IsStand ? Math.Max(options.Track, IsOverChassis(left) && IsOverChassis(right) ? ChassisSigns : 0)
        : !left.IsStand ? options.WireToBox : textOf[left.Stand].In(view) > 0 && !textLeft.Contains(left.Stand) ? 1 : 2;

    private bool IsOverChassis(Seat passage) =>
        passage.Row >= lattice.Rows && netlist.Nets[netlist.Taps[passage.Tap].Net].Taps.Any(t => netlist.Taps[t].Kind == EndKind.Chassis);

    private State At(int[] x, PieceSpans spans, int[] levels)
    {
        int low = lattice.Seats.Min(s => x[s.Id] - Reach(s, s.Seen).Left), high = lattice.Seats.Max(s => x[s.Id] + Reach(s, s.Seen).Right);
        int length = 0, bends = 0, nearly = 0, crooked = 0;
        foreach (var piece in lattice.Pieces)
        {
            if (piece.Tops.IsEmpty && piece.Bottoms.IsEmpty) continue;
            length += spans.Length(piece);
            int splits = spans.HasHorizontal(piece) ? piece.Splits(x).Length : 0;
            foreach (var view in Extents.Views)
                if ((piece.Seen & view) != 0 && ColumnsOf(piece, x, spans, view) is > 1 and var columns) bends += columns + splits;
            foreach (var top in piece.Tops)
                foreach (var bottom in piece.Bottoms)
                {
                    int apart = Math.Abs(top.X(x) - bottom.X(x));
                    if (apart == 0 || (top.Seen & bottom.Seen) == 0) continue;
                    // Where several hang together, those that a conductor joins directly should stand one above the other.
                    if (piece.Through is null && AreWired(top, bottom)) crooked++;
                    // A line that is nearly straight looks like a slip.
                    if (apart < 4) nearly++;
                }
        }
        int crossings = Channels.Crossings(lattice, x, spans, levels);
        double cost = (5 * crossings) + (2 * bends) + nearly + (6 * crooked) + (0.05 * length) + (0.1 * (high - low)) + (0.5 * textLeft.Count);
        return new(x, levels, [.. textLeft], cost, bends + crossings, high - low);
    }

    // In how many columns a piece has ends.
    private int ColumnsOf(Piece piece, int[] x, PieceSpans spans, SeenIn view)
    {
        if (!spans.HasHorizontal(piece)) return 1;
        distinct.Clear();
        foreach (var end in piece.Tops)
            if ((end.Seen & view) != 0) distinct.Add(end.X(x));
        foreach (var end in piece.Bottoms)
            if ((end.Seen & view) != 0) distinct.Add(end.X(x));
        return distinct.Count;
    }

    private sealed record State(int[] X, int[] Levels, HashSet<int> TextLeft, double Cost, int Turns, int Width);

    /// <summary>Two ends that want one column.</summary>
    private sealed class Pull(End a, End b, int basic, int factor, bool leadsOn, bool betweenPassages)
    {
        public End A { get; } = a;

        public End B { get; } = b;

        public bool LeadsOn { get; } = leadsOn;

        public bool BetweenPassages { get; } = betweenPassages;

        public int Factor { get; set; } = factor;

        public int Weight => basic * Factor;

        public int Distance(int[] x) => Math.Abs(A.X(x) - B.X(x));

        public static IEnumerable<Pull> Of(Piece piece, Lattice lattice, Func<End, End, bool> wired)
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
}
