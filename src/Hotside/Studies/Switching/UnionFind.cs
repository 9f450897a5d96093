namespace Hotside.Studies.Switching;

/// <summary>Sets of numbers that are merged; the representative of a set is its least member.</summary>
internal sealed class UnionFind
{
    private readonly int[] parents;

    public UnionFind(int count)
    {
        parents = new int[count];
        for (int i = 0; i < count; i++) parents[i] = i;
    }

    public int Find(int i)
    {
        while (parents[i] != i) i = parents[i] = parents[parents[i]];
        return i;
    }

    public bool AreOne(int a, int b) => Find(a) == Find(b);

    public void Join(int a, int b)
    {
        int first = Find(a), second = Find(b);
        if (first < second) parents[second] = first;
        else parents[first] = second;
    }
}
