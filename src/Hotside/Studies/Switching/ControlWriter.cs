using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Turns a set of states into the minimal combinations of positions.</summary>
internal sealed class ControlWriter
{
    private readonly Positions positions;
    private readonly PrimeImplicants primes;
    private readonly Dictionary<Variable, int> ranks = [];
    private readonly Dictionary<int, ControlTerm> terms = [];
    private readonly Dictionary<(int Wanted, int Indifferent), Control> written = [];

    public ControlWriter(Circuit circuit, Positions positions)
    {
        this.positions = positions;
        primes = new(positions.Space);
        foreach (var variable in circuit.Variables) ranks.Add(variable, ranks.Count);
    }

    /// <summary>The combinations of a set of free positions.</summary>
    /// <param name="wanted">The states.</param>
    /// <param name="indifferent">States that may be in or out, short circuits among them.</param>
    public Control Write(Condition wanted, Condition indifferent) =>
        written.TryGetValue((wanted.Node, indifferent.Node), out var known) ? known : written[(wanted.Node, indifferent.Node)] = Compose(wanted, indifferent);

    private Control Compose(Condition wanted, Condition indifferent)
    {
        var all = CubesOf(wanted, indifferent).Select(Combine)
            .OrderBy(c => c.All.Length)
            .ThenBy(c => string.Concat(c.All.SelectMany(Key)), StringComparer.Ordinal).ToImmutableArray();
        bool isCut = primes.IsCut(wanted, indifferent);
        return new(isCut && all.Length > Control.Most ? all[..Control.Most] : all)
        {
            Whole = isCut || all.Length > Control.Most ? TermOf(wanted & !indifferent) : null,
            IsCut = isCut,
        };
    }

    /// <summary>The combinations as products over the diagram's variables.</summary>
    public ImmutableArray<Cube> CubesOf(Condition wanted, Condition indifferent) => primes.Of(wanted, indifferent);

    /// <summary>The states of a combination.</summary>
    public Condition StatesOf(Combination combination) =>
        combination.All.Aggregate(positions.Space.AlwaysHolds, (all, set) =>
            all & positions.Space.Where(positions.NumberOf(set.Variable)!.Value, set.Positions.Select(p => set.Variable.Actuator.Positions.IndexOf(p))));

    // What holds for all positions of the first variable stands alone; the rest goes with the positions for which it holds. Equal conditions become one term.
    private ControlTerm TermOf(Condition condition)
    {
        if (terms.TryGetValue(condition.Node, out var known)) return known;
        int variable = condition.TopVariable;
        var children = Enumerable.Range(0, positions.Space.ArityOf(variable)).Select(v => (Value: v, Left: condition.Given(variable, v))).ToArray();
        var common = children.Aggregate(positions.Space.AlwaysHolds, (all, c) => all & c.Left);
        var any = ImmutableArray.CreateBuilder<ControlTerm>();
        if (!common.IsNever) any.Add(TermOf(common));
        foreach (var group in children.Where(c => !c.Left.IsNever && c.Left != common).GroupBy(c => c.Left))
        {
            var of = positions.VariableAt(variable);
            var set = ControlTerm.Of(new(of, [.. group.Select(c => of.Actuator.Positions[c.Value])]));
            any.Add(group.Key.IsAlways ? set : ControlTerm.AllOf(set, TermOf(group.Key)));
        }
        return terms[condition.Node] = ControlTerm.AnyOf(any.ToImmutable());
    }

    private Combination Combine(Cube cube) => new([.. cube.Sets
        .Select(s => (Variable: positions.VariableAt(s.Variable), s.Values))
        .OrderBy(s => ranks[s.Variable])
        .Select(s => new PositionSet(s.Variable, [.. s.Values.Select(v => s.Variable.Actuator.Positions[v])]))]);

    // Characters compare as numbers: variable, then position after position.
    private IEnumerable<char> Key(PositionSet set) =>
        set.Positions.Select(p => (char)(1 + set.Variable.Actuator.Positions.IndexOf(p))).Prepend((char)(100 + ranks[set.Variable]));
}
