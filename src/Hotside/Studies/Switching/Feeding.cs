namespace Hotside.Studies.Switching;

/// <summary>How a consumer may be fed, as functions of positions and relays.</summary>
/// <param name="Forward">It is fed with its first end hot.</param>
/// <param name="Backward">It is fed with its second end hot.</param>
/// <param name="ToFeed">One of its ends reaches a feed.</param>
/// <param name="ToReturn">One of its ends reaches the return or a lower feed.</param>
internal sealed record Feeding(int Forward, int Backward, int ToFeed, int ToReturn)
{
    public static readonly Feeding None = new(Diagrams.Never, Diagrams.Never, Diagrams.Never, Diagrams.Never);
}

/// <summary>Finds how consumers are fed.</summary>
internal sealed class FeedingFinder
{
    private readonly ContactGraph graph;
    private readonly Diagrams d;
    private readonly Ways ways;
    private readonly Dictionary<Pole, int> live = [];

    public FeedingFinder(ContactGraph graph, Ways ways)
    {
        this.graph = graph;
        d = graph.Diagrams;
        this.ways = ways;
        foreach (var pole in ways.Poles.Where(p => p.IsFeed)) live[pole] = Live(pole, []);
        Short = Shorts();
    }

    /// <summary>When feed and return, or two feeds of different volts, are one point.</summary>
    public int Short { get; }

    /// <summary>How a consumer is fed by some of the feeds.</summary>
    /// <param name="consumer">The consumer.</param>
    /// <param name="batteriesOnly">Whether machines that turn are left out.</param>
    /// <param name="minded">Whether a one-way consumer's direction is minded.</param>
    public Feeding Of(ContactEdge consumer, bool batteriesOnly, bool minded = true)
    {
        // What hangs across a source's own posts is fed even while that source is cut off from the rest.
        var common = Of(consumer, batteriesOnly, minded, own: false);
        var own = Of(consumer, batteriesOnly, minded, own: true);
        return d.Implies(d.Or(own.Forward, own.Backward), d.Or(common.Forward, common.Backward)) ? common : own;
    }

    private Feeding Of(ContactEdge consumer, bool batteriesOnly, bool minded, bool own)
    {
        int forward = Diagrams.Never, backward = Diagrams.Never, toFeed = Diagrams.Never, toReturn = Diagrams.Never;
        int apart = d.Not(Bridged(consumer));
        foreach (var feed in ways.Poles.Where(p => p.IsFeed))
            foreach (var low in ways.Poles.Where(p => feed.IsAbove(p)))
            {
                int together = Together(feed, low, batteriesOnly, own);
                if (together == Diagrams.Never) continue;
                int fore = Fed(feed, consumer.From, low, consumer.To), back = Fed(feed, consumer.To, low, consumer.From);
                if (minded && consumer.Element.Directs && feed.GivesPlus) back = Diagrams.Never;
                if (minded && consumer.Element.Directs && !feed.GivesPlus) fore = Diagrams.Never;
                fore = d.And(d.And(fore, together), apart);
                back = d.And(d.And(back, together), apart);
                if (fore == Diagrams.Never && back == Diagrams.Never) continue;
                forward = d.Or(forward, fore);
                backward = d.Or(backward, back);
                toFeed = d.Or(toFeed, d.And(together, d.Or(ways.From(feed, consumer.From), ways.From(feed, consumer.To))));
                toReturn = d.Or(toReturn, d.Or(ways.From(low, consumer.From), ways.From(low, consumer.To)));
            }
        return new(forward, backward, toFeed, toReturn);
    }

    private int Fed(Pole feed, int hot, Pole low, int ground) =>
        d.And(d.Without(ways.From(feed, hot), ways.HeldByAnother(feed, hot)), d.Without(ways.From(low, ground), ways.HeldByAnother(low, ground)));

    // When a current can leave the feed and come back to its source through the lower pole.
    private int Together(Pole feed, Pole low, bool batteriesOnly, bool own)
    {
        int gives = Gives(feed, batteriesOnly);
        if (own) return feed.Feeds.Any(f => f.Return == low.Point && low.Point != graph.Return) ? gives : Diagrams.Never;
        if (low.Point == graph.Return) return d.And(gives, live[feed]);
        return low.IsFeed ? d.And(d.And(gives, live[feed]), d.And(Gives(low, batteriesOnly), live[low])) : Diagrams.Never;
    }

    private int Gives(Pole pole, bool batteriesOnly)
    {
        int gives = Diagrams.Never;
        foreach (var feed in pole.Feeds.Where(f => f.IsBattery || !batteriesOnly)) gives = d.Or(gives, feed.Runs);
        return gives;
    }

    // Whether a feed's other post reaches the return, perhaps through the sources that it is stacked on.
    private int Live(Pole pole, HashSet<Pole> above)
    {
        int standing = Diagrams.Never;
        if (!above.Add(pole)) return standing;
        foreach (var feed in pole.Feeds)
        {
            standing = d.Or(standing, feed.Return == graph.Return ? Diagrams.Always : ways.Joined(ways.Poles[0], feed.Return));
            foreach (var below in ways.Poles.Where(p => p.IsFeed && p != pole))
            {
                int joined = below.Point == feed.Return ? Diagrams.Always : ways.Joined(below, feed.Return);
                if (joined != Diagrams.Never && below.Level < pole.Level) standing = d.Or(standing, d.And(joined, Live(below, above)));
            }
        }
        above.Remove(pole);
        return standing;
    }

    private int Shorts()
    {
        int shorts = Diagrams.Never;
        foreach (var feed in ways.Poles.Where(p => p.IsFeed))
            foreach (var low in ways.Poles.Where(p => feed.IsAbove(p)))
                shorts = d.Or(shorts, d.And(d.And(ways.Joined(feed, low.Point), feed.IsThere), d.And(low.IsThere, live[feed])));
        return shorts;
    }

    // When both ends of a consumer are joined past it, through contacts that meet no pole; it matters only behind a resistance.
    private int Bridged(ContactEdge consumer)
    {
        if (consumer.From == consumer.To) return Diagrams.Always;
        int[] reached = new int[graph.Count];
        reached[consumer.From] = Diagrams.Always;
        var queue = new Queue<int>([consumer.From]);
        while (queue.TryDequeue(out int point))
        {
            if (point == consumer.To || ways.Poles.Any(p => p.Point == point)) continue;
            foreach (var edge in graph.EdgesAt[point].Where(e => e.IsLink))
            {
                int next = edge.Other(point), more = d.Or(reached[next], d.And(reached[point], edge.Condition));
                if (more == reached[next]) continue;
                reached[next] = more;
                queue.Enqueue(next);
            }
        }
        return reached[consumer.To];
    }
}
