namespace Hotside.Circuits;

/// <summary>Sets of numbers from 0 on that are merged; the least member of a set stands for it.</summary>
/// <param name="count">How many numbers there are at first, each a set of its own.</param>
internal sealed class DisjointSets(int count)
{
    private readonly List<int> parents = [.. Enumerable.Range(0, count)];

    /// <summary>Adds a number, a set of its own.</summary>
    /// <returns>The number.</returns>
    public int Add()
    {
        parents.Add(parents.Count);
        return parents.Count - 1;
    }

    /// <summary>Makes each number a set of its own again.</summary>
    public void Clear()
    {
        for (int i = 0; i < parents.Count; i++) parents[i] = i;
    }

    /// <summary>The number that stands for a number's set.</summary>
    public int Find(int number)
    {
        while (parents[number] != number) number = parents[number] = parents[parents[number]];
        return number;
    }

    public bool AreOne(int a, int b) => Find(a) == Find(b);

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
