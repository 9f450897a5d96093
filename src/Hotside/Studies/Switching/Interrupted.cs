namespace Hotside.Studies.Switching;

/// <summary>Loads that their own relay cuts off again by an interrupter, which is no control.</summary>
internal static class Interrupted
{
    /// <summary>The position at whose coming the load goes out for good; <see langword="null"/> for one that stays, or goes to and fro.</summary>
    public static (Relay Relay, int Position)? Until(SwitchingStudy study, Regime regime, LoadFeed feed, Condition fed)
    {
        var stays = regime.Settling.Settled(feed.Fed, asItStands: true) & fed;
        if (!stays.IsNever) return null;
        var own = study.Positions.Space.SupportOf(feed.Fed.Given(study.Positions.Candour, 1));
        foreach (var relay in regime.Settling.Relays.Where(r => own.Contains(r.Number)))
        {
            // Something else must keep the relay where it went, or it falls back and the load comes on again.
            var keeps = relay.Variable.Actuator.KeptBy
                .Select(coil => regime.Feeding.Loads.FirstOrDefault(l => l.Load.Part.Id == relay.Part && l.Load.Element.Name == coil))
                .OfType<LoadFeed>().Where(l => l != feed);
            if (!keeps.Any(k => fed.Implies(regime.Settling.Settled(k.Fed, asItStands: true)))) continue;
            for (int position = 1; position < relay.Next.Length; position++)
                if (fed.Implies(regime.Settling.Settled(study.Positions.Space.Where(relay.Number, position))))
                    return (relay, position);
        }
        return null;
    }
}
