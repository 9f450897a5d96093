using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Loads;

/// <summary>Row 9, the other way: something made for more volts than the system has.</summary>
internal static class TooFewVolts
{
    private const double Least = 0.7, On = 0.05;

    public static readonly DiagnosticKind Kind = new("HS3382", Severity.Error, "Far too few volts",
        "{0} is made for {1} V and gets {2} V at best: it does not work, or hardly")
    {
        Source = "limit 0.7 from memory; a plug-in relay pulls in at two thirds of its volts at the latest (data sheet, ISO 7588-1 pattern)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var points = circuit.Points.All;
        if (points.IsEmpty) yield break;
        double most = circuit.Circuit.Sources.Select(s => s.Volts).DefaultIfEmpty(0).Max();
        for (int i = 0; i < points[0].Solution.Elements.Length; i++)
        {
            var (part, element) = (points[0].Solution.Elements[i].Part, points[0].Solution.Elements[i].Element);
            // What is made for the system's volts and gets less has a resistance ahead of it: that is told as a drop, or meant.
            if (!element.IsConsumer || element.IsInternal || part.Rated(element.Name, Unit.Volt) is not { } rated || Least * rated < most) continue;
            double volts = points.Max(p => Math.Abs(p.Solution.Elements[i].Volts));
            if (volts < On * rated || volts >= Least * rated) continue;
            yield return Kind.Of([part.Id], points[0].Solution.Elements[i].Name, Numbers.Plain(rated, 1), Numbers.Plain(volts, 1)) with { Hint = $"take one for {Numbers.Plain(circuit.Circuit.System.Volts[0])} V" };
        }
    }
}
