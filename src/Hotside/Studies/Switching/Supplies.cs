using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Finds between which poles loads may be fed: every pole gets its potential from the source beneath it, in the states in which that one stands on something.</summary>
/// <remarks>
/// A source in whose lead to the return there is an isolator is a feed only while the isolator is closed, so that the isolator counts on the hot side of
/// everything; what hangs across the source's own posts has a supply of its own.
/// </remarks>
internal sealed class Supplies
{
    private readonly ContactGraph graph;
    private readonly ImmutableArray<(SourcePoles Poles, int Hot, int Cold, Condition Gives)> sources;
    private readonly Dictionary<int, List<(double Potential, Condition When)>> levels = [];

    private Supplies(ContactGraph graph, bool withMachines)
    {
        this.graph = graph;
        sources = [.. graph.Circuit.Sources
            .Select(s => (s, graph.PointOf(s.Feed), graph.PointOf(s.Return), graph.Positions.WhenOf(s.Part, s.Element)))
            .Where(s => !s.Item4.IsNever && (withMachines || s.s.Element.When is null))];
    }

    /// <summary>When the two posts of a source are one point.</summary>
    public Condition PostsJoined { get; private set; }

    /// <summary>Between which poles loads may be fed.</summary>
    public ImmutableArray<Supply> All { get; private set; }

    /// <summary>The supplies of a circuit.</summary>
    /// <param name="graph">The circuit's contact graph.</param>
    /// <param name="withMachines">Whether machines that run are feeds too, or only what always gives.</param>
    public static Supplies Of(ContactGraph graph, bool withMachines)
    {
        var supplies = new Supplies(graph, withMachines);
        supplies.FindLevels();
        supplies.All = [.. supplies.BetweenLevels(), .. supplies.AcrossPosts()];
        supplies.PostsJoined = supplies.sources.Aggregate(graph.Positions.Space.NeverHolds,
            (joined, source) => joined | (source.Gives & graph.JoinedTo(source.Hot)[source.Cold]));
        return supplies;
    }

    private void FindLevels()
    {
        levels[graph.Return] = [(0, graph.Positions.Space.AlwaysHolds)];
        foreach (var _ in sources)
        foreach (var (poles, hot, cold, gives) in sources)
        foreach (var (point, known) in levels.OrderBy(l => l.Key).Select(l => (l.Key, l.Value.ToArray())).ToArray())
        {
            var stands = point == cold ? graph.Positions.Space.AlwaysHolds
                : levels.TryGetValue(cold, out var own) && own.Any(l => l.When.IsAlways) ? graph.Positions.Space.NeverHolds
                : graph.JoinedTo(point)[cold];
            foreach (var (potential, when) in known)
                AddLevel(hot, Math.Round(potential + (poles.PlusIsFeed ? poles.Volts : -poles.Volts), 6), when & stands & gives);
        }
    }

    private void AddLevel(int point, double potential, Condition when)
    {
        if (when.IsNever || point == graph.Return) return;
        if (!levels.TryGetValue(point, out var known)) levels[point] = known = [];
        int at = known.FindIndex(l => l.Potential == potential);
        if (at >= 0) known[at] = (potential, known[at].When | when);
        else if (known.Count <= sources.Length) known.Add((potential, when));
    }

    // Rated volts that differ by less than a quarter of the higher count as equal: a battery and the machine that charges it (own choice, no source).
    private static bool AreEqual(double a, double b) =>
        a == b || (Math.Sign(a) == Math.Sign(b) && Math.Abs(a - b) < 0.25 * Math.Max(Math.Abs(a), Math.Abs(b)));

    private IEnumerable<Supply> BetweenLevels()
    {
        List<(double Potential, List<Pole> Poles)> groups = [];
        foreach (double potential in levels.Values.SelectMany(l => l.Select(x => x.Potential)).Distinct().OrderBy(Math.Abs).ThenBy(x => x))
            if (groups.FindIndex(g => AreEqual(g.Potential, potential)) < 0)
                groups.Add((potential, []));
        foreach (var (point, known) in levels.OrderBy(l => l.Key))
        foreach (var (potential, when) in known)
        foreach (var (end, gives) in EndsAt(point))
            groups.First(g => AreEqual(g.Potential, potential)).Poles.Add(new(point, when & gives, end));
        for (int hot = 1; hot < groups.Count; hot++)
        for (int cold = 0; cold < hot; cold++)
            yield return new([.. groups[hot].Poles], [.. groups[cold].Poles],
                [.. groups.Where((_, i) => i != hot && i != cold).SelectMany(g => g.Poles)], groups[hot].Potential > groups[cold].Potential)
            {
                Volts = Levels(groups[hot].Potential).SelectMany(_ => Levels(groups[cold].Potential), (a, b) => Math.Abs(a - b)).Max(),
            };
        IEnumerable<double> Levels(double group) => levels.Values.SelectMany(l => l.Select(x => x.Potential)).Where(p => AreEqual(group, p));
    }

    // A machine that stands feeds nothing, though a battery holds its terminal.
    private IEnumerable<(End End, Condition Gives)> EndsAt(int point) =>
        point == graph.Return ? [(graph.Circuit.System.ReturnNode, graph.Positions.Space.AlwaysHolds)] : sources.Where(s => s.Hot == point).Select(s => (s.Poles.Feed, s.Gives));

    private IEnumerable<Supply> AcrossPosts()
    {
        foreach (var (poles, hot, cold, gives) in sources)
        {
            if (hot == cold || (levels.TryGetValue(cold, out var known) && known.Any(l => l.When.IsAlways))) continue;
            var others = levels.Where(l => l.Key != hot && l.Key != cold).OrderBy(l => l.Key)
                .SelectMany(l => l.Value.SelectMany(x => EndsAt(l.Key).Select(e => new Pole(l.Key, x.When & e.Gives, e.End))));
            yield return new([new(hot, gives, poles.Feed)], [new(cold, graph.Positions.Space.AlwaysHolds, poles.Return)], [.. others], poles.PlusIsFeed) { Volts = poles.Volts, IsAcrossPosts = true };
        }
    }
}
