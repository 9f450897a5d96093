namespace Hotside.Studies.Switching;

/// <summary>
/// From each pole, the condition under which it reaches each point through what is in line: with resistances (<see cref="From"/>) and without
/// (<see cref="Joined"/>). A pole's growth goes no further where another pole is joined without resistance.
/// </summary>
internal sealed class Ways
{
    private readonly ContactGraph graph;
    private readonly Diagrams diagrams;
    private readonly Dictionary<int, int[]> joined = [], from = [];

    public Ways(ContactGraph graph)
    {
        this.graph = graph;
        diagrams = graph.Diagrams;
        Poles = [.. Pole.Of(graph)];
        foreach (var pole in Poles) joined[pole.Point] = Grow(pole, links: true);
        foreach (var pole in Poles) from[pole.Point] = Grow(pole, links: false);
    }

    public Pole[] Poles { get; }

    /// <summary>When a pole reaches a point.</summary>
    public int From(Pole pole, int point) => from[pole.Point][point];

    /// <summary>When a pole reaches a point without resistance.</summary>
    public int Joined(Pole pole, int point) => joined[pole.Point][point];

    /// <summary>When a point is joined without resistance to a live pole of another height than the one that grows.</summary>
    public int HeldByAnother(Pole pole, int point)
    {
        int held = Diagrams.Never;
        foreach (var other in Poles)
            if (pole.IsAbove(other) || other.IsAbove(pole))
                held = diagrams.Or(held, diagrams.And(Joined(other, point), other.IsThere));
        return held;
    }

    private int[] Grow(Pole pole, bool links)
    {
        int[] reached = new int[graph.Count];
        reached[pole.Point] = Diagrams.Always;
        var queue = new Queue<int>([pole.Point]);
        var queued = new HashSet<int> { pole.Point };
        while (queue.TryDequeue(out int point))
        {
            queued.Remove(point);
            int on = reached[point];
            if (point != pole.Point) on = diagrams.Without(on, links ? PoleAt(point, pole) : HeldByAnother(pole, point));
            if (on == Diagrams.Never) continue;
            foreach (var edge in graph.EdgesAt[point])
            {
                if (links && !edge.IsLink || !Passes(edge, point, pole)) continue;
                int next = edge.Other(point), more = diagrams.Or(reached[next], diagrams.And(on, edge.Condition));
                if (more == reached[next]) continue;
                reached[next] = more;
                if (queued.Add(next)) queue.Enqueue(next);
            }
        }
        return reached;
    }

    private int PoleAt(int point, Pole but) => Poles.FirstOrDefault(p => p.Point == point && p.Point != but.Point)?.IsThere ?? Diagrams.Never;

    // One-way elements pass current from plus to minus: away from a feed that is plus, towards one that is minus.
    private static bool Passes(ContactEdge edge, int point, Pole pole) => !edge.Element.Directs || pole.GivesPlus == (edge.From == point);
}
