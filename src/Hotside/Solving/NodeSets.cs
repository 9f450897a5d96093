namespace Hotside.Solving;

/// <summary>Nodes 0 to n − 1 that are merged into sets.</summary>
internal sealed class NodeSets(int count)
{
    private readonly List<int> parents = [.. Enumerable.Range(0, count)];

    /// <summary>Adds a node in a set of its own.</summary>
    /// <returns>Its number.</returns>
    public int Add()
    {
        parents.Add(parents.Count);
        return parents.Count - 1;
    }

    /// <summary>The node that stands for a set: its least.</summary>
    public int Find(int node)
    {
        while (parents[node] != node) node = parents[node] = parents[parents[node]];
        return node;
    }

    /// <summary>Merges two sets.</summary>
    /// <returns>Whether they were two.</returns>
    public bool Join(int a, int b)
    {
        int first = Find(a), second = Find(b);
        if (first == second) return false;
        parents[Math.Max(first, second)] = Math.Min(first, second);
        return true;
    }
}
