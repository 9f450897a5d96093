using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Sets the blocks side by side, each as far left as the contours of rows and channels allow in the views that show both. A small one that would take a column of its own goes
/// into a hole between the others, if that makes the drawing narrower: so a draughtsman places what hangs together with nothing else.
/// </summary>
internal sealed class Packing
{
    private const int BetweenRows = 2, BetweenChannels = 3;

    // What is larger is no piece that one puts somewhere.
    private const int MostStands = 3;

    // About as wide as an A2 sheet. What is wider is drawn on several, and there a column less in the whole saves nothing (own measurement: with holes in drawings of
    // 200 conductors fewer parts stay where they were when one is taken out).
    private const int Widest = 225;

    private readonly ImmutableArray<Outline[]> outlines;
    private readonly int[] reserve;
    private readonly ImmutableArray<(Block Block, Lattice Lattice, ColumnPlan Columns)> blocks;
    private readonly ILookup<int, int> near;
    private readonly int betweenRows;
    private readonly bool stays;

    private Packing(ImmutableArray<(Block Block, Lattice Lattice, ColumnPlan Columns)> blocks, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, Func<int, int> labelOf, ILookup<int, int> near, LayoutOptions options, bool stays)
    {
        (this.blocks, this.near) = (blocks, near);
        outlines = [.. blocks.Select(b => Of(b.Lattice, b.Columns, netlist, sides, textOf).ToArray())];
        reserve = [.. blocks.Select(b => b.Block.Nets.SelectMany(n => netlist.Nets[n].Lines).Select(labelOf).DefaultIfEmpty(0).Max())];
        betweenRows = Math.Max(BetweenRows, options.BoxToBox);
        this.stays = stays;
    }

    /// <summary>How far each block is shifted to the right.</summary>
    /// <param name="blocks">The blocks with their columns.</param>
    /// <param name="netlist">The nets.</param>
    /// <param name="sides">The columns of pins.</param>
    /// <param name="textOf">Room for the text blocks.</param>
    /// <param name="labelOf">How much room beside a conductor its label takes.</param>
    /// <param name="near">By stand, those near which it belongs.</param>
    /// <param name="options">The spacing.</param>
    /// <param name="stays">Whether all stands where it stood.</param>
    /// <param name="holds">Whether a drawing with these shifts, some blocks being in holes, is no worse than that with the others.</param>
    public static ImmutableArray<int> Of(
        ImmutableArray<(Block Block, Lattice Lattice, ColumnPlan Columns)> blocks, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, Func<int, int> labelOf, ILookup<int, int> near, LayoutOptions options, bool stays, Func<int[], int[], bool> holds)
    {
        var packing = new Packing(blocks, netlist, sides, textOf, labelOf, near, options, stays);
        int[] best = packing.Set([])!;
        HashSet<int> inHoles = [];
        for (int block = 0; block < blocks.Length && blocks.Length > 1 && packing.Widths(best).Max() <= Widest; block++)
        {
            if (blocks[block].Block.Stands.Length is 0 or > MostStands) continue;
            if (packing.Set([.. inHoles, block]) is not { } nested || !packing.IsNarrower(nested, best) || !holds(nested, best)) continue;
            inHoles.Add(block);
            best = nested;
        }
        return [.. best];
    }

    // All side by side, then the others into holes; none where one of them finds no hole.
    private int[]? Set(HashSet<int> inHoles)
    {
        int[] shifts = new int[outlines.Length];
        var taken = new Dictionary<Strip, List<(int Low, int High)>>();
        for (int i = 0; i < outlines.Length; i++)
            if (!inHoles.Contains(i)) Take(i, Beside(i, taken));
        int right = taken.Values.SelectMany(t => t).Select(t => t.High).DefaultIfEmpty(0).Max();
        for (int i = 0; i < outlines.Length; i++)
        {
            if (!inHoles.Contains(i)) continue;
            if (Hole(i, taken, right, Wish(i, shifts)) is not { } shift) return null;
            Take(i, shift);
        }
        return shifts;

        void Take(int block, int shift)
        {
            shifts[block] = shift;
            foreach (var (strip, low, high) in outlines[block])
            {
                if (!taken.TryGetValue(strip, out var list)) taken[strip] = list = [];
                list.Add((low + shift, high + shift));
            }
        }
    }

    private int Beside(int block, Dictionary<Strip, List<(int Low, int High)>> taken)
    {
        int least = outlines[block].Length == 0 ? 0 : outlines[block].Min(c => c.Low), shift = stays ? Math.Max(0, -least) : -least;
        foreach (var (strip, low, _) in outlines[block])
            if (taken.TryGetValue(strip, out var list)) shift = Math.Max(shift, list.Max(t => t.High) + Gap(strip) - low);
        return shift;
    }

    // The shift that would set a block in the middle of what it belongs to.
    private int? Wish(int block, int[] shifts)
    {
        int[] own = [.. blocks[block].Block.Stands.Where(near.Contains)];
        int[] others = [.. own.SelectMany(s => near[s]).SelectMany(s => blocks.Select((b, i) => (Stand: s, b.Lattice, b.Columns, Shift: shifts[i]))).SelectMany(b => At(b.Stand, b.Lattice, b.Columns).Select(x => x + b.Shift))];
        return others.Length == 0 ? null : (int)Math.Round(others.Average() - own.SelectMany(s => At(s, blocks[block].Lattice, blocks[block].Columns)).Average());

        static IEnumerable<int> At(int stand, Lattice lattice, ColumnPlan columns) => lattice.Seats.Where(s => s.Stand == stand).Select(s => columns.X[s.Id]);
    }

    // The first hole from the left, and the middle of it; or the place that is nearest to a wish.
    private int? Hole(int block, Dictionary<Strip, List<(int Low, int High)>> taken, int right, int? wish)
    {
        var outline = outlines[block].Select(o => o.Strip.InChannel ? o with { Low = o.Low - reserve[block] } : o).ToArray();
        int first = -outline.Min(o => o.Low), last = right - outline.Max(o => o.High);
        int[] starts = [.. outline.SelectMany(o => taken.GetValueOrDefault(o.Strip, []).Select(t => t.High + Gap(o.Strip) - o.Low)).Where(s => s > first).Append(first).Distinct().Order()];
        var holes = starts.Where(s => s <= last && Fits(s)).Select(s => (Start: s, End: End(s)));
        return wish is { } wanted ? holes.Select(h => (int?)Math.Clamp(wanted, h.Start, h.End)).MinBy(s => Math.Abs(s!.Value - wanted)) : holes.Select(h => (int?)((h.Start + h.End) / 2)).FirstOrDefault();

        int End(int start)
        {
            int end = last;
            foreach (var (strip, _, high) in outline)
                foreach (var other in taken.GetValueOrDefault(strip, []).Where(t => t.Low >= high + start)) end = Math.Min(end, other.Low - Gap(strip) - high);
            return end;
        }

        bool Fits(int shift) => outline.All(o => taken.GetValueOrDefault(o.Strip, []).TrueForAll(t => o.Low + shift >= t.High + Gap(o.Strip) || o.High + shift + Gap(o.Strip) <= t.Low));
    }

    // In both views together, and the wider one gets no wider.
    private bool IsNarrower(int[] shifts, int[] than)
    {
        int[] now = Widths(shifts), before = Widths(than);
        return now.Max() <= before.Max() && now.Sum() < before.Sum();
    }

    private int[] Widths(int[] shifts) =>
        [.. Extents.Views.Select(v => outlines.Select((o, i) => o.Where(c => c.Strip.View == v).Select(c => c.High + shifts[i]).DefaultIfEmpty(0).Max()).Max())];

    private int Gap(Strip strip) => strip.InChannel ? BetweenChannels : betweenRows;

    private static IEnumerable<Outline> Of(Lattice lattice, ColumnPlan columns, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf)
    {
        int[] x = [.. columns.X];
        foreach (var view in Extents.Views)
        {
            foreach (var seat in lattice.Seats.Where(s => (s.Seen & view) != 0))
            {
                var (left, reach) = Columns.Reach(seat, netlist, sides, textOf, columns.TextLeft.Contains(seat.Stand), view);
                yield return new(new(false, seat.Row, view), x[seat.Id] - left, x[seat.Id] + reach);
            }
            foreach (var piece in lattice.Pieces.Where(p => p.Ends.Any(e => (e.Seen & view) != 0)))
                yield return new(new(true, piece.Channel, view), piece.Low(x, view), piece.High(x, view));
        }
    }

    /// <summary>A row or channel in a view.</summary>
    private readonly record struct Strip(bool InChannel, int Index, SeenIn View);

    /// <summary>From where to where a block takes a strip.</summary>
    private readonly record struct Outline(Strip Strip, int Low, int High);
}
