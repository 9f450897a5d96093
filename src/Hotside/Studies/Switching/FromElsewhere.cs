using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Tells of a load that nothing in the file feeds whether it hangs between what lies elsewhere and a pole, or between two places elsewhere: what feeds and switches it is not in the file then.</summary>
internal static class FromElsewhere
{
    /// <summary>The terminals elsewhere that may feed it, in the order of the file; empty when there are none.</summary>
    public static ImmutableArray<End> Of(ContactGraph graph, Branch load)
    {
        var outside = graph.Circuit.Parts.Where(p => p.Kind.TakesAnyTerminal).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        if (outside.Count == 0 || load.Source == load.Target) return [];
        End[] ends = [.. graph.Circuit.Conductors.SelectMany(c => c.Ends).Where(e => e.Part is { } part && outside.Contains(part)).Distinct()];
        var poles = graph.Sources.SelectMany(s => new[] { s.Plus, s.Minus }).Append(graph.Return).ToHashSet();
        var reached = new[] { load.Source, load.Target }.Select(end => LooseEnds.Reached(graph, load, end)).ToArray();
        var feeding = reached.Select(points => ends.Where(e => points.Contains(graph.PointOf(e))).ToArray()).ToArray();
        if (!reached.Zip(feeding).All(side => side.Second.Length > 0 || side.First.Overlaps(poles))) return [];
        // What reaches a pole at an end as well is fed from there, if at all: the other end is the one that leads away.
        return [.. ends.Where(e => reached.Zip(feeding).Any(side => side.Second.Contains(e) && !side.First.Overlaps(poles)))];
    }
}
