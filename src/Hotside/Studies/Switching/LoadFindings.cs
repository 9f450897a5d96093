using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Solving.Laws;

namespace Hotside.Studies.Switching;

/// <summary>What is doubtful about how loads are fed.</summary>
internal sealed class LoadFindings(SwitchingStudy study)
{
    private readonly Dictionary<Supply, string[]> parts = new(ReferenceEqualityComparer.Instance);

    /// <summary>The findings of a load with its verdict.</summary>
    public IEnumerable<Diagnostic> Of(int index, LoadStudy verdict)
    {
        var load = study.Graph.Loads[index];
        string name = study.NameOf(load);
        string[] items = [load.Part.Id];
        if (verdict.Side == SwitchedSide.Dead && !load.Element.IsInternal)
            yield return verdict.IsTurnedRound ? SwitchingFindings.TurnedRound.Of(items, name) with { Hint = "turn its leads, and check first that it has survived" }
                : SwitchingFindings.DeadLoad.Of(items, name, verdict.DeadBecause ?? "") with
                {
                    Hint = "look for a wire, a feed or a return that is missing" + (LooseEnds.Of(study.Graph, load) is { Length: > 0 } loose ? ": nothing is on " + loose : ""),
                };
        if (verdict is { Side: SwitchedSide.InSeries, IsMomentary: false } && !load.Element.IsInternal && !IsChargeWarning(verdict))
            yield return (HasLostReturn(load) ? SwitchingFindings.LostReturn : SwitchingFindings.OnlyInSeries)
                .Of([.. items, .. verdict.InSeriesWith.Select(w => w.Split('.')[0]).Except(items)], name, string.Join(" and ", verdict.InSeriesWith));
        foreach (var drawn in DrawsFromPart(index)) yield return drawn;
    }

    /// <summary>The sneak path of a load; <see langword="null"/> when none.</summary>
    /// <param name="index">The load.</param>
    /// <param name="verdict">Its verdict.</param>
    /// <param name="isSettled">Whether its volts are known in all states that were looked at; those of others are not told.</param>
    public SneakPath? SneakOf(int index, LoadStudy verdict, out bool isSettled)
    {
        isSettled = true;
        if (verdict.Side == SwitchedSide.InSeries || verdict.IsNeverFed || verdict.Element.IsInternal || verdict.IsMomentary) return null;
        var regime = study.Whole;
        var feed = regime.Feeding.Loads[index];
        var along = study.InSeries(index);
        var sneaks = regime.Settling.Settled(along) & !regime.Short & !regime.Settling.Settled(feed.Fed);
        if (sneaks.IsNever) return null;
        double rated = ElementFigures.RatedVolts(feed.Load.Part, feed.Load.Element, study.Graph.Circuit.System.Volts[0]), worst = 0;
        Condition when = sneaks;
        ImmutableArray<Branch> through = [];
        foreach (var states in study.ExamplesOf(sneaks, regime.Short).Take(SneakPath.Looked))
        {
            int[] state = regime.Settling.StateOf(states, along);
            var point = study.Neighbourhoods.Of(feed.Load).Point(state);
            isSettled &= !point.IsUnsettled;
            // Equal volts stay equal, whatever their last digits.
            double volts = Math.Round(Math.Abs(point.VoltsAcross(feed.Load)), 6);
            if (point.IsUnsettled || volts <= worst || regime.Feeding.StringIn(feed.Load, state) is not { } found) continue;
            (worst, when, through) = (volts, states, found.Branches);
        }
        if (worst < SneakPath.Nothing * rated) return null;
        return new(feed.Load, study.NameOf(feed.Load), study.Writer.Write(sneaks, regime.Short), worst, worst < SneakPath.Faint * rated, when,
            [.. through.Where(b => b.Role == BranchRole.Consumer).Select(b => StringJudge.NameOf(b, feed.Load)).Distinct()],
            [.. through.Select(b => b.Part.Id).Distinct()]);
    }

    // A lamp in line with a machine that stands is lit by that very thing.
    private bool IsChargeWarning(LoadStudy verdict) =>
        !verdict.InSeriesWith.IsEmpty && verdict.InSeriesWith.All(w => study.Graph.Circuit.FindPart(w.Split('.')[0]) is { } part && part.Kind.Elements.Any(e => e is { IsSource: true, When: not null }));

    // A node that nothing but consumers touches, those of one part or at least three: where a ground was, most likely.
    private bool HasLostReturn(Branch load)
    {
        foreach (int end in new[] { load.Source, load.Target })
        {
            var here = study.Graph.At(end).ToArray();
            bool onlyConsumers = here.All(b => b is { Role: BranchRole.Consumer, Element.IsConsumer: true }) && !study.IsPole(end);
            if (onlyConsumers && here.Length > 1 && (here.Length > 2 || here.All(b => b.Part == load.Part))) return true;
        }
        return false;
    }

    private IEnumerable<Diagnostic> DrawsFromPart(int index)
    {
        var feed = study.Whole.Feeding.Loads[index];
        foreach (var supply in feed.Ways.Select(w => w.Supply).Distinct())
        {
            if (!parts.TryGetValue(supply, out string[]? from)) parts[supply] = from = PartsOf(supply);
            if (from.Length == 0) continue;
            yield return SwitchingFindings.UnequalDischarge.Of([feed.Load.Part.Id, .. from], study.NameOf(feed.Load), string.Join(" and ", from));
            yield break;
        }
    }

    // The sources that a supply draws from, where it is a part of a bank: from the tap down, what stands upon the tap gives nothing; from the top to the tap, what lies beneath it.
    private string[] PartsOf(Supply supply)
    {
        var stack = study.Graph.Circuit.Sources.Select(s => (s, Hot: study.Graph.PointOf(s.Feed), Cold: study.Graph.PointOf(s.Return))).ToArray();
        var above = stack.Where(s => supply.Hot.Any(p => p.Point == s.Cold && p.When.IsAlways));
        var beneath = stack.Where(s => supply.Return.Any(p => p.Point == s.Hot && p.When.IsAlways));
        var left = above.Concat(beneath).ToArray();
        return left.Length == 0 ? [] : [.. stack.Except(left).Where(s => supply.Hot.Any(p => p.Point == s.Hot) || supply.Return.Any(p => p.Point == s.Cold)).Select(s => s.s.Part.Id).Distinct()];
    }
}
