using Hotside.Studies;

namespace Hotside.Checks.Protection;

/// <summary>Which fuses and breakers lie nearest ahead of a load.</summary>
internal static class FusesAhead
{
    /// <summary>The protections that border the load's own wiring and lead to a battery in a state; each with the nodes of the batteries to which it leads past the others.</summary>
    public static IReadOnlyList<(WireEdge Protection, HashSet<int> Feeds)> Of(CheckedCircuit circuit, LoadStudy load, OperatingPoint point)
    {
        var graph = circuit.Graph;
        int node = FeedNode(circuit, load);
        if (node == WireGraph.Return) return [];
        var own = graph.Reach([node], e => e.IsLink && !e.IsProtection && point.IsClosed(e));
        List<(WireEdge, HashSet<int>)> found = [];
        foreach (var edge in own.Where(n => n != WireGraph.Return).SelectMany(graph.At).Where(e => e.IsProtection && own.Contains(e.A) != own.Contains(e.B)).Distinct())
        {
            int beyond = own.Contains(edge.A) ? edge.B : edge.A;
            var reached = graph.Reach([beyond], e => e.IsLink && e != edge && point.IsClosed(e) && !own.Contains(e.A) && !own.Contains(e.B));
            HashSet<int> feeds = [.. circuit.Feeds.Where(reached.Contains)];
            if (feeds.Count > 0) found.Add((edge, feeds));
        }
        return found;
    }

    /// <summary>The node of a load's end on the hot side.</summary>
    public static int FeedNode(CheckedCircuit circuit, LoadStudy load)
    {
        if (!load.Paths.IsEmpty) return circuit.Graph.NodeOf(load.Paths[0].FeedEnd);
        var (a, b) = circuit.Graph.NodesOf(load.Part, load.Element);
        return a == WireGraph.Return ? b : a;
    }
}
