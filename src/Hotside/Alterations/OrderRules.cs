using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>The rules by which one number of a list comes before another; those that give way least come first.</summary>
internal sealed class OrderRules
{
    // All of these are common practice, no source; the battery goes in last in every workshop manual that the authors have read.
    public static readonly DiagnosticKind SourcesLast = new("HS4111", Severity.Note, "Sources go in last",
        "line {0} of the list is number {1}: {2} is a source, and sources go in last, after {3}");

    public static readonly DiagnosticKind LandsOnPresent = new("HS4112", Severity.Note, "Lands on what is fitted later",
        "line {0} of the list is number {1}: {2} lands on {3}, which has to be there first");

    public static readonly DiagnosticKind BoltedToPresent = new("HS4113", Severity.Note, "Bolted to what is fitted later",
        "line {0} of the list is number {1}: {2} is bolted to {3}, which has to be there first");

    public static readonly DiagnosticKind OffBeforeOut = new("HS4114", Severity.Note, "Taken out before its wires are off",
        "line {0} of the list is number {1}: {2} comes out once {3} is off it");

    public static readonly DiagnosticKind GroundBeforeFeed = new("HS4115", Severity.Note, "Fed before it is grounded",
        "line {0} of the list is number {1}: {2} feeds a part that {3} has to ground first");

    public static readonly DiagnosticKind RenewedBeforeSwapped = new("HS4116", Severity.Note, "Swapped before its leads are renewed",
        "line {0} of the list is number {1}: the leads of {2} are swapped once {3} is renewed");

    private readonly Circuit before;
    private readonly Circuit after;
    private readonly ImmutableArray<(Act Act, int Group)> acts;
    private readonly Dictionary<string, int> arrivals = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> changes = new(StringComparer.Ordinal);

    private OrderRules(Circuit before, Circuit after, ImmutableArray<ImmutableArray<Act>> groups)
    {
        this.before = before;
        this.after = after;
        acts = [.. groups.SelectMany((g, i) => g.Select(a => (a, i)))];
        foreach (var (act, group) in acts)
        {
            if (act is Work) continue;
            foreach (string id in act is Cut ? act.Items.Take(1) : act.Items) changes[id] = group;
            if (act is Fit or Replace)
                foreach (string id in act.Items)
                    arrivals[id] = group;
        }
    }

    /// <summary>All needs: those of the stricter rules first, and of each rule those that the user's order meets.</summary>
    public static IEnumerable<Need> Of(Circuit before, Circuit after, ImmutableArray<ImmutableArray<Act>> groups)
    {
        var rules = new OrderRules(before, after, groups);
        IEnumerable<Need>[] strictFirst = [rules.Sources(), rules.Landings(), rules.Joints(), rules.Leavings(), rules.OffOldTerminals(), rules.Grounds(), rules.Swaps()];
        return strictFirst.SelectMany(needs => needs.OrderBy(n => n.First < n.Then ? 0 : 1));
    }

    private IEnumerable<Need> Sources()
    {
        var sources = acts.Where(a => a.Act is Fit or Replace or Reverse && a.Act.Items.Any(IsSource)).Select(a => a.Group).Distinct().ToArray();
        foreach (int source in sources)
        {
            string id = acts.Where(a => a.Group == source).SelectMany(a => a.Act.Items).First(IsSource);
            foreach (var (act, group) in acts)
                if (act is not Work && !sources.Contains(group))
                    yield return new(group, source, SourcesLast, id, act.Items[0]);
        }
    }

    private bool IsSource(string id) => after.FindPart(id) is { IsStandingSource: true };

    // A source comes at the very end and its wires go on then, so that nobody works at live ones: nothing waits for it.
    private IEnumerable<Need> Landings() =>
        from landing in NewEnds()
        where landing.End.Part is { } part && arrivals.ContainsKey(part) && !IsSource(part)
        select new Need(arrivals[landing.End.Part!], landing.Group, LandsOnPresent, landing.Wire, landing.End.Part!);

    private IEnumerable<(string Wire, End End, End Other, int Group)> NewEnds()
    {
        foreach (var (act, group) in acts)
            switch (act)
            {
                case Run or Move:
                    var wire = after.FindConductor(act.Items[0])!;
                    foreach (var end in act is Move move ? move.Ends.Select(e => e.To) : wire.Ends)
                        yield return (wire.Id, end, end == wire.From ? wire.To : wire.From, group);
                    break;
                case Cut cut:
                    yield return (cut.Items[0], cut.First, after.FindConductor(cut.Items[0])!.From, group);
                    yield return (cut.Items[1], cut.Second, after.FindConductor(cut.Items[1])!.To, group);
                    break;
                // A renewed wire lands anew, too.
                case Renew:
                    foreach (var renewed in act.Items.Select(i => after.FindConductor(i)!))
                    {
                        yield return (renewed.Id, renewed.From, renewed.To, group);
                        yield return (renewed.Id, renewed.To, renewed.From, group);
                    }
                    break;
                default:
                    break;
            }
    }

    private IEnumerable<Need> Joints()
    {
        foreach (var (act, group) in acts)
        {
            if (act is not (Fit or Replace or Remount)) continue;
            foreach (string id in act.Items)
            foreach (string on in Holders(after.FindPart(id)!))
                if (on != id && !IsSource(on) && arrivals.TryGetValue(on, out int there) && (act is Fit || before.FindPart(on) is null))
                    yield return new(there, group, BoltedToPresent, id, on);
        }
    }

    private static IEnumerable<string> Holders(Part part)
    {
        var ends = part.Joints.Select(j => j.On.Part).Append(part.CaseOn?.Part).Append(part.Assembly);
        return ends.OfType<string>().Distinct(StringComparer.Ordinal);
    }

    private IEnumerable<Need> Leavings()
    {
        foreach (var (act, group) in acts)
        {
            if (act is not TakeOut) continue;
            foreach (string id in act.Items.Where(i => before.FindPart(i) is not null))
            {
                foreach (var wire in before.Conductors)
                    if (wire.Ends.Any(e => e.Part == id) && changes.TryGetValue(wire.Id, out int off))
                        yield return new(off, group, OffBeforeOut, id, wire.Id);
                foreach (var part in before.Parts)
                    if (part.Id != id && Holders(part).Contains(id) && changes.TryGetValue(part.Id, out int off))
                        yield return new(off, group, OffBeforeOut, id, part.Id);
            }
        }
    }

    // A wire that the new part has no terminal for leaves before the part is replaced, unless it comes back to the same part.
    private IEnumerable<Need> OffOldTerminals()
    {
        foreach (var (act, group) in acts)
        {
            if (act is not Move move) continue;
            foreach (var (from, to) in move.Ends.Select(e => (e.From, e.To)))
                if (from.Part is { } id && to.Part != id && changes.TryGetValue(id, out int replaced) && before.FindPart(id) is { } old
                    && after.FindPart(id) is { } fresh && TerminalMap.Counterpart(old.Kind, fresh.Kind, from.Terminal) is null)
                    yield return new(group, replaced, OffBeforeOut, id, move.Items[0]);
        }
    }

    // A limiter, flasher or regulator without its ground passes on whatever it is fed, or dies of it.
    private IEnumerable<Need> Grounds()
    {
        var nodes = Nodes.Of(after, throughLinks: false);
        var ends = NewEnds().Where(e => e.End.Part is { } on && arrivals.ContainsKey(on) && after.FindPart(on)!.Kind.Polarity == "destroyed").ToArray();
        bool IsGround((string Wire, End End, End Other, int Group) end) => nodes.AreOne(end.Other, after.System.ReturnNode);
        return from ground in ends.Where(IsGround)
               from feed in ends.Where(e => !IsGround(e))
               where feed.End.Part == ground.End.Part
               select new Need(ground.Group, feed.Group, GroundBeforeFeed, feed.Wire, ground.Wire);
    }

    private IEnumerable<Need> Swaps() =>
        from swap in acts.Where(a => a.Act is Reverse)
        from renewed in acts.Where(a => a.Act is Renew)
        from wire in renewed.Act.Items
        where after.FindConductor(wire)!.Ends.Any(e => e.Part == swap.Act.Items[0])
        select new Need(renewed.Group, swap.Group, RenewedBeforeSwapped, swap.Act.Items[0], wire);
}
