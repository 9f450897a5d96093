using System.Collections.Immutable;

namespace Hotside.Alterations;

/// <summary>Which groups come before which, without circles.</summary>
internal sealed class Precedence
{
    private readonly List<Need>[] needs;

    public Precedence(int count) => needs = [.. Enumerable.Range(0, count).Select(_ => new List<Need>())];

    /// <summary>What a group waits for.</summary>
    public IReadOnlyList<Need> NeedsOf(int group) => needs[group];

    /// <summary>Adds a need unless it closes a circle; one that is met within a group is met.</summary>
    /// <returns>Whether it can be met.</returns>
    public bool TryAdd(Need need)
    {
        if (need.First == need.Then) return true;
        if (Waits(need.First, need.Then, [])) return false;
        needs[need.Then].Add(need);
        return true;
    }

    /// <summary>All groups, each behind what it needs, else in their own order.</summary>
    public ImmutableArray<int> Sorted()
    {
        var order = ImmutableArray.CreateBuilder<int>(needs.Length);
        bool[] done = new bool[needs.Length];
        while (order.Count < needs.Length)
        {
            int next = Array.FindIndex(done, d => !d);
            while (done[next] || needs[next].Any(n => !done[n.First])) next++;
            done[next] = true;
            order.Add(next);
        }
        return order.ToImmutable();
    }

    private bool Waits(int group, int other, HashSet<int> seen) =>
        group == other || (seen.Add(group) && needs[group].Any(n => Waits(n.First, other, seen)));
}
