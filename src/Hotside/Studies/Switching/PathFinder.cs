using System.Collections.Immutable;
using Hotside.Circuits;
using QuikGraph;
using QuikGraph.Algorithms;

namespace Hotside.Studies.Switching;

/// <summary>Finds the conductors and contacts on the ways of a load in one state: the way with fewest conductors.</summary>
internal sealed class PathFinder(ContactGraph graph)
{
    private static readonly Step Joint = new(null, null, null);

    /// <summary>What lies between an end and the nearest of some points, nearest to the end first; <see langword="null"/> when no way stands.</summary>
    /// <param name="from">The end that the way begins on.</param>
    /// <param name="targets">The points that it may reach.</param>
    /// <param name="barred">Points that it must not meet.</param>
    /// <param name="state">A position for each variable.</param>
    public ImmutableArray<Step>? Way(End from, IReadOnlySet<int> targets, IReadOnlySet<int> barred, IReadOnlyList<int> state)
    {
        var network = Network(state, barred);
        if (!network.ContainsVertex(from)) return targets.Contains(graph.Point(from)) ? [] : null;
        var ways = network.ShortestPathsDijkstra(e => e.Tag.Conductor is null ? 0.001 : 1, from);
        ImmutableArray<Step>? best = null;
        int fewest = int.MaxValue;
        foreach (var end in network.Vertices.Where(v => targets.Contains(graph.Point(v)) && graph.Circuit.Sources.Any(s => s.Feed == v || s.Return == v) || v == graph.Circuit.System.ReturnNode))
        {
            if (!targets.Contains(graph.Point(end))) continue;
            if (end != from && !ways(end, out _)) continue;
            ImmutableArray<Step> steps = end == from ? [] : Oriented(ways, end);
            int conductors = steps.Count(s => s.Conductor is not null);
            if (conductors < fewest) (best, fewest) = (steps, conductors);
        }
        return best;

        static ImmutableArray<Step> Oriented(TryFunc<End, IEnumerable<TaggedEdge<End, Step>>> ways, End end)
        {
            ways(end, out var path);
            return [.. path.Select(e => e.Tag)];
        }
    }

    private UndirectedGraph<End, TaggedEdge<End, Step>> Network(IReadOnlyList<int> state, IReadOnlySet<int> barred)
    {
        var network = new UndirectedGraph<End, TaggedEdge<End, Step>>(allowParallelEdges: true);
        void Add(End a, End b, Step step)
        {
            if (barred.Contains(graph.Point(a)) || barred.Contains(graph.Point(b))) return;
            network.AddVerticesAndEdge(new(a, b, step));
        }
        foreach (var conductor in graph.Circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) Add(conductor.From, conductor.To, new(conductor.Id, null, null));
        foreach (var part in graph.Circuit.Parts)
        {
            foreach (var joint in part.Joints) Add(End.At(part.Id, joint.Terminal), joint.On, Joint);
            if (part.CaseOn is { } on) Add(Nodes.CaseOf(part), on, Joint);
            foreach (var element in part.Kind.Elements.Where(e => e.IsInLine))
                if (graph.Diagrams.Value(graph.Condition(part, element, real: false), state))
                    Add(Nodes.NodeOf(part, element.From), Nodes.NodeOf(part, element.To), new(null, part, element));
        }
        return network;
    }
}

/// <summary>One step of a way: a conductor, an element within a part, or a joint.</summary>
internal sealed record Step(string? Conductor, Part? Part, Element? Element);
