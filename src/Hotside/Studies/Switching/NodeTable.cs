using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>The nodes of decision diagrams, each function once. Flat arrays, for a study makes a hundred thousand of them.</summary>
internal sealed class NodeTable
{
    private readonly ImmutableArray<int> arities;
    private int[] variables = new int[1024];
    private int[] firstChild = new int[1024];
    private int[] chained = new int[1024];
    private int[] heads = new int[1024];
    private int[] children = new int[4096];
    private int childCount;

    /// <summary>A table with the two ends, which have no variable.</summary>
    /// <param name="arities">The number of values of each variable.</param>
    public NodeTable(ImmutableArray<int> arities)
    {
        this.arities = arities;
        variables[0] = variables[1] = int.MaxValue;
        Count = 2;
    }

    public int Count { get; private set; }

    public int VariableOf(int node) => variables[node];

    public ReadOnlySpan<int> ChildrenOf(int node) => children.AsSpan(firstChild[node], node < 2 ? 0 : arities[variables[node]]);

    public int ChildOf(int node, int value) => children[firstChild[node] + value];

    /// <summary>The node of a variable and its children; 0 when there is none.</summary>
    public int Find(int variable, ReadOnlySpan<int> kids)
    {
        for (int node = heads[HashOf(variable, kids) & (heads.Length - 1)]; node != 0; node = chained[node])
            if (variables[node] == variable && ChildrenOf(node).SequenceEqual(kids))
                return node;
        return 0;
    }

    /// <summary>Adds a node that is not there.</summary>
    public int Add(int variable, ReadOnlySpan<int> kids)
    {
        if (Count == variables.Length) Grow();
        if (childCount + kids.Length > children.Length) Array.Resize(ref children, 2 * children.Length);
        int node = Count++;
        variables[node] = variable;
        firstChild[node] = childCount;
        kids.CopyTo(children.AsSpan(childCount));
        childCount += kids.Length;
        Chain(node);
        return node;
    }

    private void Chain(int node)
    {
        ref int head = ref heads[HashOf(variables[node], ChildrenOf(node)) & (heads.Length - 1)];
        chained[node] = head;
        head = node;
    }

    private void Grow()
    {
        int size = 2 * variables.Length;
        Array.Resize(ref variables, size);
        Array.Resize(ref firstChild, size);
        Array.Resize(ref chained, size);
        heads = new int[size];
        for (int node = 2; node < Count; node++) Chain(node);
    }

    // Never seen from outside: equal functions are found by it, and numbered in the order in which they were made.
    private static int HashOf(int variable, ReadOnlySpan<int> kids)
    {
        uint hash = (uint)variable;
        foreach (int kid in kids) hash = (hash ^ (uint)kid) * 0x9E3779B1;
        return (int)(hash ^ (hash >> 15));
    }
}
