using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Turns a set of states into the minimal combinations of positions.</summary>
internal sealed class ControlWriter
{
    private readonly Positions positions;
    private readonly PrimeImplicants primes;
    private readonly Dictionary<Variable, int> ranks = [];

    public ControlWriter(Circuit circuit, Positions positions)
    {
        this.positions = positions;
        primes = new(positions.Space);
        foreach (var variable in circuit.Variables) ranks.Add(variable, ranks.Count);
    }

    /// <summary>The combinations of a set of free positions.</summary>
    /// <param name="wanted">The states.</param>
    /// <param name="indifferent">States that may be in or out, short circuits among them.</param>
    public Control Write(Condition wanted, Condition indifferent)
    {
        var all = CubesOf(wanted, indifferent).Select(Combine)
            .OrderBy(c => c.All.Length)
            .ThenBy(c => string.Concat(c.All.SelectMany(Key)), StringComparer.Ordinal).ToImmutableArray();
        return new(all.Length > Control.Most ? all[..Control.Most] : all) { IsCut = primes.IsCut(wanted, indifferent) || all.Length > Control.Most };
    }

    /// <summary>The combinations as products over the diagram's variables.</summary>
    public ImmutableArray<Cube> CubesOf(Condition wanted, Condition indifferent) => primes.Of(wanted, indifferent);

    /// <summary>The states of a combination.</summary>
    public Condition StatesOf(Combination combination) =>
        combination.All.Aggregate(positions.Space.AlwaysHolds, (all, set) =>
            all & positions.Space.Where(positions.NumberOf(set.Variable)!.Value, set.Positions.Select(p => set.Variable.Actuator.Positions.IndexOf(p))));

    private Combination Combine(Cube cube) => new([.. cube.Sets
        .Select(s => (Variable: positions.VariableAt(s.Variable), s.Values))
        .OrderBy(s => ranks[s.Variable])
        .Select(s => new PositionSet(s.Variable, [.. s.Values.Select(v => s.Variable.Actuator.Positions[v])]))]);

    // Characters compare as numbers: variable, then position after position.
    private IEnumerable<char> Key(PositionSet set) =>
        set.Positions.Select(p => (char)(1 + set.Variable.Actuator.Positions.IndexOf(p))).Prepend((char)(100 + ranks[set.Variable]));
}
