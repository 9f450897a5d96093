using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Starting;

/// <summary>Rows 57 and 58: a starter that turns without being asked: always, or whenever the ignition is on.</summary>
internal static class AlwaysCranking
{
    public static readonly DiagnosticKind Kind = new("HS3358", Severity.Stop, "Starter always on",
        "{0} cranks as soon as the battery is on, whatever the switches do: the vehicle moves, or its starter burns")
    {
        Source = "follows from the circuit: a relay fed inside wants a button to ground, one with its coil to the case wants a feed",
    };

    public static readonly DiagnosticKind Bypass = new("HS3357", Severity.Stop, "Ignition feeds the starter back",
        "{2}, which is only meant to feed {1}, the relay of {0} gets {3} V: it cranks, or does not let go")
    {
        Source = "common practice, no source: the ballast's bypass is taken from the relay's contact (I, 15a), never from its coil (S, 50)",
    };

    // A relay falls back at a tenth of its volts at the earliest (data sheet of a plug-in relay).
    private const double Share = 0.1;

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var starter in circuit.Loads.Where(l => l.Part.IsStarter(l.Element)))
        {
            if (starter.Side == SwitchedSide.Unswitched)
            {
                yield return Kind.Of([starter.Part.Id, .. starter.Chain], starter.Name) with { Hint = "leave the battery out; see whether the relay's kind fits its button: on the feed side or on the ground side" };
                continue;
            }
            foreach (var ignition in circuit.Loads.Where(l => Trade.IsIgnition(l.Part, l.Element)))
                if (FedBack(circuit, starter, ignition) is { } found) yield return found;
        }
    }

    // With the least that feeds the ignition the relay of the starter must be at rest, unless that is what feeds it.
    private static Diagnostic? FedBack(CheckedCircuit circuit, LoadStudy starter, LoadStudy ignition)
    {
        if (circuit.PointFor(ignition) is not { } point) return null;
        foreach (string relay in starter.Chain)
        foreach (var coil in point.Solution.Elements.Where(e => e.Part.Id == relay && e.Element.Type == ElementType.Coil && Math.Abs(e.Volts) > Share * e.RatedVolts))
            return Bypass.Of([.. new[] { starter.Part.Id, ignition.Part.Id }.Concat(starter.Chain).Distinct()], starter.Name, ignition.Name, point.When, Numbers.Plain(Math.Abs(coil.Volts), 1)) with
            {
                Hint = "take the bypass from the relay's own contact for it (I, 15a, R), or put a diode into it; battery out first",
            };
        return null;
    }
}
