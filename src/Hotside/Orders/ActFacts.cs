using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>Says of each act what the rules and the order ask: its words, its parts, where it is done, to which fuse it belongs.</summary>
internal sealed class ActFacts
{
    private readonly Alteration alteration;
    private readonly OrderBook book;
    private readonly FeedPaths before, after, bare;
    private readonly Nodes groundsBefore, groundsAfter;
    private readonly string[] places;
    private readonly Dictionary<string, int> ranks = new(StringComparer.Ordinal);

    /// <summary>What is known of an alteration's acts.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="book">Phases and rules.</param>
    /// <param name="bare">The vehicle with all that is new in, and nothing new landed yet.</param>
    public ActFacts(Alteration alteration, OrderBook book, Circuit bare)
    {
        (this.alteration, this.book) = (alteration, book);
        this.bare = new(bare);
        before = new(alteration.Before);
        after = new(alteration.After);
        groundsBefore = Nodes.Of(alteration.Before, throughLinks: false);
        groundsAfter = Nodes.Of(alteration.After, throughLinks: false);
        var parts = alteration.Before.Parts.Concat(alteration.After.Parts).DistinctBy(p => p.Id).ToArray();
        places = [.. parts.Select(p => PlaceOf(p.Id)).OfType<string>().Distinct(StringComparer.Ordinal)];
        foreach (var part in parts) ranks[part.Id] = ranks.Count;
    }

    /// <summary>The act with all that is known of it.</summary>
    public HandAct Told(HandAct act)
    {
        bool isEnd = act.Type is WorkActType.WireOff or WorkActType.WireOn or WorkActType.Cut;
        bool isAfter = act.Type is not (WorkActType.WireOff or WorkActType.PartOut or WorkActType.Pull or WorkActType.Cut);
        var circuit = isAfter && !(act.Item.Length > 0 && IsGone(act.Item)) ? alteration.After : alteration.Before;
        var paths = ReferenceEquals(circuit, alteration.After) ? after : before;
        var wire = circuit.FindConductor(act.Item);
        End end = isEnd ? act.At : wire is not null ? Far(wire, paths) : EndOf(act.Item, circuit, paths);
        string? part = isEnd ? act.At.Part : wire is null && act.Item.Length > 0 ? act.Item : null;
        string? place = act.Item.Length == 0 || IsBattery(act) ? null : PlaceOf(part) ?? (isEnd ? null : wire?.Wire.Place);
        string way = act.Item.Length == 0 || !(act.ChangesCircuit || act.Type == WorkActType.Work) ? "" : WayOf(act, end, paths);
        act = act with
        {
            Words = WordsOf(act, circuit, paths, wire).ToHashSet(StringComparer.Ordinal),
            Parts = part is null ? [] : [part],
            Joined = wire is null ? (part is null ? [] : [part]) : [.. wire.Ends.Select(e => e.Part).OfType<string>().Distinct(StringComparer.Ordinal)],
            Upstream = end.IsFree ? new HashSet<string>() : paths.Upstream(end),
            Holders = HoldersOf(act),
            Place = place,
            PlaceIndex = place is null ? int.MaxValue : Array.IndexOf(places, place) is >= 0 and var i ? i : places.Length,
            Way = way,
            WayIndex = way.Length == 0 ? int.MaxValue : ranks.GetValueOrDefault(way, int.MaxValue),
        };
        return act with { Phase = book.PhaseOf(act) };
    }

    private bool IsGone(string id) => alteration.After.FindPart(id) is null && alteration.After.FindConductor(id) is null;

    private bool IsBattery(HandAct act) => (alteration.After.FindPart(act.Item) ?? alteration.Before.FindPart(act.Item)) is { IsStandingSource: true };

    private IEnumerable<string> WordsOf(HandAct act, Circuit circuit, FeedPaths paths, Conductor? wire)
    {
        foreach (string word in TradeWords.Of(act).Split(' ')) yield return word;
        if (act.Type == WorkActType.Work && !PolariseWork.IsSaidBy(act.Said) && book.WordOf(act.Said) is { } said) yield return said;
        if (act.Purpose.Length > 0) yield return act.Purpose;
        if (act.Type is WorkActType.CableOff or WorkActType.CableOn) yield return act.Said;
        if (wire is null)
        {
            if ((act.ChangesCircuit || act.Type == WorkActType.Work) && circuit.FindPart(act.Item) is { } part)
                foreach (string word in TradeWords.Of(part).Where(w => w != "battery" || act.Type != WorkActType.PartOut))
                    yield return word;
            if (act.ChangesCircuit && MindsTheTurn(circuit, act.Item)) yield return "other-sign";
            yield break;
        }
        if (act.At.Part is { } id && circuit.FindPart(id) is { } at)
            foreach (string word in TradeWords.Of(at).Concat(TradeWords.Of(at, act.At.Terminal)).Where(w => w != "battery"))
                yield return word;
        if (wire.Ends.Any(e => e.Part is { } p && circuit.FindPart(p) is { } there && TradeWords.Of(there).Contains("gauge"))) yield return "gauges";
        if (MindsTheTurn(circuit, Far(wire, paths).Part)) yield return "to-other-sign";
        bool isGround = (ReferenceEquals(circuit, alteration.After) ? groundsAfter : groundsBefore).AreOne(wire.From, circuit.System.ReturnNode);
        if (isGround && wire.Ends.All(e => TradeWords.IsMetal(circuit, e))) yield return "strap";
        if (act.At.Part is { } post && circuit.FindPart(post) is { IsStandingSource: true } && act.Type == WorkActType.WireOn)
        {
            yield return "cable-on";
            if (!isGround) yield return "hot";
        }
        yield return isGround ? "ground" : "feed";
        if (!isGround && act.Type is WorkActType.WireOff or WorkActType.WireOn or WorkActType.Cut)
            yield return IsNear(act, paths) ? "near" : "far";
        if (!isGround && act.Type == WorkActType.WireOn) yield return IsLive(act) || FeedsElectronics(act) ? "live" : "dead";
        // What lies before every fuse makes the whole vehicle live.
        if (!isGround && paths.DistanceOf(act.At) != int.MaxValue && paths.FuseOf(act.At) is null) yield return "main";
    }

    // Of a new end and its other one that is nearer which is live already; where both are or neither is, which is nearer to the hot post when all is done.
    private bool IsNear(HandAct act, FeedPaths paths)
    {
        bool isLive = bare.DistanceOf(act.At) != int.MaxValue, isOtherLive = bare.DistanceOf(act.Other) != int.MaxValue;
        return act.Type == WorkActType.WireOn && act.Partner < 0 && isLive != isOtherLive ? isLive : paths.DistanceOf(act.At) < paths.DistanceOf(act.Other);
    }

    // Whether something is fed by it that was not: it lands on what is live already, or it is live itself and is put over.
    private bool IsLive(HandAct act) => bare.DistanceOf(act.At) != int.MaxValue || (act.Partner >= 0 && bare.DistanceOf(act.Other) != int.MaxValue);

    // A wire that was live before and is put over goes on being so: it is not put on what minds the polarity before it must.
    private bool FeedsElectronics(HandAct act) =>
        act.Partner >= 0 && before.DistanceOf(act.Other) != int.MaxValue && MindsTheTurn(alteration.After, act.At.Part);

    // Whether the other battery would destroy a part: one that minds polarity where the vehicle's becomes another. Where it stays, both do the same to it.
    private bool MindsTheTurn(Circuit circuit, string? id) =>
        alteration.Before.System.Ground != alteration.After.System.Ground && id is not null && circuit.FindPart(id) is { } part && TradeWords.Of(part).Contains("electronics");

    private ImmutableArray<string> HoldersOf(HandAct act)
    {
        if ((act.Type == WorkActType.PartOut ? alteration.Before : alteration.After).FindPart(act.Item) is not { } part) return [];
        var own = part.Joints.Select(j => j.On.Part).Append(part.CaseOn?.Part).Append(part.Assembly);
        // What is replaced stood on something before, too.
        var old = alteration.Before.FindPart(act.Item) is { } was ? was.Joints.Select(j => j.On.Part).Append(was.CaseOn?.Part).Append(was.Assembly) : [];
        return [.. own.Concat(old).OfType<string>().Where(h => h != act.Item).Distinct(StringComparer.Ordinal)];
    }

    // A part's place, else the box that it is in.
    private string? PlaceOf(string? id)
    {
        if (id is null || (alteration.After.FindPart(id) ?? alteration.Before.FindPart(id)) is not { } part) return null;
        return part.Place ?? (part.Assembly is { } home ? PlaceOf(home) ?? (alteration.After.FindPart(home) ?? alteration.Before.FindPart(home))?.Title : null);
    }

    private static End Far(Conductor wire, FeedPaths paths) =>
        wire.From.IsFree || (!wire.To.IsFree && paths.DistanceOf(wire.To) >= paths.DistanceOf(wire.From)) ? wire.To : wire.From;

    // Of a part's terminals the nearest to the feed.
    private static End EndOf(string id, Circuit circuit, FeedPaths paths) =>
        circuit.FindPart(id) is { Kind.Terminals: { IsEmpty: false } terminals } ? terminals.Select(t => End.At(id, t.Name)).MinBy(paths.DistanceOf) : End.Free;

    private string WayOf(HandAct act, End end, FeedPaths paths)
    {
        if (ranks.ContainsKey(act.Item) && TradeWords.Of((alteration.After.FindPart(act.Item) ?? alteration.Before.FindPart(act.Item))!).Contains("fuse")) return act.Item;
        if (end.IsFree) return "";
        if (paths.FuseOf(end) is { } fuse) return fuse;
        // Behind no fuse, or on the side of the return: the circuit of the other end, else of what is nearest the feed.
        var other = act.Other;
        return (other.IsFree ? null : paths.FuseOf(other)) ?? paths.FirstOf(end) ?? end.Part ?? other.Part ?? "";
    }
}
