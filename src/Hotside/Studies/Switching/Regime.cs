using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>A circuit under one set of supplies: what feeds its loads, and where its relays settle.</summary>
internal sealed class Regime
{
    public Regime(ContactGraph graph, Supplies supplies, Neighbourhoods neighbourhoods)
    {
        Feeding = new(graph, supplies, neighbourhoods);
        Dictionary<(string, string), Condition> energised = [];
        HashSet<string> doubtful = [];
        foreach (var feed in Feeding.Loads)
        {
            if (!feed.Load.Moves) continue;
            var (inSeries, isApproximate) = PullIn.InSeries(graph, Feeding, neighbourhoods, feed);
            energised[(feed.Load.Part.Id, feed.Load.Element.Name)] = feed.Fed.Given(graph.Positions.Candour, 0) | inSeries;
            if (isApproximate) doubtful.Add(feed.Load.Part.Id);
        }
        Settling = new(graph.Positions, [.. graph.Positions.Driven.Select(v => Relay.Of(graph.Positions, v,
            coil => energised.TryGetValue((v.Part!, coil), out var when) ? when : graph.Positions.Space.NeverHolds))]);
        Doubtful = [.. Settling.Relays.Where(r => doubtful.Contains(r.Part))];
        Short = Settling.Settled(Feeding.Short);
    }

    public Feeding Feeding { get; }

    public Settling Settling { get; }

    /// <summary>The relays of which samples alone tell whether they pull in through other consumers.</summary>
    public ImmutableArray<Relay> Doubtful { get; }

    /// <summary>The free positions that meet a short circuit.</summary>
    public Condition Short { get; }
}
