using System.Collections.Immutable;
using Hotside.Solving.Networks;
using Hotside.Studies.Switching;

namespace Hotside.Studies.Operating;

/// <summary>
/// Branches that may share current with each other, and the sources; with the operating points that were worked out of them: states in which the same conducts have the same.
/// </summary>
internal sealed class Neighbourhood
{
    // Where more are asked for, all are forgotten: a bound to memory.
    private const int Most = 2_000;

    private readonly ImmutableArray<Condition> distinct;
    private readonly Dictionary<string, OperatingPoint> known = new(StringComparer.Ordinal);
    private readonly Dictionary<Branch, int> places;
    private readonly int[] indices;
    private int count;

    /// <summary>Brings branches together.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="branches">The branches: all of a block, so that no current leaves them but by the poles.</param>
    public Neighbourhood(ContactGraph graph, ImmutableArray<Branch> branches)
    {
        (Graph, Branches) = (graph, branches);
        places = branches.Select((b, i) => (b, i)).ToDictionary(x => x.b, x => x.i);
        OneWay = [.. Enumerable.Range(0, branches.Length).Where(i => branches[i].IsOneWay)];
        indices = new int[graph.Size];
        Array.Fill(indices, int.MinValue);
        indices[graph.Return] = NetworkEdge.Reference;
        ImmutableArray<NetworkEdge> edges =
            [.. branches.Select(b => new NetworkEdge(Number(b.Source), Number(b.Target))), .. graph.Sources.Select(s => new NetworkEdge(Number(s.Plus), Number(s.Minus)))];
        Network = new(count, edges);
        Mesh = new(Network);
        distinct = [.. branches.Select(b => b.When).Concat(graph.Sources.Select(s => s.When)).Where(c => c.IsOpen).Distinct()];
    }

    /// <summary>How often one-way elements are turned before that is given up; <see langword="null"/>: as often as their number asks for.</summary>
    public int? MostTurns { get; init; }

    public ContactGraph Graph { get; }

    public ImmutableArray<Branch> Branches { get; }

    /// <summary>Which of the branches let current through one way only.</summary>
    public ImmutableArray<int> OneWay { get; }

    /// <summary>The place of a branch among them; −1 for one of elsewhere.</summary>
    public int IndexOf(Branch branch) => places.GetValueOrDefault(branch, -1);

    /// <summary>The branches, then the sources, between nodes of their own, for a neighbourhood is small.</summary>
    public Network Network { get; }

    /// <summary>What solves the network.</summary>
    public StarMesh Mesh { get; }

    /// <summary>The potential at a point of the graph in volts, from those of the nodes; 0 where the point is none of these.</summary>
    public double VoltsAt(int point, double[] volts) => indices[point] >= 0 ? volts[indices[point]] : 0;

    /// <summary>The operating point of a state, from what is known or made anew.</summary>
    /// <param name="state">A value for each variable.</param>
    /// <param name="except">A branch taken out.</param>
    public OperatingPoint Point(int[] state, Branch? except = null)
    {
        string key = KeyOf(state, except);
        if (known.TryGetValue(key, out var point)) return point;
        if (known.Count >= Most) known.Clear();
        return known[key] = new(this, state, except);
    }

    private int Number(int point) => indices[point] != int.MinValue ? indices[point] : indices[point] = count++;

    // A character for sixteen conditions, and one for the branch.
    private string KeyOf(int[] state, Branch? except)
    {
        Span<char> key = stackalloc char[(distinct.Length / 16) + 2];
        key.Clear();
        for (int i = 0; i < distinct.Length; i++)
            if (distinct[i].HoldsIn(state))
                key[i / 16] |= (char)(1 << (i % 16));
        key[^1] = except is null ? '\0' : (char)(1 + except.Number);
        return new(key);
    }
}
