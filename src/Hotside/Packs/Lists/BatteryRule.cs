using Hotside.Circuits;
using Hotside.Orders;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>How a vehicle's battery is charged, helped and taken off, with the sign of the post that is grounded. Common practice, no source.</summary>
internal static class BatteryRule
{
    /// <summary>The rule, a sentence a point.</summary>
    public static IEnumerable<string> Of(PackSource source)
    {
        var after = source.Alteration.After;
        var words = source.Words;
        var batteries = Batteries(after);
        if (batteries.Length == 0) yield break;
        var grounding = Grounding(after);
        // What stands on another battery is charged and helped with it.
        bool isStack = grounding.Length > 0 && batteries.Length > grounding.Length;
        string volts = isStack ? Numbers.Plain(after.System.Volts[0]) + " V" : PartWords.And([.. batteries.Select(b => Numbers.Plain(b.Volts) + " V").Distinct()]), kind = PartWords.And([.. batteries.Select(b => string.Join(", ", QuantityWords.Of(b.Part.Ratings))).Distinct()]);
        yield return $"{(batteries.DistinctBy(b => b.Part.Id).Count() == 1 ? $"The battery is {kind}" : $"The batteries: {string.Join("; ", batteries.Select(b => $"{PartWords.Named(b.Part, words)} {string.Join(", ", QuantityWords.Of(b.Part.Ratings))}"))}")}. Buy no other volts, and look at the posts before you drop one in.";
        if (IsGrounded(after) && grounding.Length > 0)
        {
            string grounded = Pole(grounding, isFeed: false), hot = Pole(grounding, isFeed: true), whole = isStack ? ", across the whole stack of batteries" : "";
            yield return $"The {grounded.ToUpperInvariant()} post is the one on {words.Ground}. Its cable comes off first and goes on last: {FirstOff(source)}.";
            yield return $"Charger: {volts}{whole}; red clamp on the POSITIVE post, black on the NEGATIVE post, whatever is on {words.Ground}. Switch it on last and off first.";
            yield return $"Jump start: from a {volts} battery only{whole}, plus to plus, minus to minus. First the {hot} posts, then the helper's {grounded} post, the last clamp on bare engine metal away from the battery. "
                + (grounded == "positive" ? "The helper's body must not touch this vehicle: on most vehicles the negative post is on the body, and the two would short the batteries." : "Off in the reverse order.");
        }
        else
        {
            yield return $"No post is on metal: charge and help each battery at its own two posts, plus to plus, minus to minus, {volts} only.";
        }
        if (after.Parts.Any(p => p.Kind.Symbol == "alternator")) yield return "Never take a battery cable off while the engine runs: the alternator would be destroyed.";
    }

    /// <summary>Which cable comes off first.</summary>
    public static string FirstOff(PackSource source)
    {
        var after = source.Alteration.After;
        var grounding = Grounding(after);
        return Batteries(after).Length == 0 ? "the source first" : grounding.Length == 0 ? "one cable, then the other"
            : $"the {Pole(grounding, isFeed: false)} cable" + (IsGrounded(after) ? " first" : ", then the other");
    }

    private static SourcePoles[] Batteries(Circuit circuit) => [.. circuit.Sources.Where(s => s.Part.IsStandingSource)];

    private static bool IsGrounded(Circuit circuit) => circuit.System.Return is null && circuit.System.Ground != Ground.Isolated;

    // The batteries that stand on the return; of a stack the lowest.
    private static SourcePoles[] Grounding(Circuit circuit) => [.. BatteryPosts.Of(circuit).Where(p => p.IsGround).Select(p => p.Source)];

    private static string Pole(SourcePoles[] batteries, bool isFeed) => PartWords.And([.. batteries.Select(b => b.PlusIsFeed == isFeed ? "positive" : "negative").Distinct()]);
}
