using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Networks;

namespace Hotside.Diagnoses;

/// <summary>
/// A piece of a circuit laid out for measuring: joints loose, every stretch of wire between contacts, fuses and loads with an edge to the return by which it can be shorted.
/// Not to be used by several threads at once.
/// </summary>
internal sealed class Bench
{
    private readonly ImmutableArray<int> feeds;

    /// <summary>A bench for a circuit whose joints are loose.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="isPiece">Whether it is a piece of a larger one, whose other fuses are pulled for ohms.</param>
    /// <param name="effort">What it takes to get at things; left out: as the library has it.</param>
    public Bench(Circuit circuit, bool isPiece = false, Effort? effort = null)
    {
        Effort = effort ?? Effort.Standard;
        Circuit = circuit;
        IsPiece = isPiece;
        Model = new(circuit);
        (NetOf, NetNodes) = Nets(circuit, Model.Nodes);
        Solver = new(Model, [.. NetNodes.Select(n => new NetworkEdge(n, NetworkEdge.Reference))]);
        feeds = [.. circuit.Sources.Where(s => s.Part.IsStandingSource).Select(s => Model.Nodes.NodeOf(s.Feed)).Where(n => n >= 0).Select(n => NetOf[n])];
        Points = BenchPoint.Of(circuit, Model.Nodes, Effort);
        Volts = circuit.Sources.Where(s => s.Part.IsStandingSource).Select(s => s.Volts).DefaultIfEmpty(circuit.System.Volts[0]).Max();
    }

    public Circuit Circuit { get; }

    /// <summary>What it takes to get at things.</summary>
    public Effort Effort { get; }

    /// <summary>Whether it is a piece of a larger circuit.</summary>
    public bool IsPiece { get; }

    /// <summary>Whether other ways hang on a node, so that ohms there are not those of the piece: on the unfused feed.</summary>
    public bool IsShared(int node) => IsPiece && node >= 0 && NetOf[node] >= 0 && feeds.Contains(NetOf[node]);

    public CircuitModel Model { get; }

    public StateSolver Solver { get; }

    /// <summary>The net of each node; −1 on the return.</summary>
    public ImmutableArray<int> NetOf { get; }

    /// <summary>A node of each net.</summary>
    public ImmutableArray<int> NetNodes { get; }

    /// <summary>Where a lead can be put, a point a node that has one.</summary>
    public ImmutableArray<BenchPoint> Points { get; }

    /// <summary>The volts of the feed.</summary>
    public double Volts { get; }

    /// <summary>The edge by which a net can be shorted.</summary>
    public int BridgeOf(int net) => Model.Network.Edges.Length + net;

    /// <summary>The nodes of the network, the reference not counted.</summary>
    public int NodeCount => Model.Network.NodeCount;

    /// <summary>The same with wires crossed; <see langword="null"/> where that would number the nodes otherwise.</summary>
    public StateSolver? With(ImmutableArray<Conductor> conductors)
    {
        CircuitModel model = new(Circuit.With(conductors));
        return model.Nodes.Ends.SequenceEqual(Model.Nodes.Ends) && model.Network.NodeCount == Model.Network.NodeCount && model.Network.Edges.Length == Model.Network.Edges.Length
            ? new(model, [.. NetNodes.Select(n => new NetworkEdge(n, NetworkEdge.Reference))]) : null;
    }

    // Wires and rails that are joined for good; what is joined to the return has no net.
    private static (ImmutableArray<int> Of, ImmutableArray<int> Nodes) Nets(Circuit circuit, TerminalNodes nodes)
    {
        DisjointSets sets = new(nodes.Count + 1);
        foreach (var conductor in circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) sets.Join(nodes.NodeOf(conductor.From) + 1, nodes.NodeOf(conductor.To) + 1);
        List<int> first = [];
        int[] of = new int[nodes.Count];
        Dictionary<int, int> known = [];
        for (int node = 0; node < nodes.Count; node++)
        {
            int set = sets.Find(node + 1);
            if (set == sets.Find(0)) of[node] = -1;
            else if (known.TryGetValue(set, out int net)) of[node] = net;
            else
            {
                known[set] = of[node] = first.Count;
                first.Add(node);
            }
        }
        return ([.. of], [.. first]);
    }
}
