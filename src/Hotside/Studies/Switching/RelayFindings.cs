using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Solving.Laws;

namespace Hotside.Studies.Switching;

/// <summary>What is doubtful about a circuit's relays.</summary>
internal static class RelayFindings
{
    public static IEnumerable<Diagnostic> Of(SwitchingStudy study)
    {
        var regime = study.Whole;
        foreach (var search in regime.Settling.Searches)
        {
            string[] ids = [.. search.Relays.Select(r => r.Part).Distinct()];
            if (!(search.NeverRests & !regime.Short).IsNever)
                yield return SwitchingFindings.NeverSettles.Of(ids, Some(ids, "or"), study.Words(search.NeverRests & !regime.Short));
            if (!(search.Races & !regime.Short).IsNever)
                yield return SwitchingFindings.Race.Of(ids, Some(ids, "and"), study.Words(search.Races & !regime.Short));
        }
        foreach (var group in regime.Settling.Untried)
            yield return SwitchingFindings.OrdersNotTried.Of(group.Select(r => r.Part).Distinct(), Some([.. group.Select(r => r.Part).Distinct()], "and"));
        foreach (var relay in regime.Settling.Relays)
            if ((regime.Settling.Settled(relay.Conflict) & !regime.Short) is { IsNever: false } both)
                yield return SwitchingFindings.BothCoils.Of([relay.Part], relay.Part, study.Words(both));
        foreach (var weak in WeakCoils(study, regime)) yield return weak;
    }

    private static string Some(string[] ids, string word) =>
        ids.Length == 1 ? ids[0] : string.Join(", ", ids[..^1]) + " " + word + " " + ids[^1];

    private static IEnumerable<Diagnostic> WeakCoils(SwitchingStudy study, Regime regime)
    {
        foreach (var feed in regime.Feeding.Loads)
        {
            var load = feed.Load;
            if (!load.Pulls) continue;
            double rated = ElementFigures.RatedVolts(load.Part, load.Element, study.Graph.Circuit.System.Volts[0]);
            var fed = regime.Settling.Settled(feed.Fed) & !regime.Short;
            foreach (var states in study.ExamplesOf(fed, regime.Short).Take(SneakPath.Looked))
            {
                int[] state = regime.Settling.StateOf(states, feed.Fed & !regime.Feeding.Short);
                var point = study.Neighbourhoods.Of(load).Point(state);
                double volts = Math.Abs(point.VoltsAcross(load));
                if (point.IsUnsettled || volts >= PullIn.Least * rated) continue;
                yield return SwitchingFindings.WeakCoil.Of([load.Part.Id], study.NameOf(load), Numbers.Plain(volts, 1), Numbers.Plain(rated, 1), study.Words(states)) with
                {
                    Hint = "measure the volts at the coil under load; look for a resistance or another load in its feed",
                };
                break;
            }
        }
    }
}
