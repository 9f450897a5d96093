namespace Hotside.Studies.Switching;

/// <summary>How far the poles of a supply reach, and the searches for paths between them.</summary>
internal sealed class SupplyWays(ContactGraph graph, Supply supply)
{
    // The narrower bound is a help, and nothing hangs on it.
    private const int MostForBound = 5_000;

    private readonly Lazy<(Way Hot, Way Return)> throughConsumers = new(() => (Grow(graph, supply, isHot: true, true), Grow(graph, supply, isHot: false, true)));

    public Supply Supply => supply;

    /// <summary>Where the hot poles reach through what is in line.</summary>
    public Way Hot { get; } = Grow(graph, supply, isHot: true, false);

    /// <summary>Where the return reaches through what is in line.</summary>
    public Way Return { get; } = Grow(graph, supply, isHot: false, false);

    /// <summary>The search for paths through what is in line.</summary>
    public PathSearch InLine { get; } = new(graph, supply, throughConsumers: false);

    /// <summary>The search for paths through other consumers too.</summary>
    public PathSearch Strings { get; } = new(graph, supply, throughConsumers: true);

    /// <summary>When both ends of a load are reached, one from each pole: outside of it no path feeds the load.</summary>
    public Condition Between(Branch load) => Between(load, Hot, Return);

    /// <summary>The same through other consumers: outside of it no path passes the load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="wanted">The states that matter.</param>
    /// <param name="within">What may lie on a path with the load.</param>
    public Condition MayBeInSeries(Branch load, Condition wanted, Predicate<Branch> within)
    {
        // Reached by way of the load itself, at first: that is worked out once for all, and mostly answers the question.
        var may = wanted & load.When & Between(load, throughConsumers.Value.Hot, throughConsumers.Value.Return);
        return may.IsNever ? may : graph.Positions.Space.Within(MostForBound,
            () => may & Between(load, Around(isHot: true), Around(isHot: false))) ?? may;
        Way Around(bool isHot) => Grow(graph, supply, isHot, true, b => b != load && within(b));
    }

    private static Condition Between(Branch load, Way hot, Way ground) =>
        (hot.Onward[load.Source] & ground.Onward[load.Target]) | (hot.Onward[load.Target] & ground.Onward[load.Source]);

    private static Way Grow(ContactGraph graph, Supply supply, bool isHot, bool throughConsumers, Predicate<Branch>? within = null) => Ways.Through(graph,
        isHot ? supply.Hot : supply.Return, (isHot ? supply.Return : supply.Hot).Concat(supply.Others), isHot == supply.HotIsHigher, throughConsumers, within);
}
