using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>
/// A circuit reduced to what switching needs: points (what is always joined is one), edges for all that may conduct, consumers and sources apart.
/// </summary>
internal sealed class ContactGraph
{
    private readonly Dictionary<End, int> points = [];
    private readonly Nodes nodes;
    private readonly Dictionary<Variable, int> numbers = [];

    public ContactGraph(Circuit circuit)
    {
        Circuit = circuit;
        nodes = Nodes.Of(circuit, throughLinks: true);
        // What verdicts leave out rests and is no variable.
        Variables = [.. circuit.Variables.Where(v => !v.Actuator.IsNoControl)];
        for (int i = 0; i < Variables.Length; i++) numbers[Variables[i]] = i;
        Diagrams = new([.. Variables.Select(v => v.Actuator.Positions.Length)]);
        Return = Point(circuit.System.ReturnNode);
        foreach (var conductor in circuit.Conductors)
            foreach (var end in conductor.Ends.Where(e => !e.IsFree)) Point(end);
        foreach (var part in circuit.Parts)
            foreach (var element in part.Kind.Elements) Add(part, element);
        Feeds = [.. circuit.Sources.Select(s => new Feed(s, Point(s.Feed), Point(s.Return), Condition(s.Part, s.Element, real: true)))];
        EdgesAt = new List<ContactEdge>[Count];
        for (int i = 0; i < Count; i++) EdgesAt[i] = [];
        foreach (var edge in Edges)
        {
            EdgesAt[edge.From].Add(edge);
            if (edge.To != edge.From) EdgesAt[edge.To].Add(edge);
        }
    }

    public Circuit Circuit { get; }

    public Diagrams Diagrams { get; }

    /// <summary>What can be in several positions and controls; a variable's number is its place here.</summary>
    public Variable[] Variables { get; }

    public int Return { get; }

    public List<ContactEdge> Edges { get; } = [];

    public List<ContactEdge> Consumers { get; } = [];

    public Feed[] Feeds { get; }

    /// <summary>The in-line edges at each point.</summary>
    public List<ContactEdge>[] EdgesAt { get; }

    public int Count => points.Count;

    public int NumberOf(Variable variable) => numbers.TryGetValue(variable, out int number) ? number : -1;

    public int Point(End end)
    {
        var node = nodes.Representative(end);
        if (!points.TryGetValue(node, out int point)) points[node] = point = points.Count;
        return point;
    }

    /// <summary>When an element conducts or gives. What interrupts itself counts as closed, unless the real state is asked for.</summary>
    public int Condition(Part part, Element element, bool real)
    {
        if (element.When is not { } when || (element.IsNoControl && !real)) return Diagrams.Always;
        int condition = Diagrams.Always;
        foreach (var test in when.Tests)
        {
            var variable = Circuit.VariableOf(part, test.Actuator);
            int[] allowed = [.. test.Positions.Select(p => variable.Actuator.Positions.IndexOf(p)).Where(i => i >= 0)];
            int number = NumberOf(variable);
            int passes = number >= 0 ? Diagrams.In(number, allowed) : allowed.Contains(0) ? Diagrams.Always : Diagrams.Never;
            condition = Diagrams.And(condition, passes);
        }
        return condition;
    }

    private void Add(Part part, Element element)
    {
        int from = Point(Nodes.NodeOf(part, element.From)), to = Point(Nodes.NodeOf(part, element.To));
        if (element.IsConsumer) Consumers.Add(new(part, element, from, to, Diagrams.Always));
        else if (element.IsInLine && element.When is not null || element.IsInLine && !element.IsLink)
        {
            int condition = Condition(part, element, real: false);
            if (condition != Diagrams.Never && from != to) Edges.Add(new(part, element, from, to, condition));
        }
    }
}

/// <summary>A source as the growth of ways sees it.</summary>
/// <param name="Source">The source with its poles.</param>
/// <param name="Point">The point of its hot pole.</param>
/// <param name="Return">The point of its other pole.</param>
/// <param name="Runs">When it gives.</param>
internal sealed record Feed(SourcePoles Source, int Point, int Return, int Runs)
{
    /// <summary>Whether it gives by itself, without a machine turning.</summary>
    public bool IsBattery => Source.Element.When is null;
}
