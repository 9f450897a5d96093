using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>A relay for a load that is switched on the ground side: the old feed and the old switch wire stay, the switch then grounds the coil.</summary>
internal static class GroundRelay
{
    /// <summary>Inserts the relay.</summary>
    /// <returns>Its id; <see langword="null"/> where the wiring is another.</returns>
    public static string? Insert(Workbench work, LoadStudy[] fed, string reason, double amperes)
    {
        var draft = work.Draft;
        var nodes = Nodes.Of(draft.Circuit, throughLinks: false);
        var load = fed[0];
        var path = load.Paths[0];
        // Loads side by side are one load to the relay.
        if (path.Hot.IsEmpty || path.Ground.IsEmpty || fed.Any(l => !nodes.AreOne(l.Paths[0].FeedEnd, path.FeedEnd) || !nodes.AreOne(l.Paths[0].ReturnEnd, path.ReturnEnd))) return null;
        string feed = path.Hot[^1], back = path.Ground[0];
        End hot = path.FeedEnd, cold = path.ReturnEnd;
        // From beside, the wire that comes from the feed is the one that does not lead to another of them.
        if (!draft.Wire(feed).Ends.Contains(hot) || !draft.Wire(back).Ends.Contains(cold) || feed == back) return null;
        var own = fed.Select(l => l.Part.Id).ToHashSet(StringComparer.Ordinal);
        bool LeadsToOwn(Conductor wire, End at) => (wire.From == at ? wire.To : wire.From).Part is { } other && own.Contains(other);
        if (LeadsToOwn(draft.Wire(feed), hot) || LeadsToOwn(draft.Wire(back), cold)) return null;
        string relay = draft.Fit(RelayParts.Spec(work, load.Part.Title + " relay", amperes), reason);
        End At(string terminal) => End.At(relay, terminal);
        WireSize? size = draft.Wire(feed).Wire.Size;
        foreach (var stranger in draft.WiresAt(hot).Where(w => w.Id != feed && !LeadsToOwn(w, hot))) draft.Move(stranger.Id, hot, At("30"), "it stays on the unswitched feed");
        if (work.Choices["old feed"] == "renew")
        {
            var old = draft.Wire(feed);
            draft.TakeOut([feed], "its insulation is old");
            work.Run(old.From == hot ? old.To : old.From, At("30"), Workbench.NewWire("RD", old.Wire.LengthInMetres ?? 1, size));
        }
        else
        {
            draft.Move(feed, hot, At("30"), "the old feed is good");
            RelayParts.Sleeve(work, feed);
        }
        work.Run(At("87"), hot, Workbench.NewWire(RelayParts.Colour(work, relay, load.Part.Id), 0.5, size));
        draft.Move(back, cold, At("85"), $"{draft.Wire(back).Ends.First(e => e != cold)} then carries {Numbers.Plain(RelayParts.Spec(work, "", 0).Ratings[2].Quantity.Value)} A");
        work.Run(cold, work.Return, Workbench.NewWire("BK", 0.3, size));
        work.Run(At("30"), At("86"), Workbench.NewWire("RD", 0.1));
        return relay;
    }
}
