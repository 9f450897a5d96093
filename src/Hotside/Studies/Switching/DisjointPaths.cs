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
    private readonly int[] came;
    private readonly Queue<int> open = new();
    private readonly Queue<(int Node, int Arc)> later = new();
    private readonly int vertexCount;
    private int count;

    /// <summary>Room for a search that is made again and again.</summary>
    /// <param name="vertexCount">The number of vertices.</param>
    /// <param name="mostEdges">The greatest number of edges.</param>
    public DisjointPaths(int vertexCount, int mostEdges)
    {
        this.vertexCount = vertexCount;
        int arcs = 2 * (vertexCount + (2 * mostEdges) + 2);
        firstArc = new int[(2 * vertexCount) + 2];
        came = new int[firstArc.Length];
        nextArc = new int[arcs];
        heads = new int[arcs];
        edgeOf = new int[arcs];
        isFree = new bool[arcs];
        isDear = new bool[arcs];
    }

    /// <summary>Finds the two paths.</summary>
    /// <param name="edges">The edges, each with the number by which the caller knows it, and whether it is better avoided.</param>
    /// <param name="ends">The two ends of the load; different.</param>
    /// <param name="terminals">Where the paths end; different. No path leads through a terminal.</param>
    /// <returns>The path of each end as edges from the end to its terminal, and the terminal; <see langword="null"/> when there is none.</returns>
    public (EndPath First, EndPath Second)? Find(List<(int A, int B, int Edge, bool IsDear)> edges, (int First, int Second) ends, (int First, int Second) terminals)
    {
        int source = 2 * vertexCount, sink = source + 1;
        count = 0;
        Array.Fill(firstArc, -1);
        for (int v = 0; v < vertexCount; v++) Add(2 * v, IsTerminal(v) ? sink : (2 * v) + 1, -1, false);
        foreach (var (a, b, edge, isDear) in edges)
        {
            if (!IsTerminal(a)) Add((2 * a) + 1, 2 * b, edge, isDear);
            if (!IsTerminal(b)) Add((2 * b) + 1, 2 * a, edge, isDear);
        }
        Add(source, 2 * ends.First, -1, false);
        Add(source, 2 * ends.Second, -1, false);
        if (!Augment(source, sink) || !Augment(source, sink)) return null;
        return (Follow(2 * ends.First, sink), Follow(2 * ends.Second, sink));

        bool IsTerminal(int v) => v == terminals.First || v == terminals.Second;
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
        Array.Fill(came, -1);
        open.Clear();
        open.Enqueue(source);
        // What is reached over an edge better avoided waits until all else is exhausted.
        later.Clear();
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
