using Hotside.Drawings.Plans;

namespace Hotside.Drawings.Sets;

/// <summary>Sets the ways of a connector apart where flags hang side by side at it: then their lines run straight.</summary>
internal static class WideWays
{
    // From a flag to the next.
    private const int Gap = 2;

    /// <summary>The plan of a sheet with its connectors as wide as their flags want them.</summary>
    /// <param name="plan">The plan of the sheet.</param>
    /// <param name="flags">Its flags.</param>
    public static DrawingPlan Of(DrawingPlan plan, IEnumerable<SheetFlag> flags)
    {
        var widths = plan.Input.Boxes.ToDictionary(b => b.Id, b => b.Width, StringComparer.Ordinal);
        var stacked = flags.Where(f => f.IsStacked).Select(f => f.Box).ToHashSet(StringComparer.Ordinal);
        // At each box the widest of the flags that its lines lead to.
        var pitches = plan.Input.Wires.SelectMany(w => new[] { (At: w.From, Flag: w.To), (At: w.To, Flag: w.From) })
            .Where(e => stacked.Contains(e.Flag.Box)).GroupBy(e => e.At.Box, StringComparer.Ordinal).Where(g => g.Count() > 1)
            .ToDictionary(g => g.Key, g => g.Max(e => widths[e.Flag.Box]) + Gap, StringComparer.Ordinal);
        return plan.Input.Boxes.Where(b => pitches.TryGetValue(b.Id, out int pitch) && SpreadWays.IsCloser(b, pitch, plan)).Aggregate(plan, (p, b) => SpreadWays.Of(p, b, pitches[b.Id]));
    }
}
