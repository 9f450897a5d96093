using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 47: a relay's coil without diode or resistor on the same switched feed as electronics.</summary>
internal static class UnsuppressedCoil
{
    public static readonly DiagnosticKind Kind = new("HS3347", Severity.Warning, "Relay coil beside electronics",
        "the coil of {0} is switched together with {1} and has neither diode nor resistor: when it opens, a spike of a hundred volts and more goes there")
    {
        Source = "common practice, no source; a diode, or a resistor of five to ten times the coil's ohms",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var graph = circuit.Graph;
        foreach (var coil in graph.Edges.Where(e => e.Element is { Type: ElementType.Coil } && e.Part!.Kind.Actuators.Any(a => a.Drive == ActuatorDrive.Driven)))
        {
            if (coil.Part!.Kind.Elements.Any(e => e.Type is ElementType.Diode or ElementType.Resistor)) continue;
            foreach (int node in new[] { coil.A, coil.B }.Where(n => n != WireGraph.Return))
            {
                // Only what hangs on the very same wires: a feed that never opens swallows the spike.
                var near = graph.Reach([node], e => e.Conductor is not null);
                if (circuit.Feeds.Any(graph.Reach([node], e => e.IsLink && e.Element?.When is null).Contains)) continue;
                var beside = near.Where(n => n != WireGraph.Return).SelectMany(graph.At).ToArray();
                if (beside.Any(e => e.Element?.Type == ElementType.Diode)) continue;
                string[] electronics = [.. beside.Where(e => e.Element is { IsConsumer: true } && e.Part != coil.Part && (e.Element.Type == ElementType.Electronics || Trade.IsLed(e.Element))).Select(e => e.Part!.Id).Distinct()];
                if (electronics.Length == 0) continue;
                yield return Kind.Of([coil.Part.Id, .. electronics], coil.Part.Id, Listing.Of(electronics)) with { Hint = "take a relay with a resistor (relay-resistor) or a diode (relay-diode; mind its 86)" };
            }
        }
    }
}
