using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>What is wrong with a circuit as such: loose things, and a system line that the circuit contradicts.</summary>
internal static class CircuitCheck
{
    /// <summary>What is wrong with a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="isWhole">Whether all of it could be read; else only what no missing line explains is told.</param>
    public static IEnumerable<Diagnostic> Of(Circuit circuit, bool isWhole) => !isWhole ? Loops(circuit)
        : [.. Loops(circuit), .. Doubles(circuit), .. Parts(circuit), .. Ground(circuit), .. JointCheck.Of(circuit), .. VoltageCheck.Of(circuit)];

    // Two plain wires between one pair of ends: mostly one line written twice.
    private static IEnumerable<Diagnostic> Doubles(Circuit circuit)
    {
        var plain = circuit.Conductors.Where(c => c.Wire is { Role: WireRole.Wire, Name: null, IsBraid: false } && c.From != c.To && c.Ends.All(e => !e.IsFree));
        foreach (var pair in plain.GroupBy(c => string.Join(' ', c.Ends.Select(e => e.ToString()).Order(StringComparer.Ordinal)), StringComparer.Ordinal))
        foreach (var second in pair.Skip(1))
            yield return CircuitProblems.SamePair.Of([second.Id, pair.First().Id], second.Id, circuit.TextOf(second.From), circuit.TextOf(second.To), pair.First().Id) with
            {
                Hint = "take one out; if both are there, give one a name, such as \"second cable\"",
            };
    }

    private static IEnumerable<Diagnostic> Loops(Circuit circuit) =>
        from wire in circuit.Conductors
        where wire.From == wire.To
        select CircuitProblems.WireToItself.Of([wire.Id], wire.Id, circuit.TextOf(wire.From)) with { Hint = "one end goes elsewhere, or the wire is not there" };

    private static IEnumerable<Diagnostic> Parts(Circuit circuit)
    {
        if (circuit.Sources.IsEmpty) yield return CircuitProblems.NoSource.Of([]) with { Hint = "add the battery: \"G1: battery, 12 V, 60 Ah\"" };
        var joined = circuit.Parts.SelectMany(p => p.Joints.Select(j => j.On)).Concat(circuit.Parts.Select(p => p.CaseOn).OfType<End>())
            .Select(e => e.Part).Concat(circuit.Conductors.SelectMany(c => c.Ends).Select(e => e.Part)).ToHashSet();
        foreach (var part in circuit.Parts)
        {
            bool hasTerminals = part.Kind.Terminals.Length > 0 || part.Kind.TakesAnyTerminal;
            if (hasTerminals && part.Joints.IsEmpty && !joined.Contains(part.Id))
                yield return CircuitProblems.NothingAtPart.Of([part.Id], part.Id) with { Hint = "run its wires, or take the part out" };
            foreach (string terminal in part.Spec.FreeTerminals)
                if (circuit.ConductorsAt(End.At(part.Id, terminal)).FirstOrDefault() is { } wire)
                    yield return CircuitProblems.FreeTerminalUsed.Of([part.Id, wire.Id], $"{part.Id}.{terminal}", wire.Id);
            if (part.Kind.IsSplice && circuit.Conductors.Where(c => c.From.Part == part.Id || c.To.Part == part.Id).ToArray() is [var lone] && part.Joints.IsEmpty)
                yield return CircuitProblems.OneWireSplice.Of([part.Id, lone.Id], part.Id, lone.Id);
        }
    }

    private static IEnumerable<Diagnostic> Ground(Circuit circuit) =>
        from contrary in circuit.GroundContradictedBy().Take(1)
        select CircuitProblems.GroundContradicts.Of([contrary.Part.Id], circuit.System.Ground.ToString().ToLowerInvariant(), contrary.Part.Id) with
        {
            Hint = "turn the leads of the source in the file, or correct the system line",
        };
}
