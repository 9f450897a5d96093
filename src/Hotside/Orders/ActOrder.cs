using System.Collections.Immutable;

namespace Hotside.Orders;

/// <summary>Puts acts into an order that meets their graph: among those that are ready the one of the least phase, at the place in hand, of the circuit and the number in hand.</summary>
internal static class ActOrder
{
    /// <summary>The indices of the acts in their order.</summary>
    /// <param name="acts">The acts.</param>
    /// <param name="graph">What waits for what.</param>
    /// <param name="done">The acts that are done, a mark each: they come first.</param>
    public static ImmutableArray<int> Of(ImmutableArray<HandAct> acts, ActGraph graph, bool[] done)
    {
        // What is done does not wait for what is not.
        bool Binds(int first, int then) => !done[then] || done[first];
        int[] open = [.. acts.Select(a => graph.WaitsOf(a.Index).Count(w => Binds(w.First, a.Index)))];
        List<int> ready = [.. Enumerable.Range(0, acts.Length).Where(i => open[i] == 0)];
        var order = ImmutableArray.CreateBuilder<int>(acts.Length);
        HandAct? last = null;
        int opened = -1;
        while (ready.Count > 0)
        {
            // What was taken off or cut to go on elsewhere goes on before anything else is done.
            int next = opened >= 0 && ready.FindIndex(i => acts[i].Partner == opened) is >= 0 and var at && (done[ready[at]] || !ready.Any(i => done[i])) ? ready[at] : ready.MinBy(i => (done[i] ? 0 : 1, KeyOf(acts[i], last)));
            if (acts[next].Type is WorkActType.WireOff or WorkActType.Cut) opened = next;
            ready.Remove(next);
            order.Add(next);
            last = acts[next];
            foreach (int follower in graph.FollowersOf(next))
                if (Binds(next, follower) && --open[follower] == 0)
                    ready.Add(follower);
        }
        return order.ToImmutable();
    }

    private static (int Phase, int Away, int Place, int Way, int Change, int Index) KeyOf(HandAct act, HandAct? last)
    {
        int away = last is null || act.Phase != last.Phase || act.Place != last.Place ? 2 : act.Change != last.Change ? 1 : 0;
        // Without a place there is none to stay at; the number in hand counts all the same.
        if (act.Place is null && away == 1) away = 2;
        return (act.Phase, away, act.PlaceIndex, act.WayIndex, act.Change, act.Index);
    }
}
