namespace Hotside.Studies.Switching;

/// <summary>
/// Two paths without a common vertex, from the two ends of a load to two terminals: a flow of two units through vertices of capacity one, found by two augmenting searches.
/// </summary>
internal sealed class DisjointPaths
{
    // Arcs come in pairs, one with capacity and its reverse; the partner of arc i is i ^ 1.
    private readonly List<int>[] leaving;
    private readonly List<int> heads = [];
    private readonly List<int> edgeOf = [];
    private readonly List<bool> isFree = [];

    private DisjointPaths(int nodeCount)
    {
        leaving = new List<int>[nodeCount];
        for (int i = 0; i < nodeCount; i++) leaving[i] = [];
    }

    /// <summary>Finds the two paths.</summary>
    /// <param name="vertexCount">The number of vertices.</param>
    /// <param name="edges">The edges, each with the number by which the caller knows it.</param>
    /// <param name="ends">The two ends of the load; different.</param>
    /// <param name="terminals">Where the paths end; different. No path leads through a terminal.</param>
    /// <returns>The path of each end as edges from the end to its terminal, and the terminal; <see langword="null"/> when there is none.</returns>
    public static (EndPath First, EndPath Second)? Find(
        int vertexCount, IEnumerable<(int A, int B, int Edge)> edges, (int First, int Second) ends, (int First, int Second) terminals)
    {
        int source = 2 * vertexCount, sink = source + 1;
        DisjointPaths flow = new(sink + 1);
        bool IsTerminal(int v) => v == terminals.First || v == terminals.Second;
        for (int v = 0; v < vertexCount; v++) flow.Add(2 * v, IsTerminal(v) ? sink : (2 * v) + 1, -1);
        foreach (var (a, b, edge) in edges)
        {
            if (!IsTerminal(a)) flow.Add((2 * a) + 1, 2 * b, edge);
            if (!IsTerminal(b)) flow.Add((2 * b) + 1, 2 * a, edge);
        }
        flow.Add(source, 2 * ends.First, -1);
        flow.Add(source, 2 * ends.Second, -1);
        if (!flow.Augment(source, sink) || !flow.Augment(source, sink)) return null;
        return (flow.Follow(2 * ends.First, sink), flow.Follow(2 * ends.Second, sink));
    }

    private void Add(int from, int to, int edge)
    {
        leaving[from].Add(heads.Count);
        leaving[to].Add(heads.Count + 1);
        heads.AddRange([to, from]);
        edgeOf.AddRange([edge, edge]);
        isFree.AddRange([true, false]);
    }

    private bool Augment(int source, int sink)
    {
        int[] came = new int[leaving.Length];
        Array.Fill(came, -1);
        Queue<int> open = new([source]);
        while (came[sink] < 0 && open.TryDequeue(out int node))
            foreach (int arc in leaving[node])
            {
                int to = heads[arc];
                if (to == source || came[to] >= 0 || !isFree[arc]) continue;
                came[to] = arc;
                open.Enqueue(to);
            }
        if (came[sink] < 0) return false;
        for (int node = sink; node != source; node = heads[came[node] ^ 1])
        {
            isFree[came[node]] = false;
            isFree[came[node] ^ 1] = true;
        }
        return true;
    }

    private EndPath Follow(int node, int sink)
    {
        List<int> edges = [];
        while (true)
        {
            int arc = leaving[node].First(a => (a & 1) == 0 && !isFree[a]);
            if (heads[arc] == sink) return new(edges, node / 2);
            if (edgeOf[arc] >= 0) edges.Add(edgeOf[arc]);
            node = heads[arc];
        }
    }
}

/// <summary>A path from one end of a load.</summary>
/// <param name="Edges">Its edges from the load outwards.</param>
/// <param name="Terminal">Where it ends.</param>
internal sealed record EndPath(List<int> Edges, int Terminal);
