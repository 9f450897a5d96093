using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing.Tables;

namespace Hotside.Checks.Protection;

/// <summary>Row 53: a fusible link that is not four gauge numbers thinner than the wire behind it.</summary>
internal static class FusibleLinkSize
{
    public static readonly DiagnosticKind Kind = new("HS3353", Severity.Warning, "Fusible link of the wrong size",
        "{0} is {1} AWG before {2} of {3} AWG; a link is {4} AWG there: thicker it opens too late, thinner without need")
    {
        Source = "common practice, no source (several trade texts agree): four gauge numbers under the wire, about 150 mm long, never ordinary wire",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from fuse in circuit.Sizes.Fuses
        where fuse is { LinkNeeded.Gauge: not null, Thinnest: not null }
        let gauge = (int)fuse.Part.Rated(fuse.Element.Name, Unit.Awg)!.Value
        let needed = fuse.LinkNeeded!.Value.Gauge!.Value
        where gauge != needed
        select Kind.Of([fuse.Part.Id, fuse.Thinnest!.Id], fuse.Part.Id, QuantityText.Gauge(gauge), fuse.Thinnest.Id, QuantityText.Gauge(needed - FuseLadder.LinkSteps), QuantityText.Gauge(needed)) with
        {
            Hint = "fit a link made for the wire behind it, sleeved and away from cloth and fuel",
        };
}
