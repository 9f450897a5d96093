namespace Hotside.Layouts.Passes;

/// <summary>Sets that grow together; the smallest member stands for its set, so results follow file order.</summary>
internal sealed class DisjointSets(int count)
{
    private readonly int[] parent = [.. Enumerable.Range(0, count)];

    public int Find(int member)
    {
        while (parent[member] != member) member = parent[member] = parent[parent[member]];
        return member;
    }

    public void Join(int a, int b)
    {
        (a, b) = (Find(a), Find(b));
        if (a > b) (a, b) = (b, a);
        parent[b] = a;
    }
}
