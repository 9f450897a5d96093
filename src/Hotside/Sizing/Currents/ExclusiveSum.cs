using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>
/// The greatest sum of the currents of some loads over all positions: by Kirchhoff's law a bound for what joins them to the rest, low and high beam not counted together. One
/// variable after the other is put into each of its positions; loads that no longer have a variable in common are summed by themselves.
/// </summary>
internal sealed class ExclusiveSum
{
    // Own choice; a vehicle takes a few hundred.
    private const int MostSteps = 20_000;

    private int steps;

    /// <summary>The greatest sum.</summary>
    public static WorstSum Of(IEnumerable<LoadCurrent> loads)
    {
        ExclusiveSum sum = new();
        LoadCurrent[] all = [.. loads];
        var (amperes, positions) = sum.Greatest([.. all.Where(l => l.Amperes > l.Stray).Select(l => new Open(l, l.When))]);
        return new(amperes + all.Sum(l => l.Stray), positions, sum.steps <= MostSteps);
    }

    private (double Amperes, ImmutableArray<SetPosition> Positions) Greatest(ImmutableArray<Open> loads)
    {
        double amperes = 0;
        var positions = ImmutableArray.CreateBuilder<SetPosition>();
        foreach (var group in Groups(loads))
        {
            var (more, set) = OfGroup(group);
            amperes += more;
            positions.AddRange(set);
        }
        return (amperes, positions.ToImmutable());
    }

    private (double Amperes, ImmutableArray<SetPosition> Positions) OfGroup(ImmutableArray<Open> group)
    {
        if (group.Length == 1 || ++steps > MostSteps)
            return (group.Sum(l => l.Load.Amperes - l.Load.Stray), [.. group[0].When.MinBy(c => c.All.Length)!.All.Select(RunningCircuit.First)]);
        var variable = group.SelectMany(l => l.When.SelectMany(c => c.All.Select(s => s.Variable)).Distinct()).GroupBy(v => v).MaxBy(g => g.Count())!.Key;
        (double Amperes, ImmutableArray<SetPosition> Positions) best = (-1, []);
        foreach (string position in variable.Actuator.Positions)
        {
            var (amperes, set) = Greatest([.. group.Select(l => l.With(variable, position)).Where(l => !l.When.IsEmpty)]);
            if (amperes > best.Amperes * (1 + 1e-12)) best = (amperes, set.Insert(0, new(variable.Part, variable.Actuator.Name, position)));
        }
        return best;
    }

    // Loads that are on whatever stands where are groups of their own.
    private static IEnumerable<ImmutableArray<Open>> Groups(ImmutableArray<Open> loads)
    {
        DisjointSets sets = new(loads.Length);
        Dictionary<Variable, int> first = [];
        for (int i = 0; i < loads.Length; i++)
            if (!loads[i].IsOn)
                foreach (var variable in loads[i].When.SelectMany(c => c.All).Select(s => s.Variable))
                    if (!first.TryAdd(variable, i))
                        sets.Join(first[variable], i);
        return Enumerable.Range(0, loads.Length).GroupBy(sets.Find).Select(g => g.Select(i => loads[i]).ToImmutableArray());
    }

    private sealed record Open(LoadCurrent Load, ImmutableArray<Combination> When)
    {
        public bool IsOn => When.Any(c => c.All.IsEmpty);

        public Open With(Variable variable, string position) => this with
        {
            When =
            [
                .. When.Where(c => c.All.All(s => s.Variable != variable || s.Positions.Contains(position)))
                    .Select(c => new Combination([.. c.All.Where(s => s.Variable != variable)])),
            ],
        };
    }
}

/// <summary>The greatest sum of some loads' currents.</summary>
/// <param name="Amperes">Amperes.</param>
/// <param name="Positions">Positions in which it comes about; what is not named rests.</param>
/// <param name="IsExact">Whether all positions were looked at; else loads that exclude each other may be counted together.</param>
internal sealed record WorstSum(double Amperes, ImmutableArray<SetPosition> Positions, bool IsExact);
