using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies.Switching;

namespace Hotside.Sizing.Currents;

/// <summary>
/// Conductors and what is in line, whether closed or not: the ways that current may take without passing a consumer or a source. The return is one vertex like any other,
/// the last one; consumers and sources hang on the vertices.
/// </summary>
internal sealed class InLineGraph
{
    private readonly List<int>[] incident;
    private readonly int[] blocks;

    /// <summary>The graph of a circuit.</summary>
    public InLineGraph(CircuitModel model)
    {
        Model = model;
        Return = model.Nodes.Count;
        var edges = ImmutableArray.CreateBuilder<InLineEdge>();
        for (int c = 0; c < model.Circuit.Conductors.Length; c++)
        {
            var conductor = model.Circuit.Conductors[c];
            // What has a free end stays, so that a conductor has its own number; it joins nothing.
            edges.Add(conductor.From.IsFree || conductor.To.IsFree ? new(Return, Return, null) : new(VertexOf(model.Nodes.NodeOf(conductor.From)), VertexOf(model.Nodes.NodeOf(conductor.To)), null));
        }
        foreach (var element in model.Elements.Where(e => e.Element.IsInLine)) edges.Add(new(VertexOf(element.A), VertexOf(element.B), element));
        Edges = edges.ToImmutable();
        Hanging = [.. model.Elements.Where(e => e.Element.IsConsumer || e.Element.IsSource)];
        incident = [.. Enumerable.Range(0, Return + 1).Select(_ => new List<int>())];
        for (int e = 0; e < Edges.Length; e++)
        {
            incident[Edges[e].A].Add(e);
            incident[Edges[e].B].Add(e);
        }
        blocks = Blocks.Of(Return + 1, [.. Edges.Select(e => (e.A, e.B))]);
        BlockSizes = blocks.Where(b => b >= 0).GroupBy(b => b).ToDictionary(g => g.Key, g => g.Count());
    }

    /// <summary>The circuit's model.</summary>
    public CircuitModel Model { get; }

    /// <summary>The vertex of the return.</summary>
    public int Return { get; }

    /// <summary>The edges: first the conductors, one each, then what is in line.</summary>
    public ImmutableArray<InLineEdge> Edges { get; }

    /// <summary>The consumers and sources.</summary>
    public ImmutableArray<ModelElement> Hanging { get; }

    private Dictionary<int, int> BlockSizes { get; }

    /// <summary>The vertex of a node of the model.</summary>
    public int VertexOf(int node) => node < 0 ? Return : node;

    /// <summary>The edges at a vertex.</summary>
    public IReadOnlyList<int> At(int vertex) => incident[vertex];

    /// <summary>The block of an edge: all with which it lies on a ring; −1 where it lies on none.</summary>
    public int RingOf(int edge) => blocks[edge] is >= 0 and var block && BlockSizes[block] > 1 ? block : -1;

    /// <summary>The vertices that are reached from one without passing some edges and without passing the return.</summary>
    /// <param name="vertex">The vertex.</param>
    /// <param name="isBarred">Whether an edge is not passed.</param>
    /// <param name="through">What is passed though it is not in line.</param>
    public bool[] ReachedFrom(int vertex, Predicate<int> isBarred, params ImmutableArray<ModelElement> through)
    {
        bool[] reached = new bool[Return + 1];
        Stack<int> open = new([vertex]);
        reached[vertex] = true;
        while (open.TryPop(out int at))
        {
            if (at == Return) continue;
            foreach (int e in incident[at])
                if (!isBarred(e)) Reach(Edges[e].A == at ? Edges[e].B : Edges[e].A);
            foreach (var element in through)
                if (VertexOf(element.A) == at || VertexOf(element.B) == at) Reach(VertexOf(element.A) == at ? VertexOf(element.B) : VertexOf(element.A));
        }
        return reached;

        void Reach(int other)
        {
            if (reached[other]) return;
            reached[other] = true;
            open.Push(other);
        }
    }

    /// <summary>For a ring, on which vertex of it each vertex hangs; −1 for those that hang on none.</summary>
    public int[] HangingOn(int ring)
    {
        DisjointSets sets = new(Return + 1);
        for (int e = 0; e < Edges.Length; e++)
            if (blocks[e] != ring)
                sets.Join(Edges[e].A, Edges[e].B);
        Dictionary<int, int> vertices = [];
        for (int e = 0; e < Edges.Length; e++)
            if (blocks[e] == ring)
                foreach (int v in new[] { Edges[e].A, Edges[e].B })
                    vertices[sets.Find(v)] = v;
        return [.. Enumerable.Range(0, Return + 1).Select(v => vertices.GetValueOrDefault(sets.Find(v), -1))];
    }
}

/// <summary>A conductor or an element in line between two vertices.</summary>
/// <param name="A">The vertex of its first end.</param>
/// <param name="B">The vertex of its second end.</param>
/// <param name="Element">The element; <see langword="null"/> for a conductor.</param>
internal readonly record struct InLineEdge(int A, int B, ModelElement? Element);
