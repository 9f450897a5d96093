using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Loads;

/// <summary>Row 56: where nothing is grounded by custom, as afloat, a switch in the return alone leaves its load live when it is off. On the road that is how horns and door lamps are made.</summary>
internal static class GroundSwitchedAfloat
{
    public static readonly DiagnosticKind Kind = new("HS3356", Severity.Error, "Switched in the return only, isolated system",
        "{0} is switched by {1} in its return only: switched off, its wires are live and feed whatever they touch")
    {
        Source = "46 CFR 183.380(b): no switch or breaker in the grounded conductor alone",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => !Trade.IsIsolated(circuit.Circuit) ? [] :
        from load in circuit.Loads
        where load.Side == SwitchedSide.GroundSwitched
        let switches = load.OwnSwitches.Where(id => circuit.Circuit.FindPart(id) is { } part && part.Kind.Actuators.Any(a => a.Drive is ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Key)).ToArray()
        where switches.Length > 0
        select Kind.Of([load.Part.Id, .. switches], load.Name, Listing.Of(switches)) with { Hint = "put the switch into the feed, or take one with two poles" };
}
