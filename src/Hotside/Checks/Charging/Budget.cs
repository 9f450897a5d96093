using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 61: with the engine running the machine gives less than is drawn, and the battery gives the rest.</summary>
internal static class Budget
{
    private const double Least = 1;

    public static readonly DiagnosticKind Kind = new("HS3361", Severity.Warning, "Charging budget negative",
        "{0} gives its {1} A and the battery {2} A more {3}: it runs down while you drive")
    {
        Source = "method: TM 9-8000, chapter 16; at idle a machine gives 30 to 60 % of its rating (common practice, no source)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        // Only what the job names: what nobody would have on together drains no battery.
        var worst = circuit.Points.Steady.Where(p => p is { IsRunning: true, IsNamed: true } && IsAtLimit(p)).Select(p => (Point: p, Drawn: Discharge(p))).Where(p => p.Drawn > Least).OrderByDescending(p => p.Drawn).FirstOrDefault();
        if (worst.Point is null) yield break;
        var machines = worst.Point.Solution.Sources.Where(s => Trade.IsMachine(s.Element) && s.Amperes < -Least).ToArray();
        if (machines.Length == 0) yield break;
        yield return Kind.Of([.. machines.Select(m => m.Part.Id).Distinct()], Listing.Of(machines.Select(m => m.Part.Id)), Numbers.Plain(-machines.Sum(m => m.Amperes), 0), Numbers.Plain(worst.Drawn, 1), worst.Point.When) with
        {
            Hint = "fit a machine that gives more, or lamps that draw less; at idle it gives a good deal less still",
        };
    }

    // A machine below its rating could give more: its regulator and the wires decide how the two share.
    private static bool IsAtLimit(OperatingPoint point) =>
        point.Solution.Sources.Any(s => Trade.IsMachine(s.Element) && s.Part.Rated(s.Element.Name, Unit.Ampere) is { } rated && -s.Amperes > 0.98 * rated);

    private static double Discharge(OperatingPoint point) => -point.Solution.Sources.Where(s => s.Element.When is null).Sum(s => Math.Min(0, s.Amperes));
}
