using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 63: a switch that parts the battery from a turning machine.</summary>
internal static class DisconnectInChargePath
{
    public static readonly DiagnosticKind Kind = new("HS3363", Severity.Warning, "Disconnect between battery and machine",
        "{0} parts {1} from {2} when opened: with the engine running the volts then soar, and diodes and lamps die")
    {
        Source = "common practice, no source; TM 10-3930-671-24: an alternator never runs without its battery",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var graph = circuit.Graph;
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Id is "battery-disconnect" or "battery-selector"))
        {
            var parted = circuit.Circuit.Sources.Where(s => Trade.IsMachine(s.Element) && !s.Element.TakesEitherPolarity && graph.NodeOf(s.Feed) is var node && node != WireGraph.Return
                && Reaches(circuit, node, null) && !Reaches(circuit, node, part)).Select(s => s.Part.Id).Distinct().ToArray();
            if (parted.Length == 0 || parted.Append(part.Id).SelectMany(circuit.WorkFor).Any(Trade.SaysWhenToOpen)) continue;
            yield return Kind.Of([part.Id, .. parted], part.Id, Listing.Of(parted), circuit.Batteries) with
            {
                Hint = "take one with a second contact that opens the machine's field, or label it: never open with the engine running",
            };
        }
    }

    private static bool Reaches(CheckedCircuit circuit, int node, Part? without)
    {
        var reached = circuit.Graph.Reach([node], e => e.IsInLine && (without is null || e.Part != without));
        return circuit.Feeds.Any(reached.Contains);
    }
}
