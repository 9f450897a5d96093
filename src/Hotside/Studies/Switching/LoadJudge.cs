using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Tells the verdict of each load.</summary>
internal sealed class LoadJudge
{
    private readonly SwitchingStudy study;
    private readonly Chains chains;
    private readonly Dictionary<Regime, ImmutableArray<Holding>> holdings = [];

    public LoadJudge(SwitchingStudy study)
    {
        this.study = study;
        chains = new(study);
        foreach (var regime in study.Regimes) holdings[regime] = Holding.Of(study, regime);
    }

    private Condition Never => study.Positions.Space.NeverHolds;

    /// <summary>The verdict of a load.</summary>
    /// <param name="index">Its place among the graph's loads.</param>
    public LoadStudy Judge(int index)
    {
        foreach (var regime in study.Regimes)
            if (Settled(regime, regime.Feeding.Loads[index].Fed) is { IsNever: false } fed)
                return Fed(index, regime, fed, until: null);
        foreach (var regime in study.Regimes)
        {
            var feed = regime.Feeding.Loads[index];
            var passing = regime.Settling.Passing(feed.Fed) & !regime.Short;
            if (!passing.IsNever) return Fed(index, regime, passing, regime.Settling.EndedBy(feed.Fed, passing));
        }
        return StringJudge.Judge(study, chains, index) ?? Dead(index);
    }

    /// <summary>
    /// On which side a load is switched whose ways stand in some states: with the battery disconnects on, for they count only where nothing else is in the way;
    /// and with them like any other switch.
    /// </summary>
    public static (SwitchedSide Own, SwitchedSide Whole, bool IsDisconnected) SideOf(Condition hotWay, Condition returnWay, Condition except, Condition disconnectsOn)
    {
        SwitchedSide Outside(Condition none) => SideOf((hotWay | none).IsAlways, (returnWay | none).IsAlways);
        SwitchedSide own = Outside(except | !disconnectsOn), whole = Outside(except);
        return own == SwitchedSide.Unswitched ? (whole, whole, false) : (own, whole, true);
    }


    /// <summary>The side by whether the way to the feed, and that to the return, always stands.</summary>
    public static SwitchedSide SideOf(bool hotStands, bool returnStands) =>
        (hotStands, returnStands) switch
        {
            (true, true) => SwitchedSide.Unswitched,
            (false, true) => SwitchedSide.HotSwitched,
            (true, false) => SwitchedSide.GroundSwitched,
            _ => SwitchedSide.BothSides,
        };

    /// <summary>When a load's ways stand with relays settled, or on the way to rest; ways that never feed it do not count.</summary>
    public static (Condition Hot, Condition Return) WaysOf(IEnumerable<LoadWays> ways, Regime regime, bool isMomentary)
    {
        Condition Over(Condition c) => isMomentary ? regime.Settling.Passing(c) : regime.Settling.Settled(c);
        Condition hot = regime.Short.Space.NeverHolds, ground = hot;
        foreach (var way in ways)
        {
            if ((Over(way.Fed) & !regime.Short).IsNever) continue;
            hot |= Over(way.Hot);
            ground |= Over(way.Return);
        }
        return (hot, ground);
    }

    private static Condition Settled(Regime regime, Condition condition) => regime.Settling.Settled(condition) & !regime.Short;

    private LoadStudy Fed(int index, Regime regime, Condition fed, (Relay Relay, int Position)? until)
    {
        var feed = regime.Feeding.Loads[index];
        var settling = regime.Settling;
        var (hotWay, returnWay) = WaysOf(feed.Ways, regime, isMomentary: until is not null);
        var (side, whole, isDisconnected) = SideOf(hotWay, returnWay, regime.Short, study.Positions.DisconnectsOn);
        var routes = chains.RoutesOf(index, regime, fed);
        until ??= Interrupted.Until(study, regime, feed, fed);
        var held = holdings[regime].FirstOrDefault(h => h.Keeps(feed, fed));
        var shorted = hotWay & returnWay & !fed & !regime.Short;
        return new(feed.Load.Part, feed.Load.Element, side, study.Writer.Write(fed, regime.Short))
        {
            SideWithDisconnects = whole,
            Chain = chains.ChainOf(index, regime, fed),
            SwitchedBy = Chains.SwitchesOf(routes),
            DisconnectedBy = isDisconnected ? study.Positions.DisconnectsIn(fed) : [],
            Holds = held?.Hold,
            Until = until is { } end ? new(end.Relay.Variable.Part, end.Relay.Variable.Actuator.Name, end.Relay.Variable.Actuator.Positions[end.Position]) : null,
            ShortedBy = until is null && !shorted.IsNever ? chains.ShortsOf(feed.Load, regime, shorted) : [],
            ReversedBy = ReversedBy(index, regime, feed),
            Braked = Braked(regime, feed, fed),
            AlsoFedBy = AlsoFedBy(index, regime, fed),
            IsInRace = InRace(regime, feed),
            IsApproximate = regime.Feeding.IsGivenUp(feed.Load) || study.IsDoubtful(feed.Fed),
            Paths = study.Routes.PathsOf(feed.Load, routes),
        };
    }

    private ImmutableArray<string> ReversedBy(int index, Regime regime, LoadFeed feed)
    {
        Condition forward = Settled(regime, feed.Forward), backward = Settled(regime, feed.Backward);
        if (forward.IsNever || backward.IsNever) return [];
        var one = Chains.MoversOf(chains.RoutesOf(index, regime, forward, isForward: true));
        var other = Chains.MoversOf(chains.RoutesOf(index, regime, backward, isForward: false));
        return [.. one.Where(other.Contains)];
    }

    private Control? Braked(Regime regime, LoadFeed feed, Condition fed)
    {
        if (feed.Load.Element.Type != ElementType.Motor || feed.Load.Source == feed.Load.Target) return null;
        var braked = Settled(regime, study.Graph.JoinedTo(feed.Load.Source)[feed.Load.Target]) & !fed;
        return braked.IsNever ? null : study.Writer.Write(braked, regime.Short);
    }

    private ImmutableArray<string> AlsoFedBy(int index, Regime regime, Condition fed)
    {
        if (regime == study.Whole) return [];
        var more = Settled(study.Whole, study.Whole.Feeding.Loads[index].Fed) & !fed;
        if (more.IsNever) return [];
        return [.. study.Graph.Circuit.Sources
            .Where(s => s.Element.When is not null && more.Implies(study.Positions.WhenOf(s.Part, s.Element)))
            .Select(s => s.Part.Id).Distinct()];
    }

    private bool InRace(Regime regime, LoadFeed feed) => regime.Settling.Searches.Any(s =>
        !(s.Races & !regime.Short).IsNever && study.Positions.Space.SupportOf(feed.Fed).Intersect(s.Relays.Select(r => r.Number)).Any());

    private LoadStudy Dead(int index)
    {
        var feed = study.Whole.Feeding.Loads[index];
        if (FromElsewhere.Of(study.Graph, feed.Load) is { IsEmpty: false } from) return new(feed.Load.Part, feed.Load.Element, SwitchedSide.Elsewhere, new([])) { FedFrom = from };
        return new(feed.Load.Part, feed.Load.Element, SwitchedSide.Dead, new([]))
        {
            IsTurnedRound = Settled(study.Whole, feed.Blocked) != Never,
            DeadBecause = Settled(study.Whole, feed.Blocked) != Never ? "polarity"
                : study.Whole.Settling.Passing(feed.Fed) != Never ? "whatever would feed it meets a short circuit"
                : study.Whole.Feeding.WhyNever(feed.Load),
            IsApproximate = study.Whole.Feeding.IsGivenUp(feed.Load) || study.Whole.Feeding.IsStringGivenUp(feed.Load) || study.IsDoubtful(feed.Fed),
        };
    }
}
