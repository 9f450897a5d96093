using Hotside.Checks.Loads;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Gauges;

/// <summary>Row 35: a gauge that stays with its sender, and reads otherwise than it did at one end or the other.</summary>
internal static class GaugeError
{
    private const double Most = 0.10;

    public static readonly DiagnosticKind Kind = new("HS3335", Severity.Warning, "Gauge reads wrongly",
        "the current of {0} is {1} % {2} than it was where {3} has {4} ohm, so it reads wrongly there")
    {
        Source = "own derivation: a resistor suits one value of the sender only; 10 % is the limit of a reading that one still trusts (own choice)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        if (!alteration.ChangesVolts) yield break;
        var kept = alteration.Kept.Select(k => k.After.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var load in alteration.After.Loads.Where(l => l.Element.Type == ElementType.Gauge && l.Part.Kind is { Voltage: "match", Elements.Length: 1 } && kept.Contains(l.Part.Id)))
        {
            var was = alteration.Before.Loads.FirstOrDefault(l => l.Part.Id == load.Part.Id && l.Element.Name == load.Element.Name);
            if (was is null || SenderSweep.Of(alteration.After, load) is not var (sender, least, most) || !kept.Contains(sender.Id)) continue;
            // One that gets far too many volts is told of that.
            if (WrongVolts.IsTooMany(SenderSweep.At(alteration.After, load, sender.Id, least))) continue;
            var (ohms, error) = new[] { least, most }.Select(o => (Ohms: o, Error: ErrorAt(alteration, was, load, sender.Id, o))).MaxBy(e => Math.Abs(e.Error));
            if (Math.Abs(error) <= Most) continue;
            yield return Kind.Of([load.Part.Id, sender.Id], load.Name, Numbers.Plain(Math.Abs(100 * error), 0), error > 0 ? "more" : "less", sender.Id, Numbers.Plain(ohms)) with
            {
                Hint = "take a reducer that holds the old volts; a resistor is right for a sender of one value only",
            };
        }
    }

    private static double ErrorAt(CheckedAlteration alteration, LoadStudy was, LoadStudy now, string sender, double ohms)
    {
        double old = Math.Abs(SenderSweep.At(alteration.Before, was, sender, ohms)?.Amperes ?? 0), fresh = Math.Abs(SenderSweep.At(alteration.After, now, sender, ohms)?.Amperes ?? 0);
        return old < 1e-4 || fresh < 1e-4 ? 0 : (fresh - old) / old;
    }
}
