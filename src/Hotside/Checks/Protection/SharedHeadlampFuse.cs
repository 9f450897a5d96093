using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 55: one fuse ahead of both headlamps: when it opens, the road is dark at once.</summary>
internal static class SharedHeadlampFuse
{
    public static readonly DiagnosticKind Kind = new("HS3355", Severity.Warning, "Both headlamps behind one fuse",
        "{0} is the nearest protection of the {1} beams of {2} alike: when it opens by night, all go dark at once")
    {
        Source = "common practice, no source; SAE J553 has breakers of type 1, which close again, for headlamps",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var beam in circuit.Loads.Where(l => Trade.IsHeadlamp(l.Part)).GroupBy(l => l.Element.Name, StringComparer.Ordinal))
        {
            if (beam.Select(l => l.Part.Id).Distinct().Count() < 2) continue;
            var ahead = beam.Select(l => circuit.Points.All.FirstOrDefault(p => p.For == l) is { } point ? FusesAhead.Of(circuit, l, point).Select(a => a.Protection).ToArray() : []).ToArray();
            // What closes again by itself leaves no dark road.
            if (ahead[0] is not [{ Element.Type: Circuits.ElementType.Fuse } shared] || ahead.Any(a => a is not [var only] || only != shared)) continue;
            yield return Kind.Of([shared.Id, .. beam.Select(l => l.Part.Id)], shared.Id, beam.Key, Listing.Of(beam.Select(l => l.Part.Id))) with
            {
                Hint = "give each lamp, or each side, a fuse of its own behind the switch or the relay",
            };
        }
    }
}
