using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Everything that the verdicts of one circuit are told from.</summary>
internal sealed class SwitchingStudy
{
    private readonly Neighbourhoods neighbourhoods;
    private readonly Dictionary<int, Condition> strings = [];

    private SwitchingStudy(Circuit circuit)
    {
        Positions = new(circuit);
        Graph = new(circuit, Positions);
        Routes = new(Graph);
        Writer = new(circuit, Positions);
        var full = Supplies.Of(Graph, withMachines: true);
        neighbourhoods = new(Graph, full);
        // Verdicts are told with batteries alone: else every load behind a battery switch would gain "or engine running". What only a machine feeds is told with it.
        bool hasMachines = circuit.Sources.Any(s => s.Element.When is not null);
        Regimes = hasMachines
            ? [new(Graph, Supplies.Of(Graph, withMachines: false), neighbourhoods), new(Graph, full, neighbourhoods)]
            : [new(Graph, full, neighbourhoods)];
    }

    public Positions Positions { get; }

    public ContactGraph Graph { get; }

    public Routes Routes { get; }

    public ControlWriter Writer { get; }

    /// <summary>With batteries alone where there are machines too, then with everything.</summary>
    public ImmutableArray<Regime> Regimes { get; }

    public Regime Whole => Regimes[^1];

    /// <summary>Whether a load's verdict needed a search over states, which may have been given up.</summary>
    public bool HasSearched(Branch load) => neighbourhoods.HasResistance(load) || neighbourhoods.HasOtherConsumer(load);

    /// <summary>When a path through other consumers passes a load, as a function of free positions and of relays, with all supplies.</summary>
    public Condition InSeries(int index) =>
        strings.TryGetValue(index, out var known) ? known : strings[index] = Whole.Feeding.InSeries(Graph.Loads[index]);

    /// <summary>Sets of states to take examples from: for each minimal combination every choice of positions, at most <see cref="Control.Most"/> in all.</summary>
    public IEnumerable<Condition> ExamplesOf(Condition wanted, Condition indifferent)
    {
        var all = Positions.Space.AlwaysHolds;
        return Writer.CubesOf(wanted, indifferent).OrderBy(c => c.Sets.Length)
            .SelectMany(cube => cube.Sets.Aggregate((IEnumerable<Condition>)[all], (some, set) =>
                some.SelectMany(s => set.Values.Select(v => s & Positions.Space.Where(set.Variable, v)))))
            .Select(states => states & wanted & !indifferent).Where(s => !s.IsNever).Take(Control.Most);
    }

    /// <summary>The side on which a load's string is switched: the rule for a single load, with the other consumers let through.</summary>
    public SwitchedSide StringSideOf(Branch load, Regime regime, bool isMomentary)
    {
        Condition hotWay = Positions.Space.NeverHolds, returnWay = hotWay;
        foreach (var supply in regime.Feeding.Supplies)
        {
            var hot = Ways.Through(Graph, supply.Hot, supply.Return.Concat(supply.Others), supply.HotIsHigher, load, throughConsumers: true);
            var ground = Ways.Through(Graph, supply.Return, supply.Hot.Concat(supply.Others), !supply.HotIsHigher, load, throughConsumers: true);
            foreach (int end in new[] { load.Source, load.Target })
            {
                if ((hot.Onward[end] & ground.Onward[load.Other(end)] & !regime.Feeding.Short).IsNever) continue;
                hotWay |= hot.Reached[end];
                returnWay |= ground.Reached[load.Other(end)];
            }
        }
        Condition Over(Condition c) => isMomentary ? regime.Settling.Passing(c) : regime.Settling.Settled(c);
        return LoadJudge.SideOf(Over(hotWay), Over(returnWay), regime.Short);
    }

    /// <summary>Studies a circuit.</summary>
    public static CircuitStudy Of(Circuit circuit, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        SwitchingStudy study = new(circuit);
        var loads = ImmutableArray.CreateBuilder<LoadStudy>();
        LoadJudge judge = new(study);
        for (int i = 0; i < study.Graph.Loads.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            loads.Add(judge.Judge(i));
        }
        return new(circuit, loads.ToImmutable(), []);
    }
}
