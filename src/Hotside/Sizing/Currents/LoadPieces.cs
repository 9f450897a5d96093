using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Sizing.Currents;

/// <summary>
/// The pieces of a circuit between what hangs on the sources and the return: consumers and what is in line, that hang together whatever stands where. No current of a consumer depends
/// on a switch outside its piece, but for what the sources sag.
/// </summary>
internal sealed class LoadPieces
{
    private readonly InLineGraph graph;
    private readonly DisjointSets sets;
    private readonly bool[] isFixed;
    private readonly Dictionary<int, ImmutableArray<Variable>> variables = [], ringVariables = [];

    /// <summary>The pieces of a graph.</summary>
    public LoadPieces(InLineGraph graph)
    {
        this.graph = graph;
        isFixed = Fixed(graph);
        sets = new(graph.Return + 1);
        foreach (var edge in graph.Edges) Join(edge.A, edge.B);
        foreach (var consumer in graph.Hanging.Where(h => h.Element.IsConsumer)) Join(graph.VertexOf(consumer.A), graph.VertexOf(consumer.B));
        // A relay's contacts follow its coils.
        foreach (var part in graph.Model.Circuit.Parts.Where(p => p.Kind.Actuators.Any(a => a.Drive == ActuatorDrive.Driven)))
        {
            int[] ends = [.. graph.Hanging.Where(h => h.Part == part).Concat(graph.Edges.Select(e => e.Element).OfType<ModelElement>().Where(e => e.Part == part))
                .SelectMany(e => new[] { graph.VertexOf(e.A), graph.VertexOf(e.B) }).Where(v => !isFixed[v])];
            for (int i = 1; i < ends.Length; i++) sets.Join(ends[0], ends[i]);
        }
    }

    /// <summary>The number of the piece of a consumer; −1 where both its ends are always live or on the return.</summary>
    public int Of(ModelElement consumer)
    {
        int a = graph.VertexOf(consumer.A), b = graph.VertexOf(consumer.B);
        return !isFixed[a] ? sets.Find(a) : !isFixed[b] ? sets.Find(b) : -1;
    }

    /// <summary>What stands in different positions within a piece, or between the sources and what is live, but for what coils drive.</summary>
    public ImmutableArray<Variable> VariablesOf(int piece)
    {
        if (variables.TryGetValue(piece, out var found)) return found;
        return variables[piece] = [.. VariablesOf(graph.Edges.Where(e => IsIn(e.A, piece) || IsIn(e.B, piece) || (isFixed[e.A] && isFixed[e.B])).Select(e => e.Element)
            .Concat(graph.Hanging.Where(h => h.Element.IsSource))).Where(v => v.Actuator.Drive != ActuatorDrive.Driven)];
    }

    /// <summary>What stands in different positions on a ring, or moves what does; for −1 in the whole circuit.</summary>
    public ImmutableArray<Variable> VariablesOfRing(int ring)
    {
        if (ringVariables.TryGetValue(ring, out var found)) return found;
        var on = VariablesOf(graph.Edges.Where((_, e) => ring < 0 || graph.RingOf(e) == ring).Select(e => e.Element)).ToArray();
        var driven = on.Where(v => v.Actuator.Drive == ActuatorDrive.Driven).Select(v => v.Part).ToHashSet();
        var moving = graph.Hanging.Where(h => h.Element.Type == ElementType.Coil && driven.Contains(h.Part.Id)).SelectMany(h => VariablesOf(Of(h)));
        return ringVariables[ring] = [.. on.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Concat(moving).Distinct()];
    }

    private IEnumerable<Variable> VariablesOf(IEnumerable<ModelElement?> elements) => elements.OfType<ModelElement>().Where(e => e.Element.When is not null)
        .SelectMany(e => e.Element.When!.Tests.Select(t => graph.Model.Circuit.VariableOf(e.Part, t.Actuator))).Distinct();

    private bool IsIn(int vertex, int piece) => !isFixed[vertex] && sets.Find(vertex) == piece;

    private void Join(int a, int b)
    {
        if (!isFixed[a] && !isFixed[b]) sets.Join(a, b);
    }

    // What hangs on the return or on a pole of a source by conductors, fuses and links alone.
    private static bool[] Fixed(InLineGraph graph)
    {
        DisjointSets joined = new(graph.Return + 1);
        foreach (var edge in graph.Edges.Where(e => e.Element is null or { Element: { When: null, IsLink: true } })) joined.Join(edge.A, edge.B);
        var poles = graph.Hanging.Where(h => h.Element.IsSource).SelectMany(h => new[] { graph.VertexOf(h.A), graph.VertexOf(h.B) }).Append(graph.Return).Select(joined.Find).ToHashSet();
        return [.. Enumerable.Range(0, graph.Return + 1).Select(v => poles.Contains(joined.Find(v)))];
    }
}
