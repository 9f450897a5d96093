using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 63: a battery whose volts break down while cranking.</summary>
internal static class CrankingVolts
{
    private const double Least = 0.8;

    public static readonly DiagnosticKind Kind = new("HS3386", Severity.Warning, "Battery small for its starter",
        "{0} falls to {1} V while it gives {2} A to {3}; {4} V are the least at which an engine is sure to start")
    {
        Source = "TM 5-3820-256-24-4: 9.6 V at the starter of a 12 V system, 1.6 V a cell; the battery's resistance where not stated by its ampere-hours (own choice)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var worst = circuit.Points.All.Where(p => p.IsCranking)
            .SelectMany(p => p.Solution.Sources.Where(s => s.Element.When is null && s.Amperes < -10).Select(s => (Point: p, Battery: s))).OrderBy(w => w.Battery.Volts / w.Battery.RatedVolts).FirstOrDefault();
        if (worst.Point is null || worst.Battery.Volts >= Least * worst.Battery.RatedVolts) yield break;
        // A starter for fewer volts draws what it draws: that is told of the starter.
        var starters = worst.Point.Solution.Elements.Where(e => e.Part.IsStarter(e.Element) && Math.Abs(e.Amperes) > 1).Select(e => e.Part.Id).ToArray();
        yield return Kind.Of([worst.Battery.Part.Id, .. starters], worst.Battery.Part.Id, Numbers.Plain(worst.Battery.Volts, 1), Numbers.Plain(-worst.Battery.Amperes, 0), Listing.Of(starters), Numbers.Plain(Least * worst.Battery.RatedVolts, 1)) with
        {
            Hint = "take a battery of more ampere-hours, or state its cranking amperes (\"540 A\")",
        };
    }
}
