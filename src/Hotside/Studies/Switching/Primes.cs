using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// The minimal combinations of a function: its prime implicants over sets of positions. States that do not matter (short circuits) may be
/// covered; a combination that meets nothing else is none.
/// </summary>
internal sealed class Primes(ContactGraph graph)
{
    private const int Most = 400;

    private readonly Diagrams d = graph.Diagrams;

    public Control Of(int function, int indifferent = Diagrams.Never)
    {
        if (function == Diagrams.Never) return new([]);
        var cubes = All(d.Or(function, indifferent)).Where(c => d.And(Function(c), function) != Diagrams.Never).ToList();
        return new([.. cubes.Select(Combination).OrderBy(c => c.All.Length).ThenBy(Key, StringComparer.Ordinal)]);
    }

    private List<ImmutableSortedDictionary<int, ulong>> All(int f)
    {
        var memo = new Dictionary<int, List<ImmutableSortedDictionary<int, ulong>>>();
        return Of(f);

        List<ImmutableSortedDictionary<int, ulong>> Of(int f)
        {
            if (f == Diagrams.Never) return [];
            if (f == Diagrams.Always) return [ImmutableSortedDictionary<int, ulong>.Empty];
            if (memo.TryGetValue(f, out var known)) return known;
            int variable = d.VariableOf(f), count = d.PositionsOf(variable);
            var found = new List<ImmutableSortedDictionary<int, ulong>>();
            // Largest sets first, so that a cube is never listed after one that it contains.
            foreach (var (set, common) in Sets(f, variable, count))
                foreach (var cube in Of(common))
                {
                    var whole = set == (1UL << count) - 1 ? cube : cube.Add(variable, set);
                    if (!found.Exists(other => Contains(other, whole))) found.Add(whole);
                }
            if (found.Count > Most) throw new BudgetException();
            memo[f] = found;
            return found;
        }
    }

    // Unions of groups of positions with the same rest, each with what holds in all of them.
    private List<(ulong Set, int Common)> Sets(int f, int variable, int count)
    {
        var groups = Enumerable.Range(0, count).GroupBy(i => d.Child(f, i)).Where(g => g.Key != Diagrams.Never)
            .Select(g => (Common: g.Key, Set: g.Aggregate(0UL, (s, i) => s | (1UL << i)))).ToArray();
        var sets = new List<(ulong, int)>();
        for (int choice = 1; choice < 1 << groups.Length; choice++)
        {
            ulong set = 0;
            int common = Diagrams.Always;
            for (int g = 0; g < groups.Length; g++)
                if ((choice >> g & 1) == 1)
                {
                    set |= groups[g].Set;
                    common = d.And(common, groups[g].Common);
                }
            if (common != Diagrams.Never) sets.Add((set, common));
        }
        return [.. sets.OrderByDescending(s => ulong.PopCount(s.Item1)).ThenBy(s => s.Item1)];
    }

    private static bool Contains(ImmutableSortedDictionary<int, ulong> larger, ImmutableSortedDictionary<int, ulong> smaller)
    {
        foreach (var (v, set) in larger)
            if (!smaller.TryGetValue(v, out ulong other) || (other & ~set) != 0)
                return false;
        return true;
    }

    private int Function(ImmutableSortedDictionary<int, ulong> cube)
    {
        int function = Diagrams.Always;
        foreach (var (variable, set) in cube) function = d.And(function, d.In(variable, Positions(set)));
        return function;
    }

    private Combination Combination(ImmutableSortedDictionary<int, ulong> cube) =>
        new([.. cube.Select(c => new PositionSet(graph.Variables[c.Key], [.. Positions(c.Value).Select(i => graph.Variables[c.Key].Actuator.Positions[i])]))]);

    private static int[] Positions(ulong set) => [.. Enumerable.Range(0, 64).Where(i => (set >> i & 1) == 1)];

    // By the circuit's order of variables, not by their names.
    private string Key(Combination c) => string.Join('|', c.All.Select(s => $"{Array.IndexOf(graph.Variables, s.Variable):D4}" + string.Join(',', s.Positions.Select(p => s.Variable.Actuator.Positions.IndexOf(p)))));
}
