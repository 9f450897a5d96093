using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 60: an accessory socket whose centre is minus: what is plugged in is made for plus.</summary>
internal static class SocketPolarity
{
    public static readonly DiagnosticKind Kind = new("HS3360", Severity.Warning, "Socket with minus at its centre",
        "the centre of {0} is minus: what people plug in is made for plus there, and is destroyed")
    {
        Source = "common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        where part.Kind.Id is "accessory-socket" or "cigar-lighter"
        where part.Kind.Elements.Any(e => e.IsConsumer && Signs.OfVolts(circuit, part.Id, e.Name) < 0)
        select Kind.Of([part.Id], part.Id) with { Hint = "label it until the polarity is changed, or insulate the socket and swap its leads" };
}
