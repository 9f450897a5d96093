using System.Collections.Immutable;
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
    private readonly int[] indices;

    /// <summary>Brings branches together.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="branches">The branches: all of a block, so that no current leaves them but by the poles.</param>
    public Neighbourhood(ContactGraph graph, ImmutableArray<Branch> branches)
    {
        (Graph, Branches) = (graph, branches);
        indices = new int[graph.Size];
        Array.Fill(indices, -1);
        Reference = Number(graph.Return);
        foreach (var branch in branches) (_, _) = (Number(branch.Source), Number(branch.Target));
        foreach (var source in graph.Sources) (_, _) = (Number(source.Plus), Number(source.Minus));
        distinct = [.. branches.Select(b => b.When).Concat(graph.Sources.Select(s => s.When)).Where(c => c.IsOpen).Distinct()];
    }

    public ContactGraph Graph { get; }

    public ImmutableArray<Branch> Branches { get; }

    /// <summary>How many points there are; they are numbered anew, for a neighbourhood is small.</summary>
    public int Size { get; private set; }

    /// <summary>The new number of the return.</summary>
    public int Reference { get; }

    /// <summary>The new number of a point of the graph; −1 when it is none of these.</summary>
    public int IndexOf(int point) => indices[point];

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

    private int Number(int point) => indices[point] >= 0 ? indices[point] : indices[point] = Size++;

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
