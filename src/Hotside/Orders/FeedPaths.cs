using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Orders;

/// <summary>How far each terminal of a circuit is from the hot post, and what lies between: wires and elements counted one each; the chassis, and metal strapped to it, is not passed.</summary>
internal sealed class FeedPaths
{
    private readonly TerminalNodes nodes;
    private readonly int[] distances;
    private readonly (int Node, string? Part, bool IsFuse)[] from;
    private readonly HashSet<int> grounded;

    /// <summary>The paths of a circuit.</summary>
    public FeedPaths(Circuit circuit)
    {
        nodes = new(circuit);
        distances = [.. Enumerable.Repeat(int.MaxValue, nodes.Count)];
        from = new (int, string?, bool)[nodes.Count];
        var joined = Nodes.Of(circuit, throughLinks: true);
        grounded = [.. nodes.Ends.Where(e => joined.AreOne(e, circuit.System.ReturnNode)).Select(nodes.NodeOf)];
        var steps = Steps(circuit);
        Queue<int> open = new();
        foreach (var source in circuit.Sources.Where(s => s.Part.IsStandingSource))
            Reach(nodes.NodeOf(source.Feed), (-1, null, false), 0);
        while (open.TryDequeue(out int node))
            foreach (var (to, part, isFuse) in steps[node])
                Reach(to, (node, part, isFuse), distances[node] + 1);

        void Reach(int node, (int, string?, bool) how, int distance)
        {
            if (node < 0 || distances[node] != int.MaxValue || grounded.Contains(node)) return;
            (distances[node], from[node]) = (distance, how);
            open.Enqueue(node);
        }
    }

    /// <summary>The distance of a terminal; the greatest number where nothing leads there, as to the chassis.</summary>
    public int DistanceOf(End end) => NodeOf(end) is >= 0 and var node ? distances[node] : int.MaxValue;

    /// <summary>The fuse, breaker or link that a terminal lies behind, the nearest to it; <see langword="null"/> where there is none.</summary>
    public string? FuseOf(End end)
    {
        for (int node = NodeOf(end); node >= 0 && distances[node] != int.MaxValue; node = from[node].Node)
            if (from[node].IsFuse)
                return from[node].Part;
        return null;
    }

    /// <summary>The parts passed on the way from the hot post to a terminal.</summary>
    public HashSet<string> Upstream(End end)
    {
        HashSet<string> passed = new(StringComparer.Ordinal);
        for (int node = NodeOf(end); node >= 0 && distances[node] != int.MaxValue; node = from[node].Node)
            if (from[node].Part is { } part)
                passed.Add(part);
        return passed;
    }

    /// <summary>The first part passed on the way from the hot post; <see langword="null"/> where none is.</summary>
    public string? FirstOf(End end)
    {
        string? first = null;
        for (int node = NodeOf(end); node >= 0 && distances[node] != int.MaxValue; node = from[node].Node) first = from[node].Part ?? first;
        return first;
    }

    private int NodeOf(End end) => end.IsFree || !nodes.Knows(end) ? -1 : nodes.NodeOf(end);

    // From each node what may be passed; an element that opens is passed too, for it may be closed.
    private List<(int To, string? Part, bool IsFuse)>[] Steps(Circuit circuit)
    {
        List<(int, string?, bool)>[] steps = [.. Enumerable.Range(0, nodes.Count).Select(_ => new List<(int, string?, bool)>())];
        foreach (var wire in circuit.Conductors)
            if (!wire.From.IsFree && !wire.To.IsFree)
                Add(nodes.NodeOf(wire.From), nodes.NodeOf(wire.To), null, false);
        foreach (var part in circuit.Parts)
        foreach (var element in part.Kind.Elements)
            if (!element.IsSource)
                Add(nodes.NodeOf(Nodes.NodeOf(part, element.From)), nodes.NodeOf(Nodes.NodeOf(part, element.To)), part.Id, element.Type is ElementType.Fuse or ElementType.Breaker);
        return steps;

        void Add(int a, int b, string? part, bool isFuse)
        {
            if (a < 0 || b < 0 || a == b) return;
            steps[a].Add((b, part, isFuse));
            steps[b].Add((a, part, isFuse));
        }
    }
}
