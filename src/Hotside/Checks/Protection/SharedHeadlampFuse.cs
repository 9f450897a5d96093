using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

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
        var shared = from beam in circuit.Loads.Where(l => Trade.IsHeadlamp(l.Part)).GroupBy(l => l.Element.Name, StringComparer.Ordinal)
                     let fuse = Shared(circuit, [.. beam])
                     where fuse is not null
                     select (Fuse: fuse, Beam: beam.Key, Lamps: beam.Select(l => l.Part.Id).Distinct().ToArray());
        foreach (var group in shared.GroupBy(s => s.Fuse))
        {
            string[] lamps = [.. group.SelectMany(g => g.Lamps).Distinct()];
            yield return Kind.Of([group.Key.Id, .. lamps], group.Key.Id, Listing.Of(group.Select(g => g.Beam)), Listing.Of(lamps)) with
            {
                Hint = "give each lamp, or each side, a fuse of its own behind the switch or the relay",
            };
        }
    }

    // The one fuse nearest ahead of all lamps; a breaker that closes again by itself leaves no dark road.
    private static WireEdge? Shared(CheckedCircuit circuit, LoadStudy[] lamps)
    {
        if (lamps.Select(l => l.Part.Id).Distinct().Count() < 2) return null;
        WireEdge? shared = null;
        foreach (var lamp in lamps)
        {
            if (circuit.PointFor(lamp) is not { } point) return null;
            if (FusesAhead.Of(circuit, lamp, point) is not [var (ahead, _)] || ahead.Element!.Type != ElementType.Fuse || (shared ??= ahead) != ahead) return null;
        }
        return shared;
    }
}
