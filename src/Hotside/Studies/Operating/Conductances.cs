using System.Numerics;

namespace Hotside.Studies.Operating;

/// <summary>
/// Node potentials of a network of conductances with currents fed in, by eliminating node after node (star to mesh), the one with fewest neighbours first: wiring is
/// nearly a tree. Nothing is subtracted, so that conductances of any spread may stand side by side; an island without a way to the reference gets 0 V somewhere, and
/// the right differences.
/// </summary>
internal sealed class Conductances
{
    // Nodes of so few neighbours are kept by their number of them; there are seldom others.
    private const int Levels = 4;

    private readonly List<Node> nodes = [];
    private readonly ulong[][] levels = new ulong[Levels][];

    private sealed class Node
    {
        public int Level { get; set; } = Levels;

        public List<(int Node, double Siemens)> Others { get; } = new(4);

        public double ToReference { get; set; }

        public double Injected { get; set; }

        public double Sum { get; set; }

        public bool IsGone { get; set; }

        public void Add(int other, double siemens)
        {
            int at = IndexOf(other);
            if (at < 0) Others.Add((other, siemens));
            else Others[at] = (other, Others[at].Siemens + siemens);
        }

        public void Remove(int other) => Others.RemoveAt(IndexOf(other));

        private int IndexOf(int other)
        {
            for (int i = 0; i < Others.Count; i++)
                if (Others[i].Node == other)
                    return i;
            return -1;
        }
    }

    /// <summary>Adds a node; the first has number 0.</summary>
    public void AddNode() => nodes.Add(new());

    /// <summary>Adds a conductance.</summary>
    /// <param name="a">A node; below 0 the reference.</param>
    /// <param name="b">Another node; below 0 the reference.</param>
    /// <param name="siemens">The conductance in siemens, above 0.</param>
    public void Add(int a, int b, double siemens)
    {
        if (a == b) return;
        if (a < 0) nodes[b].ToReference += siemens;
        else if (b < 0) nodes[a].ToReference += siemens;
        else
        {
            nodes[a].Add(b, siemens);
            nodes[b].Add(a, siemens);
        }
    }

    /// <summary>Feeds a current into a node; the reference, below 0, takes any.</summary>
    public void Inject(int node, double amperes)
    {
        if (node >= 0) nodes[node].Injected += amperes;
    }

    /// <summary>The potentials against the reference in volts; uses the network up.</summary>
    public double[] Solve()
    {
        Stack<int> order = new(nodes.Count);
        for (int level = 0; level < Levels; level++) levels[level] = new ulong[(nodes.Count + 63) / 64];
        for (int i = 0; i < nodes.Count; i++) Place(i);
        while (order.Count < nodes.Count)
        {
            int next = Least();
            order.Push(next);
            Eliminate(next);
        }
        double[] potentials = new double[nodes.Count];
        foreach (int k in order)
        {
            var node = nodes[k];
            if (node.Sum == 0) continue;
            double flow = node.Injected;
            foreach (var (other, siemens) in node.Others) flow += siemens * potentials[other];
            potentials[k] = flow / node.Sum;
        }
        return potentials;
    }

    // The first of those with fewest neighbours.
    private int Least()
    {
        foreach (ulong[] level in levels)
            for (int word = 0; word < level.Length; word++)
                if (level[word] != 0)
                    return (64 * word) + BitOperations.TrailingZeroCount(level[word]);
        int next = -1;
        for (int i = 0; i < nodes.Count; i++)
            if (!nodes[i].IsGone && (next < 0 || nodes[i].Others.Count < nodes[next].Others.Count))
                next = i;
        return next;
    }

    private void Place(int k)
    {
        var node = nodes[k];
        int level = node.IsGone ? Levels : Math.Min(node.Others.Count, Levels);
        if (level == node.Level) return;
        if (node.Level < Levels) levels[node.Level][k / 64] &= ~(1UL << (k % 64));
        if (level < Levels) levels[level][k / 64] |= 1UL << (k % 64);
        node.Level = level;
    }

    // Its neighbours take over its conductances; it keeps its own, to be solved from later.
    private void Eliminate(int k)
    {
        var node = nodes[k];
        node.IsGone = true;
        node.Sum = node.ToReference;
        foreach (var (_, siemens) in node.Others) node.Sum += siemens;
        foreach (var (other, siemens) in node.Others)
        {
            double share = siemens / node.Sum;
            nodes[other].Remove(k);
            nodes[other].ToReference += share * node.ToReference;
            nodes[other].Injected += share * node.Injected;
        }
        for (int a = 0; a < node.Others.Count; a++)
        for (int b = a + 1; b < node.Others.Count; b++)
            Add(node.Others[a].Node, node.Others[b].Node, node.Others[a].Siemens / node.Sum * node.Others[b].Siemens);
        Place(k);
        foreach (var (other, _) in node.Others) Place(other);
    }
}
