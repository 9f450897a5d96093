using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Tells from two circuits with common ids what was done, in a fixed order.</summary>
internal sealed class CircuitComparison
{
    private readonly Circuit before;
    private readonly Circuit after;
    private readonly Dictionary<string, PartPairing> pairs = new(StringComparer.Ordinal);

    private CircuitComparison(Circuit before, Circuit after)
    {
        this.before = before;
        this.after = after;
        var stood = Standing().ToLookup(s => s.Part, s => (s.Old, s.New), StringComparer.Ordinal);
        foreach (var part in before.Parts)
            if (after.FindPart(part.Id) is { } now)
                pairs.Add(part.Id, PartPairing.Of(part, now, [.. stood[part.Id]]));
    }

    /// <summary>
    /// The acts: conductors and parts taken out, parts replaced, parts fitted, conductors moved, renewed and run, sources last.
    /// </summary>
    public static ImmutableArray<ImmutableArray<Act>> Acts(Circuit before, Circuit after)
    {
        var comparison = new CircuitComparison(before, after);
        var parts = before.Parts.Select(p => comparison.PartAct(p)).OfType<Act>().ToArray();
        Act[] fitted = [.. after.Parts.Where(p => before.FindPart(p.Id) is null).Select(p => new Fit([p.Id]))];
        bool IsSource(Act act) => after.FindPart(act.Items[0])!.IsStandingSource;
        Act[] all =
        [
            .. before.Conductors.Where(c => after.FindConductor(c.Id) is null).Select(c => new TakeOut([c.Id])),
            .. before.Parts.Where(p => after.FindPart(p.Id) is null).Select(p => new TakeOut([p.Id])),
            .. parts.Where(a => !IsSource(a)),
            .. fitted.Where(a => !IsSource(a)),
            .. comparison.WireActs(),
            .. parts.Concat(fitted).Where(IsSource),
        ];
        return [.. all.Select(a => ImmutableArray.Create(a))];
    }

    // What stood on a terminal and stands on the same part still: of conductors, of the part's own joints, of others' joints on it.
    private IEnumerable<(string Part, string Old, string New)> Standing()
    {
        foreach (var (old, now) in CommonWires())
        {
            if (old.From.Part is { } from && now.From.Part == from) yield return (from, old.From.Terminal, now.From.Terminal);
            if (old.To.Part is { } to && now.To.Part == to) yield return (to, old.To.Terminal, now.To.Terminal);
        }
        foreach (var part in before.Parts)
        {
            if (after.FindPart(part.Id) is not { } now) continue;
            foreach (var joint in part.Joints)
            {
                if (now.Joints.FirstOrDefault(j => j.On == joint.On) is { } own) yield return (part.Id, joint.Terminal, own.Terminal);
                if (joint.On.Part is { } on && now.Joints.FirstOrDefault(j => j.Terminal == joint.Terminal && j.On.Part == on) is { } other)
                    yield return (on, joint.On.Terminal, other.On.Terminal);
            }
        }
    }

    /// <summary>Conductors of both circuits, the later one turned so that its ends correspond to the earlier one's.</summary>
    private IEnumerable<(Conductor Old, Conductor New)> CommonWires()
    {
        foreach (var old in before.Conductors)
            if (after.FindConductor(old.Id) is { } now)
                yield return (old, Likeness(old, now.To, now.From) > Likeness(old, now.From, now.To) ? now with { From = now.To, To = now.From } : now);
    }

    private static int Likeness(Conductor old, End from, End to) => Likeness(old.From, from) + Likeness(old.To, to);

    private static int Likeness(End old, End now) => old == now ? 3 : old.Part is not null && old.Part == now.Part ? 2 : 0;

    private Act? PartAct(Part old)
    {
        if (!pairs.TryGetValue(old.Id, out var pair)) return null;
        if (pair.IsReplaced || JointsDiffer(pair)) return new Replace([old.Id], pair.IsReversed);
        bool isRemounted = old.CaseOn is { } on ? Carried(on) != pair.After.CaseOn : pair.After.CaseOn is not null;
        return pair.IsReversed ? isRemounted ? new Replace([old.Id], Reversed: true) : new Reverse([old.Id])
            : isRemounted ? new Remount([old.Id]) : null;
    }

    private bool JointsDiffer(PartPairing pair)
    {
        var kept = pair.Before.Joints.Select(j => $"{pair.Map[j.Terminal]} on {Carried(j.On)}").Order(StringComparer.Ordinal);
        return !kept.SequenceEqual(pair.After.Joints.Select(j => $"{j.Terminal} on {j.On}").Order(StringComparer.Ordinal));
    }

    private End? Carried(End end) =>
        end.Part is not { } id ? end
        : pairs.TryGetValue(id, out var pair) && pair.Map[end.Terminal] is { } terminal ? End.At(id, terminal) : null;

    private IEnumerable<Act> WireActs()
    {
        var fresh = after.Conductors.Where(c => before.FindConductor(c.Id) is null).ToList();
        List<Act> moved = [], renewed = [];
        foreach (var (old, now) in CommonWires())
        {
            if (HalfOf(old, now, fresh) is { } half)
            {
                fresh.Remove(half);
                moved.Add(new Cut([old.Id, half.Id], now.To, half.From));
                continue;
            }
            var ends = ImmutableArray.CreateBuilder<MovedEnd>(2);
            if (Carried(old.From) != now.From) ends.Add(new(old.From, now.From));
            if (Carried(old.To) != now.To) ends.Add(new(old.To, now.To));
            if (ends.Count > 0) moved.Add(new Move([old.Id], ends.ToImmutable(), WireMaterial.LooksDifferent(old.Wire, now.Wire)));
            else if (WireMaterial.IsAnother(old.Wire, now.Wire)) renewed.Add(new Renew([old.Id]));
        }
        return [.. moved, .. renewed, .. fresh.Select(c => new Run([c.Id]))];
    }

    // Cut, and not moved with another run: the first end stays, the new one runs on to the old second end, the copper is
    // the same and no half of it has been measured, and both new ends are on one inserted part.
    private Conductor? HalfOf(Conductor old, Conductor now, List<Conductor> fresh)
    {
        var half = WireMaterial.Half(old.Wire);
        var to = Carried(old.To);
        if (WireMaterial.Half(now.Wire) != half || now.Wire.LengthInMetres is not null || now.Wire.ResistanceInOhms is not null || Carried(old.From) != now.From || to is null || to == now.To || now.To.Part is not { } inserted) return null;
        return fresh.FirstOrDefault(c => c.To == to && c.From.Part == inserted && c.From != now.To && c.Wire with { JointAtToInOhms = null } == half);
    }
}
