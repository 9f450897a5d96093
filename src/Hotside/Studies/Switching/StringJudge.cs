using System.Collections.Immutable;
using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>Tells the verdict of a load that no path without other consumers feeds.</summary>
internal static class StringJudge
{
    /// <summary>The verdict of a load in series; <see langword="null"/> when it is not.</summary>
    public static LoadStudy? Judge(SwitchingStudy study, Chains chains, int index)
    {
        var regime = study.Whole;
        var feed = regime.Feeding.Loads[index];
        var along = study.InSeries(index);
        var settling = regime.Settling;
        var fed = settling.Settled(along) & !regime.Short;
        bool isMomentary = fed.IsNever;
        if (isMomentary) fed = settling.Passing(along) & !regime.Short;
        if (fed.IsNever) return null;
        List<Branch> others = [];
        Dictionary<string, (ImmutableArray<string> With, Condition When, List<Route> Routes)> strings = [];
        List<Route> routes = [];
        foreach (var states in study.ExamplesOf(fed, regime.Short))
        {
            int[] state = settling.StateOf(states, along);
            if (regime.Feeding.StringIn(feed.Load, state) is not { } found) continue;
            // Several may stand beside each other in the string; the current tells which carry it, the path is one of them at least.
            var carriers = OperatingPoint.Carriers(study.Neighbourhoods.Of(feed.Load), feed.Load, state);
            Branch[] with = [.. carriers.IsEmpty ? found.Branches.Where(b => b.Role == BranchRole.Consumer) : carriers];
            others.AddRange(with);
            var names = Names(with, feed.Load);
            string key = string.Join(',', names);
            strings[key] = strings.TryGetValue(key, out var more) ? more with { When = more.When | states } : (names, states, []);
            if (study.Routes.Of(feed.Load, state, [found.Supply], null, throughConsumers: true) is not { } route) continue;
            routes.Add(route);
            strings[key].Routes.Add(route);
        }
        var switches = Chains.SwitchesOf(routes);
        var disconnects = study.Positions.DisconnectsIn(fed);
        var until = isMomentary ? settling.EndedBy(along, fed) : null;
        return new(feed.Load.Part, feed.Load.Element, SwitchedSide.InSeries, study.Writer.Write(fed, regime.Short))
        {
            InSeriesWith = Names(others, feed.Load),
            Strings = [.. strings.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => StringOf(study, feed.Load, s.Value.With, s.Value.When, s.Value.Routes))],
            StringSide = study.StringSideOf(feed.Load, regime, isMomentary),
            SwitchedBy = switches,
            DisconnectedBy = switches.All(disconnects.Contains) ? [] : disconnects,
            Chain = [.. Chains.RelaysOf(routes)],
            Until = until is { } end ? new(end.Relay.Variable.Part, end.Relay.Variable.Actuator.Name, end.Relay.Variable.Actuator.Positions[end.Position]) : null,
            IsApproximate = regime.Feeding.IsGivenUp(feed.Load) || regime.Feeding.IsStringGivenUp(feed.Load) || study.IsDoubtful(along),
            Paths = study.Routes.PathsOf(feed.Load, routes),
        };
    }

    private static LoadString StringOf(SwitchingStudy study, Branch load, ImmutableArray<string> with, Condition when, List<Route> routes)
    {
        var paths = study.Routes.PathsOf(load, routes);
        return new(with, study.Writer.Write(when, study.Whole.Short))
        {
            Paths = paths,
IsBackFed = paths.Any() && paths.All(p => study.Graph.Circuit.FindPart(p.HotWay[0]) is { IsStandingSource: false } source && source.Kind.Elements.Any(e => e.IsSource)),
        };
    }

    private static ImmutableArray<string> Names(IEnumerable<Branch> others, Branch load) =>
        [.. others.Distinct().OrderBy(b => b.Number).Select(b => NameOf(b, load)).Distinct()];

    // A machine's own winding is the machine; a lamp of two filaments says which.
    public static string NameOf(Branch branch, Branch load) =>
        branch.Element.IsConsumer && (branch.Part == load.Part || !branch.Element.IsInternal)
            ? LoadStudy.NameOf(branch.Part, branch.Element)
            : branch.Part.Id;
}
