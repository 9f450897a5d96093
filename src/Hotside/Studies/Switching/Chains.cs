using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>Which contacts the current of a load passes, and which relays' coils stand behind them.</summary>
internal sealed class Chains(SwitchingStudy study)
{
    private readonly Dictionary<(int Index, Regime Regime), ImmutableArray<string>> direct = [];
    private readonly Dictionary<(int Index, Regime Regime, Condition Fed, bool? IsForward), ImmutableArray<Route>> known = [];

    /// <summary>How a load is fed: one route for each minimal combination, at most <see cref="Control.Most"/>.</summary>
    /// <param name="index">The load.</param>
    /// <param name="regime">Under which supplies.</param>
    /// <param name="fed">The free positions in which it is fed.</param>
    /// <param name="isForward">The direction of its current; <see langword="null"/>: whichever.</param>
    public ImmutableArray<Route> RoutesOf(int index, Regime regime, Condition fed, bool? isForward = null) =>
        known.TryGetValue((index, regime, fed, isForward), out var routes) ? routes
        : known[(index, regime, fed, isForward)] = FindRoutes(index, regime, fed, isForward);

    private ImmutableArray<Route> FindRoutes(int index, Regime regime, Condition fed, bool? isForward)
    {
        var feed = regime.Feeding.Loads[index];
        var wanted = (isForward is { } asked ? asked ? feed.Forward : feed.Backward : feed.Fed) & !regime.Feeding.Short;
        var routes = ImmutableArray.CreateBuilder<Route>();
        foreach (var states in study.ExamplesOf(fed, regime.Short))
        {
            int[] state = regime.Settling.StateOf(states, wanted);
            bool forward = isForward ?? feed.Forward.HoldsIn(state);
            if (study.Routes.Of(feed.Load, state, regime.Feeding.Supplies, forward, throughConsumers: false) is { } route) routes.Add(route);
        }
        return routes.ToImmutable();
    }

    /// <summary>The relays through which a load is switched, nearest first.</summary>
    public ImmutableArray<string> ChainOf(int index, Regime regime, Condition fed)
    {
        string own = regime.Feeding.Loads[index].Load.Part.Id;
        List<string> chain = [.. RelaysOf(RoutesOf(index, regime, fed)).Where(r => r != own || !regime.Feeding.Loads[index].Load.Pulls)];
        for (int i = 0; i < chain.Count; i++)
        foreach (string next in BehindCoilsOf(chain[i], regime))
            if (!chain.Contains(next) && next != own)
                chain.Add(next);
        return [.. chain];
    }

    /// <summary>The relays whose contacts some routes pass, nearest to the load first; ids.</summary>
    public static IEnumerable<string> RelaysOf(IEnumerable<Route> routes) =>
        routes.SelectMany(r => r.All).Where(s => s.IsRelay).Select(s => s.Part!.Id).Distinct();

    /// <summary>The parts with other contacts on some routes; ids.</summary>
    public static ImmutableArray<string> SwitchesOf(IEnumerable<Route> routes) =>
        [.. routes.SelectMany(r => r.All).Where(s => s is { IsRelay: false, IsControl: true }).Select(s => s.Part!.Id).Distinct()];

    /// <summary>The parts with any contacts on some routes; ids.</summary>
    public static ImmutableArray<string> MoversOf(IEnumerable<Route> routes) =>
        [.. routes.SelectMany(r => r.All).Where(s => s.IsControl).Select(s => s.Part!.Id).Distinct()];

    /// <summary>The parts whose contacts join a load's ends, or one of them to the other pole.</summary>
    public ImmutableArray<string> ShortsOf(Branch load, Regime regime, Condition shorted)
    {
        int[] state = regime.Settling.StateOf(shorted, study.Positions.Space.AlwaysHolds);
        return study.Routes.JointOf(load, state, regime.Feeding.Supplies);
    }

    private ImmutableArray<string> BehindCoilsOf(string relay, Regime regime)
    {
        var behind = ImmutableArray.CreateBuilder<string>();
        for (int i = 0; i < regime.Feeding.Loads.Length; i++)
        {
            var load = regime.Feeding.Loads[i].Load;
            if (load.Part.Id != relay || !load.Pulls) continue;
            if (!direct.TryGetValue((i, regime), out var own))
            {
                var fed = regime.Settling.Settled(regime.Feeding.Loads[i].Fed) & !regime.Short;
                direct[(i, regime)] = own = [.. RelaysOf(RoutesOf(i, regime, fed))];
            }
            behind.AddRange(own.Where(r => r != relay));
        }
        return behind.ToImmutable();
    }
}
