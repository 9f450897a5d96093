using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies.Operating;
using QuikGraph;

namespace Hotside.Studies.Switching;

/// <summary>A circuit with everything contracted that is always joined: points, and between them what opens, resists or consumes.</summary>
internal sealed class ContactGraph
{
    private readonly Nodes nodes;
    private readonly Dictionary<End, int> numbers = [];
    private readonly DisjointSets joined;
    private readonly Dictionary<int, Condition[]> joints = [];
    private readonly double[] ohms;
    private readonly Branch[][] at;

    public ContactGraph(Circuit circuit, Positions positions)
    {
        Circuit = circuit;
        Positions = positions;
        nodes = Nodes.Of(circuit, throughLinks: true);
        var elements = circuit.Parts.SelectMany(part => part.Kind.Elements.Select(element => (part, element))).ToArray();
        Number(circuit.System.ReturnNode);
        foreach (var (part, element) in elements)
        {
            Number(Nodes.NodeOf(part, element.From));
            Number(Nodes.NodeOf(part, element.To));
        }
        joined = new(numbers.Count);
        var conditions = elements.Select(e => positions.WhenOf(e.part, e.element)).ToArray();
        foreach (var ((part, element), when) in elements.Zip(conditions))
            if (element.IsLink && !element.Directs && when.IsAlways)
                joined.Join(Number(Nodes.NodeOf(part, element.From)), Number(Nodes.NodeOf(part, element.To)));
        Return = PointOf(circuit.System.ReturnNode);
        Branches = [.. Lay(elements.Zip(conditions, (e, when) => (e.part, e.element, when)))];
        UndirectedGraph<int, Branch> graph = new(allowParallelEdges: true);
        graph.AddVertexRange(Enumerable.Range(0, numbers.Count));
        graph.AddEdgeRange(Branches.Where(b => b.Source != b.Target));
        at = [.. Enumerable.Range(0, numbers.Count).Select(p => graph.AdjacentEdges(p).ToArray())];
        ohms = [.. Branches.Select(b => b.Role == BranchRole.Link ? 0 : Consumption.ResistanceOf(b.Part, b.Element, circuit.System.Volts[0]))];
        Sources = [.. circuit.Sources.Select(s => new SourceBranch(
            PointOf(s.PlusIsFeed ? s.Feed : s.Return), PointOf(s.PlusIsFeed ? s.Return : s.Feed), s.Volts, positions.WhenOf(s.Part, s.Element)))];
        Loads = [.. Branches.Where(b => b.Element.IsConsumer)];
    }

    public Circuit Circuit { get; }

    public Positions Positions { get; }

    /// <summary>The number of points, counting also numbers that stand for none.</summary>
    public int Size => numbers.Count;

    /// <summary>The point of the common return.</summary>
    public int Return { get; }

    /// <summary>Everything between points, in the order of parts and elements.</summary>
    public ImmutableArray<Branch> Branches { get; }

    /// <summary>The consumers among the branches.</summary>
    public ImmutableArray<Branch> Loads { get; }

    /// <summary>The sources, by their poles.</summary>
    public ImmutableArray<SourceBranch> Sources { get; }

    /// <summary>The ohms that stand for what is no link.</summary>
    public double OhmsOf(Branch branch) => ohms[branch.Number];

    /// <summary>What hangs at a point; what has both ends there is left out.</summary>
    public ReadOnlySpan<Branch> At(int point) => at[point];

    /// <summary>The point of an end; −1 for an end that no element touches.</summary>
    public int PointOf(End end) => numbers.TryGetValue(nodes.Representative(end), out int number) ? joined.Find(number) : -1;

    /// <summary>When each point is joined to one of them without resistance, whatever poles lie between.</summary>
    public Condition[] JoinedTo(int point) => joints.TryGetValue(point, out var known) ? known : joints[point] = Ways.ThroughLinks(this, point);

    private int Number(End end)
    {
        var node = nodes.Representative(end);
        if (!numbers.TryGetValue(node, out int number)) numbers.Add(node, number = numbers.Count);
        return number;
    }

    private IEnumerable<Branch> Lay(IEnumerable<(Part Part, Element Element, Condition When)> elements)
    {
        int count = 0;
        foreach (var (part, element, when) in elements)
        {
            BranchRole? role = element.IsLink ? element.Directs ? BranchRole.InLine : BranchRole.Link
                : element.IsInLine ? BranchRole.InLine
                : element.IsConsumer ? BranchRole.Consumer
                : element is { IsSource: true, When: not null, TakesEitherPolarity: true } ? BranchRole.Consumer
                : null;
            if (role is not { } known) continue;
            // A machine that stands is a winding between its brushes; one with diodes in it lets nothing through.
            var conducts = element.IsSource ? !when : when;
            bool isPassed = known == BranchRole.Link && conducts.IsAlways;
            if (isPassed || (conducts.IsNever && !element.IsConsumer)) continue;
            yield return new(count++, part, element, PointOf(Nodes.NodeOf(part, element.From)), PointOf(Nodes.NodeOf(part, element.To)), conducts, known);
        }
    }
}
