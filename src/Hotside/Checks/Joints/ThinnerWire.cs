using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 40: a thinner wire for a load that stays and draws no less than it did.</summary>
internal static class ThinnerWire
{
    public static readonly DiagnosticKind Kind = new("HS3340", Severity.Error, "Wire thinned for a load that draws no less",
        "{0} goes from {1} to {2} and carries {3} A {4}, {5} A before; only what is replaced at equal watts draws half at twice the volts")
    {
        Source = "own derivation: a load that stays draws as much at more volts, or more",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        var before = alteration.Before.Circuit.Conductors;
        var after = alteration.After.Circuit.Conductors;
        for (int i = 0; i < after.Length; i++)
        {
            var now = after[i];
            if (alteration.Before.Circuit.FindConductor(now.Id) is not { Wire.Size: { } old } was || now.Wire.Size is not { } fresh || fresh.Area > 0.95 * old.Area) continue;
            if (alteration.Alteration.StateOfConductor(now.Id) is not (ConductorState.Renewed or ConductorState.MovedAndRenewed)) continue;
            var (amperes, when) = Most(alteration.After, i);
            double had = Most(alteration.Before, before.IndexOf(was)).Amperes;
            if (amperes < 1 || amperes < 0.9 * had) continue;
            yield return Kind.Of([now.Id], now.Id, old.ToString(), fresh.ToString(), Numbers.Plain(amperes, 1), when, Numbers.Plain(had, 1)) with { Hint = $"keep {old}, or replace the load" };
        }
    }

    private static (double Amperes, string When) Most(CheckedCircuit circuit, int conductor)
    {
        double amperes = 0;
        string when = "";
        foreach (var point in circuit.Points.All)
            if (Math.Abs(point.Solution.Conductors[conductor].Amperes) is var here && here > amperes) (amperes, when) = (here, point.When);
        return (amperes, when);
    }
}
