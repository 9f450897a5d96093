using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>The cautions that an alteration calls for, by what its parts are and what is done to them; in the order of work.</summary>
/// <remarks>An aid: the workshop manual, local codes and licensed practice take precedence, and the first caution says so.</remarks>
internal sealed class Cautions
{
    private readonly Alteration alteration;
    private readonly Words words;
    private readonly SourcePoles? old;
    private readonly SourcePoles? now;

    private Cautions(Alteration alteration, Words words)
    {
        this.alteration = alteration;
        this.words = words;
        old = alteration.Before.Sources.FirstOrDefault(s => s.Element.When is null);
        now = alteration.After.Sources.FirstOrDefault(s => s.Element.When is null);
    }

    private Circuit After => alteration.After;

    private bool IsTurned => old is not null && now is not null && old.PlusIsFeed != now.PlusIsFeed;

    private bool IsRaised => After.System.Volts.Max() > alteration.Before.System.Volts.Max();

    /// <summary>All cautions; none where nothing changes.</summary>
    public static ImmutableArray<Caution> Of(Alteration alteration, Words words)
    {
        if (alteration.Changes.IsEmpty) return [];
        var cautions = new Cautions(alteration, words);
        IEnumerable<Caution?>[] all =
        [
            cautions.General(), cautions.OldInsulation(), [cautions.FirstOff()], cautions.Straps(),
            [cautions.Fuses(), cautions.SensitiveParts(), cautions.KeptStarter(), cautions.PositiveCable(), cautions.Polarity(),
                cautions.LastOn()],
            cautions.Machines(), [cautions.HighVoltage(), cautions.Label()],
        ];
        return [.. all.SelectMany(c => c).OfType<Caution>()];
    }

    private static Caution Say(string text, params IEnumerable<string> items) => new(text, [.. items]);

    private IEnumerable<Caution> General()
    {
        yield return Say("This list is an aid: the workshop manual, local codes and licensed practice come first.");
        if (old is null && now is null) yield break;
        // 29 CFR 1910.178(g)(12), 29 CFR 1926.441(a)(5)-(6); hydrogen burns from 4 % in air.
        yield return Say("Rings, watch and chains off; eye protection on. Air the place, no flame and no spark near the battery: it gives off hydrogen.");
        // Common practice, no source.
        yield return Say("Wheels chocked, out of gear, brake on. The battery is out before any wire is moved; prove the wiring dead with a meter that was proved on a known source.");
    }

    private Caution? FirstOff()
    {
        if (old is null) return null;
        string post = Post(old, alteration.Before), cable = Cable(old, alteration.Before);
        // TM 10-3930-671-24 has it for negative ground; the general form is common practice.
        return alteration.Before.System.Return is not null
            ? Say($"Before work: take the cable off the {Sign(!old.PlusIsFeed)} post of {old.Part.Id}, the return, first{cable}; the other one after it.", old.Part.Id)
            : Say($"Before work: the {words.Say("grounded")} cable comes off first{cable}. On this vehicle that is the one on the {post}; "
                + $"a slipped {words.Say("wrench")} on the other post then meets a chassis that leads nowhere.", old.Part.Id);
    }

    private Caution? LastOn()
    {
        if (now is null) return null;
        string post = Post(now, After), cable = Cable(now, After);
        string change = IsTurned ? $"the {words.Say("grounded")} cable is now the one on the {post}, no longer on the {Sign(now.PlusIsFeed)} one. It" : $"the cable on the {post}";
        return Say($"After work: {change} goes on last{cable}, after the {words.Say("hot")} one; the first time through a fuse of 5 to 10 A or a lamp "
            + "in series, with an eye on a voltmeter.", now.Part.Id);
    }

    private Caution? Polarity() => now is null || !(IsTurned || IsTouched(now.Part.Id)) ? null
        : Say("Check the polarity at the posts with a meter before the cables go back on; never trust the colour of a cable.", now.Part.Id);

    // The taper posts differ (SAE J537, from memory: plus about 17.5 mm at the top, minus about 15.9 mm).
    private Caution? PositiveCable()
    {
        if (!IsTurned || now is null) return null;
        string plus = now.PlusIsFeed ? CableIds(now.Feed, After) : CableIds(now.Return, After);
        return Say($"Mark the new positive cable{(plus.Length == 0 ? "" : $", {plus},")} as such and the other as negative: they have traded posts. "
            + "The positive post is the thicker one, so the old clamps cannot trade places.", now.Part.Id);
    }

    private Caution? Label() => !IsTurned && !IsRaised ? null
        : Say($"Label the battery tray, the filler and the charging point: {SheetText.Supply(After.System, words).ToUpperInvariant()}. Old bulbs and fuses leave the vehicle.");

    // 33 CFR 183.455 wants the fuse at the source; the wording is common practice.
    private Caution? Fuses()
    {
        bool isFed = alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Run or Cut or Move);
        return !isFed || now is null ? null : Say("A new feed gets its fuse before it gets its other end.");
    }

    private Caution? SensitiveParts()
    {
        string[] all = [.. After.Parts.Where(p => p.Kind.Polarity == "destroyed" && !IsAlternator(p)).Select(p => p.Id)];
        return all.Length == 0 ? null : Say($"{Listing.And(all)}: the wrong polarity destroys {(all.Length == 1 ? "it" : "them")}. "
            + $"{Listing.Capital(words.Say("ground"))} before feed, and nothing connected until the polarity is proved.", all);
    }

    // T671: 30 s at most, then two minutes; a starter on twice its volts gets far less (common practice).
    private Caution? KeptStarter()
    {
        string[] kept = [.. After.Parts.Where(p => p.Kind.Voltage == "brief"
            && alteration.StateOf(p.Id) is not (PartState.Fitted or PartState.Replaced) && IsOver(p)).Select(p => p.Id)];
        return kept.Length == 0 ? null : Say($"{Listing.And(kept)} stay{(kept.Length == 1 ? "s" : "")} and now get{(kept.Length == 1 ? "s" : "")} more than the rated voltage: "
            + "a few seconds at a time, then let it cool.", kept);
    }

    private bool IsOver(Part part) =>
        part.Kind.Elements.Any(e => part.Rated(e.Name, Unit.Volt) is { } rated && rated < After.System.Volts.Max());

    // TM 10-3930-671-24 (alternators); TM 5-3810-300-24&P-3 (generators are polarised by their own circuit).
    private IEnumerable<Caution> Machines()
    {
        string[] alternators = [.. After.Parts.Where(IsAlternator).Select(p => p.Id)];
        if (alternators.Length > 0)
        {
            string all = Listing.And(alternators);
            yield return Say($"Never run {all} with the battery off or its lead loose, and take both battery cables off before charging or welding.", alternators);
            yield return Say($"Never {words.Say("polarize")} {all}: an alternator takes its polarity from the battery, and the wrong one destroys its diodes at once.", alternators);
        }
        string[] generators = [.. After.Parts.Where(p => p.Kind.Polarity == "polarise").Select(p => p.Id)];
        if (generators.Length > 0 && (IsTurned || generators.Any(IsTouched)))
            yield return Say($"{Listing.Capital(words.Say("polarize"))} {Listing.And(generators)} as its manual says, when every wire is on and before the first start.", generators);
    }

    // Common practice, no source: otherwise cables and bearings carry the return current.
    private IEnumerable<Caution> Straps()
    {
        var heavy = After.Parts.Where(p => (p.Kind.Voltage == "brief" || p.Kind.Elements.Any(e => e is { IsSource: true, When: not null }))
            && p.CaseOn?.Part is not null);
        foreach (var group in heavy.GroupBy(p => p.CaseOn!.Value.Part!, StringComparer.Ordinal))
        {
            string[] strap = [.. After.Conductors.Where(c => c.Ends.Any(e => e.Part == group.Key)
                && c.Ends.Any(e => e == After.System.ReturnNode)).Select(c => c.Id)];
            string machines = Listing.And([.. group.Select(p => p.Id)]);
            yield return strap.Length == 0
                ? Say($"{group.Key} has no strap to the chassis: fit one before {machines} is used, or throttle cable and bearings carry the current back.", group.Key)
                : Say($"Clean and tighten {Listing.And(strap)} first: all current of {machines} goes back through the {words.Say("ground strap")} of {group.Key}.", [group.Key, .. strap]);
        }
    }

    private IEnumerable<Caution> OldInsulation()
    {
        string[] old = [.. alteration.Before.Conductors.Where(c => c.Wire.Condition is WireCondition.Brittle or WireCondition.Burnt
            && !alteration.NumbersOf(c.Id).IsEmpty).Select(c => c.Id)];
        if (old.Length > 0)
            yield return Say($"Old lagging may hold asbestos and old paint lead: no dust when handling {Listing.And(old)}.", old);
    }

    // High tension is 15 to 30 kV, from memory; capacitors keep their charge.
    private Caution? HighVoltage()
    {
        string[] all = [.. After.Parts.Where(p => p.Kind.Elements.Any(e => e.Type == ElementType.Gap)).Select(p => p.Id)];
        return all.Length == 0 ? null : Say($"High voltage at {Listing.And(all)}: hands off while the engine turns; capacitors stay charged after it stops.", all);
    }

    private static bool IsAlternator(Part part) =>
        part.Kind.Polarity == "destroyed" && part.Kind.Elements.Any(e => e is { IsSource: true, When: not null });

    private bool IsTouched(string id) => !alteration.NumbersOf(id).IsEmpty;

    private static string Sign(bool isPositive) => isPositive ? "positive" : "negative";

    private static string Post(SourcePoles source, Circuit circuit) =>
        $"{Sign(!source.PlusIsFeed)} post of {source.Part.Id}{(circuit.System.Return is null ? "" : ", the return")}";

    private static string Cable(SourcePoles source, Circuit circuit) =>
        CableIds(source.Return, circuit) is { Length: > 0 } ids ? $" ({ids})" : "";

    private static string CableIds(End post, Circuit circuit) => Listing.And([.. circuit.ConductorsAt(post).Select(c => c.Id)]);
}
