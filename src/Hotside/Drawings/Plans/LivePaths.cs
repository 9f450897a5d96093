using Hotside.Circuits;
using Hotside.Studies.Figures;

namespace Hotside.Drawings.Plans;

/// <summary>
/// The conductors and joints by which current goes round through something that is on. Milliamperes that the drop of a shared ground drives through lamps that are off
/// go round too, but through nothing that is on: what hangs on its last joint once such lamps are taken away is no way of the current.
/// </summary>
internal sealed class LivePaths
{
    // What a table shows as nothing marks no way.
    private const double LeastAmperes = 0.005;

    private readonly HashSet<string> conductors = new(StringComparer.Ordinal);
    private readonly HashSet<End> joints = [];

    /// <summary>The ways of a setting.</summary>
    public LivePaths(Circuit circuit, SettingFigures figures)
    {
        List<(End A, End B, string? Conductor, bool IsJoint)> ways =
        [
            .. figures.Conductors.Where(c => Flows(c.Current.Amperes)).Select(c => (c.Conductor.From, c.Conductor.To, (string?)c.Conductor.Id, false)),
            .. figures.Elements.Where(e => Flows(e.Current.Amperes) && (!e.Element.IsConsumer || e.IsLive))
                .Select(e => (Nodes.NodeOf(e.Part, e.Element.From), Nodes.NodeOf(e.Part, e.Element.To), (string?)null, false)),
            .. circuit.Parts.SelectMany(p => p.Joints.Select(j => (End.At(p.Id, j.Terminal), j.On, (string?)null, true))),
            .. circuit.Parts.Where(p => p.CaseOn is not null).Select(p => (Nodes.CaseOf(p), p.CaseOn!.Value, (string?)null, true)),
        ];
        while (true)
        {
            var meeting = ways.SelectMany(w => new[] { w.A, w.B }).GroupBy(e => e).ToDictionary(g => g.Key, g => g.Count());
            if (ways.RemoveAll(w => w.A != w.B && (meeting[w.A] == 1 || meeting[w.B] == 1)) == 0) break;
        }
        foreach (var way in ways)
            if (way.Conductor is { } id) conductors.Add(id);
            else if (way.IsJoint) joints.Add(way.A);
    }

    /// <summary>Whether a conductor is such a way.</summary>
    public bool Has(string conductor) => conductors.Contains(conductor);

    /// <summary>Whether the joint of a terminal is such a way.</summary>
    public bool Has(End terminal) => joints.Contains(terminal);

    private static bool Flows(double amperes) => Math.Abs(amperes) >= LeastAmperes;
}
