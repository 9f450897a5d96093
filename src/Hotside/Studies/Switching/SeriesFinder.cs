using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>Finds the states in which a consumer is fed through others, state by state within its block, by the currents of each.</summary>
internal sealed class SeriesFinder(ContactGraph graph, int shorts)
{
    private const int StatesSearched = 4096;

    // Below this share of its rated current nothing flows but what rounding and leaks leave.
    private const double Share = 1e-4;

    private readonly Diagrams d = graph.Diagrams;
    private readonly int[] regions = Regions(graph);

    /// <summary>The states, relays as they are given, in which a consumer carries current; and through what.</summary>
    /// <param name="consumer">The consumer.</param>
    /// <param name="relays">Where the relays are, as functions of the other variables; empty to let them take every position.</param>
    public SeriesFeeding? Of(ContactEdge consumer, IReadOnlyDictionary<int, int[]> relays)
    {
        int[] variables = Variables(consumer, relays);
        long states = variables.Aggregate(1L, (n, v) => Math.Min(StatesSearched + 1, n * d.PositionsOf(v)));
        if (states > StatesSearched) return null;
        double least = Share * Rated(consumer);
        int found = Diagrams.Never, toFeed = Diagrams.Never, toReturn = Diagrams.Never, all = Diagrams.Never;
        var with = new List<ContactEdge>();
        foreach (var (state, here) in States(variables, states, relays))
        {
            if (d.Value(shorts, state)) continue;
            all = d.Or(all, here);
            var (feed, back) = Reaches(consumer, state);
            if (feed) toFeed = d.Or(toFeed, here);
            if (back) toReturn = d.Or(toReturn, here);
            if (!feed || !back) continue;
            var solution = new NodalSolution(graph, state);
            if (Math.Abs(solution.Through(consumer)) < least) continue;
            found = d.Or(found, here);
            foreach (var other in Partners(consumer, state, solution, least))
                if (!with.Contains(other)) with.Add(other);
        }
        if (found == Diagrams.Never) return null;
        return new(found, d.Without(all, toFeed) == Diagrams.Never, d.Without(all, toReturn) == Diagrams.Never, with);
    }

    /// <summary>The states in which a winding that is fed through others has the volts to pull.</summary>
    public int Pulls(ContactEdge coil)
    {
        int[] variables = Variables(coil, new Dictionary<int, int[]>());
        long states = variables.Aggregate(1L, (n, v) => Math.Min(StatesSearched + 1, n * d.PositionsOf(v)));
        if (states > StatesSearched) return Diagrams.Never;
        // Pull-in at two thirds of the rated volts (makers' sheets of automotive relays).
        double needed = (coil.Part.Rated(coil.Element.Name, Circuits.Unit.Volt) ?? graph.Circuit.System.Volts.Max()) * 2 / 3;
        int pulls = Diagrams.Never;
        foreach (var (state, here) in States(variables, states, new Dictionary<int, int[]>()))
            if (!d.Value(shorts, state) && Reaches(coil, state) is (true, true) && Math.Abs(new NodalSolution(graph, state).VoltsAcross(coil)) >= needed)
                pulls = d.Or(pulls, here);
        return pulls;
    }

    private double Rated(ContactEdge consumer)
    {
        double volts = consumer.Part.Rated(consumer.Element.Name, Circuits.Unit.Volt) ?? graph.Circuit.System.Volts.Max();
        return volts / Resistance.Of(consumer.Part, consumer.Element, volts);
    }

    // Only what hangs together with the consumer without passing a post of a battery or the return can change how it is fed.
    private int[] Variables(ContactEdge consumer, IReadOnlyDictionary<int, int[]> relays)
    {
        var near = new[] { regions[consumer.From], regions[consumer.To] }.Where(r => r >= 0).ToHashSet();
        bool IsNear(int a, int b) => near.Contains(regions[a]) || near.Contains(regions[b]);
        var conditions = graph.Edges.Where(e => IsNear(e.From, e.To)).Select(e => e.Condition)
            .Concat(graph.Feeds.Where(f => IsNear(f.Point, f.Return)).Select(f => f.Runs));
        return [.. conditions.Select(c => d.Substitute(c, relays)).SelectMany(d.Support).Distinct().Order()];
    }

    // The connected regions that remain when the posts that always stand are taken out; those posts are in none.
    private static int[] Regions(ContactGraph graph)
    {
        var posts = graph.Feeds.Where(f => f.IsBattery).SelectMany(f => new[] { f.Point, f.Return }).Append(graph.Return).ToHashSet();
        int[] regions = new int[graph.Count];
        Array.Fill(regions, -1);
        var neighbours = graph.Edges.Concat(graph.Consumers).SelectMany(e => new[] { (e.From, e.To), (e.To, e.From) })
            .Concat(graph.Feeds.SelectMany(f => new[] { (f.Point, f.Return), (f.Return, f.Point) })).ToLookup(e => e.Item1, e => e.Item2);
        for (int start = 0; start < graph.Count; start++)
        {
            if (regions[start] >= 0 || posts.Contains(start)) continue;
            regions[start] = start;
            var queue = new Queue<int>([start]);
            while (queue.TryDequeue(out int point))
                foreach (int next in neighbours[point].Where(n => !posts.Contains(n) && regions[n] < 0))
                {
                    regions[next] = start;
                    queue.Enqueue(next);
                }
        }
        return regions;
    }

    private IEnumerable<(int[] State, int Here)> States(int[] variables, long count, IReadOnlyDictionary<int, int[]> relays)
    {
        for (long s = 0; s < count; s++)
        {
            int[] state = new int[d.Variables];
            int here = Diagrams.Always;
            long digits = s;
            foreach (int v in variables)
            {
                state[v] = (int)(digits % d.PositionsOf(v));
                digits /= d.PositionsOf(v);
                here = d.And(here, d.In(v, state[v]));
            }
            foreach (var (relay, functions) in relays) state[relay] = Math.Max(0, Array.FindIndex(functions, f => d.Value(f, state)));
            yield return (state, here);
        }
    }

    // Whether one end reaches a feed and the other the return, other consumers let through, no pole passed.
    private (bool Feed, bool Return) Reaches(ContactEdge consumer, int[] state)
    {
        var first = Reached(consumer.From, consumer, state);
        var second = Reached(consumer.To, consumer, state);
        return (first.Feed || second.Feed, first.Return || second.Return);
    }

    private (bool Feed, bool Return) Reached(int start, ContactEdge but, int[] state)
    {
        var feeds = graph.Feeds.Where(f => d.Value(f.Runs, state)).Select(f => f.Point).ToHashSet();
        bool feed = false, back = false;
        var seen = new HashSet<int>();
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out int first))
        {
            if (seen.Contains(first)) continue;
            // What is joined without resistance is one point: a post within it ends the way there.
            var joined = Joined(first, state);
            seen.UnionWith(joined);
            bool isFeed = joined.Any(feeds.Contains), isReturn = joined.Contains(graph.Return);
            feed |= isFeed;
            back |= isReturn;
            if (isFeed || isReturn) continue;
            foreach (int point in joined)
            {
                foreach (var edge in graph.EdgesAt[point].Where(e => !e.IsLink && d.Value(e.Condition, state))) queue.Enqueue(edge.Other(point));
                foreach (var other in graph.Consumers.Where(c => c != but && (c.From == point || c.To == point))) queue.Enqueue(other.Other(point));
            }
        }
        return (feed, back);
    }

    private List<int> Joined(int start, int[] state)
    {
        var joined = new List<int> { start };
        for (int i = 0; i < joined.Count; i++)
            foreach (var edge in graph.EdgesAt[joined[i]].Where(e => e.IsLink && d.Value(e.Condition, state)))
                if (!joined.Contains(edge.Other(joined[i]))) joined.Add(edge.Other(joined[i]));
        return joined;
    }

    // What the current cannot do without; where nothing alone is needed, all that carry a fair share of it.
    private IEnumerable<ContactEdge> Partners(ContactEdge consumer, int[] state, NodalSolution solution, double least)
    {
        double own = Math.Abs(solution.Through(consumer));
        var carrying = graph.Consumers.Where(c => c != consumer && Math.Abs(solution.Through(c)) > own * 0.05).ToArray();
        var needed = carrying.Where(c => Math.Abs(new NodalSolution(graph, state, without: o => o == c).Through(consumer)) < least).ToArray();
        return needed.Length > 0 ? needed : carrying.Where(c => Math.Abs(solution.Through(c)) <= own * 1.001);
    }
}

/// <summary>How a consumer is fed through others.</summary>
/// <param name="Fed">The states in which it is.</param>
/// <param name="FeedStands">Whether its string's way to the feed always stands.</param>
/// <param name="ReturnStands">Whether its string's way to the return always stands.</param>
/// <param name="With">Through what.</param>
internal sealed record SeriesFeeding(int Fed, bool FeedStands, bool ReturnStands, List<ContactEdge> With);
