using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Drawings.Plans;

/// <summary>Chooses the rail that is drawn along the top: the one that is joined to a battery's hot pole for good and has most on it.</summary>
internal static class FeedRail
{
    public static string? Of(Alteration alteration) =>
        alteration.Before.Parts.Concat(alteration.After.Parts).Where(p => PlannedRoles.Of(p) == PlannedRole.Rail).Select(p => p.Id).Distinct()
            .Where(id => IsHot(id, alteration.After) || IsHot(id, alteration.Before))
            .OrderByDescending(id => Taps(id, alteration.After) + Taps(id, alteration.Before)).FirstOrDefault();

    private static bool IsHot(string id, Circuit circuit)
    {
        if (circuit.FindPart(id) is not { } rail || circuit.System.Return?.Part == id) return false;
        var nodes = Nodes.Of(circuit, throughLinks: true);
        return circuit.Sources.Any(s => nodes.AreOne(s.Feed, End.At(id, rail.Kind.Terminals[0].Name)));
    }

    private static int Taps(string id, Circuit circuit) =>
        circuit.Conductors.Count(c => c.From.Part == id || c.To.Part == id) + circuit.Parts.Count(p => p.Joints.Any(j => j.On.Part == id));
}
