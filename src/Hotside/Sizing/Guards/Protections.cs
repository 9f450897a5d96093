using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Solving;

namespace Hotside.Sizing.Guards;

/// <summary>Which fuses, breakers and links stand between the sources and each conductor.</summary>
internal sealed class Protections
{
    private readonly InLineGraph graph;
    private readonly Func<ModelElement, double> ratingOf;
    private readonly Dictionary<ModelElement, double> ratings = [];
    private readonly bool[] feeds, batteries;
    private readonly Dictionary<int, Protection> known = [];

    /// <summary>The protections of a circuit.</summary>
    /// <param name="graph">What current may take.</param>
    /// <param name="ratingOf">What a device lets through for good, in amperes; asked once of each.</param>
    public Protections(InLineGraph graph, Func<ModelElement, double> ratingOf)
    {
        (this.graph, this.ratingOf) = (graph, ratingOf);
        (feeds, batteries) = (new bool[graph.Return + 1], new bool[graph.Return + 1]);
        foreach (var source in graph.Model.Circuit.Sources)
        {
            int vertex = graph.VertexOf(graph.Model.Nodes.NodeOf(source.Feed));
            feeds[vertex] = true;
            batteries[vertex] |= source.Element.When is null;
        }
        feeds[graph.Return] = batteries[graph.Return] = false;
        Devices = [.. graph.Edges.Select(e => e.Element).OfType<ModelElement>().Where(IsDevice)];
    }

    /// <summary>All fuses, breakers and links.</summary>
    public ImmutableArray<ModelElement> Devices { get; }

    /// <summary>The protection of a conductor, by its number in the circuit.</summary>
    public Protection Of(int conductor)
    {
        if (known.TryGetValue(conductor, out var found)) return found;
        var (a, b, _) = graph.Edges[conductor];
        var sides = a == b ? [] : new[] { Side(conductor, a), Side(conductor, b) }.OfType<Protection>().ToArray();
        var worst = sides.FirstOrDefault(s => s.IsUnprotected) ?? sides.Where(s => s.IsHot).MaxBy(s => s.Amperes ?? 0) ?? new([]);
        return known[conductor] = worst with { All = [.. sides.SelectMany(s => s.Devices).Distinct()] };
    }

    // What reaches an end without passing the conductor.
    private Protection? Side(int conductor, int end)
    {
        if (end == graph.Return) return null;
        bool[] near = graph.ReachedFrom(end, e => e == conductor || IsDevice(e));
        bool direct = Any(batteries, near);
        var devices = LetThrough(conductor, end, near);
        return new(devices) { IsUnprotected = direct, IsHot = direct || devices.Length > 0 || Any(feeds, near) };
    }

    // Zones are what is joined without passing a device, the conductor or the return.
    private ImmutableArray<ModelElement> LetThrough(int conductor, int end, bool[] near)
    {
        DisjointSets zones = new(graph.Return + 1);
        for (int e = 0; e < graph.Edges.Length; e++)
            if (e != conductor && !IsDevice(e) && graph.Edges[e].A != graph.Return && graph.Edges[e].B != graph.Return)
                zones.Join(graph.Edges[e].A, graph.Edges[e].B);
        var between = (
            from edge in graph.Edges.Where((e, i) => i != conductor)
            where edge.Element is { } element && IsDevice(element) && edge.A != graph.Return && edge.B != graph.Return && !zones.AreOne(edge.A, edge.B)
            select (zones.Find(edge.A), zones.Find(edge.B), edge.Element!)).ToArray();
        int[] sources = [.. Enumerable.Range(0, graph.Return).Where(v => feeds[v] && !near[v]).Select(zones.Find).Distinct()];
        return between.Length == 0 || sources.Length == 0 ? [] : LeastCut.Of(between, RatingOf, sources, zones.Find(end));
    }

    private double RatingOf(ModelElement device) => ratings.TryGetValue(device, out double known) ? known : ratings[device] = ratingOf(device);

    private bool Any(bool[] marked, bool[] reached)
    {
        for (int v = 0; v < graph.Return; v++)
            if (marked[v] && reached[v])
                return true;
        return false;
    }

    private bool IsDevice(int edge) => graph.Edges[edge].Element is { } element && IsDevice(element);

    private static bool IsDevice(ModelElement element) => element.Element.Type is ElementType.Fuse or ElementType.Breaker;
}
