using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 54: a breaker that closes again by itself heats a fault for hours, where no sudden darkness is to be feared.</summary>
internal static class CyclingBreaker
{
    public static readonly DiagnosticKind Kind = new("HS3354", Severity.Warning, "Breaker that closes again by itself",
        "{0} closes again by itself and protects {1}: into a lasting fault it closes again and again, and heats it for hours")
    {
        Source = "SAE J553 (type 1), from a summary: for headlamps and wipers, whose sudden loss is worse; 33 CFR 183.455: boats need manual, trip-free ones",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        bool isAfloat = Trade.IsIsolated(circuit.Circuit);
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Id == "breaker"))
        {
            var behind = circuit.Loads.Where(l => l.Paths.Any(p => p.HotWay.Contains(part.Id))).ToArray();
            if (behind.Length == 0 || (!isAfloat && behind.Any(MayNotFail))) continue;
            yield return Kind.Of([part.Id, .. behind.Select(l => l.Part.Id).Distinct()], part.Id, Listing.Of(behind.Select(l => l.Name))) with
            {
                Hint = "take a fuse, or a breaker that stays open while fed (breaker-held) or until it is pressed in (breaker-manual)",
            };
        }
    }

    private static bool MayNotFail(Studies.LoadStudy load) =>
        Trade.IsHeadlamp(load.Part) || load.Part.Kind.Id.StartsWith("wiper", StringComparison.Ordinal)
        || (load.Element.Type == ElementType.Lamp && Trade.IsCalledHeadlamp(load.Part));
}
