using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving;

/// <summary>
/// Joints of which nothing is known that lie in a ring of such joints, as parallel contacts do: they are computed as alike, so how they share their current is not known.
/// </summary>
internal static class SharedCurrents
{
    /// <summary>Whether each edge lies in such a ring.</summary>
    public static bool[] Of(Network network, Law?[] laws)
    {
        bool[] isShared = new bool[laws.Length];
        int[] joints = [.. Enumerable.Range(0, laws.Length).Where(e => IsJoint(laws[e]) && network.Edges[e].A != network.Edges[e].B)];
        DisjointSets grown = new(network.NodeCount + 1);
        List<int>[] tree = [.. Enumerable.Range(0, network.NodeCount + 1).Select(_ => new List<int>())];
        List<int> closing = [];
        foreach (int e in joints)
        {
            var (a, b) = network.Edges[e];
            if (grown.Join(a + 1, b + 1))
            {
                tree[a + 1].Add(e);
                tree[b + 1].Add(e);
            }
            else closing.Add(e);
        }
        if (closing.Count == 0) return isShared;
        var (up, depth) = Rooted(network, tree);
        DisjointSets within = new(network.NodeCount + 1);
        int[] top = [.. Enumerable.Range(0, network.NodeCount + 1)];
        foreach (int e in closing)
        {
            isShared[e] = true;
            int a = top[within.Find(network.Edges[e].A + 1)], b = top[within.Find(network.Edges[e].B + 1)];
            // Both ends climb to where their ways meet; every joint climbed lies in the ring, and is not climbed again.
            while (a != b)
            {
                if (depth[a] < depth[b]) (a, b) = (b, a);
                int edge = up[a], above = Other(network, edge, a);
                isShared[edge] = true;
                int highest = top[within.Find(above)];
                within.Join(a, above);
                top[within.Find(above)] = highest;
                a = highest;
            }
        }
        return isShared;
    }

    private static bool IsJoint(Law? law) => law is ClampLaw { IsLine: true, Emf: 0, Siemens: >= 0.999 / CopperResistance.Contact };

    private static int Other(Network network, int edge, int node) => network.Edges[edge].A + 1 == node ? network.Edges[edge].B + 1 : network.Edges[edge].A + 1;

    private static (int[] Up, int[] Depth) Rooted(Network network, List<int>[] tree)
    {
        int[] up = new int[tree.Length], depth = new int[tree.Length];
        bool[] seen = new bool[tree.Length];
        Stack<int> open = new();
        for (int root = 0; root < tree.Length; root++)
        {
            if (seen[root]) continue;
            seen[root] = true;
            up[root] = -1;
            open.Push(root);
            while (open.TryPop(out int node))
                foreach (int edge in tree[node])
                {
                    int next = Other(network, edge, node);
                    if (seen[next]) continue;
                    (seen[next], up[next], depth[next]) = (true, edge, depth[node] + 1);
                    open.Push(next);
                }
        }
        return (up, depth);
    }
}
