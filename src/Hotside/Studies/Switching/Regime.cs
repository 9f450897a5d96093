namespace Hotside.Studies.Switching;

/// <summary>A circuit under one set of supplies: what feeds its loads, and where its relays settle.</summary>
internal sealed class Regime
{
    public Regime(ContactGraph graph, Supplies supplies, Neighbourhoods neighbourhoods)
    {
        Feeding = new(graph, supplies, neighbourhoods);
        Dictionary<(string, string), Condition> energised = [];
        foreach (var feed in Feeding.Loads)
        {
            bool pulls = feed.Load.Part.Kind.Actuators.Any(a => a.Pulls.Any(p => p.Coils.Contains(feed.Load.Element.Name)) || a.KeptBy.Contains(feed.Load.Element.Name));
            if (pulls) energised[(feed.Load.Part.Id, feed.Load.Element.Name)] = feed.Fed.Given(graph.Positions.Candour, 0) | PullIn.InSeries(graph, Feeding, feed);
        }
        Settling = new(graph.Positions, [.. graph.Positions.Driven.Select(v => Relay.Of(graph.Positions, v,
            coil => energised.TryGetValue((v.Part!, coil), out var when) ? when : graph.Positions.Space.NeverHolds))]);
        Short = Settling.Settled(Feeding.Short);
    }

    public Feeding Feeding { get; }

    public Settling Settling { get; }

    /// <summary>The free positions that meet a short circuit.</summary>
    public Condition Short { get; }
}
