namespace Hotside.Studies.Switching;

/// <summary>
/// Two paths without a common vertex, from the two ends of a load to two terminals: a flow of two units through vertices of capacity one, found by two augmenting
/// searches. Edges that cost nothing are taken before those that do, as far as the two searches see.
/// </summary>
internal sealed class DisjointPaths
{
    // Every vertex is two nodes, where a path comes in and where it goes out. Arcs come in pairs, one with capacity and its reverse; the partner of arc i is i ^ 1.
    private readonly int[] firstArc;
    private readonly int[] nextArc;
    private readonly int[] heads;
    private readonly int[] edgeOf;
    private readonly bool[] isFree;
    private readonly bool[] isDear;
    private int count;

    private DisjointPaths(int nodeCount, int arcCount)
    {
        firstArc = new int[nodeCount];
        Array.Fill(firstArc, -1);
        nextArc = new int[arcCount];
        heads = new int[arcCount];
        edgeOf = new int[arcCount];
        isFree = new bool[arcCount];
        isDear = new bool[arcCount];
    }

    /// <summary>Finds the two paths.</summary>
    /// <param name="vertexCount">The number of vertices.</param>
    /// <param name="edges">The edges, each with the number by which the caller knows it, and whether it is better avoided.</param>
    /// <param name="ends">The two ends of the load; different.</param>
    /// <param name="terminals">Where the paths end; different. No path leads through a terminal.</param>
    /// <returns>The path of each end as edges from the end to its terminal, and the terminal; <see langword="null"/> when there is none.</returns>
    public static (EndPath First, EndPath Second)? Find(
        int vertexCount, List<(int A, int B, int Edge, bool IsDear)> edges, (int First, int Second) ends, (int First, int Second) terminals)
    {
        int source = 2 * vertexCount, sink = source + 1;
        DisjointPaths flow = new(sink + 1, 2 * (vertexCount + (2 * edges.Count) + 2));
        bool IsTerminal(int v) => v == terminals.First || v == terminals.Second;
        for (int v = 0; v < vertexCount; v++) flow.Add(2 * v, IsTerminal(v) ? sink : (2 * v) + 1, -1, false);
        foreach (var (a, b, edge, isDear) in edges)
        {
            if (!IsTerminal(a)) flow.Add((2 * a) + 1, 2 * b, edge, isDear);
            if (!IsTerminal(b)) flow.Add((2 * b) + 1, 2 * a, edge, isDear);
        }
        flow.Add(source, 2 * ends.First, -1, false);
        flow.Add(source, 2 * ends.Second, -1, false);
        if (!flow.Augment(source, sink) || !flow.Augment(source, sink)) return null;
        return (flow.Follow(2 * ends.First, sink), flow.Follow(2 * ends.Second, sink));
    }

    private void Add(int from, int to, int edge, bool dear)
    {
        Put(from, to, edge, true, dear);
        Put(to, from, edge, false, false);
    }

    private void Put(int from, int to, int edge, bool free, bool dear)
    {
        (heads[count], edgeOf[count], isFree[count], isDear[count]) = (to, edge, free, dear);
        nextArc[count] = firstArc[from];
        firstArc[from] = count++;
    }

    private bool Augment(int source, int sink)
    {
        int[] came = new int[firstArc.Length];
        Array.Fill(came, -1);
        // What is reached over an edge better avoided waits until all else is exhausted.
        Queue<int> open = new([source]);
        Queue<(int Node, int Arc)> later = new();
        while (came[sink] < 0)
        {
            if (!open.TryDequeue(out int node))
            {
                if (!later.TryDequeue(out var late)) return false;
                if (came[late.Node] >= 0) continue;
                came[node = late.Node] = late.Arc;
                if (node == sink) break;
            }
            for (int arc = firstArc[node]; arc >= 0; arc = nextArc[arc])
            {
                int to = heads[arc];
                if (to == source || came[to] >= 0 || !isFree[arc]) continue;
                if (isDear[arc])
                {
                    later.Enqueue((to, arc));
                    continue;
                }
                came[to] = arc;
                open.Enqueue(to);
            }
        }
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
            int arc = firstArc[node];
            while ((arc & 1) == 1 || isFree[arc]) arc = nextArc[arc];
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
