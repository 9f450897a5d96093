using Hotside.Circuits;
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
        string volts = PartWords.And([.. batteries.Select(b => Numbers.Plain(b.Volts) + " V").Distinct()]), kind = PartWords.And([.. batteries.Select(b => string.Join(", ", QuantityWords.Of(b.Part.Ratings))).Distinct()]);
        yield return $"{(batteries.Length == 1 ? $"The battery is {kind}" : $"The batteries: {string.Join("; ", batteries.Select(b => $"{PartWords.Named(b.Part, words)} {string.Join(", ", QuantityWords.Of(b.Part.Ratings))}"))}")}. Buy no other volts, and look at the posts before you drop one in.";
        if (IsGrounded(after))
        {
            string grounded = Grounded(batteries), hot = Hot(batteries);
            yield return $"The {grounded.ToUpperInvariant()} post is the one on {words.Ground}. Its cable comes off first and goes on last: {FirstOff(source)}.";
            yield return $"Charger: {volts}; red clamp on the POSITIVE post, black on the NEGATIVE post, whatever is on {words.Ground}. Switch it on last and off first.";
            yield return $"Jump start: from a {volts} battery only, plus to plus, minus to minus. First the {hot} posts, then the helper's {grounded} post, the last clamp on bare engine metal away from the battery. "
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
        var batteries = Batteries(source.Alteration.After);
        return batteries.Length == 0 ? "the source first" : IsGrounded(source.Alteration.After) ? $"the {Grounded(batteries)} cable first" : $"the {Grounded(batteries)} cable, then the other";
    }

    private static SourcePoles[] Batteries(Circuit circuit) => [.. circuit.Sources.Where(s => s.Part.IsStandingSource)];

    private static bool IsGrounded(Circuit circuit) => circuit.System.Return is null && circuit.System.Ground != Ground.Isolated;

    private static string Grounded(SourcePoles[] batteries) => PartWords.And([.. batteries.Select(b => b.PlusIsFeed ? "negative" : "positive").Distinct()]);

    private static string Hot(SourcePoles[] batteries) => PartWords.And([.. batteries.Select(b => b.PlusIsFeed ? "positive" : "negative").Distinct()]);
}
