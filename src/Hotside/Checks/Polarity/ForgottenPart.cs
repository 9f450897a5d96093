using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 10: a part that minds the new volts or the new polarity, and of which nothing says what becomes of it.</summary>
internal static class ForgottenPart
{
    public static readonly DiagnosticKind Kind = new("HS3310", Severity.Error, "Part without a decision",
        "{0} stays, but minds {1}; nothing in the list says what becomes of it")
    {
        Source = "common practice, no source: every part that minds volts or polarity gets a decision; what a kind minds stands in its data with its source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        foreach (var (before, after) in alteration.Kept.Where(k => !alteration.HasWorkFor(k.After.Id)))
        {
            // Parts with stated volts are judged by the volts that they get.
            bool isUnrated = after.Kind.Elements.Where(e => e.IsConsumer).All(e => after.Rated(e.Name, Unit.Volt) is null);
            bool mindsVolts = alteration.ChangesVolts && after.Kind.Voltage is "match" or "misreads" && isUnrated && GetsOtherVolts(alteration, after);
            bool mindsSign = alteration.TurnsPolarity && after.Kind.Polarity is "test" or "weaker" && after.Kind.Elements.Where(e => e.IsConsumer).Any(e => Turns(alteration, after.Id, e.Name));
            if (!mindsVolts && !mindsSign) continue;
            yield return Kind.Of([after.Id], $"{after.Id} ({before.Title})", mindsVolts ? $"{Numbers.Plain(alteration.After.Circuit.System.Volts[0])} V" : after.Kind.Polarity == "weaker" ? "the other polarity (its leads are to be swapped, or its spark is weaker)" : "the other polarity, some makes more than others (try it on the bench)") with
            {
                Hint = $"replace it, protect it or turn it; or say what is to be done: \"do {after.Id}: tried on the bench at {Numbers.Plain(alteration.After.Circuit.System.Volts[0])} V\"",
            };
        }
    }

    private static bool GetsOtherVolts(CheckedAlteration alteration, Part part) =>
        part.Kind.Elements.Where(e => e.IsConsumer && !e.IsInternal).Any(e => Most(alteration.After, part.Id, e.Name) is var now && Most(alteration.Before, part.Id, e.Name) is > 0 and var was && (now > 1.25 * was || now < was / 1.25));

    private static double Most(CheckedCircuit circuit, string part, string element) => Math.Abs(circuit.Points.Greatest(part, element, e => e.Volts, p => !p.IsCranking));

    private static bool Turns(CheckedAlteration alteration, string part, string element) =>
        Signs.OfVolts(alteration.Before, part, element) * Signs.OfVolts(alteration.After, part, element) < 0;
}
