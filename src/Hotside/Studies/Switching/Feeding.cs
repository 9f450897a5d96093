using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>When each load is fed, as a function of free positions and of relays, for one set of supplies.</summary>
internal sealed class Feeding
{
    private readonly ContactGraph graph;
    private readonly Neighbourhoods neighbourhoods;
    private readonly Dictionary<int, Condition> strings = [];
    private readonly ImmutableArray<SupplyWays> supplies;

    public Feeding(ContactGraph graph, Supplies found, Neighbourhoods neighbourhoods)
    {
        this.graph = graph;
        this.neighbourhoods = neighbourhoods;
        supplies = [.. found.All.Select(s => new SupplyWays(graph, s))];
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

    /// <summary>The ways of the supply, where there is but one.</summary>
    public SupplyWays? OnlySupply => supplies.Length == 1 ? supplies[0] : null;

    public IEnumerable<Supply> Supplies => supplies.Select(s => s.Supply);

    /// <summary>Whether the search for a load's own paths was given up.</summary>
    public bool IsGivenUp(Branch load) => supplies.Any(s => s.InLine.GivenUp.Contains(load));

    /// <summary>Whether the search for paths of a load through other consumers was given up.</summary>
    public bool IsStringGivenUp(Branch load) => supplies.Any(s => s.Strings.GivenUp.Contains(load));

    /// <summary>When a path through other consumers passes a load that is not fed without them.</summary>
    /// <param name="feed">The load.</param>
    public Condition InSeries(LoadFeed feed)
    {
        var load = feed.Load;
        if (strings.TryGetValue(load.Number, out var known)) return known;
        var result = graph.Positions.Space.NeverHolds;
        if (neighbourhoods.HasOtherConsumer(load))
            foreach (var supply in supplies)
                result |= supply.Strings.When(load, supply.MayBeInSeries(load) & !feed.Fed & !Short, neighbourhoods.Of(load).Branches);
        return strings[load.Number] = result;
    }

    /// <summary>The other branches of a path through consumers in a full state, and the supply that drives it.</summary>
    public (Supply Supply, ImmutableArray<Branch> Branches)? StringIn(Branch load, int[] state)
    {
        foreach (var supply in supplies)
            if (supply.Strings.PathIn(load, state, neighbourhoods.Of(load).Branches) is { } path)
                return (supply.Supply, path);
        return null;
    }

    /// <summary>Why no path ever feeds a load, in a few words.</summary>
    public string WhyNever(Branch load)
    {
        if (load.Source == load.Target) return "both ends on one point";
        bool Reaches(Func<SupplyWays, Way> way, int end) => supplies.Any(s => !way(s).Reached[end].IsNever);
        bool hotFirst = Reaches(s => s.Hot, load.Source), hotSecond = Reaches(s => s.Hot, load.Target);
        bool coldFirst = Reaches(s => s.Return, load.Source), coldSecond = Reaches(s => s.Return, load.Target);
        return hotFirst && hotSecond && !coldFirst && !coldSecond ? "both ends on equal feeds"
            : !hotFirst && !hotSecond ? coldFirst && coldSecond ? "both ends on the return" : "no way to a feed"
            : !coldFirst && !coldSecond ? "no way to the return"
            : "its two ways never stand together";
    }

    private LoadFeed Feed(Branch load)
    {
        var found = ImmutableArray.CreateBuilder<LoadWays>();
        var never = graph.Positions.Space.NeverHolds;
        Condition forward = never, backward = never, blind = never;
        var near = neighbourhoods.InLineWith(load);
        bool hasResistance = near.Any(b => b.Role == BranchRole.InLine);
        foreach (var ways in supplies)
        {
            var (supply, hot, ground) = (ways.Supply, ways.Hot, ways.Return);
            var possible = load.When & !Short & ways.Between(load);
            var exact = hasResistance ? ways.InLine.When(load, possible, near) : possible;
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
                found.Add(new(supply, fed, hot.Reached[hotEnd], ground.Reached[coldEnd]));
                if (isForward) forward |= fed;
                else backward |= fed;
            }
        }
        return new(load, forward, backward, found.ToImmutable(), blind);
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
    /// <summary>When it is fed.</summary>
    public Condition Fed { get; } = Forward | Backward;
}

/// <summary>The two ways of a load for one supply and one direction of its current, as functions of free positions and of relays.</summary>
/// <param name="Supply">The supply.</param>
/// <param name="Fed">When both ways feed it.</param>
/// <param name="Hot">When its way to a feed stands.</param>
/// <param name="Return">When its way to the return stands.</param>
internal sealed record LoadWays(Supply Supply, Condition Fed, Condition Hot, Condition Return);
