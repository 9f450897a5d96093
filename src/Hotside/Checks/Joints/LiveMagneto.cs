using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 59: a battery's wire on a magneto's stop lead.</summary>
internal static class LiveMagneto
{
    public static readonly DiagnosticKind Kind = new("HS3359", Severity.Stop, "Battery on a magneto",
        "the stop lead of {0} can be joined to {1}: a battery's current takes the strength from its magnets and burns its winding")
    {
        Source = "common practice, no source: a magneto is stopped by grounding it, and has no feed",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        if (circuit.Circuit.Parts.All(p => p.Kind.Id != "magneto")) yield break;
        var live = circuit.Graph.Reach(circuit.Feeds, e => e.IsInLine || e.Element is { IsConsumer: true });
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Id == "magneto"))
            if (part.Kind.Terminals.Any(t => circuit.Graph.NodeOf(End.At(part.Id, t.Name)) is var node && node != WireGraph.Return && live.Contains(node)))
                yield return Kind.Of([part.Id], part.Id, circuit.Batteries) with { Hint = "keep its lead to the stop switch alone, which joins it to the engine" };
    }
}
