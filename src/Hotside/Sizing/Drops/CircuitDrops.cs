using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using Hotside.Solving.Relays;
using Hotside.Studies;

namespace Hotside.Sizing.Drops;

/// <summary>
/// What each load's circuit loses, computed in each of the load's own combinations and in the named settings in which it is on; the engine stands where it may, so that the
/// battery gives its volts at rest.
/// </summary>
internal sealed class CircuitDrops
{
    private const double LeastAmperes = 1e-3;

    private readonly CircuitStudy study;
    private readonly StateSolver solver;
    private readonly InLineGraph graph;
    private readonly Dictionary<string, int> conductors = new(StringComparer.Ordinal);
    private readonly Dictionary<string, StatePoint> solved = new(StringComparer.Ordinal);

    /// <summary>The drops of a circuit.</summary>
    /// <param name="study">What is known of its loads.</param>
    /// <param name="graph">Its ways of current; its model may have sizes that the circuit does not state.</param>
    public CircuitDrops(CircuitStudy study, InLineGraph graph)
    {
        (this.study, this.graph) = (study, graph);
        solver = new(graph.Model);
        for (int c = 0; c < graph.Model.Circuit.Conductors.Length; c++) conductors[graph.Model.Circuit.Conductors[c].Id] = c;
        All = [.. study.Loads.Where(l => !l.Element.IsInternal && !l.IsMomentary && !l.Paths.IsEmpty).Select(Of).OfType<CircuitDrop>()];
    }

    /// <summary>The drop of each load that is on at all, in the order of the loads.</summary>
    public ImmutableArray<CircuitDrop> All { get; }

    private CircuitDrop? Of(LoadStudy load)
    {
        var element = graph.Model.Elements.First(e => e.Part.Id == load.Part.Id && e.Element.Name == load.Element.Name);
        var named = study.Settings.Where(s => s.On.Contains(load.Name) && !s.IsUnsettled).Select(s => (s.Setting.Name, s.Setting.Positions, s.Setting.Values));
        var own = load.Control.Any.Take(Control.Most).Select(c => (c.All.IsEmpty ? "always" : c.ToString(), c.All.Select(RunningCircuit.First).ToImmutableArray(), ImmutableArray<SetValue>.Empty));
        return own.Concat(named).Select(s => In(load, element, s.Item1, s.Item2, s.Item3)).OfType<CircuitDrop>().MaxBy(d => d.Volts / d.Limit.Volts);
    }

    private CircuitDrop? In(LoadStudy load, ModelElement element, string when, ImmutableArray<SetPosition> positions, ImmutableArray<SetValue> values)
    {
        var point = PointOf(positions, values);
        double amperes = Math.Abs(solver.AmperesOf(point, element)), volts = Math.Abs(StateSolver.VoltsOf(point, element));
        if (amperes < LeastAmperes) return null;
        var way = WayOf(load, point);
        // Of several sources on its ways the one that stands highest now; of equal ones by name, whichever comes first in the file.
        var source = study.Circuit.Sources.Where(s => load.Paths.Any(p => p.HotWay is [var first, ..] && first == s.Part.Id))
            .OrderByDescending(s => Math.Round(Math.Abs(At(point, s.Feed) - At(point, s.Return)), 6)).ThenBy(s => s.Part.Id, StringComparer.Ordinal).FirstOrDefault();
        double nominal = source?.Volts ?? study.Circuit.System.Volts[0];
        // Where something in the way takes volts on purpose, only the conductors count.
        bool IsOnPurpose(DropShare share) => ResistanceWire.Is(graph.Model.Circuit.Conductors[share.Index].Wire);
        double lost = source is null || load.Side == SwitchedSide.InSeries || way.Any(IsOnPurpose) || load.Paths.Any(p => p.HotWay.Concat(p.GroundWay).Any(TakesVolts))
            ? way.Where(s => !s.IsBeside && !IsOnPurpose(s)).Sum(s => s.Volts)
            : Math.Max(Math.Abs(At(point, source.Feed) - At(point, source.Return)) - volts, 0);
        return new(load, lost, DropLimit.Of(load, nominal, amperes), when, way) { LoadVolts = volts, Amperes = amperes };
    }

    private double At(StatePoint point, End end) => point.Point.At(graph.Model.Nodes.NodeOf(end));

    private bool TakesVolts(string id) => study.Circuit.FindPart(id) is { } part
        && part.Kind.Elements.Any(e => e.Type is ElementType.Resistor or ElementType.Dropper or ElementType.Sender or ElementType.Diode);

    private ImmutableArray<DropShare> WayOf(LoadStudy load, StatePoint point)
    {
        SortedSet<int> way = [.. load.Paths.SelectMany(p => p.Hot.Concat(p.Ground)).Where(conductors.ContainsKey).Select(id => conductors[id])];
        // A path is one way; what lies on a ring with it carries its share.
        HashSet<int> rings = [.. way.Select(graph.RingOf).Where(r => r >= 0)], own = [.. way];
        for (int c = 0; c < graph.Model.Circuit.Conductors.Length; c++)
            if (rings.Contains(graph.RingOf(c)))
                way.Add(c);
        return
        [
            .. way.Select(c => new DropShare(c, Math.Abs(solver.AmperesOf(point, c)), Math.Abs(point.Point.Across(graph.Model.Network.Edges[c]))) { IsBeside = !own.Contains(c) }).Where(s => s.Amperes >= LeastAmperes),
        ];
    }

    private StatePoint PointOf(ImmutableArray<SetPosition> positions, ImmutableArray<SetValue> values)
    {
        int[] state = solver.StateOf(positions);
        string key = string.Join(',', state.Select(Numbers.Whole)) + "|" + string.Join(',', values.Select(v => v.Part + "=" + v.Quantity));
        return solved.TryGetValue(key, out var found) ? found : solved[key] = solver.Solve(state, values);
    }
}
