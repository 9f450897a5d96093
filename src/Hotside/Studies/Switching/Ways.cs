namespace Hotside.Studies.Switching;

/// <summary>Under which condition a group of poles reaches each point, grown edge by edge until nothing changes.</summary>
internal static class Ways
{
    /// <summary>Reaches everything that is joined without resistance, whatever poles lie between.</summary>
    public static Condition[] ThroughLinks(ContactGraph graph, int start) =>
        Grow(graph, [(start, graph.Positions.Space.AlwaysHolds)], null, (_, branch) => branch.Role == BranchRole.Link).Reached;

    /// <summary>Reaches everything through what is in line, ending at the poles of other groups.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="from">The poles it begins at.</param>
    /// <param name="against">The poles of other groups.</param>
    /// <param name="isOutward">Whether current leaves the poles, or comes to them.</param>
    /// <param name="throughConsumers">Whether consumers are let through.</param>
    /// <param name="within">The branches that are looked at; <see langword="null"/>: all.</param>
    public static Way Through(ContactGraph graph, IEnumerable<Pole> from, IEnumerable<Pole> against, bool isOutward,
        bool throughConsumers = false, Predicate<Branch>? within = null)
    {
        var space = graph.Positions.Space;
        var stops = new Condition[graph.Size];
        Array.Fill(stops, space.NeverHolds);
        foreach (var pole in against.DistinctBy(p => (p.Point, p.When)))
        {
            var joined = graph.JoinedTo(pole.Point);
            for (int point = 0; point < stops.Length; point++) stops[point] |= pole.When & joined[point];
        }
        return Grow(graph, from.Select(p => (p.Point, p.When)), stops, (point, branch) =>
            (throughConsumers || branch.Role != BranchRole.Consumer) && (within is null || within(branch)) && (!branch.IsOneWay || (branch.Source == point) == isOutward));
    }

    private static Way Grow(ContactGraph graph, IEnumerable<(int Point, Condition When)> starts, Condition[]? stops, Func<int, Branch, bool> passes)
    {
        var reached = new Condition[graph.Size];
        Array.Fill(reached, graph.Positions.Space.NeverHolds);
        var begun = (Condition[])reached.Clone();
        Queue<int> open = new();
        foreach (var (point, when) in starts)
        {
            begun[point] = reached[point] |= when;
            open.Enqueue(point);
        }
        Condition Onward(int point) => stops is null ? reached[point] : (reached[point] & !stops[point]) | begun[point];
        while (open.TryDequeue(out int point))
        {
            var onward = Onward(point);
            if (onward.IsNever) continue;
            foreach (var branch in graph.At(point))
            {
                if (!passes(point, branch)) continue;
                int next = branch.Other(point);
                var grown = reached[next] | (onward & branch.When);
                if (grown == reached[next]) continue;
                reached[next] = grown;
                open.Enqueue(next);
            }
        }
        return new(reached, [.. Enumerable.Range(0, reached.Length).Select(Onward)]);
    }
}

/// <summary>Where a group of poles reaches.</summary>
/// <param name="Reached">When each point is reached.</param>
/// <param name="Onward">When each point is reached and is joined to no pole of another group.</param>
internal sealed record Way(Condition[] Reached, Condition[] Onward);
