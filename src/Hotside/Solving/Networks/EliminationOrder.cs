using System.Runtime.InteropServices;

namespace Hotside.Solving.Networks;

/// <summary>
/// In which order nodes are eliminated, the one with fewest neighbours first (of equals the one of least number), and which conductances meet where. Found once for a
/// network; numeric work then only follows flat arrays. Before all others come nodes with few neighbours and nothing but straight lines on them: their elimination is the same in
/// every step.
/// </summary>
internal sealed class EliminationOrder
{
    // Eliminating a node with three neighbours lays as many conductances as it takes away.
    private const int FewNeighbours = 3;

    private readonly List<(int Node, int Slot)>[] neighbours;
    private readonly bool[] isGone;
    private readonly int[] degrees;
    private readonly bool[] isBent;
    private readonly PriorityQueue<int, (int Class, int Degree, int Node)> queue = new();
    private readonly List<int> others = [], slots = [], pairs = [];

    /// <summary>The order of a network.</summary>
    public EliminationOrder(Network network)
    {
        int count = network.NodeCount;
        neighbours = new List<(int, int)>[count];
        for (int i = 0; i < count; i++) neighbours[i] = [];
        isGone = new bool[count];
        degrees = new int[count];
        isBent = new bool[count];
        for (int e = 0; e < network.Edges.Length; e++)
            foreach (int node in new[] { network.Edges[e].A, network.Edges[e].B })
                if (node >= 0 && !network.IsStraight(e)) isBent[node] = true;
        EdgeSlots = [.. network.Edges.Select(e => e.A == e.B || e.A < 0 || e.B < 0 ? -1 : SlotOf(e.A, e.B))];
        Pivots = new int[count];
        Starts = new int[count + 1];
        PairStarts = new int[count + 1];
        for (int i = 0; i < count; i++) Wait(i);
        for (int k = 0; k < count; k++)
        {
            Pivots[k] = Next();
            if (EarlyCount == k && ClassOf(Pivots[k]) == 0) EarlyCount++;
            Eliminate(Pivots[k]);
            Starts[k + 1] = others.Count;
            PairStarts[k + 1] = pairs.Count;
        }
        Neighbours = [.. others];
        Slots = [.. slots];
        PairSlots = [.. pairs];
    }

    /// <summary>The nodes in the order of elimination.</summary>
    public int[] Pivots { get; }

    /// <summary>How many of them, the first ones, have nothing but straight lines on them, and none that was eliminated before them had.</summary>
    public int EarlyCount { get; private set; }

    /// <summary>Where the neighbours of each pivot begin in <see cref="Neighbours"/> and <see cref="Slots"/>; one more at the end.</summary>
    public int[] Starts { get; }

    /// <summary>The neighbours that each pivot has left.</summary>
    public int[] Neighbours { get; }

    /// <summary>The slot of the conductance to each of these neighbours.</summary>
    public int[] Slots { get; }

    /// <summary>Where the pairs of each pivot begin in <see cref="PairSlots"/>; one more at the end.</summary>
    public int[] PairStarts { get; }

    /// <summary>The slot between each two neighbours of a pivot: first with second, first with third, and so on.</summary>
    public int[] PairSlots { get; }

    /// <summary>The slot of each edge between two nodes; −1 for the others.</summary>
    public int[] EdgeSlots { get; }

    /// <summary>The number of slots.</summary>
    public int SlotCount { get; private set; }

    private int ClassOf(int node) => isBent[node] || degrees[node] > FewNeighbours ? 1 : 0;

    private void Wait(int node) => queue.Enqueue(node, (ClassOf(node), degrees[node], node));

    private int Next()
    {
        while (true)
        {
            // A node stands in the queue once for each degree it had; only the last entry counts.
            queue.TryDequeue(out int node, out var was);
            if (!isGone[node] && degrees[node] == was.Degree) return node;
        }
    }

    private void Eliminate(int node)
    {
        isGone[node] = true;
        var left = neighbours[node].Where(n => !isGone[n.Node]).ToArray();
        foreach (var (other, slot) in left)
        {
            others.Add(other);
            slots.Add(slot);
            degrees[other]--;
        }
        for (int p = 0; p < left.Length; p++)
        for (int q = p + 1; q < left.Length; q++)
            pairs.Add(SlotOf(left[p].Node, left[q].Node));
        foreach (var (other, _) in left) Wait(other);
        neighbours[node] = [];
    }

    // Searched from the end with the shorter list: a rail has very many neighbours, but few of its neighbours have.
    private int SlotOf(int a, int b)
    {
        var (from, to) = neighbours[a].Count <= neighbours[b].Count ? (a, b) : (b, a);
        foreach (var (node, slot) in CollectionsMarshal.AsSpan(neighbours[from]))
            if (node == to)
                return slot;
        neighbours[a].Add((b, SlotCount));
        neighbours[b].Add((a, SlotCount));
        degrees[a]++;
        degrees[b]++;
        return SlotCount++;
    }
}
