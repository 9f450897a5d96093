using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Gauges;

/// <summary>Row 36: one resistor ahead of several gauges: each moves the others.</summary>
internal static class SharedDropper
{
    public static readonly DiagnosticKind Kind = new("HS3336", Severity.Warning, "One resistor for several gauges",
        "{0} lies ahead of {1}: each one's sender moves the others' needles")
    {
        Source = "own derivation: the gauges' feed is the supply less the resistance by the sum of their currents",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        where part.Kind.Elements is [{ Type: ElementType.Resistor }]
        let gauges = circuit.Loads.Where(l => l.Element.Type == ElementType.Gauge && !l.Paths.IsEmpty && l.Paths.All(p => p.HotWay.Contains(part.Id)))
            .Where(l => l.Paths.Any(p => p.GroundWay.Any(id => circuit.Circuit.FindPart(id) is { } met && met.Kind.Elements.Any(e => e.Type == ElementType.Sender)))).ToArray()
        where gauges.Select(g => g.Part.Id).Distinct().Count() > 1
        select Kind.Of([part.Id, .. gauges.Select(g => g.Part.Id).Distinct()], part.Id, Listing.Of(gauges.Select(g => g.Part.Id))) with
        {
            Hint = "give the gauges one regulated reducer, or each a resistor of its own",
        };
}
