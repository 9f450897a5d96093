using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Tables;

namespace Hotside.Proposals.Steps;

/// <summary>Sizes of new wires and ratings of fuses by the currents of the whole draft, and old wires that no longer do: all by the room for sizes, until nothing changes.</summary>
internal static class SizeStep
{
    // Lengths are guesses until somebody measures: sized as if half as long again (common practice, no source).
    private const double LengthReserve = 1.5;
    private const int MostRounds = 5;

    /// <summary>Sizes the draft.</summary>
    public static void Run(Workbench work)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            var sizes = Sized(work);
            bool changed = Fuses(work, sizes);
            // A wire is asked what it needs behind the fuse that it gets, not behind the one that goes.
            if (changed) sizes = Sized(work);
            changed |= Wires(work, sizes);
            if (!changed) break;
        }
    }

    // New wires as long as they might turn out.
    private static CircuitSizes Sized(Workbench work)
    {
        var draft = work.Draft.Circuit;
        var longer = draft.With([.. draft.Conductors.Select(c => work.Draft.NoteOf(c.Id) is { IsToMeasure: true } && c.Wire.LengthInMetres is { } metres ? c with { Wire = c.Wire with { LengthInMetres = LengthReserve * metres } } : c)]);
        return new Exposures.Bench(longer, default).Sizes;
    }

    private static bool Wires(Workbench work, CircuitSizes sizes)
    {
        bool changed = false;
        foreach (var sizing in sizes.Conductors)
        {
            var (id, wire) = (sizing.Conductor.Id, work.Draft.Wire(sizing.Conductor.Id).Wire);
            if (sizing.SizeNeeded is not { } needed) continue;
            // A short one counts as a pigtail and may be any size; a new wire is one that can be handled all the same.
            var single = WireLadder.Least(WireLadder.Of(wire, work.Draft.System), isInSheath: false);
            if (needed.Area < single.Area) needed = single;
            if (work.Draft.IsNew(id))
            {
                if (wire.Size is { } size && size.Area >= needed.Area * 0.999) continue;
                work.Draft.Remake(id, wire with { Size = needed }, null);
                changed = true;
            }
            else if (wire.Size is { } old && old.Area < needed.Area * 0.999 && WorseThanBefore(work, sizing) is { } reason)
            {
                work.Draft.Note(id).Reason = reason;
                work.Draft.Remake(id, wire with { Size = needed, Condition = null }, reason);
                if (!work.IsDecided(id)) work.Decide(id, DecisionKind.Renew, reason);
                changed = true;
            }
        }
        foreach (var wire in work.Draft.Circuit.Conductors.Where(c => !work.Draft.IsNew(c.Id) && c.Wire.Condition is WireCondition.Brittle or WireCondition.Burnt && work.Scope.IsWhole).ToArray())
        {
            string reason = $"its insulation is {wire.Wire.Condition.ToString()!.ToLowerInvariant()}";
            work.Draft.Note(wire.Id).Reason = reason;
            work.Draft.Remake(wire.Id, wire.Wire with { Condition = WireCondition.Good }, reason);
            work.Decide(wire.Id, DecisionKind.Renew, reason);
            changed = true;
        }
        return changed;
    }

    // What was too thin already and is no worse now is the owner's affair, and a finding of check; a rule newly broken is ours.
    private static string? WorseThanBefore(Workbench work, ConductorSizing sizing)
    {
        var was = work.Before.Sizes.Conductors.FirstOrDefault(c => c.Conductor.Id == sizing.Conductor.Id);
        foreach (var rule in sizing.Rules.Where(r => r.Outcome == SizingOutcome.Failed))
        {
            // Before a feed is renewed for the fuses ahead alone it gets one of its own.
            if (rule.Rule == SizingRule.Fuse && work.Scope.IsWhole && FeedFuseStep.Helps(work, sizing)) continue;
            if (was?.By(rule.Rule) is { Outcome: SizingOutcome.Failed, Share: { } before } && rule.Share <= before * 1.02) continue;
            return rule.Rule switch
            {
                SizingRule.Ampacity => $"it carries {Numbers.Brief(sizing.Worst.Amperes)} A, and may carry {Numbers.Brief(sizing.Allowed?.Amperes ?? 0)} A",
                SizingRule.Fuse => $"the fuse ahead of it is {Numbers.Brief(sizing.GuardAmperes ?? 0)} A, and it may carry {Numbers.Brief(sizing.Allowed?.Amperes ?? 0)} A",
                _ => $"the circuit of {sizing.DropOf} would lose {Numbers.Brief(sizing.Drop?.Volts ?? 0)} V, and {Numbers.Brief(sizing.DropLimit?.Volts ?? 0)} V is the limit",
            };
        }
        return null;
    }

    private static bool Fuses(Workbench work, CircuitSizes sizes)
    {
        bool changed = false;
        // Ratings change no way and no current that counts here: one study serves them all.
        var bench = work.Now;
        // A polarity alone changes no current.
        bool asFound = work.Choices["fuses"] == "as found" || (work.Target.Factor == 1 && work.Scope.IsWhole);
        foreach (var fuse in sizes.Fuses.Where(f => f.Element.Type == ElementType.Fuse && f.LinkNeeded is null && f.Part.Kind.Elements.Length == 1))
        {
            bool isNew = work.Draft.IsNew(fuse.Part.Id);
            if (!isNew && !work.Scope.IsWhole && !work.Scope.HasFuses) continue;
            if (FuseChoice.Of(work, bench, fuse) is not var (rating, why)) continue;
            double? now = work.Draft.Part(fuse.Part.Id).Rated(fuse.Element.Name, Unit.Ampere);
            if (now == rating || (!isNew && now is { } there && !FuseChoice.IsToChange(fuse, there, rating, asFound))) continue;
            // One that is new never shrinks again below what was chosen for a larger circuit.
            if (isNew && now > rating) continue;
            work.Draft.Replace(fuse.Part.Id, work.Draft.Part(fuse.Part.Id).Spec with { Ratings = [new("A", new(rating, Unit.Ampere))] }, why);
            if (!isNew)
            {
                work.Draft.Note(fuse.Part.Id).Reason = why;
                work.Decisions.RemoveAll(d => d.Item == fuse.Part.Id);
                work.Decide(fuse.Part.Id, DecisionKind.Replace, why);
            }
            changed = true;
        }
        return changed;
    }
}
