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

    private const int MostFlips = 250, MostStarts = 4;

    private readonly RunningCircuit running;
    private readonly ImmutableArray<LoadCurrent> loads;
    private readonly ImmutableArray<(int Edge, ModelElement? Element)> edges;
    private readonly ImmutableArray<Variable> variables;
    private readonly Dictionary<string, double[]> solved = new(StringComparer.Ordinal);

    /// <summary>A search.</summary>
    /// <param name="running">The circuit.</param>
    /// <param name="loads">The loads that matter.</param>
    /// <param name="contacts">What stands in the ways that share the current.</param>
    /// <param name="edges">Edges of the model, or elements.</param>
    public StateSearch(RunningCircuit running, ImmutableArray<LoadCurrent> loads, ImmutableArray<Variable> contacts, ImmutableArray<(int Edge, ModelElement? Element)> edges)
    {
        (this.running, this.loads, this.edges) = (running, loads, edges);
        variables = [.. loads.SelectMany(l => l.Combinations).SelectMany(c => c.All).Select(s => s.Variable).Concat(contacts).Distinct()];
    }

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
        int flips = 0;
        (string[] best, double amperes) = (rest, Amperes(rest)[edge]);
        foreach (string[] start in starts.OrderByDescending(s => Amperes(s)[edge]).Take(MostStarts))
            if (Climbed(start) is var top && top.Amperes > amperes * (1 + 1e-9)) (best, amperes) = top;
        // A way opens only where two stand right: two at once, as far as there are steps left.
        for (int v = 0; v < variables.Length && flips < MostFlips; v++)
            foreach (string position in variables[v].Actuator.Positions)
            {
                if (best[v] == position) continue;
                string[] moved = (string[])best.Clone();
                moved[v] = position;
                if (Climbed(moved) is var top && top.Amperes > amperes * (1 + 1e-9)) (best, amperes) = top;
            }
        return new(amperes, CurrentBasis.Searched, Positions(best));

        // One switch after the other for as long as the current rises.
        (string[] At, double Amperes) Climbed(string[] at)
        {
            double most = Amperes(at)[edge];
            for (bool rises = true; rises && flips < MostFlips;)
            {
                rises = false;
                for (int v = 0; v < variables.Length; v++)
                    foreach (string position in variables[v].Actuator.Positions)
                    {
                        if (at[v] == position || ++flips > MostFlips) continue;
                        string[] next = (string[])at.Clone();
                        next[v] = position;
                        if (Amperes(next)[edge] is var more && more > most * (1 + 1e-9)) (at, most, rises) = (next, more, true);
                    }
            }
            return (at, most);
        }

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
