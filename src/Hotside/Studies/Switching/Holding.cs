using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>A relay that stays in once it has pulled in.</summary>
internal sealed class Holding
{
    private readonly Regime regime;
    private readonly Condition[]?[] round;
    private readonly Condition stays;

    private Holding(Regime regime, Condition stays, Condition[]?[] round, Hold hold)
    {
        this.regime = regime;
        this.stays = stays;
        this.round = round;
        Hold = hold;
    }

    public Hold Hold { get; }

    /// <summary>The relays that hold.</summary>
    public static ImmutableArray<Holding> Of(SwitchingStudy study, Regime regime)
    {
        var found = ImmutableArray.CreateBuilder<Holding>();
        foreach (var relay in regime.Settling.MayHold)
        {
            // What a machine's own winding does in its box, as in a cut-out, is no memory: reverse current, which paths do not show, lets it go.
            var coils = relay.Variable.Actuator.Pulls.SelectMany(p => p.Coils).Concat(relay.Variable.Actuator.KeptBy).ToArray();
            if (coils.All(c => regime.Feeding.Loads.Any(l => l.Load.Part.Id == relay.Part && l.Load.Element.Name == c && l.Load.Element.IsInternal))) continue;
            for (int position = 1; position < relay.Next.Length; position++)
            {
                var there = regime.Settling.Settled(study.Positions.Space.Where(relay.Number, position));
                var (stays, round) = regime.Settling.Held(relay, position);
                if ((stays & !there & !regime.Short).IsNever) continue;
                var unclear = regime.Short | regime.Settling.Settled(relay.Conflict);
                found.Add(new(regime, stays, round, new(relay.Part, Keeper(study, regime, relay, position, stays & !there & !regime.Short, round),
                    study.Writer.Write(stays, unclear), study.Writer.Write(!stays, unclear))));
            }
        }
        return found.ToImmutable();
    }

    /// <summary>Whether it keeps a load fed where it would not be otherwise.</summary>
    public bool Keeps(LoadFeed feed, Condition fed) =>
        !(regime.Settling.In(feed.Fed, round) & stays & !fed & !regime.Short).IsNever;

    private static string Keeper(SwitchingStudy study, Regime regime, Relay relay, int position, Condition held, Condition[]?[] round)
    {
        if (relay.Stays) return relay.Variable.Actuator.Name;
        int[] state = study.Positions.Space.AnyState(held);
        Settling.Put(state, round);
        foreach (var feed in regime.Feeding.Loads.Where(l => l.Load.Part.Id == relay.Part && l.Fed.HoldsIn(state)))
            if (study.Routes.Of(feed.Load, state, regime.Feeding.Supplies, feed.Forward.HoldsIn(state), throughConsumers: false) is { } route
                && route.All.FirstOrDefault(s => s.IsRelay && s.Part!.Id == relay.Part) is { Element: { } contact })
                return contact.Name;
        return relay.Variable.Actuator.Name;
    }
}
