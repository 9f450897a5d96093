using Hotside.Circuits;
using Hotside.Solving.Networks;

namespace Hotside.Solving;

/// <summary>The nodes of a circuit: every terminal is one, but what is bolted together or stands on the return. Conductors and links keep their ends apart, for they drop volts.</summary>
internal sealed class TerminalNodes
{
    private readonly Dictionary<End, int> sets = [];
    private readonly List<End> ends = [];
    private readonly DisjointSets joined = new(0);
    private readonly int[] numbers;

    /// <summary>The nodes of a circuit.</summary>
    public TerminalNodes(Circuit circuit)
    {
        SetOf(circuit.System.ReturnNode);
        foreach (var part in circuit.Parts)
        {
            foreach (var terminal in part.Kind.Terminals) SetOf(End.At(part.Id, terminal.Name));
            foreach (string inner in part.Kind.InnerNodes) SetOf(End.At(part.Id, inner));
            foreach (var element in part.Kind.Elements) Join(Nodes.NodeOf(part, element.From), null);
            foreach (var element in part.Kind.Elements) Join(Nodes.NodeOf(part, element.To), null);
        }
        foreach (var end in circuit.Conductors.SelectMany(c => c.Ends).Where(e => !e.IsFree)) SetOf(end);
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Join(End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } mount) Join(Nodes.CaseOf(part), mount);
        }
        numbers = new int[ends.Count];
        for (int i = 0; i < numbers.Length; i++)
            numbers[i] = joined.Find(i) == 0 ? NetworkEdge.Reference : joined.Find(i) == i ? Count++ : numbers[joined.Find(i)];
    }

    /// <summary>The number of nodes, the reference not counted.</summary>
    public int Count { get; }

    /// <summary>Every terminal, inner node and case that something ends on, in the order of the parts.</summary>
    public IReadOnlyList<End> Ends => ends;

    /// <summary>Whether an end is among them.</summary>
    public bool Knows(End end) => sets.ContainsKey(end);

    /// <summary>The node of an end.</summary>
    public int NodeOf(End end) => numbers[sets[end]];

    private void Join(End end, End? on)
    {
        int first = SetOf(end);
        if (on is { } other) joined.Join(first, SetOf(other));
    }

    private int SetOf(End end)
    {
        if (sets.TryGetValue(end, out int known)) return known;
        ends.Add(end);
        return sets[end] = joined.Add();
    }
}
