using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>The verdict of each consumer of a circuit.</summary>
internal sealed class Verdicts
{
    private readonly ContactGraph graph;
    private readonly Diagrams d;
    private readonly FeedingFinder feeding;
    private readonly SeriesFinder series;
    private readonly PathFinder paths;
    private readonly Primes primes;

    public Verdicts(Circuit circuit, CancellationToken cancel)
    {
        graph = new(circuit);
        d = graph.Diagrams;
        feeding = new(graph, new Ways(graph));
        series = new(graph, feeding.Short);
        paths = new(graph);
        primes = new(graph);
        Relays = new(graph, CoilFunctions());
        Short = Relays.Closed(feeding.Short);
        Loads = [.. Chained([.. graph.Consumers.Select(c =>
        {
            cancel.ThrowIfCancellationRequested();
            return Of(c);
        })])];
    }

    public ImmutableArray<LoadStudy> Loads { get; }

    public Settling Relays { get; }

    /// <summary>When the circuit is shorted, relays settled.</summary>
    public int Short { get; }

    public ContactGraph Graph => graph;

    /// <summary>Whether a verdict says that a load is fed in a state.</summary>
    public bool IsOn(LoadStudy load, IReadOnlyList<int> state) =>
        load.Control.Any.Any(c => c.All.All(s => s.Positions.Contains(s.Variable.Actuator.Positions[state[graph.NumberOf(s.Variable)]])));

    public Control ControlOf(int function, int indifferent = Diagrams.Never) => primes.Of(function, indifferent);

    // A winding pulls where ways feed it; one that no way ever feeds pulls where it has the volts through others.
    private Func<Part, string, int> CoilFunctions()
    {
        var functions = new Dictionary<(string, string), int>();
        return (part, name) =>
        {
            if (functions.TryGetValue((part.Id, name), out int known)) return known;
            var coil = graph.Consumers.First(c => c.Part.Id == part.Id && c.Element.Name == name);
            var fed = feeding.Of(coil, batteriesOnly: false);
            int pulls = d.Or(fed.Forward, fed.Backward);
            if (pulls == Diagrams.Never) pulls = series.Pulls(coil);
            return functions[(part.Id, name)] = pulls;
        };
    }

    private LoadStudy Of(ContactEdge load)
    {
        var fed = feeding.Of(load, batteriesOnly: true);
        if (Relays.Closed(d.Or(fed.Forward, fed.Backward)) == Diagrams.Never) fed = feeding.Of(load, batteriesOnly: false);
        int open = d.Or(fed.Forward, fed.Backward), settled = d.Without(Relays.Closed(open), Short);
        if (settled != Diagrams.Never) return Fed(load, fed, settled, Relays.Closed) with { Until = OwnInterrupter(load), Holds = Hold(load, open, settled) };
        for (int round = 0; round + 1 < Relays.Moves.Count; round++)
        {
            var moves = Relays.Moves[round];
            int passing = d.Without(d.Substitute(open, moves), d.Substitute(feeding.Short, moves));
            if (passing != Diagrams.Never) return Fed(load, fed, passing, f => d.Substitute(f, moves)) with { Until = Until(load, round) };
        }
        return InSeries(load) ?? Dead(load);
    }

    private LoadStudy Fed(ContactEdge load, Feeding fed, int when, Func<int, int> close)
    {
        int shorts = close(feeding.Short), toFeed = close(fed.ToFeed), toReturn = close(fed.ToReturn);
        bool Stands(int f) => d.Or(f, shorts) == Diagrams.Always;
        bool hot = Stands(toFeed), ground = Stands(toReturn);
        var side = Stands(when) || (hot && ground) ? SwitchedSide.Unswitched : ground ? SwitchedSide.HotSwitched : hot ? SwitchedSide.GroundSwitched : SwitchedSide.BothSides;
        int shorted = d.Without(d.Without(d.And(toFeed, toReturn), when), shorts), forward = close(fed.Forward), backward = close(fed.Backward);
        var study = new LoadStudy(load.Part, load.Element, side, primes.Of(when, d.Or(shorts, Relays.Undefined)))
        {
            ShortedBy = hot && ground ? Owners(shorted) : [],
            ReversedBy = forward != Diagrams.Never && backward != Diagrams.Never ? Owners(d.Without(forward, backward)) : [],
            IsInRace = Relays.Races.Any(r => d.And(r.When, when) != Diagrams.Never && d.Support(d.Or(fed.Forward, fed.Backward)).Any(r.Relays.Contains)),
        };
        return WithWays(study, load, fed, when, close);
    }

    // The conductors and contacts in the first of the combinations.
    private LoadStudy WithWays(LoadStudy study, ContactEdge load, Feeding fed, int when, Func<int, int> close)
    {
        int[] state = StateIn(when, study.Control);
        foreach (int relay in Relays.Driven)
            state[relay] = Math.Max(0, Enumerable.Range(0, d.PositionsOf(relay)).FirstOrDefault(p => d.Value(close(d.In(relay, p)), state)));
        bool forward = d.Value(fed.Forward, state);
        End hotEnd = Nodes.NodeOf(load.Part, forward ? load.Element.From : load.Element.To), groundEnd = Nodes.NodeOf(load.Part, forward ? load.Element.To : load.Element.From);
        var feeds = graph.Feeds.Where(f => d.Value(f.Runs, state)).Select(f => f.Point).ToHashSet();
        var returns = graph.Feeds.Select(f => f.Return).Append(graph.Return).Where(p => !feeds.Contains(p) || graph.Feeds.Any(f => f.Return == p && f.Point != p)).ToHashSet();
        var hot = paths.Way(hotEnd, feeds, new HashSet<int> { graph.Return }, state);
        var ground = paths.Way(groundEnd, returns, feeds.Where(f => !returns.Contains(f)).ToHashSet(), state);
        if (hot is not { } toFeed || ground is not { } toReturn) return study;
        var contacts = toFeed.Concat(toReturn).Where(s => s.Element is { When: not null }).ToArray();
        return study with
        {
            Paths = [new([.. toFeed.Reverse().Select(s => s.Conductor).OfType<string>()], [.. toReturn.Select(s => s.Conductor).OfType<string>()])],
            Chain = [.. contacts.Where(IsDriven).Select(s => s.Part!.Id).Distinct()],
            SwitchedBy = [.. contacts.Where(s => !IsDriven(s) && Controls(s)).Select(s => s.Part!.Id).Distinct()],
        };
    }

    private bool Controls(Step step) => step.Element!.When!.Tests.Any(t => graph.NumberOf(graph.Circuit.VariableOf(step.Part!, t.Actuator)) >= 0);

    private static bool IsDriven(Step step) =>
        step.Element!.When!.Tests.Any(t => step.Part!.Kind.Actuators.FirstOrDefault(a => a.Name == t.Actuator) is { Drive: ActuatorDrive.Driven });

    // A state of the first combination, everything else at rest where that is allowed.
    private int[] StateIn(int when, Control control)
    {
        int[] state = new int[d.Variables];
        int rest = when;
        var first = control.Any.IsEmpty ? [] : control.Any[0].All.ToDictionary(s => graph.NumberOf(s.Variable), s => s);
        for (int v = 0; v < d.Variables; v++)
        {
            IEnumerable<int> choices = first.TryGetValue(v, out var set) ? set.Positions.Select(p => set.Variable.Actuator.Positions.IndexOf(p)) : Enumerable.Range(0, d.PositionsOf(v));
            int chosen = choices.Concat(Enumerable.Range(0, d.PositionsOf(v))).FirstOrDefault(p => d.And(rest, d.In(v, p)) != Diagrams.Never);
            state[v] = chosen;
            rest = d.And(rest, d.In(v, chosen));
        }
        return state;
    }

    private ImmutableArray<string> Owners(int f) =>
        [.. d.Support(f).Select(v => graph.Variables[v].Part ?? graph.Variables[v].Label).Distinct()];

    // A contact that the load's own plunger opens: the load is fed until it has moved.
    private static SetPosition? OwnInterrupter(ContactEdge load)
    {
        foreach (var contact in load.Part.Kind.Elements.Where(e => e is { Type: ElementType.Contact, IsNoControl: true, When: not null }))
            foreach (var test in contact.When!.Tests)
                if (load.Part.Kind.Actuators.FirstOrDefault(a => a.Name == test.Actuator) is { Drive: ActuatorDrive.Driven } own
                    && new[] { contact.From, contact.To }.Any(end => end != "case" && (end == load.Element.From || end == load.Element.To)))
                    return new(load.Part.Id, own.Name, own.Positions.First(p => !test.Positions.Contains(p)));
        return null;
    }

    // The relay that leaves rest first after a round, the load's own before others.
    private SetPosition? Until(ContactEdge load, int round)
    {
        var moved = Relays.Driven.Where(r => !Relays.Moves[round][r].AsSpan().SequenceEqual(Relays.Moves[round + 1][r]))
            .OrderBy(r => graph.Variables[r].Part == load.Part.Id ? 0 : 1).ThenBy(r => r).ToArray();
        if (moved.Length == 0) return null;
        var variable = graph.Variables[moved[0]];
        int position = Enumerable.Range(1, d.PositionsOf(moved[0]) - 1).First();
        return new(variable.Part, variable.Actuator.Name, variable.Actuator.Positions[position]);
    }

    private Hold? Hold(ContactEdge load, int open, int settled)
    {
        foreach (int relay in Relays.Driven)
        {
            var variable = graph.Variables[relay];
            // One that returns by itself (a cut-out, by reverse current) keeps nothing.
            if (variable.Actuator.Returns) continue;
            for (int position = 1; position < d.PositionsOf(relay); position++)
            {
                if (Relays.Begun(relay, position) is not { } begun) continue;
                int indifferent = d.Or(Short, Relays.Undefined), held = d.Substitute(open, begun);
                if (d.Implies(d.Without(begun[relay][position], indifferent), Relays.RestOf(relay)[position]) || d.Implies(d.Without(held, indifferent), settled)) continue;
                return new(variable.Part!, Keeper(variable), primes.Of(held, indifferent), primes.Of(d.Without(d.Not(held), indifferent), indifferent));
            }
        }
        return null;
    }

    private string Keeper(Variable relay) => relay.Actuator.Stays
        ? relay.Actuator.Name
        : graph.Circuit.FindPart(relay.Part!)!.Kind.Elements.First(e => e.When?.Tests.Any(t => t.Actuator == relay.Actuator.Name) == true).Name;

    private LoadStudy? InSeries(ContactEdge load)
    {
        var rest = Relays.Driven.ToDictionary(r => r, Relays.RestOf);
        if (series.Of(load, rest) is { } settled) return InSeries(load, settled, Short);
        for (int round = 0; round + 1 < Relays.Moves.Count; round++)
            if (series.Of(load, Relays.Moves[round]) is { } passing)
                return InSeries(load, passing, d.Substitute(feeding.Short, Relays.Moves[round])) with { Until = Until(load, round) };
        return null;
    }

    private LoadStudy InSeries(ContactEdge load, SeriesFeeding found, int shorts)
    {
        var control = primes.Of(found.Fed, shorts);
        return new(load.Part, load.Element, SwitchedSide.InSeries, control)
        {
            InSeriesWith = [.. found.With.Select(w => w.Part == load.Part ? w.Part.Id + "." + w.Element.Name : w.Part.Id).Distinct()],
            StringSide = d.Or(found.Fed, shorts) == Diagrams.Always || (found.FeedStands && found.ReturnStands) ? SwitchedSide.Unswitched
                : found.ReturnStands ? SwitchedSide.HotSwitched : found.FeedStands ? SwitchedSide.GroundSwitched : SwitchedSide.BothSides,
            SwitchedBy = [.. d.Support(found.Fed).Select(v => graph.Variables[v]).Where(v => v.Actuator.Drive is ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Key).Select(v => v.Part!).Distinct()],
        };
    }

    private LoadStudy Dead(ContactEdge load)
    {
        var unminded = feeding.Of(load, batteriesOnly: false, minded: false);
        bool polarity = load.Element.Directs && Relays.Closed(d.Or(unminded.Forward, unminded.Backward)) != Diagrams.Never;
        return new(load.Part, load.Element, SwitchedSide.Dead, new([])) { DeadBecause = polarity ? "polarity" : null };
    }

    // A chain goes on with what switches the coil of its last relay.
    private static IEnumerable<LoadStudy> Chained(LoadStudy[] loads)
    {
        foreach (var load in loads)
        {
            var chain = load.Chain.ToList();
            for (int i = 0; i < chain.Count; i++)
                foreach (string relay in loads.Where(l => l.Part.Id == chain[i] && l.Element.Type == ElementType.Coil).SelectMany(l => l.Chain))
                    if (!chain.Contains(relay)) chain.Add(relay);
            yield return load with { Chain = [.. chain] };
        }
    }
}
