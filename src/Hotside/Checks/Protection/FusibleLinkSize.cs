using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 53: a fusible link that is not four gauge numbers thinner than the wire behind it.</summary>
internal static class FusibleLinkSize
{
    private const int Steps = 4;

    public static readonly DiagnosticKind Kind = new("HS3353", Severity.Warning, "Fusible link of the wrong size",
        "{0} is {1} AWG before {2} of {3} AWG; a link is {4} AWG there: thicker it opens too late, thinner without need")
    {
        Source = "common practice, no source (several trade texts agree): four gauge numbers under the wire, about 150 mm long, never ordinary wire",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        from element in part.Kind.Elements
        where element.Type == ElementType.Fuse && part.Rated(element.Name, Unit.Awg) is not null
        let gauge = (int)part.Rated(element.Name, Unit.Awg)!.Value
        let thinnest = circuit.Circuit.Conductors.Where(c => c.Ends.Any(e => e.Part == part.Id) && c.Wire.Size?.Gauge is not null).OrderByDescending(c => c.Wire.Size!.Value.Gauge).FirstOrDefault()
        where thinnest is not null && gauge != thinnest.Wire.Size!.Value.Gauge!.Value + Steps
        select Kind.Of([part.Id, thinnest.Id], part.Id, QuantityText.Gauge(gauge), thinnest.Id, QuantityText.Gauge(thinnest.Wire.Size!.Value.Gauge!.Value), QuantityText.Gauge(thinnest.Wire.Size!.Value.Gauge!.Value + Steps)) with
        {
            Hint = "fit a link made for the wire behind it, sleeved and away from cloth and fuel",
        };
}
