using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Checks;

/// <summary>A circuit as nodes and what joins them. What is bolted together is one node; conductors keep their ends apart.</summary>
internal sealed class WireGraph
{
    /// <summary>The common return: whatever goes round, goes round up to here.</summary>
    public const int Return = 0;

    private readonly TerminalNodes nodes;
    private readonly List<WireEdge>[] at;

    /// <summary>The graph of a circuit.</summary>
    public WireGraph(Circuit circuit)
    {
        nodes = new(circuit);
        var edges = ImmutableArray.CreateBuilder<WireEdge>();
        foreach (var conductor in circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree))
            edges.Add(new(NodeOf(conductor.From), NodeOf(conductor.To), conductor, null, null));
        var variables = circuit.Variables.Select((v, i) => (v, i)).ToDictionary(p => p.v, p => p.i);
        foreach (var part in circuit.Parts)
        foreach (var element in part.Kind.Elements)
            edges.Add(new(NodeOf(Nodes.NodeOf(part, element.From)), NodeOf(Nodes.NodeOf(part, element.To)), null, part, element)
            {
                When = element.When is { } when ? [.. when.Tests.Select(t => (variables[circuit.VariableOf(part, t.Actuator)], t.Positions))] : [],
            });
        Edges = edges.ToImmutable();
        at = [.. Enumerable.Range(0, nodes.Count + 1).Select(_ => new List<WireEdge>())];
        foreach (var edge in Edges)
        {
            at[edge.A].Add(edge);
            if (edge.B != edge.A) at[edge.B].Add(edge);
        }
        Elsewhere = [.. circuit.Parts.Where(p => p.Kind.TakesAnyTerminal).SelectMany(p => nodes.Ends.Where(e => e.Part == p.Id).Select(e => (p, NodeOf(e))))];
    }

    /// <summary>Conductors in the order of the circuit, then elements in the order of the parts.</summary>
    public ImmutableArray<WireEdge> Edges { get; }

    /// <summary>Ends of the page: parts behind which the circuit goes on, with their nodes.</summary>
    public ImmutableArray<(Part Part, int Node)> Elsewhere { get; }

    /// <summary>The node of an end.</summary>
    public int NodeOf(End end) => nodes.NodeOf(end) + 1;

    /// <summary>The nodes of an element.</summary>
    public (int A, int B) NodesOf(Part part, Element element) => (NodeOf(Nodes.NodeOf(part, element.From)), NodeOf(Nodes.NodeOf(part, element.To)));

    /// <summary>What ends on a node.</summary>
    public IReadOnlyList<WireEdge> At(int node) => at[node];

    /// <summary>The nodes that are reached from some, these among them; the return is reached, but nothing goes on from there.</summary>
    public HashSet<int> Reach(IEnumerable<int> from, Predicate<WireEdge> passes)
    {
        HashSet<int> reached = [.. from];
        Stack<int> open = new(reached);
        while (open.TryPop(out int node))
        {
            if (node == Return) continue;
            foreach (var edge in at[node])
                if (passes(edge) && reached.Add(edge.Other(node)))
                    open.Push(edge.Other(node));
        }
        return reached;
    }
}
