using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Finds the conductors and contacts between a load and its poles in one full state: fewest relays, then fewest conductors.</summary>
internal sealed class Routes
{
    private const int RelayCost = 1_000, ConsumerCost = 1_000_000;

    private readonly ContactGraph graph;
    private readonly Dictionary<End, int> numbers = [];
    private readonly List<List<Step>> steps = [];
    private readonly List<int> points = [];
    private readonly List<End> ends = [];
    private readonly Stems stems;

    // What a search has found of each end, kept from one to the next: those of another number are not met yet.
    private readonly int[] costs, before, met, done;
    private readonly Step?[] by;
    private readonly PriorityQueue<int, long> open = new();
    private readonly HashSet<int> goals = [];
    private int search;

    public Routes(ContactGraph graph)
    {
        this.graph = graph;
        foreach (var conductor in graph.Circuit.Conductors)
            if (!conductor.From.IsFree && !conductor.To.IsFree)
                Lay(conductor.From, conductor.To, new(0, 1) { Conductor = conductor.Id });
        foreach (var part in graph.Circuit.Parts)
        {
            foreach (var joint in part.Joints) Lay(End.At(part.Id, joint.Terminal), joint.On, new(0, 0));
            if (part.CaseOn is { } mount) Lay(Nodes.CaseOf(part), mount, new(0, 0));
            foreach (var element in part.Kind.Elements.Where(e => e.IsInLine || e.IsConsumer || IsMachine(e))) Lay(part, element);
        }
        (costs, before, met, done, by) = (new int[steps.Count], new int[steps.Count], new int[steps.Count], new int[steps.Count], new Step?[steps.Count]);
        int[] poles = [Number(graph.Circuit.System.ReturnNode), .. graph.Circuit.Sources.SelectMany(s => new[] { Number(s.Feed), Number(s.Return) })];
        stems = new([.. steps.Select(from => from.Where(s => s.IsInLine).Select(s => s.To).ToArray())], poles);
    }

    /// <summary>The way of a load in a state.</summary>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    /// <param name="supplies">Between which poles it may be fed.</param>
    /// <param name="isForward">Whether current runs from its first end to its second; <see langword="null"/>: either.</param>
    /// <param name="throughConsumers">Whether other consumers are let through.</param>
    public Route? Of(Branch load, int[] state, IEnumerable<Supply> supplies, bool? isForward, bool throughConsumers)
    {
        End first = Nodes.NodeOf(load.Part, load.Element.From), second = Nodes.NodeOf(load.Part, load.Element.To);
        foreach (var supply in supplies)
        foreach (bool forward in new[] { true, false })
        {
            if (isForward is { } asked && asked != forward) continue;
            bool firstIsHot = forward == supply.HotIsHigher;
            HashSet<int> closed = [.. supply.Return.Concat(supply.Others).Where(p => p.When.HoldsIn(state)).Select(p => p.Point)];
            if (Search(firstIsHot ? first : second, supply.Hot, closed, load, state, throughConsumers) is not { } hot) continue;
            closed = [.. supply.Hot.Concat(supply.Others).Where(p => p.When.HoldsIn(state)).Select(p => p.Point)];
            HashSet<int> met = [.. closed, .. hot.Select(s => points[s.To]).Where(p => p >= 0)];
            var cold = firstIsHot ? second : first;
            if ((Search(cold, supply.Return, met, load, state, throughConsumers) ?? Search(cold, supply.Return, closed, load, state, throughConsumers)) is not { } ground)
                continue;
            return new([.. hot], [.. ground], firstIsHot);
        }
        return null;
    }

    /// <summary>The parts whose contacts join a load's ends to each other, or to poles, without resistance in a state; ids.</summary>
    public ImmutableArray<string> JointOf(Branch load, int[] state, IEnumerable<Supply> supplies)
    {
        End first = Nodes.NodeOf(load.Part, load.Element.From), second = Nodes.NodeOf(load.Part, load.Element.To);
        var always = graph.Positions.Space.AlwaysHolds;
        ImmutableArray<Pole> other = [new(-1, always, second)], poles = [.. supplies.SelectMany(s => s.Hot.Concat(s.Return))];
        var joint = Search(first, other, [], load, state, null) ?? [];
        if (joint.Count == 0) joint = [.. Search(first, poles, [], load, state, null) ?? [], .. Search(second, poles, [], load, state, null) ?? []];
        return [.. joint.Where(s => s.IsControl).Select(s => s.Part!.Id).Distinct()];
    }

    /// <summary>Routes as the study gives them, different ones once.</summary>
    public ImmutableArray<LoadPath> PathsOf(Branch load, IEnumerable<Route> routes) =>
        [.. routes.Select(r => PathOf(load, r)).DistinctBy(p => string.Join(' ', p.HotWay.Concat(p.GroundWay)))];

    private LoadPath PathOf(Branch load, Route route)
    {
        End first = Nodes.NodeOf(load.Part, load.Element.From), second = Nodes.NodeOf(load.Part, load.Element.To);
        bool firstIsHot = route.FirstIsHot;
        return new([.. route.Hot.Reverse().Select(s => s.Conductor).OfType<string>()], [.. route.Ground.Select(s => s.Conductor).OfType<string>()])
        {
            FeedEnd = firstIsHot ? first : second,
            ReturnEnd = firstIsHot ? second : first,
            HotWay = [.. Passed(load.Part.Id, route.Hot).Reverse()],
            GroundWay = [.. Passed(load.Part.Id, route.Ground)],
            Guards = [.. route.Hot.Reverse().Where(s => s.Element is { Type: ElementType.Fuse or ElementType.Breaker }).Select(s => s.Part!.Id).Distinct()],
        };
    }

    // Conductors and parts, each part once as long as it is not left.
    private IEnumerable<string> Passed(string load, IEnumerable<Step> route)
    {
        string last = load;
        yield return load;
        foreach (var step in route)
        {
            if (step.Conductor is { } conductor) yield return last = conductor;
            string at = ends[step.To].Part ?? ends[step.To].Terminal;
            if (at != last) yield return last = at;
        }
    }

    // A machine that stands lets current through its windings.
    private static bool IsMachine(Element element) => element is { IsSource: true, When: not null, TakesEitherPolarity: true };

    private void Lay(Part part, Element element)
    {
        bool isRelay = element is { IsNoControl: false, When: { } when } && when.Tests.Any(t => graph.Circuit.VariableOf(part, t.Actuator).Actuator.Drive == ActuatorDrive.Driven);
        var step = new Step(0, isRelay ? RelayCost : element.IsConsumer || element.IsSource ? ConsumerCost : 0)
        {
            Part = part,
            Element = element,
            When = IsMachine(element) ? !graph.Positions.WhenOf(part, element) : graph.Positions.WhenOf(part, element),
            IsRelay = isRelay,
        };
        Lay(Nodes.NodeOf(part, element.From), Nodes.NodeOf(part, element.To), step);
    }

    private void Lay(End a, End b, Step step)
    {
        int from = Number(a), to = Number(b);
        steps[from].Add(step with { To = to });
        steps[to].Add(step with { To = from });
    }

    private int Number(End end)
    {
        if (numbers.TryGetValue(end, out int number)) return number;
        steps.Add([]);
        ends.Add(end);
        points.Add(graph.PointOf(end));
        return numbers[end] = steps.Count - 1;
    }

    private List<Step>? Search(End start, ImmutableArray<Pole> poles, HashSet<int> closed, Branch load, int[] state, bool? throughConsumers)
    {
        int from = Number(start);
        goals.Clear();
        foreach (var pole in poles)
            if (pole.When.HoldsIn(state))
                goals.Add(Number(pole.End));
        search++;
        open.Clear();
        (costs[from], met[from]) = (0, search);
        int count = 0;
        var stem = throughConsumers == false ? stems.Of(from) : null;
        open.Enqueue(from, 0);
        while (open.TryDequeue(out int at, out _))
        {
            if (done[at] == search) continue;
            done[at] = search;
            if (goals.Contains(at)) return Follow(from, at);
            if (at != from && closed.Contains(points[at])) continue;
            foreach (var step in steps[at])
            {
                if (stem is not null && !stems.IsCore(step.To) && !stem.Contains(step.To)) continue;
                if (done[step.To] == search || (met[step.To] == search && costs[step.To] <= costs[at] + step.Cost)) continue;
                if ((ReferenceEquals(step.Element, load.Element) && ReferenceEquals(step.Part, load.Part)) || !step.LetsThrough(state, throughConsumers)) continue;
                (costs[step.To], before[step.To], by[step.To], met[step.To]) = (costs[at] + step.Cost, at, step, search);
                // Of equal costs the first found comes first.
                open.Enqueue(step.To, ((long)costs[step.To] << 32) + ++count);
            }
        }
        return null;
    }

    private List<Step> Follow(int from, int at)
    {
        List<Step> route = [];
        for (; at != from; at = before[at]) route.Add(by[at]!);
        route.Reverse();
        return route;
    }
}

/// <summary>One step of a route: a conductor, an element, or a joint.</summary>
/// <param name="To">The number of the end to which it leads.</param>
/// <param name="Cost">What it costs.</param>
internal sealed record Step(int To, int Cost)
{
    public string? Conductor { get; init; }

    public Part? Part { get; init; }

    public Element? Element { get; init; }

    public Condition? When { get; init; }

    /// <summary>Whether it is a contact that windings move.</summary>
    public bool IsRelay { get; init; }

    /// <summary>Whether it is a contact that opens, by hand, by a condition or by a relay.</summary>
    public bool IsControl => When is { IsOpen: true } && Element is { IsNoControl: false, IsLink: true };

    /// <summary>Whether it is a conductor, a joint, or an element in line.</summary>
    public bool IsInLine => Element is null || Element.IsLink || Element.IsInLine;

    /// <summary>Whether it is passed in a state; the direction of one-way elements is left to whoever chose the state.</summary>
    /// <param name="state">A value for each variable.</param>
    /// <param name="throughConsumers">Whether consumers are passed; <see langword="null"/>: neither they nor resistances are.</param>
    public bool LetsThrough(int[] state, bool? throughConsumers) =>
        (Element is null || Element.IsLink || (throughConsumers is { } all && (all || Element.IsInLine))) && (When is not { } when || when.HoldsIn(state));
}

/// <summary>How a load is fed in one state.</summary>
/// <param name="Hot">From the load to the feed.</param>
/// <param name="Ground">From the load to the return.</param>
/// <param name="FirstIsHot">Whether the load's first end is the one on the hot side.</param>
internal sealed record Route(ImmutableArray<Step> Hot, ImmutableArray<Step> Ground, bool FirstIsHot)
{
    /// <summary>All steps, those on the hot side first, each side from the load outwards.</summary>
    public IEnumerable<Step> All => Hot.Concat(Ground);

}
