using Hotside.Circuits;

namespace Hotside.Diagnoses;

/// <summary>A circuit in which every bolted terminal and every case on its mount is a conductor of its own, for each may come loose.</summary>
internal static class LooseJoints
{
    // A joint that is as it should be, in ohms (own choice): 20 mV at 200 A.
    private const double Ohms = 1e-4;

    /// <summary>The circuit so. The ids of the new conductors hold blanks, as no other id does: <c>F2.1 on X1</c>.</summary>
    public static Circuit Of(Circuit circuit)
    {
        var conductors = circuit.Conductors.ToBuilder();
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Add(End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } mount) Add(Nodes.CaseOf(part), mount);
        }
        var parts = circuit.Parts.Select(p => p with { Spec = p.Spec with { Joints = [], Case = CaseMount.Insulated } });
        return new(circuit.System, [.. parts], conductors.ToImmutable(), circuit.Settings);

        void Add(End from, End to)
        {
            if (!to.IsFree && from != to) conductors.Add(new($"{from} on {circuit.TextOf(to)}", from, to, new() { ResistanceInOhms = Ohms }));
        }
    }

    /// <summary>Whether a conductor stands for a joint or a mount.</summary>
    public static bool IsJoint(Conductor conductor) => conductor.Id.Contains(' ', StringComparison.Ordinal);

    /// <summary>Whether a conductor stands for a case on its mount.</summary>
    public static bool IsMount(Conductor conductor, Circuit circuit) =>
        IsJoint(conductor) && conductor.From.Part is { } id && circuit.FindPart(id) is { } part && Nodes.CaseOf(part) == conductor.From;

    /// <summary>The conductor of the vehicle that it is: its own id, or the part whose terminal or case is bolted.</summary>
    public static string ItemOf(Conductor conductor) => IsJoint(conductor) ? conductor.From.Part! : conductor.Id;
}
