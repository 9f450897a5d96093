using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>Computes what faults do, each from the healthy point. A short is a further edge from each node to the return, laid once.</summary>
internal sealed class FaultSolver
{
    private const double LeastAmperes = 1e-6, LeastLiveVolts = 0.5;

    private readonly CircuitSizes sizes;
    private readonly double jointOhms;
    private readonly StateSolver solver;
    private readonly ShortCircuits shorts;
    private readonly LoadEffects effects;
    private readonly ImmutableArray<int> runs;
    private readonly Dictionary<(int Run, StatePoint At, FaultKind Kind), (ImmutableArray<LoadConsequence> Loads, double Amperes)> known = [];
    private readonly Dictionary<string, StatePoint> healthy = new(StringComparer.Ordinal);
    private (Setting Setting, StatePoint At)? last;

    /// <summary>A solver of a circuit's faults.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="jointOhms">The resistance of a bad joint.</param>
    public FaultSolver(CircuitSizes sizes, double jointOhms)
    {
        (this.sizes, this.jointOhms) = (sizes, jointOhms);
        CircuitModel model = new(sizes.Circuit);
        solver = new(model, [.. Enumerable.Range(0, model.Network.NodeCount).Select(n => new NetworkEdge(n, NetworkEdge.Reference))]);
        shorts = new(sizes, solver);
        effects = new(model);
        runs = SeriesRuns.Of(model);
        Worst = new(sizes, (setting, conductor) => Math.Abs(solver.AmperesOf(HealthyIn(setting), conductor)));
    }

    /// <summary>For each conductor the setting in which its faults show most.</summary>
    public WorstSettings Worst { get; }

    /// <summary>Whether currents with warm conductors are told even where no figure hangs on them.</summary>
    public bool AsksHot { get; init; }

    /// <summary>The faults of a conductor in a setting.</summary>
    public IEnumerable<FaultStudy> Of(int index, Setting setting)
    {
        var conductor = sizes.Circuit.Conductors[index];
        if (conductor.From.IsFree || conductor.To.IsFree) yield break;
        var at = HealthyIn(setting);
        double amperes = Math.Abs(solver.AmperesOf(at, index));
        yield return Open(new(conductor, FaultKind.Open, setting), index, at, amperes);
        yield return BadJoint(new(conductor, FaultKind.BadJoint, setting), index, at, amperes);
        foreach (var kind in new[] { FaultKind.ShortAtFirstEnd, FaultKind.ShortAtSecondEnd })
        {
            int node = solver.Model.Nodes.NodeOf(kind == FaultKind.ShortAtFirstEnd ? conductor.From : conductor.To);
            if (node < 0 || Math.Abs(at.Point.Volts[node]) < LeastLiveVolts) continue;
            var found = shorts.At(node, setting, at, AsksHot);
            yield return new(conductor, kind, setting)
            {
                Current = ElectricCurrent.FromAmperes(found.Amperes), CurrentWhenHot = found.HotAmperes is { } hot ? ElectricCurrent.FromAmperes(hot) : null,
                End = found.End, FeedsStarter = sizes.Conductors[index].FeedsStarter, Openings = found.Openings, Strains = found.Strains, Loads = effects.Between(at, found.After),
            };
        }
    }

    private FaultStudy Open(FaultStudy fault, int index, StatePoint at, double amperes) =>
        // Without current through it an open conductor changes nothing.
        amperes < LeastAmperes ? fault : fault with { Loads = OfRun(fault, index, at, laws => laws[index] = null).Loads };

    private FaultStudy BadJoint(FaultStudy fault, int index, StatePoint at, double healthyAmperes)
    {
        if (healthyAmperes < LeastAmperes) return fault;
        var (loads, amperes) = OfRun(fault, index, at, laws => laws[index] = ClampLaw.Resistance(jointOhms + (1 / laws[index]!.Chord.Siemens)));
        return fault with
        {
            Loads = loads, Current = ElectricCurrent.FromAmperes(amperes),
            JointDrop = ElectricPotential.FromVolts(amperes * jointOhms), JointHeat = Power.FromWatts(amperes * amperes * jointOhms),
        };
    }

    private (ImmutableArray<LoadConsequence> Loads, double Amperes) OfRun(FaultStudy fault, int index, StatePoint at, Action<Law?[]> change)
    {
        if (known.TryGetValue((runs[index], at, fault.Kind), out var found)) return found;
        var point = Solve(fault.Setting, at, change);
        return known[(runs[index], at, fault.Kind)] = (effects.Between(at, point), Math.Abs(solver.AmperesOf(point, index)));
    }

    // The fault comes while relays stand where they do.
    private StatePoint Solve(Setting setting, StatePoint healthy, Action<Law?[]> change)
    {
        return solver.SolveOn(solver.SolveHeld(healthy, Changed), setting.Values, Changed);

        Law?[] Changed(Law?[] laws)
        {
            change(laws);
            return laws;
        }
    }

    private StatePoint HealthyIn(Setting setting)
    {
        if (last is { } latest && ReferenceEquals(latest.Setting, setting)) return latest.At;
        int[] state = solver.StateOf(setting.Positions);
        string key = string.Join(',', state.Select(Numbers.Whole)) + string.Concat(setting.Values.Select(v => "|" + v.Part + v.Quantity));
        if (!healthy.TryGetValue(key, out var at)) healthy[key] = at = solver.Solve(state, setting.Values);
        last = (setting, at);
        return at;
    }
}
