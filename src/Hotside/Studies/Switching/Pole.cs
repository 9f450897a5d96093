using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>A point that a source holds: the return, a feed, or a source's own other post.</summary>
/// <param name="Point">The point.</param>
/// <param name="Level">How far it lies from the return, in volts of the sources stacked on it.</param>
/// <param name="IsThere">When a source holds it.</param>
/// <param name="GivesPlus">Whether conventional current leaves it into the loads.</param>
internal sealed record Pole(int Point, double Level, int IsThere, bool GivesPlus)
{
    /// <summary>The feeds whose hot pole it is.</summary>
    public ImmutableArray<Feed> Feeds { get; init; } = [];

    /// <summary>Whether it is hot.</summary>
    public bool IsFeed => !Feeds.IsEmpty;

    /// <summary>Whether another pole lies lower by a quarter of the higher one's volts or more; nearer ones count as equal.</summary>
    public bool IsAbove(Pole other) => Level - other.Level >= Level / 4 && Level > other.Level;

    public static IEnumerable<Pole> Of(ContactGraph graph)
    {
        var d = graph.Diagrams;
        var levels = new Levels(graph);
        // Current comes out of the return where the hot pole is minus.
        bool feedsGivePlus = graph.Feeds.Length == 0 || graph.Feeds[0].Source.PlusIsFeed;
        yield return new(graph.Return, 0, Diagrams.Always, !feedsGivePlus);
        foreach (var group in graph.Feeds.GroupBy(f => f.Point).Where(g => g.Key != graph.Return))
            yield return new(group.Key, group.Max(levels.Of), group.Aggregate(Diagrams.Never, (c, f) => d.Or(c, f.Runs)), group.First().Source.PlusIsFeed) { Feeds = [.. group] };
        foreach (int post in graph.Feeds.Select(f => f.Return).Distinct().Where(p => p != graph.Return && graph.Feeds.All(f => f.Point != p)))
        {
            var own = graph.Feeds.Where(f => f.Return == post).ToArray();
            yield return new(post, own.Min(f => levels.Of(f) - f.Source.Volts), own.Aggregate(Diagrams.Never, (c, f) => d.Or(c, f.Runs)), !own[0].Source.PlusIsFeed);
        }
    }
}

/// <summary>How high each feed stands: its own volts on those of the sources it is stacked on.</summary>
internal sealed class Levels(ContactGraph graph)
{
    public double Of(Feed feed) => Of(feed, []);

    private double Of(Feed feed, HashSet<Feed> above)
    {
        if (!above.Add(feed)) return feed.Source.Volts;
        var below = graph.Feeds.FirstOrDefault(f => f != feed && f.Point == feed.Return && feed.Return != graph.Return);
        return feed.Source.Volts + (below is null ? 0 : Of(below, above));
    }
}
