using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Starting;

/// <summary>Row 42: metal on which something stands, and no strap from it to the ground pole.</summary>
internal static class BondingStrap
{
    public static readonly DiagnosticKind Kind = new("HS3342", Severity.Error, "Metal without a strap",
        "{0} {2} on {1}, and nothing joins {1} to the ground pole: current seeks bearings and cables, or nothing works")
    {
        Source = "TM 9-2320-280-20-1 (shared grounds); common practice, no source: engine, frame and body are joined by straps",
    };

    public static readonly DiagnosticKind Unsaid = new("HS3387", Severity.Note, "Strap of the engine not said",
        "{0} {1} taken to stand on the chassis itself; an engine hangs in rubber and needs a strap of its own")
    {
        Source = Kind.Source,
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var graph = circuit.Graph;
        var ground = graph.Reach(circuit.Graph.At(WireGraph.Return).Where(e => e.IsInLine).SelectMany(e => new[] { e.A, e.B }), e => e.IsInLine);
        foreach (var metal in circuit.Circuit.Parts.Where(p => p.Kind.Id == "metal"))
        {
            End node = End.At(metal.Id, metal.Kind.Terminals[0].Name);
            string[] standing = [.. circuit.Circuit.Parts.Where(p => p.CaseOn is { } on && graph.NodeOf(on) == graph.NodeOf(node) && p.Kind.Elements.Any(e => !e.IsInternal && (e.From == "case" || e.To == "case"))).Select(p => p.Id)];
            if (standing.Length > 0 && graph.NodeOf(node) != WireGraph.Return && !ground.Contains(graph.NodeOf(node)))
                yield return Kind.Of([metal.Id, .. standing], Listing.Of(standing), metal.Id, standing.Length == 1 ? "stands" : "stand") with { Hint = $"run a strap: \"{metal.Id} to chassis, 2 braid, 0.3 m\"; clean the metal, star washer" };
        }
        // Starters and machines stand on an engine; a job that names no metal at all has not looked at it.
        string[] direct = [.. circuit.Circuit.Parts.Where(p => p.CaseOn is { IsChassis: true } && p.Kind.Elements.Any(e => p.IsStarter(e) || Trade.IsMachine(e))).Select(p => p.Id)];
        if (direct.Length > 0 && circuit.Circuit.Parts.All(p => p.Kind.Id is not ("metal" or "ground-strap")))
            yield return Unsaid.Of(direct, Listing.Of(direct), direct.Length == 1 ? "is" : "are") with { Hint = "add \"engine: metal\", put \"case on engine\", and run its strap to the chassis" };
    }
}
