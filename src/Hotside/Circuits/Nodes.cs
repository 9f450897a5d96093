namespace Hotside.Circuits;

/// <summary>
/// Ends that are always one node: joined by conductors, joints and case mounts, and, when asked for, by what is in line for good and without resistance.
/// </summary>
internal sealed class Nodes
{
    private readonly Dictionary<End, End> parents = [];

    /// <summary>The nodes of a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="throughLinks">Whether fuses, links, ammeters and contacts that no actuator moves join their ends too.</param>
    public static Nodes Of(Circuit circuit, bool throughLinks) => Of(circuit, (_, element) => throughLinks && element is { IsLink: true, When: null });

    /// <summary>The nodes of a circuit in which some elements join their ends.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="joins">Whether an element does.</param>
    public static Nodes Of(Circuit circuit, Func<Part, Element, bool> joins)
    {
        var nodes = new Nodes();
        foreach (var conductor in circuit.Conductors)
            if (!conductor.From.IsFree && !conductor.To.IsFree)
                nodes.Join(conductor.From, conductor.To);
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) nodes.Join(End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } mount) nodes.Join(CaseOf(part), mount);
            foreach (var element in part.Kind.Elements)
                if (joins(part, element))
                    nodes.Join(NodeOf(part, element.From), NodeOf(part, element.To));
        }
        // So that it is one look each time.
        foreach (var end in nodes.parents.Keys.ToArray()) nodes.parents[end] = nodes.Representative(end);
        return nodes;
    }

    /// <summary>The nodes with every fuse, switch and plug closed, as a source's pole is grounded though a disconnect or a plug lies between it and the metal.</summary>
    /// <param name="circuit">The circuit.</param>
    public static Nodes WithAllClosed(Circuit circuit) => Of(circuit, (_, element) => element.IsLink);

    /// <summary>The end of an element as a node of the circuit: a terminal, an inner node, or the case.</summary>
    public static End NodeOf(Part part, string name) => End.At(part.Id, part.Kind.TerminalNamed(name) ?? name);

    /// <summary>The node of a part's case, which may be one of its terminals.</summary>
    public static End CaseOf(Part part) => NodeOf(part, "case");

    /// <summary>One end that stands for all ends of a node; the same for the same circuit.</summary>
    public End Representative(End end)
    {
        while (parents.TryGetValue(end, out var parent) && parent != end) end = parent;
        return end;
    }

    /// <summary>Whether both ends are one node.</summary>
    public bool AreOne(End a, End b) => Representative(a) == Representative(b);

    private void Join(End a, End b)
    {
        End first = Representative(a), second = Representative(b);
        parents.TryAdd(first, first);
        if (first != second) parents[second] = first;
    }
}
