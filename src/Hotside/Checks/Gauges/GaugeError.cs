using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Solving;

namespace Hotside.Checks.Gauges;

/// <summary>Row 35: a gauge that stays with its sender, and reads otherwise than it did at one end or the other.</summary>
internal static class GaugeError
{
    private const double Most = 0.10;

    public static readonly DiagnosticKind Kind = new("HS3335", Severity.Warning, "Gauge reads wrongly",
        "the current of {0} differs by {1} % from what it was where {2} has {3} ohm: a resistor is right at one point only")
    {
        Source = "own derivation; 10 % is the limit of a reading that one still trusts (own choice)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        if (!alteration.ChangesVolts) yield break;
        var kept = alteration.Kept.Select(k => k.After).ToArray();
        foreach (var load in alteration.After.Loads.Where(l => l.Element.Type == ElementType.Gauge && l.Part.Kind.Voltage == "match" && kept.Contains(l.Part) && !l.Control.Any.IsEmpty))
        {
            var was = alteration.Before.Loads.FirstOrDefault(l => l.Part.Id == load.Part.Id && l.Element.Name == load.Element.Name);
            var sender = load.Paths.SelectMany(p => p.GroundWay).Select(alteration.After.Circuit.FindPart).OfType<Part>().FirstOrDefault(p => p.Kind.Elements.Any(e => e.Type == ElementType.Sender) && kept.Contains(p));
            if (was is null || sender is null || was.Control.Any.IsEmpty || load.Part.Kind.Elements.Length > 1) continue;
            var range = sender.Ratings.Select(r => r.Quantity).FirstOrDefault(q => q.Unit == Unit.Ohm && q.UpTo is not null);
            if (range is null) continue;
            var worst = new[] { range.Value, range.UpTo!.Value }.Select(ohms => (Ohms: ohms, Error: ErrorAt(alteration, was, load, sender.Id, ohms))).OfType<(double Ohms, double Error)>().MaxBy(e => Math.Abs(e.Error));
            if (Math.Abs(worst.Error) <= Most) continue;
            yield return Kind.Of([load.Part.Id, sender.Id], load.Name, Numbers.Plain(100 * worst.Error, 0), sender.Id, Numbers.Plain(worst.Ohms)) with
            {
                Hint = "take a reducer that holds the old volts; a resistor only for a sender of one value",
            };
        }
    }

    private static double ErrorAt(CheckedAlteration alteration, Studies.LoadStudy was, Studies.LoadStudy now, string sender, double ohms)
    {
        Setting At(Studies.LoadStudy load) => OperatingPoints.SettingOf(load) with { Values = [new(sender, new(Math.Max(ohms, 0.1), Unit.Ohm))] };
        if (alteration.Before.Points.Solve(At(was)) is not { } before || alteration.After.Points.Solve(At(now)) is not { } after) return 0;
        double old = Amperes(before, was), fresh = Amperes(after, now);
        return old < 1e-4 ? 0 : (fresh - old) / old;
    }

    private static double Amperes(Solution solution, Studies.LoadStudy load) => Math.Abs(solution.Element(load.Part.Id, load.Element.Name).Amperes);
}
