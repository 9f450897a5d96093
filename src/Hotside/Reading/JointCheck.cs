using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>What is wrong with joints: bolted in a ring, to itself, or to a chassis that an isolated system does not have.</summary>
internal static class JointCheck
{
    public static readonly DiagnosticKind JointInARing = new("HS2007", Severity.Warning, "Joint in a ring", "{0} is bolted to {1}, to which it is bolted already");
    public static readonly DiagnosticKind ChassisInIsolated = new("HS2008", Severity.Error, "No chassis in an isolated system", "{0} ends on chassis, but the system is isolated");

    public static IEnumerable<Diagnostic> Of(Circuit circuit) => [.. Rings(circuit), .. Chassis(circuit)];

    // A joint that joins what earlier joints have joined already.
    private static IEnumerable<Diagnostic> Rings(Circuit circuit)
    {
        var group = new Dictionary<End, End>();
        End Find(End end)
        {
            while (group.TryGetValue(end, out var next)) end = next;
            return end;
        }
        foreach (var part in circuit.Parts)
        foreach (var joint in part.Joints)
        {
            var own = End.At(part.Id, joint.Terminal);
            End first = Find(own), second = Find(joint.On);
            if (first != second) group[first] = second;
            else yield return JointInARing.Of([part.Id], circuit.TextOf(own), circuit.TextOf(joint.On)) with { Hint = "say it at one of the two parts" };
        }
    }

    private static IEnumerable<Diagnostic> Chassis(Circuit circuit)
    {
        if (circuit.System.Ground != Ground.Isolated) yield break;
        string hint = circuit.System.Return is null ? "metal is a part of kind metal" : $"the return is {circuit.TextOf(circuit.System.ReturnNode)}; metal is a part of kind metal";
        foreach (var wire in circuit.Conductors.Where(c => c.Ends.Any(e => e.IsChassis))) yield return ChassisInIsolated.Of([wire.Id], wire.Id) with { Hint = hint };
        foreach (var part in circuit.Parts.Where(p => p.Joints.Any(j => j.On.IsChassis))) yield return ChassisInIsolated.Of([part.Id], part.Id) with { Hint = hint };
    }
}
