using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 68 for switches and the like: one of two terminals has nothing on it, so that the part does nothing.</summary>
internal static class OneEndOnly
{
    public static readonly DiagnosticKind Kind = new("HS3397", Severity.Warning, "Part with one end only",
        "nothing is on {1}: {0} joins nothing to what is on {2}")
    {
        Source = "common practice, no source: what is spare is declared so",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        // A spare fuse waits for its wire, and plugs have a check of their own.
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Letter is not ("X" or "F")))
        {
            if (part.Kind.Elements.Where(e => e.IsInLine).ToArray() is not [var way] || part.Kind.Terminals.Length > 2) continue;
            foreach (var (wired, bare) in new[] { (way.From, way.To), (way.To, way.From) })
                if (circuit.Circuit.IsUsed(part, wired) && !circuit.Circuit.IsUsed(part, bare) && !part.Spec.FreeTerminals.Contains(bare))
                    yield return Kind.Of([part.Id], part.Id, End.At(part.Id, bare).ToString(), End.At(part.Id, wired).ToString()) with { Hint = $"run the wire of {bare}, or say \"{bare} free\" of {part.Id}" };
        }
    }
}
