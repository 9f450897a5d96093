namespace Hotside.Studies.Switching;

/// <summary>
/// What of a graph may lie between two poles: all that is left once its ends are taken off one after the other. What was taken off hangs on it by stems, and of these
/// a way from a point to a pole passes but the point's own.
/// </summary>
internal sealed class Stems
{
    private readonly int[] next;
    private readonly bool[] isCore;

    /// <summary>Takes a graph apart.</summary>
    /// <param name="neighbours">For each vertex the other ends of its edges.</param>
    /// <param name="poles">The vertices that are never taken off.</param>
    public Stems(int[][] neighbours, IEnumerable<int> poles)
    {
        next = new int[neighbours.Length];
        isCore = new bool[neighbours.Length];
        Array.Fill(next, -1);
        Array.Fill(isCore, true);
        HashSet<int> kept = [.. poles];
        int[] degrees = [.. neighbours.Select(n => n.Length)];
        Stack<int> ends = new(Enumerable.Range(0, degrees.Length).Where(v => degrees[v] <= 1 && !kept.Contains(v)));
        while (ends.TryPop(out int vertex))
        {
            if (!isCore[vertex]) continue;
            isCore[vertex] = false;
            foreach (int other in neighbours[vertex])
            {
                if (!isCore[other]) continue;
                next[vertex] = other;
                if (--degrees[other] <= 1 && !kept.Contains(other)) ends.Push(other);
            }
        }
    }

    /// <summary>Whether a vertex is left.</summary>
    public bool IsCore(int vertex) => isCore[vertex];

    /// <summary>The vertices from one to what is left.</summary>
    public HashSet<int> Of(int vertex)
    {
        HashSet<int> stem = [];
        for (int at = vertex; at >= 0 && !isCore[at]; at = next[at]) stem.Add(at);
        return stem;
    }
}
