namespace Hotside.Studies.Switching;

/// <summary>
/// Biconnected components of an undirected multigraph: two edges are in one block if they lie on a common cycle. Hopcroft and Tarjan's depth-first
/// search (Communications of the ACM 16, 1973, 372), without recursion.
/// </summary>
internal static class Blocks
{
    /// <summary>The block of each edge.</summary>
    /// <param name="vertexCount">The number of vertices.</param>
    /// <param name="edges">The edges.</param>
    /// <returns>For each edge the number of its block; −1 for a loop.</returns>
    public static int[] Of(int vertexCount, IReadOnlyList<(int A, int B)> edges)
    {
        var incident = new List<int>[vertexCount];
        for (int v = 0; v < vertexCount; v++) incident[v] = [];
        int[] blocks = new int[edges.Count];
        for (int e = 0; e < edges.Count; e++)
        {
            blocks[e] = -1;
            if (edges[e].A == edges[e].B) continue;
            incident[edges[e].A].Add(e);
            incident[edges[e].B].Add(e);
        }
        int[] depth = new int[vertexCount], low = new int[vertexCount], next = new int[vertexCount];
        bool[] used = new bool[edges.Count];
        Stack<(int Vertex, int Edge)> path = new();
        Stack<int> pending = new();
        int time = 0, count = 0;
        for (int root = 0; root < vertexCount; root++)
        {
            if (depth[root] != 0) continue;
            Enter(root, -1);
            while (path.TryPeek(out var top))
                if (next[top.Vertex] < incident[top.Vertex].Count) Advance(top.Vertex, incident[top.Vertex][next[top.Vertex]++]);
                else Leave();
        }
        return blocks;

        void Enter(int vertex, int edge)
        {
            depth[vertex] = low[vertex] = ++time;
            path.Push((vertex, edge));
        }

        void Advance(int vertex, int edge)
        {
            if (used[edge]) return;
            used[edge] = true;
            pending.Push(edge);
            int other = edges[edge].A == vertex ? edges[edge].B : edges[edge].A;
            if (depth[other] == 0) Enter(other, edge);
            else low[vertex] = Math.Min(low[vertex], depth[other]);
        }

        void Leave()
        {
            var (vertex, edge) = path.Pop();
            if (!path.TryPeek(out var parent)) return;
            low[parent.Vertex] = Math.Min(low[parent.Vertex], low[vertex]);
            if (low[vertex] < depth[parent.Vertex]) return;
            int last;
            do blocks[last = pending.Pop()] = count;
            while (last != edge);
            count++;
        }
    }
}
