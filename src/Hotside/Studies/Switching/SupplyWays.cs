namespace Hotside.Studies.Switching;

/// <summary>How far the poles of a supply reach, and the searches for paths between them.</summary>
internal sealed class SupplyWays(ContactGraph graph, Supply supply)
{
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

    /// <summary>The same through other consumers, the load itself among them: outside of it no path passes the load.</summary>
    public Condition MayBeInSeries(Branch load) => load.When & Between(load, throughConsumers.Value.Hot, throughConsumers.Value.Return);

    private static Condition Between(Branch load, Way hot, Way ground) =>
        (hot.Onward[load.Source] & ground.Onward[load.Target]) | (hot.Onward[load.Target] & ground.Onward[load.Source]);

    private static Way Grow(ContactGraph graph, Supply supply, bool isHot, bool throughConsumers) => Ways.Through(graph,
        isHot ? supply.Hot : supply.Return, (isHot ? supply.Return : supply.Hot).Concat(supply.Others), isHot == supply.HotIsHigher, throughConsumers);
}
