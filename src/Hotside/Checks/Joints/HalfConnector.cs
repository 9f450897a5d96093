using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 68: a way of a plug with a wire on one half only.</summary>
internal static class HalfConnector
{
    public static readonly DiagnosticKind Kind = new("HS3368", Severity.Warning, "Plug with a wire on one half",
        "{0} ends on {1}, and nothing is on {2}: it goes on to nowhere")
    {
        Source = "common practice, no source: what is spare is declared so",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Letter == "X"))
        foreach (var way in part.Kind.Elements.Where(e => e.Type is ElementType.Link or ElementType.Contact))
        foreach (var (wired, bare) in new[] { (way.From, way.To), (way.To, way.From) })
        {
            End here = End.At(part.Id, wired), there = End.At(part.Id, bare);
            var wires = circuit.Circuit.ConductorsAt(here).Where(c => c.Wire.Role != WireRole.Spare).ToArray();
            if (wires.Length == 0 || IsUsed(circuit.Circuit, part, bare) || part.Spec.FreeTerminals.Contains(bare)) continue;
            yield return Kind.Of([.. wires.Select(w => w.Id), part.Id], Listing.Of(wires.Select(w => w.Id)), here.ToString(), there.ToString()) with { Hint = $"run its other half, mark the wire spare, or say \"{bare} free\" of {part.Id}" };
        }
    }

    // A terminal that several ways share is no end.
    private static bool IsUsed(Circuit circuit, Part part, string terminal) =>
        circuit.IsUsed(part, terminal) || part.Kind.Elements.Count(e => e.From == terminal || e.To == terminal) > 1;
}
