using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Gauges;

/// <summary>Row 37: a limiter or reducer whose case is not on ground, so that it passes full volts.</summary>
internal static class LimiterGround
{
    public static readonly DiagnosticKind Kind = new("HS3337", Severity.Stop, "Limiter without a ground",
        "the case of {0} is joined to no ground: it holds nothing and passes the full volts to {1}")
    {
        Source = "common practice, no source: an ungrounded limiter gives its gauges the full volts",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var nodes = Nodes.Of(circuit.Circuit, throughLinks: true);
        foreach (var part in circuit.Circuit.Parts)
        foreach (var element in part.Kind.Elements.Where(e => e is { Type: ElementType.Dropper, IsAgainstCase: true }))
        {
            if (nodes.AreOne(Nodes.CaseOf(part), circuit.Circuit.System.ReturnNode)) continue;
            string[] behind = [.. Behind(circuit, part, element)];
            yield return Kind.Of([part.Id, .. behind], part.Id, behind.Length == 0 ? "whatever is behind it" : Listing.Of(behind)) with
            {
                Hint = $"run \"{part.Id}.case to chassis\" before it is fed, and measure the ground with the battery out",
            };
        }
    }

    private static IEnumerable<string> Behind(CheckedCircuit circuit, Part part, Element element) =>
        circuit.Graph.Reach([element.Traits.HasFlag(ElementTraits.HoldsFirst) ? circuit.Graph.NodesOf(part, element).A : circuit.Graph.NodesOf(part, element).B], e => e.IsLink).Where(n => n != WireGraph.Return).SelectMany(circuit.Graph.At)
            .Where(e => e.Element is { IsConsumer: true } && e.Part != part).Select(e => e.Part!.Id).Distinct().Order(StringComparer.Ordinal);
}
