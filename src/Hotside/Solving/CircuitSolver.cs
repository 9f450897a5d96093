using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;

namespace Hotside.Solving;

/// <summary>Computes the volts and amperes of a circuit in its settings. Made once for a circuit; not to be used by several threads at once.</summary>
internal sealed class CircuitSolver
{
    // A load of constant power is off for want of volts, not of a feed, where so much of its rated volts is left.
    private const double LeastSupply = 0.05;

    private readonly CircuitModel model;
    private readonly ImmutableArray<Relay> relays;
    private readonly RegulatedSolver solver;
    private readonly RelaySettling settling;

    /// <summary>A solver for a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="surroundings">Under what it works; <see langword="null"/>: the usual.</param>
    public CircuitSolver(Circuit circuit, Surroundings? surroundings = null)
    {
        model = new(circuit, surroundings);
        relays = Relay.Of(model);
        solver = new(model.Network, model.Regulators);
        settling = new(model, solver, relays);
    }

    /// <summary>The circuit with everything at rest.</summary>
    public Solution Solve() => Solve(new Setting("", [], []));

    /// <summary>The circuit in a setting, all relays released before; where they would rest if they had been pulled is not looked at.</summary>
    public Solution SolveFromRest(Setting setting) => SolutionOf(setting, settling.Settle(StateOf(setting), null, setting.Values));

    /// <summary>The circuit in a setting, all relays released before.</summary>
    public Solution Solve(Setting setting)
    {
        int[] start = StateOf(setting);
        var rest = settling.Settle(start, null, setting.Values);
        var solution = SolutionOf(setting, rest);
        if (relays.IsEmpty || rest.Kind != RestKind.Settled) return solution;
        int[] pulled = (int[])start.Clone();
        foreach (var relay in relays) pulled[relay.Variable] = relay.Pulled;
        var back = settling.Settle(pulled, null, setting.Values);
        return back.Points[0].State.AsSpan().SequenceEqual(rest.Points[0].State) ? solution : solution with { IfPulledBefore = SolutionOf(setting, back) };
    }

    /// <summary>
    /// The first moment of a setting, its relays where they come to rest: every filament cold, every motor standing, every ballast cold. What a fuse has to bear until a lamp is
    /// bright or a motor turns.
    /// </summary>
    public Solution SolveInrush(Setting setting)
    {
        var at = settling.Settle(StateOf(setting), null, setting.Values).Points[0];
        var laws = model.LawsIn(at.State, at.State, setting.Values, isAtOnce: true);
        var (point, amperes) = solver.Solve(laws, at.Point.Volts);
        return SolutionOf(setting, new StatePoint(at.State, laws, point, amperes));
    }

    /// <summary>
    /// The circuit in settings one after the other, each from where the last one left the relays. What a setting changes moves in the order written, conditions first;
    /// contacts part before others close, so that what holds by itself can fall.
    /// </summary>
    public ImmutableArray<Solution> SolveSequence(params IEnumerable<Setting> settings)
    {
        var solutions = ImmutableArray.CreateBuilder<Solution>();
        int[] state = new int[model.Circuit.Variables.Length];
        var rest = settling.Settle(state, null, []);
        foreach (var setting in settings)
        {
            state = (int[])rest.Points[0].State.Clone();
            int[] wanted = StateOf(setting);
            foreach (int variable in MovesBetween(state, wanted, setting))
            {
                int was = state[variable];
                state[variable] = wanted[variable];
                if (model.Circuit.Variables[variable].Actuator.Drive != ActuatorDrive.Automatic)
                    state = (int[])settling.Settle(state, new Dictionary<int, int> { [variable] = was }, setting.Values).Points[0].State.Clone();
                rest = settling.Settle(state, null, setting.Values);
                state = (int[])rest.Points[0].State.Clone();
            }
            // What only something else opens, as reverse current opens a cut-out, begins each step anew.
            foreach (var relay in relays.Where(r => r.Pulled == 0)) state[relay.Variable] = 0;
            rest = settling.Settle(state, null, setting.Values);
            solutions.Add(SolutionOf(setting, rest));
        }
        return solutions.ToImmutable();
    }

    private IEnumerable<int> MovesBetween(int[] state, int[] wanted, Setting setting)
    {
        var written = setting.Positions.Select(p => model.IndexOf(p)).OfType<int>();
        var free = Enumerable.Range(0, state.Length).Where(v => model.Circuit.Variables[v].Actuator.Drive != ActuatorDrive.Driven);
        return free.Except(written).Concat(written).Distinct().Where(v => wanted[v] != state[v])
            .OrderBy(v => model.Circuit.Variables[v].Actuator.Drive == ActuatorDrive.Automatic ? 0 : 1).ToArray();
    }

    private int[] StateOf(Setting setting) => model.StateOf(setting.Positions);

    private Solution SolutionOf(Setting setting, RelayRest rest) => SolutionOf(setting, rest.Points[0]) with
    {
        Rest = rest.Kind,
        Others = [.. rest.Points.Skip(1).Select(p => SolutionOf(setting, p) with { Rest = rest.Kind })],
    };

    private Solution SolutionOf(Setting setting, StatePoint at)
    {
        var under = model.Under(setting.Values);
        bool[] tied = Grounding.Of(model, at), shared = SharedCurrents.Of(model.Network, at.Laws);
        var assumed = under.Assumptions.Where(a => a.What == AssumedFigure.Conductor).Select(a => a.Of).ToHashSet(StringComparer.Ordinal);
        return new(setting)
        {
            Positions = [.. model.Circuit.Variables.Select((v, i) => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[at.State[i]]))],
            Terminals = [.. model.Nodes.Ends.Select(e => new TerminalVolts(e, model.Nodes.NodeOf(e) is >= 0 and var node ? tied[node] ? at.Point.Volts[node] : null : 0))],
            Conductors =
            [
                .. model.Circuit.Conductors.Select((c, i) => new ConductorFigures(c, at.AmperesOf(model.Network.Edges, i), at.Point.Across(model.Network.Edges[i])) { IsAssumed = assumed.Contains(c.Id), IsShared = shared[i] }),
            ],
            Elements = [.. under.Elements.Select(PointOf)],
            Assumptions = under.Assumptions,
            IsExact = at.Point.IsConverged,
            Residual = at.Point.Residual,
            Steps = at.Point.Steps,
        };

        ElementPoint PointOf(ModelElement element)
        {
            double amperes = at.AmperesOf(model.Network.Edges, element), rated = 0;
            for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++) rated += under.Edges[e].Closed?.At(element.RatedVolts).Amperes ?? 0;
            double volts = at.Point.At(element.A) - at.Point.At(element.B);
            if (element.Regulator < 0 || model.Regulators[element.Regulator] is not PowerLoad load) return new(element.Part, element.Element, volts, amperes, element.RatedVolts, rated);
            bool isLockedOut = at.RegulatorAmperes[element.Regulator] == 0 && Math.Abs(volts) > LeastSupply * element.RatedVolts && !(load.IsOneWay && volts < 0);
            return new(element.Part, element.Element, volts, amperes, element.RatedVolts, load.Watts / element.RatedVolts) { IsLockedOut = isLockedOut };
        }
    }
}
