using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>
/// The greatest currents of some edges over the combinations of what controls some loads: all of them where there are few; else each load alone, all that help together, and
/// from the best found one switch after the other for as long as the current rises.
/// </summary>
internal sealed class StateSearch
{
    /// <summary>The most combinations that are all computed.</summary>
    public const int MostCombinations = 4_096;

    private const int MostFlips = 250;

    private readonly RunningCircuit running;
    private readonly ImmutableArray<LoadCurrent> loads;
    private readonly ImmutableArray<(int Edge, ModelElement? Element)> edges;
    private readonly ImmutableArray<Variable> variables;
    private readonly Dictionary<string, double[]> solved = new(StringComparer.Ordinal);

    /// <summary>A search.</summary>
    /// <param name="running">The circuit.</param>
    /// <param name="loads">The loads that matter.</param>
    /// <param name="edges">Edges of the model, or elements.</param>
    public StateSearch(RunningCircuit running, ImmutableArray<LoadCurrent> loads, ImmutableArray<(int Edge, ModelElement? Element)> edges)
    {
        (this.running, this.loads, this.edges) = (running, loads, edges);
        variables = VariablesOf(loads);
    }

    /// <summary>What controls the loads.</summary>
    public static ImmutableArray<Variable> VariablesOf(ImmutableArray<LoadCurrent> loads) => [.. loads.SelectMany(l => l.Combinations).SelectMany(c => c.All).Select(s => s.Variable).Distinct()];

    /// <summary>The number of combinations.</summary>
    public double Combinations => variables.Aggregate(1.0, (n, v) => n * v.Actuator.Positions.Length);

    /// <summary>The greatest current of each edge.</summary>
    /// <param name="most">The most combinations that are all computed.</param>
    public ImmutableArray<WorstCurrent> Greatest(int most) => Combinations <= most ? Enumerated((int)Combinations) : [.. edges.Select((_, i) => Searched(i))];

    private ImmutableArray<WorstCurrent> Enumerated(int combinations)
    {
        var best = edges.Select(_ => new WorstCurrent(-1, CurrentBasis.Enumerated, [])).ToArray();
        for (int n = 0; n < combinations; n++)
        {
            string[] at = new string[variables.Length];
            for (int v = 0, rest = n; v < at.Length; rest /= variables[v].Actuator.Positions.Length, v++) at[v] = variables[v].Actuator.Positions[rest % variables[v].Actuator.Positions.Length];
            double[] amperes = Amperes(at);
            for (int i = 0; i < best.Length; i++)
                if (amperes[i] > best[i].Amperes * (1 + 1e-9))
                    best[i] = new(amperes[i], CurrentBasis.Enumerated, Positions(at));
        }
        return [.. best.Select(b => b with { Amperes = Math.Max(b.Amperes, 0) })];
    }

    private WorstCurrent Searched(int edge)
    {
        string[] rest = [.. variables.Select(v => v.Actuator.Rest)];
        var alone = loads.Select(l => With(rest, l)).ToArray();
        double[] signed = [.. alone.Select(a => Signed(a)[edge])];
        string[][] starts =
        [
            rest, .. alone, Together(rest, _ => true), Together(rest, i => signed[i] > 0), Together(rest, i => signed[i] < 0),
        ];
        string[] best = starts.MaxBy(s => Amperes(s)[edge])!;
        double amperes = Amperes(best)[edge];
        int flips = 0;
        for (bool rises = true; rises && flips < MostFlips;)
        {
            rises = false;
            for (int v = 0; v < variables.Length; v++)
                foreach (string position in variables[v].Actuator.Positions)
                {
                    if (best[v] == position || ++flips > MostFlips) continue;
                    string[] next = (string[])best.Clone();
                    next[v] = position;
                    if (Amperes(next)[edge] is var more && more > amperes * (1 + 1e-9)) (best, amperes, rises) = (next, more, true);
                }
        }
        return new(amperes, CurrentBasis.Searched, Positions(best));

        string[] Together(string[] from, Predicate<int> isTaken)
        {
            string[] at = from;
            // The greatest first, for a later one may need another position.
            foreach (int i in Enumerable.Range(0, loads.Length).Where(i => isTaken(i)).OrderByDescending(i => Math.Abs(signed[i])))
                if (loads[i].Combinations.FirstOrDefault(c => c.All.All(s => at[variables.IndexOf(s.Variable)] == s.Variable.Actuator.Rest || s.Positions.Contains(at[variables.IndexOf(s.Variable)]))) is { } free)
                    at = With(at, free);
            return at;
        }
    }

    private string[] With(string[] at, LoadCurrent load) => With(at, load.Combinations[0]);

    private string[] With(string[] at, Combination combination)
    {
        string[] next = (string[])at.Clone();
        foreach (var set in combination.All)
            if (variables.IndexOf(set.Variable) is var v && !set.Positions.Contains(next[v]))
                next[v] = set.Positions[0];
        return next;
    }

    private double[] Amperes(string[] at) => [.. Signed(at).Select(Math.Abs)];

    private double[] Signed(string[] at)
    {
        string key = string.Join('|', at);
        if (solved.TryGetValue(key, out double[]? found)) return found;
        var point = running.Solve(running.StateOf(Positions(at)));
        return solved[key] = running.IsShort(point) ? new double[edges.Length] : [.. edges.Select(e => e.Element is { } element ? running.AmperesOf(point, element) : running.AmperesOf(point, e.Edge))];
    }

    private ImmutableArray<SetPosition> Positions(string[] at) => [.. variables.Select((v, i) => new SetPosition(v.Part, v.Actuator.Name, at[i])).Where((p, i) => p.Position != variables[i].Actuator.Rest)];
}
