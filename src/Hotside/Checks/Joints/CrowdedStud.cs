using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 44: more lugs under one nut than hold.</summary>
internal static class CrowdedStud
{
    private const int Most = 4;

    public static readonly DiagnosticKind Kind = new("HS3344", Severity.Warning, "Crowded stud",
        "{0} lugs are stacked on {1}; more than {2} work loose, and all fail together")
    {
        Source = "common practice, no source; AC 43.13-1B has four as the most on one stud (from memory)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        where part.Kind.Symbol is not ("rail" or "splice") && part.Kind.Id is not ("metal" or "feed-rail" or "splice") && !part.Kind.TakesAnyTerminal
        from terminal in part.Kind.Terminals
        let end = End.At(part.Id, terminal.Name)
        let wires = circuit.Circuit.ConductorsAt(end).Select(c => c.Id).ToArray()
        where wires.Length > Most
        select Kind.Of([part.Id, .. wires], Numbers.Whole(wires.Length), circuit.Circuit.TextOf(end), Numbers.Whole(Most)) with { Hint = "share them out to a rail or a second stud" };
}
