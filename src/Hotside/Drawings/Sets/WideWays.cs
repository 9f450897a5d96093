using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;

namespace Hotside.Drawings.Sets;

/// <summary>Sets the ways of a connector apart where flags hang side by side at it: then their lines run straight.</summary>
internal static class WideWays
{
    // From a flag to the next; and beside a label between two of their lines, so that it is nearer to its own, as far as that takes little.
    private const int Gap = 2, MostForLabel = 3;
    private const double BesideLabel = 1.6;

    /// <summary>The plan of a sheet with its connectors as wide as their flags want them.</summary>
    /// <param name="plan">The plan of the sheet.</param>
    /// <param name="flags">Its flags.</param>
    /// <param name="narrow">The sheet as it is laid out without: where all ways apart are too wide, those apart that have flags side by side there.</param>
    public static DrawingPlan Of(DrawingPlan plan, IEnumerable<SheetFlag> flags, Layout? narrow = null)
    {
        var widths = plan.Input.Boxes.ToDictionary(b => b.Id, b => b.Width, StringComparer.Ordinal);
        var stacked = flags.Where(f => f.IsStacked).Select(f => f.Box).ToHashSet(StringComparer.Ordinal);
        var flagged = plan.Input.Wires.SelectMany(w => new[] { (At: w.From, Flag: w.To, Width: w.LabelWidth), (At: w.To, Flag: w.From, Width: w.LabelWidth) })
            .Where(e => stacked.Contains(e.Flag.Box)).GroupBy(e => e.At.Box, StringComparer.Ordinal).Where(g => g.Count() > 1).ToDictionary(g => g.Key, StringComparer.Ordinal);
        foreach (var box in plan.Input.Boxes.Where(b => b.Ways.Length > 1 && flagged.ContainsKey(b.Id) && SpreadWays.IsWhole(b, plan)))
        {
            // The widest of the flags that its lines lead to.
            int flag = flagged[box.Id].Max(e => widths[e.Flag.Box]) + Gap, label = (int)Math.Ceiling(flagged[box.Id].Max(e => e.Width) + BesideLabel), pitch = Math.Clamp(label, flag, flag + MostForLabel);
            var pins = flagged[box.Id].Select(e => box.Pins.First(p => p.Name == e.At.Pin)).ToArray();
            var ways = narrow?.Boxes.FirstOrDefault(b => b.Id == box.Id) is { } placed ? Apart(box, pins, placed.Facing, pitch) : Apart(box, pitch);
            if (!ways.SequenceEqual(box.Ways)) plan = SpreadWays.Of(plan, box, ways);
        }
        return plan;
    }

    private static ImmutableArray<int> Apart(LayoutBox box, int pitch) => SpreadWays.PitchOf(box) >= pitch ? box.Ways : [.. box.Ways.Select((x, i) => box.Ways[0] + (i * pitch))];

    // The order of the ways is found among their columns, whatever these are: it will be the same again.
    private static ImmutableArray<int> Apart(LayoutBox box, LayoutPin[] pins, Facing facing, int pitch)
    {
        int[] columns = [.. box.Ways.Order()], apart = [.. columns];
        var with = pins.Select(p => (p.Side, Column: facing.ColumnOf(p.X, box))).ToHashSet();
        for (int i = 1; i < columns.Length; i++)
        {
            bool isBetweenFlags = with.Any(p => p.Column == columns[i] && with.Contains((p.Side, columns[i - 1])));
            apart[i] = apart[i - 1] + Math.Max(columns[i] - columns[i - 1], isBetweenFlags ? pitch : 0);
        }
        return [.. box.Ways.Select(x => apart[Array.IndexOf(columns, x)])];
    }
}
