using System.Collections.Immutable;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>
/// The greatest steady current of each conductor and of what is in line. Where it separates loads from the sources, Kirchhoff's law bounds it; on a ring, or between sources,
/// it is computed in the combinations of what controls the loads that share it.
/// </summary>
internal sealed class WorstCurrents
{
    // Combinations computed for all rings of a circuit together (own choice): a second or two for a whole vehicle.
    private const double MostOfAll = 4_096;

    private readonly RunningCircuit running;
    private readonly Dictionary<string, WorstSum> sums = new(StringComparer.Ordinal);
    private readonly Dictionary<int, WorstCurrent> searched = [];
    private readonly WorstCurrent?[] known;
    private readonly int most;
    private readonly ImmutableArray<ModelElement> batteries;

    /// <summary>The currents of a circuit.</summary>
    /// <param name="study">What is known of its loads.</param>
    /// <param name="model">Its model.</param>
    /// <param name="most">The most combinations that are all computed.</param>
    public WorstCurrents(CircuitStudy study, CircuitModel model, int most = StateSearch.MostCombinations)
    {
        this.most = most;
        running = new(model);
        Graph = new(model);
        Pieces = new(Graph);
        Loads = new(study, running, Pieces);
        known = new WorstCurrent?[Graph.Edges.Length];
        batteries = [.. Graph.Hanging.Where(h => h.Element is { IsSource: true, When: null })];
    }

    /// <summary>The ways of current.</summary>
    public InLineGraph Graph { get; }

    private LoadPieces Pieces { get; }

    /// <summary>The loads.</summary>
    public LoadCurrents Loads { get; }

    /// <summary>The highest volts of the sources while the engine runs.</summary>
    public double HighestVolts => running.HighestVolts;

    /// <summary>The greatest current of an edge of <see cref="Graph"/>.</summary>
    public WorstCurrent Of(int edge)
    {
        if (known[edge] is { } found) return found;
        var bounds = Bounds(edge);
        return known[edge] = bounds.Length > 0 ? bounds.MinBy(c => c.Amperes)! : Computed(edge);
    }

    private WorstCurrent[] Bounds(int edge)
    {
        var (a, b, _) = Graph.Edges[edge];
        if (a == b) return [WorstCurrent.None];
        WorstCurrent[] bounds = [.. new[] { Bound(edge, a, b, []), Bound(edge, b, a, []) }.OfType<WorstCurrent>()];
        // The return of a battery carries what its feed does: what hangs on both together.
        return bounds.Length > 0 ? bounds : [.. new[] { Bound(edge, a, b, batteries), Bound(edge, b, a, batteries) }.OfType<WorstCurrent>()];
    }

    /// <summary>The greatest current through an element in line, by its edge.</summary>
    public WorstCurrent Of(ModelElement element)
    {
        for (int e = 0; e < Graph.Edges.Length; e++)
            if (ReferenceEquals(Graph.Edges[e].Element, element))
                return Of(e);
        return WorstCurrent.None;
    }

    // What lies on the side of an end takes or gives all that passes; null where something else leads there, or a source of any strength.
    private WorstCurrent? Bound(int edge, int end, int other, ImmutableArray<ModelElement> through)
    {
        if (end == Graph.Return) return null;
        bool[] side = Graph.ReachedFrom(end, e => e == edge, through);
        if (side[Graph.Return] || side[other]) return null;
        List<LoadCurrent> loads = [];
        double gives = 0;
        string? machine = null;
        foreach (var hanging in Graph.Hanging)
        {
            if (side[Graph.VertexOf(hanging.A)] == side[Graph.VertexOf(hanging.B)]) continue;
            if (Loads.Of(hanging) is { } load) loads.Add(load);
            if (!hanging.Element.IsSource) continue;
            if (MostOf(hanging) is not { } most) return null;
            (gives, machine) = (gives + most, machine is null ? hanging.Part.Id : machine + " and " + hanging.Part.Id);
        }
        var sum = SumOf(loads);
        return sum.Amperes >= gives
            ? new(sum.Amperes, CurrentBasis.Bound, sum.Positions) { Loads = OnIn(loads, sum), ShortAmperes = OnIn(loads, sum).Where(l => l.IsShort).Sum(l => l.Amperes) }
            : new(gives, CurrentBasis.Bound, []) { Machine = machine };
    }

    // What a machine gives at most; null for a battery.
    private double? MostOf(ModelElement source) =>
        source.Element.When is not null && running.Model.Edges[source.FirstEdge].Closed is ClampLaw { Least: > double.NegativeInfinity } law ? -law.Least : null;

    private WorstSum SumOf(List<LoadCurrent> loads)
    {
        string key = string.Join(',', loads.Select(l => l.Load.Part.Id + "." + l.Load.Element.Name));
        return sums.TryGetValue(key, out var found) ? found : sums[key] = ExclusiveSum.Of(loads);
    }

    private static ImmutableArray<LoadCurrent> OnIn(List<LoadCurrent> loads, WorstSum sum)
    {
        var at = sum.Positions.ToLookup(p => (p.Part, p.Actuator), p => p.Position);
        bool IsOn(LoadCurrent load) => load.When.Any(c => c.All.All(s => at[(s.Variable.Part, s.Variable.Actuator.Name)].Any(s.Positions.Contains)));
        return [.. loads.Select(l => IsOn(l) ? l : l with { Amperes = l.Stray }).Where(l => l.Amperes > 0)];
    }

    // All edges that no bound settles are computed at once: those on which the same loads matter share every point.
    private WorstCurrent Computed(int edge)
    {
        if (searched.Count == 0)
        {
            var open = Enumerable.Range(0, Graph.Edges.Length).Where(e => Graph.Edges[e].A != Graph.Edges[e].B && Bounds(e).Length == 0)
                .Select(e => (Edge: e, Loads: RelevantTo(e), Contacts: Pieces.VariablesOfRing(Graph.RingOf(e)))).ToArray();
            var groups = open.GroupBy(o => string.Join(',', o.Loads.Select(l => l.Load.Part.Id + "." + l.Load.Element.Name)) + "|" + string.Join(',', o.Contacts), StringComparer.Ordinal)
                .Select(g => (Edges: g.Select(o => o.Edge).ToArray(), Search: new StateSearch(running, g.First().Loads, g.First().Contacts, [.. g.Select(o => EdgeOf(o.Edge))]))).ToArray();
            foreach (var (edges, search) in groups)
            {
                // The smaller ones first, as many as there is room for: whichever comes first in the file.
                double needed = groups.Where(g => g.Search.Combinations <= search.Combinations).Sum(g => g.Search.Combinations);
                var found = search.Greatest(needed <= MostOfAll ? most : 0);
                for (int i = 0; i < edges.Length; i++) searched[edges[i]] = found[i];
            }
        }
        return searched[edge];
    }

    private ImmutableArray<LoadCurrent> RelevantTo(int edge)
    {
        int ring = Graph.RingOf(edge);
        return Relevant(ring >= 0 ? Graph.HangingOn(ring) : Connected(edge), ring >= 0);
    }

    // The edge of the model that is an edge of the graph; of a regulator its element.
    private (int Edge, ModelElement? Element) EdgeOf(int edge) => Graph.Edges[edge].Element is { } element ? (-1, element) : (edge, null);

    // A load matters where its current enters the ring elsewhere than that of the sources does.
    private ImmutableArray<LoadCurrent> Relevant(int[] hangingOn, bool isRing)
    {
        int[] sources = [.. Graph.Hanging.Where(h => h.Element.IsSource).SelectMany(h => new[] { hangingOn[Graph.VertexOf(h.A)], hangingOn[Graph.VertexOf(h.B)] }).Where(v => v >= 0).Distinct()];
        bool Matters(int vertex) => vertex >= 0 && (!isRing || sources.Length != 1 || vertex != sources[0]);
        return
        [
            .. Graph.Hanging.Where(h => h.Element.IsConsumer && (Matters(hangingOn[Graph.VertexOf(h.A)]) || Matters(hangingOn[Graph.VertexOf(h.B)])))
                .Select(Loads.Of).OfType<LoadCurrent>().Where(l => l.IsSteady && !l.Combinations.IsEmpty),
        ];
    }

    private int[] Connected(int edge)
    {
        bool[] reached = Graph.ReachedFrom(Graph.Edges[edge].A == Graph.Return ? Graph.Edges[edge].B : Graph.Edges[edge].A, _ => false, batteries);
        return [.. reached.Select((r, v) => r && v != Graph.Return ? v : -1)];
    }
}
