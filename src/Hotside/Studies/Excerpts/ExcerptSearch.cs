using Hotside.Circuits;

namespace Hotside.Studies.Excerpts;

/// <summary>
/// Gathers what belongs to loads: the ways that the study found for them, the coil circuits of the relays in those ways, whatever else their control names,
/// the way of each source's return pole, what a regulator or a flasher in a way needs to work, and wires that lie parallel to any of it for good. Machines that merely
/// feed the load too while they run are not followed.
/// </summary>
internal sealed class ExcerptSearch(CircuitStudy study)
{
    private readonly Circuit circuit = study.Circuit;
    private readonly JoinGraph graph = new(study.Circuit);
    private readonly HashSet<string> items = new(StringComparer.Ordinal), names = new(StringComparer.Ordinal), asked = new(StringComparer.Ordinal), heads = new(StringComparer.Ordinal);
    private readonly HashSet<string> whole = new(StringComparer.Ordinal);
    private readonly HashSet<End> joints = [], ends = [], inside = [];
    private readonly List<LoadStudy> taken = [];
    private readonly Queue<LoadStudy> pending = [];

    public Excerpt Find(IEnumerable<LoadStudy> loads)
    {
        foreach (var load in loads) Ask(load);
        while (pending.TryDequeue(out var load)) Take(load);
        foreach (var load in taken) AddRestOfControl(load);
        if (asked.Count > 0) AddSources();
        foreach (var join in JoinGraph.RingsWith(graph.All.Where(j => j is { IsForGood: true, Joint: not { Terminal: "case" } }), IsShown)) Show(join);
        return new([.. items], [.. joints], [.. names], [.. ends.Concat(inside).GroupBy(e => e.Part ?? "").Where(g => g.Key.Length > 0 && g.Distinct().Count() == 1 && !whole.Contains(g.Key)).Select(g => g.First())]);
    }

    private void Ask(LoadStudy load)
    {
        names.Add(load.Name);
        if (asked.Add(load.Name)) pending.Enqueue(load);
    }

    private void Take(LoadStudy load)
    {
        taken.Add(load);
        items.Add(load.Part.Id);
        whole.Add(load.Part.Id);
        foreach (var path in load.Paths)
        {
            heads.Add(path.HotWay[0]);
            Along(path.HotWay);
            Along(path.GroundWay);
        }
        if (load.Paths.IsEmpty) TakeWithoutPaths(load);
        foreach (string relay in load.Chain) AskCoils(relay);
        names.UnionWith(load.InSeriesWith);
        if (load.Holds is { } hold) AskCoils(hold.Relay);
        foreach (var part in load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Distinct().Select(circuit.FindPart).OfType<Part>()) AddNeedsOf(part);
    }

    // A regulator holds its output against its case, and what is electronic in the way of a current must be fed itself.
    private void AddNeedsOf(Part part)
    {
        if (part.Kind.Elements.Any(e => e.IsAgainstCase) && IsPassed(part))
            foreach (var join in graph.Way(Nodes.CaseOf(part), IsPole) ?? []) Show(join);
        foreach (var own in study.Loads.Where(l => l.Part.Id == part.Id && l.Element.Type == ElementType.Electronics && IsPassed(part))) Ask(own);
    }

    private bool IsPassed(Part part) => ends.Count(e => e.Part == part.Id) > 1;

    private void AddRestOfControl(LoadStudy load)
    {
        if (load.Holds is { } hold) Attach(hold.Relay, e => e.Name == hold.Element);
        if (!load.ShortedBy.IsEmpty || load.Braked is not null) ShowShorts(load);
        foreach (var set in PositionsOf(load).Where(s => s.Variable.Part is { } part && !items.Contains(part)))
            Attach(set.Variable.Part!, e => e.When is { } when && when.Tests.Any(t => t.Actuator == set.Variable.Actuator.Name));
        foreach (string part in load.ReversedBy.Concat(load.ShortedBy).Where(p => !items.Contains(p))) Attach(part, e => e.When is not null);
    }

    private static IEnumerable<PositionSet> PositionsOf(LoadStudy load)
    {
        foreach (var control in new[] { load.Control, load.Braked, load.Holds?.While, load.Holds?.Released }.OfType<Control>())
        {
            foreach (var set in control.Any.SelectMany(c => c.All)) yield return set;
            if (control.Whole is null) continue;
            HashSet<ControlTerm> met = [control.Whole];
            Queue<ControlTerm> open = new(met);
            while (open.TryDequeue(out var term))
            {
                if (term.Position is { } set) yield return set;
                foreach (var part in term.All.Concat(term.Any).Where(met.Add)) open.Enqueue(part);
            }
        }
    }

    private void AskCoils(string relay)
    {
        foreach (var coil in study.Loads.Where(l => l.Part.Id == relay && l.Part.Kind.Actuators.Any(a => a.KeptBy.Contains(l.Element.Name) || a.Pulls.Any(p => p.Coils.Contains(l.Element.Name))))) Ask(coil);
    }

    // A way names parts and conductors; between two parts without a conductor lies a joint.
    private void Along(IReadOnlyList<string> way)
    {
        string chassis = End.Chassis.Terminal;
        for (int i = 0; i < way.Count; i++)
        {
            if (circuit.FindConductor(way[i]) is not null) Show(graph.All.First(j => j.Conductor == way[i]));
            else if (way[i] != chassis) items.Add(way[i]);
            if (i == 0) continue;
            foreach (var join in graph.All.Where(j => j.Joint is not null && (Joins(j, way[i - 1], way[i]) || Joins(j, way[i], way[i - 1])))) Show(join);
        }

        bool Joins(Join join, string from, string to) => join.A.Part == from && (join.B.Part ?? chassis) == to;
    }

    // One that never comes on, or was told approximately: what might feed it in any position; for want of that, what its ends hang on.
    private void TakeWithoutPaths(LoadStudy load)
    {
        var (first, second) = EndsOf(load);
        var own = new Join(first, second, 0);
        var supply = circuit.Sources.Where(s => s.Part.IsStandingSource).Select(s => new Join(s.Feed, circuit.System.ReturnNode, 0));
        Join[] ring = [.. JoinGraph.RingsWith([.. graph.All.Where(j => j.Element is not { IsSource: true }), .. supply, own], j => j == own)];
        if (ring.Length > 1 && load.FedFrom.IsEmpty)
        {
            foreach (var join in ring.Where(j => j.Cost > 0)) Show(join);
            foreach (string part in ring.Select(j => j.Part?.Id).OfType<string>().Distinct()) AskCoils(part);
            heads.UnionWith(circuit.Sources.Where(s => ends.Contains(s.Feed)).Select(s => s.Part.Id));
            return;
        }
        foreach (var end in new[] { first, second })
            foreach (var join in graph.Way(end, e => IsPole(e) || load.FedFrom.Contains(e), load.Part.Id) ?? graph.At(end).Where(j => j.Part is null)) Show(join);
        heads.UnionWith(circuit.Sources.Where(s => ends.Contains(s.Feed)).Select(s => s.Part.Id));
    }

    private bool IsPole(End end) => end == circuit.System.ReturnNode || circuit.Sources.Any(s => s.Part.IsStandingSource && (s.Feed == end || s.Return == end));

    // What may join both ends of a load, so that it goes out or brakes.
    private void ShowShorts(LoadStudy load)
    {
        var (first, second) = EndsOf(load);
        var own = new Join(first, second, 0);
        foreach (var join in JoinGraph.RingsWith([.. graph.All.Where(j => j.IsWithoutResistance), own], j => j == own).Where(j => j != own)) Show(join);
    }

    private static (End First, End Second) EndsOf(LoadStudy load) => (Nodes.NodeOf(load.Part, load.Element.From), Nodes.NodeOf(load.Part, load.Element.To));

    // What controls without lying in a way that was found: with the shortest way from each of its ends to what is there.
    private void Attach(string id, Predicate<Element> isMeant)
    {
        if (circuit.FindPart(id) is not { } part) return;
        End[] there = [.. ends];
        items.Add(id);
        whole.Add(id);
        foreach (var end in part.Kind.Elements.Where(e => isMeant(e)).SelectMany(e => new[] { Nodes.NodeOf(part, e.From), Nodes.NodeOf(part, e.To) }).Distinct().Where(e => !ends.Contains(e)))
            foreach (var join in graph.Way(end, e => there.Contains(e) || IsPole(e), id) ?? []) Show(join);
    }

    // Where a way begins stands a source; its other pole goes to the return, through more cells if they are stacked.
    private void AddSources()
    {
        // Where a way begins at a machine, the battery on its rail feeds the load while it stands.
        foreach (var machine in circuit.Sources.Where(s => heads.Contains(s.Part.Id) && !s.Part.IsStandingSource))
            foreach (var join in graph.Way(machine.Feed, e => circuit.Sources.Any(s => s.Part.IsStandingSource && s.Feed == e), machine.Part.Id) ?? []) Show(join);
        heads.UnionWith(circuit.Sources.Where(s => s.Part.IsStandingSource && ends.Contains(s.Feed)).Select(s => s.Part.Id));
        foreach (var source in circuit.Sources.Where(s => heads.Contains(s.Part.Id)))
            foreach (var join in graph.Way(source.Return, e => e == circuit.System.ReturnNode) ?? []) Show(join);
        if (circuit.System.Return?.Part is { } bus) items.Add(bus);
    }

    private bool IsShown(Join join) => join.Conductor is { } id ? items.Contains(id) : join.Joint is { } joint && joints.Contains(joint);

    private void Show(Join join)
    {
        if (join.Conductor is { } conductor) items.Add(conductor);
        if (join.Joint is { } joint) joints.Add(joint);
        foreach (var end in new[] { join.A, join.B })
        {
            ends.Add(end);
            if (end.Part is { } part) items.Add(part);
        }
        if (join.Element is not null)
        {
            inside.Add(join.A);
            inside.Add(join.B);
        }
    }
}
