using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>
/// A circuit whose engine runs: every battery is held at the set-point of the charging regulator, whether or not the circuit shows one, every sender is at its least
/// resistance, and nothing cranks. So currents are the greatest that can flow for long.
/// </summary>
internal sealed class RunningCircuit
{
    private const int MostChoices = 24;

    // What the loads take together at most, and some: beyond it a source feeds a short circuit.
    private const double ShortTimes = 1.2, ShortMore = 10;

    // By so much the volts must rise for a battery to stand on another.
    private const double Series = 0.1;

    private readonly StateSolver solver;
    private readonly double mostOfLoads;
    private readonly ImmutableArray<SetValue> values;
    private StatePoint? last;

    /// <summary>A running circuit.</summary>
    public RunningCircuit(CircuitModel model)
    {
        Model = model;
        solver = new(model);
        values = LeastSenders(model);
        double[] nominal = [.. model.Circuit.Sources.Select(s => s.Volts).Distinct()];
        double most = nominal.Length == 0 ? SourceLaws.SetPoint(model.Circuit.System.Volts.Max()) : nominal.Max(SourceLaws.SetPoint), span = Span();
        // Of batteries in series one may feed loads of its own.
        HasSeveralVoltages = nominal.Length > 1 || span > most * (1 + Series);
        HighestVolts = Math.Max(most, span);
        mostOfLoads = model.Elements.Where(e => e.Element.IsConsumer).Sum(AtHighest);
    }

    /// <summary>The circuit's model.</summary>
    public CircuitModel Model { get; }

    /// <summary>The highest volts of its sources.</summary>
    public double HighestVolts { get; }

    /// <summary>Whether its sources have several nominal volts.</summary>
    public bool HasSeveralVoltages { get; }

    /// <summary>The states that a combination allows, all else at rest; of very many the first.</summary>
    public IEnumerable<int[]> StatesOf(Combination combination)
    {
        IEnumerable<ImmutableArray<SetPosition>> choices = [[]];
        foreach (var set in combination.All)
            choices = choices.SelectMany(c => set.Positions.Select(p => c.Add(new(set.Variable.Part, set.Variable.Actuator.Name, p))));
        return choices.Take(MostChoices).Select(c => StateOf(c));
    }

    /// <summary>The positions of all variables in a setting.</summary>
    public int[] StateOf(IEnumerable<SetPosition> positions) => solver.StateOf(positions);

    /// <summary>The first position that a combination allows a variable.</summary>
    public static SetPosition First(PositionSet set) => new(set.Variable.Part, set.Variable.Actuator.Name, set.Positions[0]);

    /// <summary>The point of a state, sought from that of the last one.</summary>
    public StatePoint Solve(int[] state) => last = solver.Solve(state, values, Charged, last?.Point.Volts);

    /// <summary>Whether a source feeds a short circuit: no steady state.</summary>
    public bool IsShort(StatePoint at) =>
        Model.Elements.Where(e => e.Element.IsSource).Sum(e => Math.Max(-AmperesOf(at, e), 0)) > (ShortTimes * mostOfLoads) + ShortMore;

    /// <summary>What an element draws at the highest volts, in amperes.</summary>
    public double AtHighest(ModelElement element)
    {
        double amperes = 0;
        for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++) amperes += Math.Abs(Model.Edges[e].Closed?.At(HighestVolts).Amperes ?? 0);
        // A converter draws most where its volts are least.
        if (element.Regulator >= 0 && Model.Regulators[element.Regulator] is PowerLoad load) amperes += load.Watts / load.LockOut;
        return amperes;
    }

    /// <summary>The current through an element, in amperes.</summary>
    public double AmperesOf(StatePoint at, ModelElement element) => solver.AmperesOf(at, element);

    /// <summary>The current of an edge of the model, in amperes.</summary>
    public double AmperesOf(StatePoint at, int edge) => solver.AmperesOf(at, edge);

    // Batteries in series add up.
    private double Span()
    {
        if (Model.Circuit.Sources.Length < 2) return 0;
        double[] volts = Solve(StateOf([])).Point.Volts;
        return volts.Append(0).Max() - volts.Append(0).Min();
    }

    private Law?[] Charged(Law?[] laws)
    {
        foreach (var element in Model.Elements)
            if (element.Part.IsStarter(element.Element)) Array.Clear(laws, element.FirstEdge, element.EdgeCount);
            else if (element.Element is { IsSource: true, When: null } && !element.Element.Traits.HasFlag(ElementTraits.Solar))
                for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++)
                    laws[e] = e == element.FirstEdge && laws[e] is ClampLaw cells ? new ClampLaw(cells.Siemens, SourceLaws.SetPoint(element.RatedVolts)) : null;
        return laws;
    }

    private static ImmutableArray<SetValue> LeastSenders(CircuitModel model) =>
    [
        .. from element in model.Elements
           where element.Element.Type == ElementType.Sender
           let stated = element.Part.Rated(element.Element.Name, Unit.Ohm)
           where stated is not null
           select new SetValue(element.Part.Id, new StatedValue(stated.Value, Unit.Ohm)),
    ];
}
