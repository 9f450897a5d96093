using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>What is joined in one state: by conductors, bolts and cases, and by what is in line and closed.</summary>
internal sealed class InLine
{
    private readonly Dictionary<End, int> numbers = [];
    private readonly DisjointSets sets = new(0);

    /// <summary>The joined points of a state.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="positions">Where each actuator stands.</param>
    /// <param name="withResistance">Whether resistors, diodes and regulators join their ends too.</param>
    public InLine(Circuit circuit, IEnumerable<SetPosition> positions, bool withResistance)
    {
        var standing = positions.ToDictionary(p => (p.Part, p.Actuator), p => p.Position);
        foreach (var conductor in circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) Join(conductor.From, conductor.To);
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Join(End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } mount) Join(Nodes.CaseOf(part), mount);
            foreach (var element in part.Kind.Elements.Where(e => (withResistance ? e.IsInLine : e.IsLink) && IsClosed(part, e)))
                Join(Nodes.NodeOf(part, element.From), Nodes.NodeOf(part, element.To));
        }

        bool IsClosed(Part part, Element element) => element.When is not { } when || when.Tests.All(t =>
            circuit.VariableOf(part, t.Actuator) is var variable && t.Positions.Contains(standing.GetValueOrDefault((variable.Part, variable.Actuator.Name), variable.Actuator.Rest)));
    }

    /// <summary>Whether two ends are one point.</summary>
    public bool AreOne(End a, End b) => a == b || (numbers.TryGetValue(a, out int first) && numbers.TryGetValue(b, out int second) && sets.AreOne(first, second));

    private void Join(End a, End b) => sets.Join(Of(a), Of(b));

    private int Of(End end) => numbers.TryGetValue(end, out int known) ? known : numbers[end] = sets.Add();
}
