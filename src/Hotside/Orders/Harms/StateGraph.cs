using System.Text;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Orders.Harms;

/// <summary>What is joined to what in a circuit: which piece is live in a setting, what hangs on a source without a fuse, what stands on the return. Nothing is solved for it.</summary>
internal sealed class StateGraph
{
    private readonly List<(int A, int B, int Item, Part? Part, Element? Element)> edges = [];
    private readonly List<string> items = [];
    private readonly int[] standing;

    /// <summary>The graph of a circuit.</summary>
    /// <param name="circuit">The circuit; free ends are nodes of their own.</param>
    /// <param name="stamp">What tells a part of the state from the same part in another.</param>
    public StateGraph(Circuit circuit, Func<Part, string> stamp)
    {
        Circuit = circuit;
        Nodes = new(circuit);
        foreach (var wire in circuit.Conductors)
            if (!wire.From.IsFree && !wire.To.IsFree)
            {
                items.Add($"{wire.Id} {wire.From} {wire.To} {wire.Wire.Label} {wire.Wire.LengthInMetres} {wire.Wire.ResistanceInOhms}");
                edges.Add((Nodes.NodeOf(wire.From), Nodes.NodeOf(wire.To), items.Count - 1, null, null));
            }
        foreach (var part in circuit.Parts)
        {
            items.Add(part.Id + stamp(part));
            foreach (var element in part.Kind.Elements)
                edges.Add((Nodes.NodeOf(Circuits.Nodes.NodeOf(part, element.From)), Nodes.NodeOf(Circuits.Nodes.NodeOf(part, element.To)), items.Count - 1, part, element));
        }
        standing = [.. edges.Where(e => e.Element is { IsSource: true, When: null }).SelectMany(e => new[] { e.A, e.B }).Where(n => n >= 0).Distinct()];
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>Its nodes.</summary>
    public TerminalNodes Nodes { get; }

    /// <summary>All that tells the live piece of a setting from another: its wires and parts as they stand, and where its switches are; empty where nothing is live.</summary>
    public string KeyOf(Setting setting)
    {
        DisjointSets pieces = new(Nodes.Count);
        foreach (var edge in edges)
            if (edge.A >= 0 && edge.B >= 0 && IsClosed(edge.Part, edge.Element, setting))
                pieces.Join(edge.A, edge.B);
        HashSet<int> live = [.. standing.Concat(ByDay(setting)).Select(pieces.Find)];
        StringBuilder key = new();
        int last = -1;
        HashSet<string> parts = new(StringComparer.Ordinal);
        foreach (var edge in edges)
        {
            if (edge.Item == last || !((edge.A >= 0 && live.Contains(pieces.Find(edge.A))) || (edge.B >= 0 && live.Contains(pieces.Find(edge.B))))) continue;
            key.Append(items[last = edge.Item]).Append('\n');
            if (edge.Part is { } part) parts.Add(part.Id);
        }
        foreach (var put in setting.Positions)
            if (put.Part is null || parts.Contains(put.Part))
                key.Append(put.Part).Append(' ').Append(put.Actuator).Append(' ').Append(put.Position).Append('\n');
        foreach (var value in setting.Values)
            if (value.Quantity.Unit != Unit.Ohm || parts.Contains(value.Part))
                key.Append(value.Part).Append(' ').Append(value.Quantity).Append('\n');
        return key.ToString();
    }

    /// <summary>The nodes that hang on a pole of a standing source with no fuse, breaker or load between.</summary>
    public bool[] Unfused(Setting setting)
    {
        DisjointSets joined = new(Nodes.Count);
        foreach (var edge in edges)
            if (edge.A >= 0 && edge.B >= 0 && IsPlain(edge.Element) && IsClosed(edge.Part, edge.Element, setting))
                joined.Join(edge.A, edge.B);
        HashSet<int> hot = [.. standing.Select(joined.Find)];
        return [.. Enumerable.Range(0, Nodes.Count).Select(n => hot.Contains(joined.Find(n)))];
    }

    /// <summary>Whether a node stands on the return over wires, fuses and closed contacts.</summary>
    public Predicate<int> Grounded(Setting setting)
    {
        DisjointSets joined = new(Nodes.Count + 1);
        foreach (var edge in edges)
            if ((edge.Element is null || edge.Element.IsLink) && IsClosed(edge.Part, edge.Element, setting))
                joined.Join(edge.A + 1, edge.B + 1);
        return node => joined.Find(node + 1) == 0;
    }

    // A panel gives by itself while it is light; a machine stands.
    private IEnumerable<int> ByDay(Setting setting) =>
        edges.Where(e => e.Element is { IsSource: true, When: { } when, IsMachine: false } && Holds(e.Part!, when, setting)).SelectMany(e => new[] { e.A, e.B }).Where(n => n >= 0);

    private static bool IsPlain(Element? element) => element is null || (element.IsLink && element.Type is not (ElementType.Fuse or ElementType.Breaker));

    // Whether an element conducts in a setting; what windings move may stand either way.
    private bool IsClosed(Part? part, Element? element, Setting setting) => element?.When is not { } when || element.IsSource || Holds(part!, when, setting);

    private bool Holds(Part part, ElementCondition when, Setting setting)
    {
        foreach (var test in when.Tests)
        {
            var variable = Circuit.VariableOf(part, test.Actuator);
            if (variable.Actuator.Drive == ActuatorDrive.Driven) continue;
            string position = setting.Positions.FirstOrDefault(p => p.Part == variable.Part && p.Actuator == variable.Actuator.Name)?.Position ?? variable.Actuator.Rest;
            if (!test.Positions.Contains(position)) return false;
        }
        return true;
    }
}
