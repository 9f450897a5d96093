using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Where relays come to rest from all released, for all positions at once. All move together in rounds; where the order may matter, single moves are searched.
/// </summary>
internal sealed class Settling
{
    private readonly Positions positions;
    private readonly DecisionSpace space;
    private readonly List<Condition[]?[]> rounds = [];

    public Settling(Positions positions, ImmutableArray<Relay> relays)
    {
        this.positions = positions;
        space = positions.Space;
        Relays = relays;
        Influence influence = new(space, relays);
        Searches = [.. influence.Unsure.Where(g => g.Length <= MoveSearch.Most).Select(g => new MoveSearch(space, g))];
        Untried = [.. influence.Unsure.Where(g => g.Length > MoveSearch.Most)];
        MoveTogether();
    }

    public ImmutableArray<Relay> Relays { get; }

    /// <summary>The groups of relays whose orders were searched.</summary>
    public ImmutableArray<MoveSearch> Searches { get; }

    /// <summary>The groups too large for that.</summary>
    public ImmutableArray<ImmutableArray<Relay>> Untried { get; }

    /// <summary>When a condition holds with relays settled, as a function of free positions; where none settles, or several rests compete, when it holds in any of their states.</summary>
    /// <param name="condition">A function of free positions and of relays.</param>
    /// <param name="asItStands">Whether interrupters count as they stand, not as closed.</param>
    public Condition Settled(Condition condition, bool asItStands = false) =>
        space.Compose(Searches.Aggregate(condition.Given(positions.Candour, asItStands ? 1 : 0), (c, search) => search.Any(c)), rounds[^1]);

    /// <summary>When a condition holds on the way to rest.</summary>
    public Condition Passing(Condition condition)
    {
        var known = condition.Given(positions.Candour, 0);
        return rounds.Aggregate(space.NeverHolds, (sum, round) => sum | space.Compose(known, round));
    }

    /// <summary>A full state in which a condition holds, settled or else on the way.</summary>
    /// <param name="free">The free positions; a condition of free positions in which <paramref name="condition"/> holds settled or on the way.</param>
    /// <param name="condition">A function of free positions and of relays.</param>
    public int[] StateOf(Condition free, Condition condition)
    {
        int[] state = space.AnyState(free);
        var known = condition.Given(positions.Candour, 0);
        if (!Settled(known).HoldsIn(state))
        {
            var round = rounds.First(r => space.Compose(known, r).HoldsIn(state));
            Put(state, round);
            return state;
        }
        foreach (var search in Searches) known = search.Fix(state, known, c => Settled(c).HoldsIn(state));
        var last = (Condition[]?[])rounds[^1].Clone();
        foreach (var relay in Searches.SelectMany(s => s.Relays)) last[relay.Number] = null;
        Put(state, last);
        return state;
    }

    /// <summary>When a relay that is in a position stays there, as a function of free positions: the rounds begun from rest, but with it there.</summary>
    public (Condition Stays, Condition[]?[] Round) Held(Relay relay, int position)
    {
        var round = (Condition[]?[])rounds[^1].Clone();
        round[relay.Number] = [.. relay.Next.Select((_, p) => p == position ? space.AlwaysHolds : space.NeverHolds)];
        for (int i = 0; i < RoundLimit; i++)
        {
            var next = Round(round);
            if (AreEqual(next, round)) break;
            round = next;
        }
        return (round[relay.Number]![position], round);
    }

    /// <summary>When a condition holds with the relays in a round's positions.</summary>
    public Condition In(Condition condition, Condition[]?[] round) => space.Compose(condition.Given(positions.Candour, 0), round);

    /// <summary>The relay whose move from one round to the next puts out what a condition tells; <see langword="null"/> when none does.</summary>
    public (Relay Relay, int Position)? EndedBy(Condition condition, Condition free)
    {
        var known = condition.Given(positions.Candour, 0);
        for (int i = 0; i + 1 < rounds.Count; i++)
        {
            var lit = space.Compose(known, rounds[i]) & free;
            if (lit.IsNever) continue;
            foreach (var relay in Relays)
            {
                var moved = (Condition[]?[])rounds[i].Clone();
                moved[relay.Number] = rounds[i + 1][relay.Number];
                var left = lit & !space.Compose(known, moved);
                if (left.IsNever) continue;
                int position = Array.FindIndex(rounds[i + 1][relay.Number]!, c => !(c & left).IsNever);
                return (relay, position);
            }
        }
        return null;
    }

    private int RoundLimit => (2 * Relays.Length) + 4;

    private void MoveTogether()
    {
        var round = new Condition[]?[space.VariableCount];
        foreach (var relay in Relays) round[relay.Number] = [.. relay.Next.Select((_, p) => p == 0 ? space.AlwaysHolds : space.NeverHolds)];
        rounds.Add(round);
        for (int i = 0; i < RoundLimit; i++)
        {
            var next = Round(round);
            if (AreEqual(next, round)) return;
            rounds.Add(round = next);
        }
    }

    private Condition[]?[] Round(Condition[]?[] round)
    {
        var next = new Condition[]?[space.VariableCount];
        foreach (var relay in Relays) next[relay.Number] = [.. relay.Next.Select(c => space.Compose(c, round))];
        return next;
    }

    private bool AreEqual(Condition[]?[] a, Condition[]?[] b) => Relays.All(r => a[r.Number].AsSpan().SequenceEqual(b[r.Number]));

    /// <summary>Puts relays where a round has them.</summary>
    public static void Put(int[] state, Condition[]?[] round)
    {
        var free = (int[])state.Clone();
        for (int number = 0; number < round.Length; number++)
            if (round[number] is { } function)
                state[number] = Math.Max(0, Array.FindIndex(function, c => c.HoldsIn(free)));
    }
}
