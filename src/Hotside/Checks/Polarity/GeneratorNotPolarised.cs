using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 23: a generator that stays, or comes, while the polarity is turned, and no work that magnetises it.</summary>
internal static class GeneratorNotPolarised
{
    public static readonly DiagnosticKind Kind = new("HS3323", Severity.Stop, "Generator not polarised",
        "{0} is still magnetised for the old polarity: on its first run it burns the cut-out's points and discharges the battery")
    {
        Source = "TM 5-3810-300-24&P-3; TM 9-8000, 13-8",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        if (!alteration.TurnsPolarity) yield break;
        foreach (var part in alteration.After.Circuit.Parts.Where(Trade.IsGenerator))
        {
            if (alteration.WorkFor(part.Id).Any(Trade.SaysToPolarise)) continue;
            string how = Trade.WayToPolarise(alteration.After.Circuit, part) ?? "with the engine stopped";
            yield return Kind.Of([part.Id], part.Id) with
            {
                Hint = $"add \"do {part.Id}: polarise it before the first run\" — {how}, as the manual of the vehicle says",
            };
        }
    }
}
