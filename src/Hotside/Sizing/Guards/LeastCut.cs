using System.Collections.Immutable;
using Hotside.Solving;
using QuikGraph;
using QuikGraph.Algorithms.MaximumFlow;

namespace Hotside.Sizing.Guards;

/// <summary>
/// The devices that let the least through, taken together, between sources and a place: a breaker of 25 A behind a fuse of 15 A lets 15 A through.
/// By the greatest flow from the sources to the place, each device carrying no more than its rating (Ford and Fulkerson 1956); among equal cuts that nearest to the place.
/// </summary>
internal static class LeastCut
{
    /// <summary>The rating of what limits nothing that is known, more than any fuse's.</summary>
    public const double Unknown = 1e6;

    private const double Endless = 1e9;

    // Ratings have no finer steps than a tenth of an ampere.
    private const double Nothing = 1e-6;

    // Zones are numbered from 0 on.
    private const int Supply = -1;

    /// <summary>The devices of the cut; empty where none is reached.</summary>
    /// <param name="devices">The devices, with the zones on both sides of each.</param>
    /// <param name="ratingOf">What a device lets through for good, in amperes.</param>
    /// <param name="sources">The zones in which a source stands.</param>
    /// <param name="place">The zone of the place.</param>
    public static ImmutableArray<ModelElement> Of(IReadOnlyList<(int A, int B, ModelElement Device)> devices, Func<ModelElement, double> ratingOf, IReadOnlyCollection<int> sources, int place)
    {
        var graph = new BidirectionalGraph<int, Edge<int>>();
        Dictionary<Edge<int>, double> capacities = [];
        void Lead(int from, int to, double amperes)
        {
            Edge<int> edge = new(from, to);
            graph.AddVerticesAndEdge(edge);
            capacities.Add(edge, amperes);
        }
        graph.AddVertexRange([Supply, place]);
        foreach (int zone in sources) Lead(Supply, zone, Endless);
        foreach (var (a, b, device) in devices)
        {
            double amperes = ratingOf(device);
            Lead(a, b, amperes);
            Lead(b, a, amperes);
        }
        using var reversed = new ReversedEdgeAugmentorAlgorithm<int, Edge<int>>(graph, (from, to) => new(from, to));
        reversed.AddReversedEdges();
        var flow = new EdmondsKarpMaximumFlowAlgorithm<int, Edge<int>>(graph, e => capacities.GetValueOrDefault(e), (from, to) => new(from, to), reversed);
        flow.Compute(Supply, place);
        HashSet<int> near = [place];
        Stack<int> open = new(near);
        while (open.TryPop(out int zone))
            foreach (var edge in graph.InEdges(zone))
                if (flow.ResidualCapacities[edge] > Nothing && near.Add(edge.Source))
                    open.Push(edge.Source);
        return [.. devices.Where(d => near.Contains(d.A) != near.Contains(d.B)).Select(d => d.Device)];
    }
}
