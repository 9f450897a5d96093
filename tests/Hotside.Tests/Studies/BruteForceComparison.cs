using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>Compares the verdicts of a study with those by definition.</summary>
internal static class BruteForceComparison
{
    /// <summary>What differs; empty when all agrees.</summary>
    public static List<string> Differences(Circuit circuit)
    {
        List<string> found = [];
        var study = CircuitStudy.Of(circuit, TestContext.Current.CancellationToken);
        BruteForce truth = new(circuit);
        var settled = truth.States.Select(truth.Settle).ToArray();
        // Where relays never rest, or a short comes and goes on the way, the definition leaves open what counts.
        bool[] isOut = [.. settled.Select(s => s.Counted.Any(n => n.IsShort))];
        bool shortFound = study.Findings.Any(f => f.Code == "HS3001");
        if (isOut.Any(o => o) != shortFound) found.Add($"short circuit: {isOut.Any(o => o)} by definition, {shortFound} by the study");
        if (isOut.All(o => o)) return found;
        foreach (var load in truth.Loads)
        {
            var verdict = study.Loads.Single(l => l.Part.Id == load.Part.Id && l.Element == load.Element);
            if (verdict.IsApproximate) continue;
            found.AddRange(Compare(truth, settled, isOut, load, verdict));
        }
        return found;
    }

    private static IEnumerable<string> Compare(BruteForce truth, BruteForce.Settled[] settled, bool[] isOut, BruteForce.Piece load, LoadStudy verdict)
    {
        string name = verdict.Name;
        var counted = settled.Where((_, i) => !isOut[i]).ToArray();
        bool isFed = counted.Any(s => s.Recurring.Any(n => n.Fed(load))), mayBeFed = counted.Any(s => s.Counted.Any(n => n.Fed(load)));
        bool saysFed = verdict.Side is not (SwitchedSide.InSeries or SwitchedSide.Dead);
        if (verdict.IsMomentary)
        {
            if (isFed) yield return $"{name} momentary, but fed at rest";
            if (!settled.Any(s => s.Passed.Any(n => saysFed ? n.Fed(load) : n.InSeries(load)))) yield return $"{name} momentary, but fed nowhere";
            yield break;
        }
        if (isFed && !saysFed) yield return $"{name} is fed by definition, {verdict.Side} by the study";
        if (!mayBeFed && saysFed) yield return $"{name} is never fed by definition, {verdict.Side} by the study";
        Func<BruteForce.Net, bool> counts = saysFed ? n => n.Fed(load) : n => !n.Fed(load) && n.InSeries(load);
        for (int i = 0; i < settled.Length; i++)
        {
            if (isOut[i]) continue;
            bool least = settled[i].Recurring.Any(counts), most = settled[i].Counted.Any(counts), says = Holds(verdict.Control, truth.States[i]);
            if (says ? !most : least && !verdict.Control.IsCut)
            {
                yield return $"{name} {verdict.Side} {{{verdict.Control}}} at {string.Join(", ", truth.States[i].Select(p => p.Key + " " + p.Value))}: {most} by definition";
                break;
            }
        }
        if (saysFed && isFed && counted.All(s => s.Rests) && SideOf(counted, load) is var (side, whole))
        {
            if (side != verdict.Side) yield return $"{name} is {side} by definition, {verdict.Side} by the study";
            if (whole != verdict.SideWithDisconnects) yield return $"{name} is {whole} with disconnects by definition, {verdict.SideWithDisconnects} by the study";
        }
        if (verdict.Side == SwitchedSide.InSeries)
            foreach (string other in verdict.InSeriesWith)
                if (!truth.Windings.Any(o => (other == o.Part.Id || other == o.Part.Id + "." + o.Element.Name) && o != load && counted.Any(s => s.Counted.Any(n => n.InSeries(load, o)))))
                    yield return $"{name} is in series with {other} nowhere by definition";
    }

    // A disconnect cuts everything; what a load's own switches are is seen where all disconnects are on. Where none of them is left, it is the load's switch.
    private static (SwitchedSide Own, SwitchedSide Whole) SideOf(BruteForce.Settled[] counted, BruteForce.Piece load)
    {
        string[] keys = [.. counted.SelectMany(s => s.Counted.SelectMany(n => n.FeedingKeys(load))).Distinct()];
        var whole = SideOf(counted, load, keys);
        var own = SideOf([.. counted.Where(s => s.Counted[0].AreDisconnectsOn)], load, keys);
        return (own == SwitchedSide.Unswitched ? whole : own, whole);
    }

    private static SwitchedSide SideOf(BruteForce.Settled[] counted, BruteForce.Piece load, string[] keys)
    {
        bool hot = true, back = true;
        foreach (var s in counted)
        {
            var ways = s.Counted.SelectMany(n => keys.Select(k => n.Ways(load, k))).ToArray();
            hot &= ways.Any(w => w.Hot);
            back &= ways.Any(w => w.Return);
        }
        return (hot, back) switch
        {
            (true, true) => SwitchedSide.Unswitched,
            (false, true) => SwitchedSide.HotSwitched,
            (true, false) => SwitchedSide.GroundSwitched,
            _ => SwitchedSide.BothSides,
        };
    }

    private static bool Holds(Control control, Dictionary<Variable, string> state) =>
        control.Any.Any(c => c.All.All(s => s.Positions.Contains(state[s.Variable])));
}
