using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Studies.Switching;

/// <summary>Everything that the verdicts of one circuit are told from.</summary>
internal sealed class SwitchingStudy
{
    private const int MostForStringSide = 5_000;

    private readonly Dictionary<int, string> names = [];

    private SwitchingStudy(Circuit circuit, int? mostTurns, CancellationToken cancel)
    {
        Positions = new(circuit, cancel);
        Graph = new(circuit, Positions);
        Routes = new(Graph);
        foreach (var load in Graph.Loads) names[load.Number] = LoadStudy.NameOf(load.Part, load.Element);
        Writer = new(circuit, Positions);
        var full = Supplies.Of(Graph, withMachines: true);
        Neighbourhoods = new(Graph, full.All, mostTurns);
        // Verdicts are told with batteries alone: else every load behind a battery switch would gain "or engine running". What only a machine feeds is told with it.
        bool hasMachines = circuit.Sources.Any(s => s.Element.When is not null);
        Regimes = hasMachines
            ? [new(Graph, Supplies.Of(Graph, withMachines: false), Neighbourhoods), new(Graph, full, Neighbourhoods)]
            : [new(Graph, full, Neighbourhoods)];
    }

    public Positions Positions { get; }

    public ContactGraph Graph { get; }

    public Routes Routes { get; }

    public Neighbourhoods Neighbourhoods { get; }

    public ControlWriter Writer { get; }

    /// <summary>With batteries alone where there are machines too, then with everything.</summary>
    public ImmutableArray<Regime> Regimes { get; }

    public Regime Whole => Regimes[^1];

    /// <summary>When a path through other consumers passes a load that is not fed without them, as a function of free positions and of relays, with all supplies.</summary>
    public Condition InSeries(int index) => Whole.Feeding.InSeries(Whole.Feeding.Loads[index]);

    /// <summary>
    /// Sets of states to take examples from: for each minimal combination every choice of positions. Beyond <see cref="Control.Most"/> combinations, for each position of
    /// each variable that matters the states in which it does.
    /// </summary>
    public IEnumerable<Condition> ExamplesOf(Condition wanted, Condition indifferent)
    {
        var all = Positions.Space.AlwaysHolds;
        if (Writer.CubesOf(wanted, indifferent).Length > Control.Most)
        {
            var states = wanted & !indifferent;
            return Positions.Space.SupportOf(states).SelectMany(v => Enumerable.Range(0, Positions.Space.ArityOf(v)).Select(value =>
                states.Given(v, value) & Positions.Space.Where(v, value)
                & !Enumerable.Range(0, Positions.Space.ArityOf(v)).Aggregate(all, (every, other) => every & states.Given(v, other)))).Where(s => !s.IsNever);
        }
        return Writer.CubesOf(wanted, indifferent).OrderBy(c => c.Sets.Length)
            .SelectMany(cube => cube.Sets.Aggregate((IEnumerable<Condition>)[all], (some, set) =>
                some.SelectMany(s => set.Values.Select(v => s & Positions.Space.Where(set.Variable, v)))))
            .Select(states => states & wanted & !indifferent).Where(s => !s.IsNever).Take(Control.Most);
    }

    /// <summary>The side on which a load's string is switched; <see langword="null"/> where the ways through all other consumers are too many for so small a matter.</summary>
    public SwitchedSide? StringSideOf(Branch load, Regime regime, bool isMomentary) =>
        Positions.Space.Within(MostForStringSide, () => FindStringSide(load, regime, isMomentary));

    // The rule for a single load, with the other consumers let through.
    private SwitchedSide FindStringSide(Branch load, Regime regime, bool isMomentary)
    {
        List<LoadWays> ways = [];
        foreach (var supply in regime.Feeding.Supplies)
        {
            var hot = Ways.Through(Graph, supply.Hot, supply.Return.Concat(supply.Others), supply.HotIsHigher, throughConsumers: true, b => b != load);
            var ground = Ways.Through(Graph, supply.Return, supply.Hot.Concat(supply.Others), !supply.HotIsHigher, throughConsumers: true, b => b != load);
            foreach (int end in new[] { load.Source, load.Target })
                ways.Add(new(supply, hot.Onward[end] & ground.Onward[load.Other(end)] & !regime.Feeding.Short, hot.Reached[end], ground.Reached[load.Other(end)]));
        }
        var (hotWay, returnWay) = LoadJudge.WaysOf(ways, regime, isMomentary);
        return LoadJudge.SideOf(hotWay, returnWay, regime.Short, Positions.DisconnectsOn).Own;
    }

    /// <summary>Whether something depends on a relay of which samples alone tell whether it pulls in.</summary>
    public bool IsDoubtful(Condition condition) =>
        !Whole.Doubtful.IsEmpty && Positions.Space.SupportOf(condition).Intersect(Whole.Doubtful.Select(r => r.Number)).Any();

    /// <summary>The name of a load as the study has it.</summary>
    public string NameOf(Branch load) => names[load.Number];

    /// <summary>Whether a point is a pole in some state.</summary>
    public bool IsPole(int point) => Whole.Feeding.Supplies.Any(s => s.Hot.Concat(s.Return).Any(p => p.Point == point));

    /// <summary>Free positions in words.</summary>
    public string Words(Condition states) =>
        Writer.Write(states, Positions.Space.NeverHolds) is { IsAlways: false } some ? some.ToString() : "anything is done, or nothing";

    /// <summary>Studies a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <param name="mostTurns">How often one-way elements are turned in an operating point before that is given up; <see langword="null"/>: as often as their number asks for.</param>
    public static CircuitStudy Of(Circuit circuit, CancellationToken cancel, int? mostTurns = null)
    {
        cancel.ThrowIfCancellationRequested();
        try
        {
            return new SwitchingStudy(circuit, mostTurns, cancel).Tell(cancel);
        }
        catch (DecisionBudgetException)
        {
            return JoinedForGood.Tell(circuit);
        }
    }

    private CircuitStudy Tell(CancellationToken cancel)
    {
        var loads = ImmutableArray.CreateBuilder<LoadStudy>();
        List<Diagnostic> found = [];
        if (!Whole.Short.IsNever) found.Add(SwitchingFindings.ShortCircuit.Of(ShortedParts(), Words(Whole.Short)) with
            {
                Hint = "a load must lie between a feed and the return, or nothing",
            });
        found.AddRange(RelayFindings.Of(this));
        LoadJudge judge = new(this);
        LoadFindings findings = new(this);
        List<SneakPath> sneaks = [];
        HashSet<Branch> unsettled = [];
        for (int i = 0; i < Graph.Loads.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            var verdict = judge.Judge(i);
            found.AddRange(findings.Of(i, verdict));
            if (findings.SneakOf(i, verdict, out bool isSettled) is { } sneak)
            {
                verdict = verdict with { Sneaks = sneak.States };
                sneaks.Add(sneak);
            }
            if (!isSettled)
            {
                verdict = verdict with { IsApproximate = true };
                unsettled.Add(Graph.Loads[i]);
            }
            loads.Add(verdict);
        }
        found.AddRange(SneakPath.Findings(this, sneaks));
        found.AddRange(Limits(unsettled));
        return new(Graph.Circuit, loads.ToImmutable(), [.. found.OrderByDescending(f => f.Severity).ThenBy(f => f.Code, StringComparer.Ordinal)])
        {
            Settings = [.. Graph.Circuit.Settings.Select(s => SettingJudge.Judge(this, s))],
        };
    }

    // What could not be worked out to the end.
    private IEnumerable<Diagnostic> Limits(HashSet<Branch> unsettled)
    {
        var givenUp = Graph.Loads.Where(l => Whole.Feeding.IsGivenUp(l) || Whole.Feeding.IsStringGivenUp(l) || unsettled.Contains(l)).ToArray();
        if (givenUp.Length > 0) yield return SwitchingFindings.GivenUp.Of(givenUp.Select(l => l.Part.Id).Distinct(), string.Join(", ", givenUp.Select(NameOf)));
        if (!Whole.Doubtful.IsEmpty) yield return SwitchingFindings.DoubtfulPullIn.Of(Whole.Doubtful.Select(r => r.Part).Distinct(), string.Join(", ", Whole.Doubtful.Select(r => r.Part).Distinct()));
    }

    private IEnumerable<string> ShortedParts() => Positions.Space.SupportOf(Whole.Short).Select(v => Positions.VariableAt(v).Part).OfType<string>().Distinct();
}
