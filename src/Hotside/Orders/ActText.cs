using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Orders;

/// <summary>An act as a line of the work order: imperative, the thing before the place, posts with their sign.</summary>
internal sealed class ActText(Study study, Vocabulary words)
{
    private readonly Alteration alteration = study.Alteration;

    /// <summary>The line of an act.</summary>
    /// <param name="act">The act.</param>
    /// <param name="before">The vehicle before it.</param>
    /// <param name="after">The vehicle after it.</param>
    public string Of(HandAct act, Circuit before, Circuit after) => act.Type switch
    {
        WorkActType.Record => "Photograph every terminal with its tag. Write down colors and terminals.".Replace("color", words.Color, StringComparison.Ordinal),
        WorkActType.Measure => Measure(),
        WorkActType.CableOff => $"Take {Cables(act, alteration.Before)} off the {Post(act.At, alteration.Before)}.",
        WorkActType.BatteryOut => $"Lift {act.Item} out.",
        WorkActType.Unplug => $"Unplug {PartChangeText.Called([act.Item], alteration.Before, words)}.",
        WorkActType.PlugIn => $"Measure plus and minus at the plug of {act.Item}. Plug {PartChangeText.Called([act.Item], alteration.After, words)} in if it is made for them.",
        WorkActType.MarkPolarity => $"Mark the tray of {act.Item}: {Plate()}.",
        WorkActType.WireOff => Off(act),
        WorkActType.Pull => $"Pull {(act.Purpose == "renew" ? "the old " : "")}{Wire(act.Item, before)} out.",
        WorkActType.PartOut => $"Take {PartChangeText.Called([act.Item], alteration.Before, words)} out.",
        WorkActType.Fit => Sentence(PartChangeText.Fitted([act.Item], alteration, words)),
        WorkActType.Swap => Swapped(act, before, after),
        WorkActType.Turn => Turned(act, before, after),
        WorkActType.Remount => Mounted(act.Item),
        WorkActType.Cut => $"Cut {Wire(act.Item, before)} where {CutFor(act)} goes. Tag the piece at {alteration.Before.TextOf(act.At)} {act.Said}.",
        WorkActType.Lay => Laid(act.Item),
        WorkActType.WireOn => Landed(act),
        WorkActType.Work => $"{PartChangeText.Called([act.Item], alteration.After.FindPart(act.Item) is null ? alteration.Before : alteration.After, words)}: {act.Said}.",
        WorkActType.DeadTest => act.Said == "fuses-out" ? $"Take every fuse out: {Fuses()}." : DeadTest(),
        WorkActType.CableOn => $"Put {PartWords.And([.. StandingActs.CablesOn(act.At, alteration).Select(c => Wire(c, alteration.After))])} on the {Post(act.At, alteration.After)}{ThroughLamp(act.At)}.",
        WorkActType.PowerUp => Powered(act),
        _ => act.Said switch
        {
            "label" => $"Label tray, fuel filler and charger point: {Plate()}.",
            "tidy" => $"Take old bulbs and spare fuses for {Numbers.Plain(alteration.Before.System.Volts[0])} V out of the vehicle.",
            _ => "Mark on the drawing in red what was done otherwise.",
        },
    };

    private static string Sentence(string text) => Vocabulary.Capital(text) + (text.EndsWith('.') ? "" : ".");

    private string Measure() =>
        $"Measure the battery at its posts. Expected: {string.Join("; ", BatteryPosts.Of(alteration.Before).Where(p => p.IsGround).Select(p => $"{Numbers.Plain(p.Source.Volts)} V, {Sign(p)} post of {p.Source.Part.Id} on {(IsIsolated(alteration.Before) ? "the return" : words.Ground)}"))}."
            .Replace(" Expected: .", "", StringComparison.Ordinal);

    private string Post(End end, Circuit circuit) => BatteryPosts.Of(circuit).FirstOrDefault(p => p.End == end) is { } post
        ? $"{Sign(post)} post of {end.Part} ({(!post.IsGround ? words.Hot : IsIsolated(circuit) ? "return" : words.Ground + "ed")})" : circuit.TextOf(end);

    // Where nothing stands on metal a post is on the return, and on no ground.
    private static bool IsIsolated(Circuit circuit) => circuit.System.Ground == Ground.Isolated;

    private string ThroughLamp(End end) => BatteryPosts.Of(alteration.After).Any(p => p.IsGround && p.End == end) ? $", through a {Numbers.Plain(alteration.After.System.Volts.Max())} V, {TestBulb.Text} lamp in series" : "";

    private string Landed(HandAct act) => act.At.Part is { } id && alteration.After.FindPart(id) is { IsStandingSource: true }
        ? $"Put {Wire(act.Item, alteration.After)} on the {Post(act.At, alteration.After)}{ThroughLamp(act.At)}." : $"Put {Wire(act.Item, alteration.After)} on {alteration.After.TextOf(act.At)}.";

    private static string Sign(BatteryPost post) => post.IsPlus ? "POSITIVE" : "NEGATIVE";

    private string Cables(HandAct act, Circuit circuit)
    {
        string[] ids = [.. circuit.ConductorsAt(act.At).Select(c => Wire(c.Id, circuit))];
        return ids.Length == 0 ? "the cable" : PartWords.And(ids);
    }

    private string Plate()
    {
        var posts = BatteryPosts.Of(alteration.After).Where(p => p.IsGround).Select(Sign).Distinct().ToArray();
        string volts = string.Join(" and ", alteration.After.System.Volts.Select(v => Numbers.Plain(v) + " V"));
        return posts.Length == 1 ? $"\"{volts}, {posts[0]} {words.Ground.ToUpperInvariant()}\"" : $"\"{volts}\"";
    }

    private string Wire(string id, Circuit circuit)
    {
        string colour = (circuit.FindConductor(id) ?? alteration.After.FindConductor(id) ?? alteration.Before.FindConductor(id)) is { } wire ? ColourWords.Of(wire.Wire, words) : "";
        return colour.Length == 0 ? id : $"{id} ({colour})";
    }

    private string Off(HandAct act)
    {
        string at = alteration.Before.TextOf(act.At);
        bool isPost = act.At.Part is { } id && alteration.Before.FindPart(id) is { IsStandingSource: true };
        return isPost ? $"Tag {Wire(act.Item, alteration.Before)} and {at}; {act.Item} is off {at} already." : $"Tag {Wire(act.Item, alteration.Before)} and {at}. Take {act.Item} off {at}.";
    }

    private string Swapped(HandAct act, Circuit before, Circuit after)
    {
        bool isReversed = IsTurned(act);
        string text = Sentence(PartChangeText.Replaced([act.Item], isReversed, alteration, words));
        string landed = alteration.After.FindPart(act.Item) is { IsStandingSource: true } ? "" : Landed(act.Item, before, after);
        if (landed.Length == 0) return text;
        return IsHeld(act, isReversed) ? text : $"{text} Tag its wires first. On again: {landed}.";
    }

    // A bulb or a fuse comes out of its holder, whose wires stay.
    private bool IsHeld(HandAct act, bool isReversed) =>
        alteration.Before.FindPart(act.Item)?.Kind.Id == alteration.After.FindPart(act.Item)?.Kind.Id && !isReversed && (act.Words.Contains("lamp") || act.Words.Contains("fuse"));

    /// <summary>What is said once for all acts of its sort in a step; empty where nothing is.</summary>
    public string Remark(HandAct act) => act.Type switch
    {
        WorkActType.Lay => "Slide sleeves and labels on before the second end lands.",
        WorkActType.Swap when IsHeld(act, IsTurned(act)) => "If a holder stays, so do its wires.",
        _ => "",
    };

    private bool IsTurned(HandAct act) => alteration.Changes.SelectMany(c => c.Acts).OfType<Replace>().Any(r => r.Reversed && r.Items.Contains(act.Item));

    private string Turned(HandAct act, Circuit before, Circuit after)
    {
        string called = PartChangeText.Called([act.Item], alteration.Before, words), landed = Landed(act.Item, before, after);
        if (landed.Length > 0) return $"Swap the leads of {called}: {landed}.";
        // What is off lands as the list has it: turned, and not to be turned again.
        string later = string.Join(", ", alteration.After.Conductors.SelectMany(c => c.Ends.Where(e => e.Part == act.Item).Select(e => $"{c.Id} goes on {alteration.After.TextOf(e)}")));
        return later.Length == 0 ? $"{Vocabulary.Capital(called)}: its wires go on the other way round." : $"Leave {called} bare until its wires land, the other way round than before: {later}.";
    }

    // Which wires are on a part, and on which terminal of the new one.
    private static string Landed(string part, Circuit before, Circuit after)
    {
        List<string> landed = [];
        foreach (var wire in before.Conductors)
            if (after.FindConductor(wire.Id) is { } now)
                foreach (var (was, end) in new[] { (wire.From, now.From), (wire.To, now.To) })
                    if (was.Part == part && end.Part == part)
                        landed.Add(was == end ? $"{wire.Id} on {after.TextOf(end)}" : $"{wire.Id} from {before.TextOf(was)} to {after.TextOf(end)}");
        return string.Join(", ", landed);
    }

    private string Mounted(string id) => $"Mount {PartChangeText.Called([id], alteration.After, words)} {(alteration.After.FindPart(id)?.CaseOn is { } on ? "with its case on " + EndWords.Of(on, alteration.After) : "insulated")}.";

    private string CutFor(HandAct act) => alteration.After.FindConductor(act.Said)?.Ends.Select(e => e.Part).OfType<string>().FirstOrDefault(p => alteration.Before.FindPart(p) is null) ?? "the new part";

    private string Laid(string id)
    {
        var wire = alteration.After.FindConductor(id)!;
        string length = wire.Wire.LengthInMetres is { } metres ? $", {Numbers.Plain(metres, 2)} m" : "";
        return $"Lay {id} ({WireChangeText.Material(wire.Wire)}{length}) from {alteration.After.TextOf(wire.From)} to {alteration.After.TextOf(wire.To)}.";
    }

    private string Fuses() => string.Join(", ", alteration.After.Parts.Where(p => TradeWords.Of(p).Contains("fuse")).Select(p => p.Id));

    private string FusesFromTheFeed()
    {
        FuseOrder order = new(study.After);
        return string.Join(", ", alteration.After.Parts.Where(p => TradeWords.Of(p).Contains("fuse")).OrderBy(p => order.Before(p.Id)).Select(p => p.Id));
    }

    private string DeadTest()
    {
        var hot = BatteryPosts.Of(alteration.After).FirstOrDefault(p => !p.IsGround);
        string cable = hot is null ? "" : string.Join(" and ", alteration.After.ConductorsAt(hot.End).Select(c => c.Id));
        return $"Make the dead tests of the check sheet with a meter proved on a known source.{(cable.Length > 0 ? $" From {cable} to {(alteration.After.System.Return is { } node ? EndWords.Of(node, alteration.After) : "chassis")}, all off: open (over 10 kΩ); less is a short, or a load that no fuse guards." : "")}";
    }

    private string Powered(HandAct act) => act.Said switch
    {
        "battery-in" => $"Put {act.Item} in its tray.",
        "fuses-in" => $"Put the fuses in one by one, from the battery outward: {FusesFromTheFeed()}. Look at the lamp after each: bright means a short behind it; take that fuse out.",
        "lamp-out" => $"Take the lamp out. Put {Cables(act, alteration.After)} straight on the {Post(act.At, alteration.After)}.",
        "crank" => "Disable the ignition. Crank for 5 s. Read the volts at the battery.",
        _ => "Start the engine. Read the charging volts at the battery.",
    };

}
