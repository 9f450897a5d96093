using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>The columns of a block as they come to rest under what pulls at them, and what that costs.</summary>
internal sealed class ColumnSettling
{
    private const int AsItStood = 300;

    // Two signs of the chassis side by side do not touch.
    private const int ChassisSigns = 3;

    private readonly Netlist netlist;
    private readonly SidePins sides;
    private readonly LayoutOptions options;
    private readonly int?[] stood;
    private readonly int[]? tracks;
    private readonly List<(End Left, End Right)> apart = [];
    private readonly HashSet<(int, int)> wired;
    private readonly HashSet<int> distinct = [];

    public ColumnSettling(Netlist netlist, Lattice lattice, SeatOrder order, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options, Recollection? known)
    {
        stood = [.. lattice.Seats.Select(s => known?.ColumnOf(s))];
        tracks = known is null ? null : [.. lattice.Pieces.Select(p => known.TrackOf(p, lattice))];
        if (known is not null) TextLeft = [.. netlist.Stands.Where(s => known.Of(s) is { TextOnLeft: true }).Select(s => s.Id)];
        (this.netlist, Lattice, Order, this.sides, TextOf, this.options) = (netlist, lattice, order, sides, textOf, options);
        wired = Wired();
        Pulls = [.. lattice.Pieces.SelectMany(p => ColumnPull.Of(p, lattice, AreWired))];
    }

    /// <summary>The seats and the pieces between them.</summary>
    public Lattice Lattice { get; }

    /// <summary>How the seats of each row follow each other.</summary>
    public SeatOrder Order { get; }

    /// <summary>The room that the text of each stand takes.</summary>
    public ImmutableArray<TextRoom> TextOf { get; }

    /// <summary>What pulls at the seats; how strongly may be changed between one settling and the next.</summary>
    public ImmutableArray<ColumnPull> Pulls { get; }

    /// <summary>Neighbours that may stand as close as a line and a body ever do.</summary>
    public HashSet<(int Left, int Right)> Close { get; } = [];

    /// <summary>The stands whose text is on the left.</summary>
    public HashSet<int> TextLeft { get; set; } = [];

    /// <summary>Whether what should run beside a rail does.</summary>
    public bool BesideRails { get; set; } = true;

    /// <summary>Whether all stands where it stood before.</summary>
    public bool IsKnown => tracks is not null;

    /// <summary>The columns to begin the next settling with.</summary>
    public int[]? Last { get; set; }

    // Stands that a conductor joins directly: where a net hangs on one terminal, its own conductor should run straight.
    private HashSet<(int, int)> Wired() =>
        [.. netlist.Lines.Where(l => l.From.OnTerminal && l.To.OnTerminal).Select(l => (netlist.Terminals[l.From.Terminal].Stand, netlist.Terminals[l.To.Terminal].Stand)).SelectMany(p => new[] { p, (p.Item2, p.Item1) })];

    private bool AreWired(End a, End b) => wired.Contains((OwnerOf(a), OwnerOf(b)));

    private int OwnerOf(End end) => Lattice.Seats[end.Seat] is { IsStand: true } seat ? seat.Stand : netlist.StandOf(netlist.Taps[Lattice.Seats[end.Seat].Tap]);

    /// <summary>Columns and channels together: columns that would lie on each other are set apart and solved again. Nothing where they contradict each other.</summary>
    public ColumnState? Settle()
    {
        apart.Clear();
        for (int round = 0; round < 25; round++)
        {
            if (SolveOnce() is not { } x) return null;
            var spans = new PieceSpans(Lattice, x);
            var (levels, conflicts) = Channels.Of(Lattice, x, spans, tracks, BesideRails);
            if (conflicts.Count == 0) return At(x, spans, levels);
            apart.AddRange(conflicts);
        }
        return null;
    }

    private int[]? SolveOnce()
    {
        var simplex = new NetworkSimplex();
        for (int i = 0; i < Lattice.Seats.Length; i++) simplex.AddVariable();
        foreach (var row in Order.Rows) Separate(simplex, row);
        foreach (var (left, right) in apart) simplex.AtLeast(left.Seat, right.Seat, 1 + left.Offset - right.Offset);
        foreach (var pull in Pulls.Where(p => p.A.Seat != p.B.Seat)) simplex.Near(pull.A.Seat, pull.A.Offset, pull.B.Seat, pull.B.Offset, pull.Weight);
        int origin = Array.Exists(stood, s => s is not null) ? simplex.AddVariable() : -1;
        for (int i = 0; i < stood.Length; i++)
            if (stood[i] is { } then) simplex.Near(i, 0, origin, then, AsItStood);
        return Last = simplex.Solve(Last)?[..Lattice.Seats.Length];
    }

    private void Separate(NetworkSimplex simplex, ImmutableArray<int> row)
    {
        for (int i = 0; i < row.Length; i++)
        {
            var seat = Lattice.Seats[row[i]];
            SeenIn wanted = seat.Seen;
            for (int j = i - 1; j >= 0 && wanted != 0; j--)
            {
                var other = Lattice.Seats[row[j]];
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

    private (int Left, int Right) Reach(Seat seat, SeenIn view) => Columns.Reach(seat, netlist, sides, TextOf, TextLeft.Contains(seat.Stand), view);

    // A text's width is rounded up to modules, so that one more keeps a passing line clear of it; a body asks for two.
    private int Gap(Seat left, Seat right, SeenIn view) => Close.Contains((left.Id, right.Id)) ? 1 :
        left.IsStand && right.IsStand ? options.BoxToBox : !left.IsStand && !right.IsStand ? Math.Max(options.Track, IsOverChassis(left) && IsOverChassis(right) ? ChassisSigns : 0)
        : !left.IsStand ? options.WireToBox : TextOf[left.Stand].In(view) > 0 && !TextLeft.Contains(left.Stand) ? 1 : 2;

    private bool IsOverChassis(Seat passage) =>
        passage.Row >= Lattice.Rows && netlist.Nets[netlist.Taps[passage.Tap].Net].Taps.Any(t => netlist.Taps[t].Kind == EndKind.Chassis);

    private ColumnState At(int[] x, PieceSpans spans, int[] levels)
    {
        int low = Lattice.Seats.Min(s => x[s.Id] - Reach(s, s.Seen).Left), high = Lattice.Seats.Max(s => x[s.Id] + Reach(s, s.Seen).Right);
        int length = 0, bends = 0, nearly = 0, crooked = 0;
        foreach (var piece in Lattice.Pieces)
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
        int crossings = Channels.Crossings(Lattice, x, spans, levels);
        double cost = (5 * crossings) + (2 * bends) + nearly + (6 * crooked) + (0.05 * length) + (0.1 * (high - low)) + (0.5 * TextLeft.Count);
        return new(x, levels, [.. TextLeft], cost, bends + crossings, high - low);
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
}

/// <summary>How the columns of a block came to rest.</summary>
internal sealed record ColumnState(int[] X, int[] Levels, HashSet<int> TextLeft, double Cost, int Turns, int Width);
