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
internal static class Columns
{
    public static ColumnPlan Of(Netlist netlist, Lattice lattice, SeatOrder order, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options, Recollection? known) =>
        lattice.Seats.IsEmpty ? new([], [], []) : Solve(new(netlist, lattice, order, sides, textOf, options, known));

    /// <summary>How far a seat reaches left and right of its own column, text included, in the views asked for.</summary>
    public static (int Left, int Right) Reach(Seat seat, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, bool textLeft, SeenIn seen)
    {
        if (!seat.IsStand) return (0, 0);
        var stand = netlist.Stands[seat.Stand];
        int left = sides.ReachLeft[seat.Stand], right = sides.ReachRight[seat.Stand], text = textOf[seat.Stand].In(seen);
        return (left + (textLeft ? text : 0), stand.Width + (right > 0 ? right + 1 : 0) + (textLeft ? 0 : text));
    }

    private static ColumnPlan Solve(ColumnSettling columns)
    {
        var best = columns.Settle() ?? WithoutAsides(columns) ?? throw new InvalidOperationException("The columns of a block contradict each other.");
        if (columns.IsKnown) return Plan(best);
        for (int round = 0; round < 3; round++)
        {
            bool changed = false;
            foreach (var pull in columns.Pulls.Where(p => p.LeadsOn))
            {
                int distance = pull.Distance(best.X), old = pull.Factor;
                pull.Factor = distance == 0 ? old : distance <= 6 || pull.BetweenPassages ? Math.Min(64, old * 3) : Math.Max(1, old / 2);
                changed |= pull.Factor != old;
            }
            if (!changed) break;
            if (columns.Settle() is { } next && next.Cost < best.Cost) best = next;
        }
        // First what costs little; then every text that may be in the way of what is still crooked.
        best = new Straightening(columns, StraighteningPolicy.AtLittleCost).Of(best);
        best = new Straightening(columns, StraighteningPolicy.AtLength).Of(best);
        return Plan(best);
    }

    private static ColumnPlan Plan(ColumnState state) => new([.. state.X], [.. state.Levels], [.. state.TextLeft]) { Turns = state.Turns };

    // What should run beside a rail runs through it where it finds no place there.
    private static ColumnState? WithoutAsides(ColumnSettling columns)
    {
        columns.BesideRails = false;
        return columns.Settle();
    }
}
