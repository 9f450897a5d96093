using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Loads;

/// <summary>Row 13: a switch on the ground side of a load whose case stands on the chassis: the case closes the circuit past the switch.</summary>
internal static class CaseGrounded
{
    public static readonly DiagnosticKind Kind = new("HS3313", Severity.Stop, "Ground side closed by a case",
        "{0} is to be switched by {1} on the ground side, but its case stands on metal: it is on whatever {1} does")
    {
        Source = "follows from the circuit: what is grounded through its case cannot be ground-switched",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var nodes = Nodes.Of(circuit.Circuit, throughLinks: true);
        var ground = circuit.Circuit.System.ReturnNode;
        bool IsGround(End end) => nodes.AreOne(end, ground);
        foreach (var part in circuit.Circuit.Parts)
        foreach (var contact in part.Kind.Elements.Where(e => e is { Type: ElementType.Contact, When: not null, IsNoControl: false } && part.Kind.Actuators.Any(a => !a.IsNoControl && e.When.Tests.Any(t => t.Actuator == a.Name))))
        {
            End a = Nodes.NodeOf(part, contact.From), b = Nodes.NodeOf(part, contact.To);
            if (!IsGround(a) || !IsGround(b)) continue;
            foreach (var load in Wired(circuit.Circuit, a, b).Distinct())
                yield return Kind.Of([load.Id, part.Id], load.Id, part.Id) with { Hint = "insulate the load's mount (\"case insulated\") and run a wire, or switch it on the hot side; prove it with an ohmmeter, battery out" };
        }
    }

    // Loads that stand on metal and from which a wire leads to the switch.
    private static IEnumerable<Part> Wired(Circuit circuit, End a, End b)
    {
        foreach (var end in new[] { a, b })
        foreach (var wire in circuit.ConductorsAt(end))
        {
            var other = wire.From == end ? wire.To : wire.From;
            if (other.Part is null || circuit.FindPart(other.Part) is not { } load || load.Kind.Elements.All(e => !e.IsConsumer)) continue;
            bool stands = (load.CaseOn is not null && Nodes.CaseOf(load) == other) || load.Joints.Any(j => j.Terminal == other.Terminal && j.On.IsChassis);
            if (stands && load.Kind.Elements.Any(e => e.IsConsumer && (Nodes.NodeOf(load, e.From) == other || Nodes.NodeOf(load, e.To) == other))) yield return load;
        }
    }
}
