using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Proposals.Exposures;

namespace Hotside.Proposals.Steps;

/// <summary>The way from a battery's hot post to a point, through wires and what joins for good: fuses, meters, studs.</summary>
/// <param name="Wires">Its wires, the battery's first.</param>
/// <param name="Parts">The parts that it passes, rails and studs left out.</param>
/// <param name="Stud">The last point that is still the starter cable, or the battery's post; <see langword="null"/>: the point cannot be reached.</param>
internal sealed record FeedWay(ImmutableArray<Conductor> Wires, ImmutableArray<Part> Parts, End? Stud)
{
    /// <summary>The shortest way to an end.</summary>
    public static FeedWay Of(Bench bench, End to)
    {
        var circuit = bench.Circuit;
        var graph = bench.Checked.Graph;
        var feed = circuit.Sources.First(s => s.Element.When is null).Feed;
        int start = graph.NodeOf(feed), end = graph.NodeOf(to);
        Dictionary<int, (int From, Checks.WireEdge By)> reached = [];
        Queue<int> open = new([start]);
        HashSet<int> seen = [start, Checks.WireGraph.Return];
        while (open.TryDequeue(out int node) && node != end)
            foreach (var edge in graph.At(node).Where(e => e.IsLink && (e.Conductor is not null || e.Element!.When is null)))
                if (seen.Add(edge.Other(node)))
                {
                    reached[edge.Other(node)] = (node, edge);
                    open.Enqueue(edge.Other(node));
                }
        List<Checks.WireEdge> way = [];
        for (int node = end; node != start;)
        {
            if (!reached.TryGetValue(node, out var step)) return new([], [], null);
            way.Insert(0, step.By);
            node = step.From;
        }
        // Starter cables are heavy and unfused: the stud at their end is as good as the post.
        End stud = feed;
        int at = start;
        foreach (var edge in way.TakeWhile(e => e.Conductor is { } wire && wire.Wire.Size?.Area >= CableArea))
        {
            at = edge.Other(at);
            stud = graph.NodeOf(edge.Conductor!.From) == at ? edge.Conductor.From : edge.Conductor.To;
        }
        return new([.. way.Where(e => e.Conductor is not null).Select(e => e.Conductor!)], [.. way.Where(e => e.Part is not null).Select(e => e.Part!)], stud);
    }

    /// <summary>From which section on a cable feeds a starter, in mm²: 2 AWG (common practice, no source).</summary>
    public const double CableArea = 33;
}
