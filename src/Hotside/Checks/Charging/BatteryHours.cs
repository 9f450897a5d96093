using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 62: how long the battery lasts with the engine stopped, where that is short.</summary>
internal static class BatteryHours
{
    private const double Short = 3;

    public static readonly DiagnosticKind Kind = new("HS3362", Severity.Note, "Hours on the battery",
        "{0} A are drawn {1} with the engine stopped: {2}, {3} Ah, is empty in about {4} h, and starts no engine long before")
    {
        Source = "capacity over current, method of TM 9-8000, chapter 16; a battery gives less than its ampere-hours at such currents (common practice, no source)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var worst = circuit.Points.Steady.Where(p => p is { IsNamed: true, IsRunning: false })
            .SelectMany(p => p.Solution.Sources.Where(s => s.Element.When is null && s.Amperes < 0).Select(s => (Point: p, Battery: s, Capacity: s.Part.Rated(s.Element.Name, Unit.AmpereHour))))
            .Where(w => w.Capacity is not null && w.Capacity / -w.Battery.Amperes < Short).OrderBy(w => w.Capacity / -w.Battery.Amperes).FirstOrDefault();
        if (worst.Point is null) yield break;
        yield return Kind.Of([worst.Battery.Part.Id], Numbers.Plain(-worst.Battery.Amperes, 1), worst.Point.When, worst.Battery.Part.Id, Numbers.Plain(worst.Capacity!.Value), Numbers.Plain(worst.Capacity.Value / -worst.Battery.Amperes, 1));
    }
}
