using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>When each load is fed, as a function of free positions and of relays, for one set of supplies.</summary>
internal sealed class Feeding
{
    private readonly ContactGraph graph;
    private readonly Neighbourhoods neighbourhoods;
    private readonly Dictionary<int, Condition> strings = [];
    private readonly ImmutableArray<(Supply Supply, Way Hot, Way Return, PathSearch InLine, PathSearch Strings)> supplies;

    public Feeding(ContactGraph graph, Supplies found, Neighbourhoods neighbourhoods)
    {
        this.graph = graph;
        this.neighbourhoods = neighbourhoods;
        supplies = [.. found.All.Select(s => (s,
            Ways.Through(graph, s.Hot, s.Return.Concat(s.Others), s.HotIsHigher),
            Ways.Through(graph, s.Return, s.Hot.Concat(s.Others), !s.HotIsHigher),
            new PathSearch(graph, s, throughConsumers: false),
            new PathSearch(graph, s, throughConsumers: true)))];
        Short = found.PostsJoined;
        foreach (var supply in found.All)
        foreach (var hot in supply.Hot)
        foreach (var cold in supply.Return)
            Short |= hot.When & cold.When & graph.JoinedTo(hot.Point)[cold.Point];
        Loads = [.. graph.Loads.Select(Feed)];
    }

    /// <summary>When a feed and a return, or a lower feed, are one point.</summary>
    public Condition Short { get; }

    /// <summary>What holds for each load, in the order of the graph's loads.</summary>
    public ImmutableArray<LoadFeed> Loads { get; }

    public IEnumerable<Supply> Supplies => supplies.Select(s => s.Supply);

    /// <summary>Whether a search was given up.</summary>
    public bool IsApproximate => supplies.Any(s => s.InLine.IsApproximate || s.Strings.IsApproximate);

    /// <summary>When a path through other consumers passes the load; states in which it is fed without them are in it too.</summary>
    /// <param name="load">The load.</param>
    /// <param name="confirm">Asked of each set of states with a path whether it counts; <see langword="null"/>: it does.</param>
    public Condition InSeries(Branch load, Func<int[], Condition>? confirm = null)
    {
        if (confirm is null && strings.TryGetValue(load.Number, out var known)) return known;
        var result = graph.Positions.Space.NeverHolds;
        if (neighbourhoods.HasOtherConsumer(load))
            foreach (var supply in supplies)
                result |= supply.Strings.When(load, other => neighbourhoods.AreTogether(load, other), confirm);
        result &= !Short;
        if (confirm is null) strings[load.Number] = result;
        return result;
    }

    /// <summary>The other branches of a path through consumers in a full state, and the supply that drives it.</summary>
    public (Supply Supply, ImmutableArray<Branch> Branches)? StringIn(Branch load, int[] state)
    {
        foreach (var supply in supplies)
            if (supply.Strings.PathIn(load, state) is { } path)
                return (supply.Supply, path);
        return null;
    }

    /// <summary>Why no path ever feeds a load, in a few words.</summary>
    public string WhyNever(Branch load)
    {
        if (load.Source == load.Target) return "both ends on one point";
        bool Reaches(Func<(Supply, Way Hot, Way Return, PathSearch, PathSearch), Way> way, int end) => supplies.Any(s => !way(s).Reached[end].IsNever);
        bool hotFirst = Reaches(s => s.Hot, load.Source), hotSecond = Reaches(s => s.Hot, load.Target);
        bool coldFirst = Reaches(s => s.Return, load.Source), coldSecond = Reaches(s => s.Return, load.Target);
        return hotFirst && hotSecond && !coldFirst && !coldSecond ? "both ends on equal feeds"
            : !hotFirst && !hotSecond ? coldFirst && coldSecond ? "both ends on the return" : "no way to a feed"
            : !coldFirst && !coldSecond ? "no way to the return"
            : "its two ways never stand together";
    }

    /// <summary>Whether two branches may lie on one path.</summary>
    public bool AreTogether(Branch a, Branch b) => neighbourhoods.AreTogether(a, b);

    private LoadFeed Feed(Branch load)
    {
        var ways = ImmutableArray.CreateBuilder<LoadWays>();
        var never = graph.Positions.Space.NeverHolds;
        Condition forward = never, backward = never, blind = never;
        var near = neighbourhoods.InLineWith(load);
        bool hasResistance = near.Any(b => b.Role == BranchRole.InLine);
        foreach (var (supply, hot, ground, inLine, _) in supplies)
        {
            var exact = hasResistance ? inLine.When(load, near.Contains) : graph.Positions.Space.AlwaysHolds;
            foreach (bool isForward in new[] { true, false })
            {
                // Forward: current, not heat, runs from the first end to the second.
                int hotEnd = isForward == supply.HotIsHigher ? load.Source : load.Target, coldEnd = load.Other(hotEnd);
                if (load.Source == load.Target) continue;
                var fed = hot.Onward[hotEnd] & ground.Onward[coldEnd] & load.When & !Short;
                if (load.IsOneWay && !isForward)
                {
                    blind |= fed;
                    continue;
                }
                fed &= exact;
                if (fed.IsNever) continue;
                ways.Add(new(supply, fed, hot.Reached[hotEnd], ground.Reached[coldEnd]));
                if (isForward) forward |= fed;
                else backward |= fed;
            }
        }
        return new(load, forward, backward, ways.ToImmutable(), blind) { IsSearched = hasResistance };
    }
}

/// <summary>What holds for one load, as functions of free positions and of relays.</summary>
/// <param name="Load">The load.</param>
/// <param name="Forward">When it is fed with the current from its first end to its second.</param>
/// <param name="Backward">When it is fed the other way.</param>
/// <param name="Ways">The ways by which it may be fed.</param>
/// <param name="Blocked">When it would be fed if it let current through the other way.</param>
internal sealed record LoadFeed(Branch Load, Condition Forward, Condition Backward, ImmutableArray<LoadWays> Ways, Condition Blocked)
{
    /// <summary>Whether a resistance lies near it, so that single states had to be searched.</summary>
    public bool IsSearched { get; init; }

    /// <summary>When it is fed.</summary>
    public Condition Fed { get; } = Forward | Backward;
}

/// <summary>The two ways of a load for one supply and one direction of its current, as functions of free positions and of relays.</summary>
/// <param name="Supply">The supply.</param>
/// <param name="Fed">When both ways feed it.</param>
/// <param name="Hot">When its way to a feed stands.</param>
/// <param name="Return">When its way to the return stands.</param>
internal sealed record LoadWays(Supply Supply, Condition Fed, Condition Hot, Condition Return);
