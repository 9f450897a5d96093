using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 21: with the key off and the engine turning, the machine feeds the ignition back, and the engine does not stop.</summary>
internal static class RunOn
{
    // A 2 W lamp lets 0.14 A through to a coil of 3.5 A, a twentieth: the engine stops. Own choice.
    private const double Share = 0.25;

    public static readonly DiagnosticKind Kind = new("HS3321", Severity.Stop, "Engine runs on with the key off",
        "with the key off and the engine running {0} still gets {1} A of its {2} A, fed back by {3}: the engine will not stop")
    {
        Source = "own derivation; a 2 W charge lamp lets 0.14 A through (a car maker's service manual of 1998), limit a quarter of the coil's current: own choice",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var off = circuit.Points.All.FirstOrDefault(p => p is { IsAtRest: true, IsRunning: true });
        var standing = circuit.Points.All.FirstOrDefault(p => p is { IsAtRest: true, IsRunning: false });
        if (off is null || standing is null) yield break;
        foreach (var load in circuit.Loads.Where(l => Trade.IsIgnition(l.Part, l.Element)))
        {
            double rest = Math.Abs(standing.Solution.Element(load.Part.Id, load.Element.Name).Amperes);
            var at = off.Solution.Element(load.Part.Id, load.Element.Name);
            if (rest > Share * at.RatedAmperes || Math.Abs(at.Amperes) <= Share * at.RatedAmperes) continue;
            var machines = off.Solution.Sources.Where(s => Trade.IsMachine(s.Element) && s.Amperes < -0.1).Select(s => s.Part.Id).Distinct().ToArray();
            yield return Kind.Of([load.Part.Id, .. machines], load.Name, Numbers.Plain(Math.Abs(at.Amperes), 1), Numbers.Plain(at.RatedAmperes, 1), Listing.Of(machines)) with
            {
                Hint = "put a charge lamp of about 2 W or a diode into the exciter lead, or take the ignition's feed from before the machine",
            };
        }
    }
}
