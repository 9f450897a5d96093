using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Sets the blocks side by side, each as far left as the contours of rows and channels allow in the views that show both.</summary>
internal static class Packing
{
    private const int BetweenRows = 2, BetweenChannels = 3;

    public static ImmutableArray<int> Of(ImmutableArray<(Lattice Lattice, ColumnPlan Columns)> blocks, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options, bool stays)
    {
        var right = new Dictionary<(bool InChannel, int Index, SeenIn View), int>();
        var shifts = ImmutableArray.CreateBuilder<int>();
        foreach (var (lattice, columns) in blocks)
        {
            var contour = Contour(lattice, columns, netlist, sides, textOf, options).ToArray();
            int least = contour.Length == 0 ? 0 : contour.Min(c => c.Low), shift = stays ? Math.Max(0, -least) : -least;
            foreach (var (key, low, _) in contour)
                if (right.TryGetValue(key, out int edge)) shift = Math.Max(shift, edge + (key.InChannel ? BetweenChannels : Math.Max(BetweenRows, options.BoxToBox)) - low);
            foreach (var (key, _, high) in contour) right[key] = Math.Max(right.GetValueOrDefault(key, int.MinValue), high + shift);
            shifts.Add(shift);
        }
        return shifts.ToImmutable();
    }

    private static IEnumerable<((bool InChannel, int Index, SeenIn View) Key, int Low, int High)> Contour(
        Lattice lattice, ColumnPlan columns, Netlist netlist, SidePins sides, ImmutableArray<TextRoom> textOf, LayoutOptions options)
    {
        int[] x = [.. columns.X];
        foreach (var view in Extents.Views)
        {
            foreach (var seat in lattice.Seats.Where(s => (s.Seen & view) != 0))
            {
                var (left, reach) = Columns.Reach(seat, netlist, sides, textOf, columns.TextLeft.Contains(seat.Stand), view);
                yield return ((false, seat.Row, view), x[seat.Id] - left, x[seat.Id] + reach);
            }
            foreach (var piece in lattice.Pieces.Where(p => p.Ends.Any(e => (e.Seen & view) != 0)))
                yield return ((true, piece.Channel, view), piece.Low(x, view), piece.High(x, view));
        }
    }
}
