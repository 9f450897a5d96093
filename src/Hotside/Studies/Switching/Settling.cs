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
    private readonly Dictionary<int, Condition> settled = [], passing = [];
    private bool isAtRest;

    public Settling(Positions positions, ImmutableArray<Relay> relays)
    {
        this.positions = positions;
        space = positions.Space;
        Relays = relays;
        Influence influence = new(space, relays);
        Searches = [.. influence.Unsure.Where(MoveSearch.IsFewEnough).Select(g => new MoveSearch(space, g))];
        Untried = [.. influence.Unsure.Where(g => !MoveSearch.IsFewEnough(g)).Select(g => g.Relays)];
        MayHold = influence.OnThemselves;
        MoveTogether();
    }

    public ImmutableArray<Relay> Relays { get; }

    /// <summary>The relays that act back on themselves; the others go where the rest puts them.</summary>
    public ImmutableArray<Relay> MayHold { get; }

    /// <summary>The groups of relays whose orders were searched.</summary>
    public ImmutableArray<MoveSearch> Searches { get; }

    /// <summary>The groups too large for that.</summary>
    public ImmutableArray<ImmutableArray<Relay>> Untried { get; }

    /// <summary>When a condition holds with relays settled, as a function of free positions; where none settles, or several rests compete, when it holds in any of their states.</summary>
    /// <param name="condition">A function of free positions and of relays.</param>
    /// <param name="asItStands">Whether interrupters count as they stand, not as closed.</param>
    public Condition Settled(Condition condition, bool asItStands = false)
    {
        var left = condition.Given(positions.Candour, asItStands ? 1 : 0);
        return settled.TryGetValue(left.Node, out var known) ? known : settled[left.Node] = Settled(left, except: null);
    }

    /// <summary>When a condition holds on the way to rest.</summary>
    public Condition Passing(Condition condition)
    {
        var left = condition.Given(positions.Candour, 0);
        if (passing.TryGetValue(left.Node, out var known)) return known;
        var apart = Searches.Aggregate(left, (c, search) => search.Passing(c));
        return passing[left.Node] = rounds.Aggregate(space.NeverHolds, (sum, round) => sum | space.Compose(apart, round));
    }

    /// <summary>A full state in which a condition holds, settled or else on the way.</summary>
    /// <param name="free">The free positions; a condition of free positions in which <paramref name="condition"/> holds settled or on the way.</param>
    /// <param name="condition">A function of free positions and of relays.</param>
    public int[] StateOf(Condition free, Condition condition)
    {
        int[] state = space.AnyState(free);
        var known = condition.Given(positions.Candour, 0);
        if (Searches.Length <= 1)
        {
            // Where the other relays rest is known at once; at most one group is left to be put somewhere.
            int[] settled = (int[])state.Clone();
            Put(settled, WithoutSearched(rounds[^1]));
            var left = Searches.IsEmpty ? known : Searches[0].Fix(settled, known, isPassing: false, c => c.HoldsIn(settled));
            if (left.HoldsIn(settled)) return settled;
        }
        bool isPassing = !Settled(known).HoldsIn(state);
        foreach (var search in Searches)
            known = search.Fix(state, known, isPassing, c => (isPassing ? Passing(c) : Settled(c)).HoldsIn(state));
        var round = isPassing ? rounds.FirstOrDefault(r => space.Compose(known, r).HoldsIn(state), rounds[^1]) : rounds[^1];
        Put(state, WithoutSearched(round));
        return state;
    }

    /// <summary>A full state with relays where they come to rest; one of several rests, or of the states passed where there is none.</summary>
    /// <param name="free">The free positions.</param>
    public int[] RestOf(int[] free)
    {
        int[] state = (int[])free.Clone();
        Put(state, WithoutSearched(rounds[^1]));
        foreach (var search in Searches) search.Fix(state, space.AlwaysHolds, isPassing: false, _ => true);
        return state;
    }

    private Condition[]?[] WithoutSearched(Condition[]?[] round)
    {
        round = (Condition[]?[])round.Clone();
        foreach (var relay in Searches.SelectMany(s => s.Relays)) round[relay.Number] = null;
        return round;
    }

    /// <summary>When a relay that is in a position stays there, as a function of free positions: the rounds begun from rest, but with it there.</summary>
    public (Condition Stays, Condition[]?[] Round) Held(Relay relay, int position)
    {
        var round = (Condition[]?[])rounds[^1].Clone();
        round[relay.Number] = [.. relay.Next.Select((_, p) => p == position ? space.AlwaysHolds : space.NeverHolds)];
        // All others begin where they rest, and stay there until something moves that they depend on.
        var (before, after) = isAtRest ? (rounds[^1], rounds[^1]) : default;
        for (int i = 0; i < RoundLimit; i++)
        {
            var next = Round(round, before, after);
            if (AreEqual(next, round)) break;
            (before, after, round) = (round, next, next);
        }
        return (round[relay.Number]![position], round);
    }

    /// <summary>When a condition holds with the relays in a round's positions.</summary>
    public Condition In(Condition condition, Condition[]?[] round) => space.Compose(condition.Given(positions.Candour, 0), round);

    /// <summary>The relay at whose move from one round to the next goes out what a condition tells, the last of several that must move for it; <see langword="null"/> when nothing does.</summary>
    public (Relay Relay, int Position)? EndedBy(Condition condition, Condition free)
    {
        var known = condition.Given(positions.Candour, 0);
        foreach (var search in Searches)
            if (search.EndedBy(Settled(known, except: search), free) is { } found)
                return found;
        known = Searches.Aggregate(known, (c, search) => search.Passing(c));
        for (int i = 0; i + 1 < rounds.Count; i++)
        {
            var left = space.Compose(known, rounds[i]) & free;
            var moved = rounds[i];
            foreach (var relay in Relays)
            {
                if (left.IsNever) break;
                moved = (Condition[]?[])moved.Clone();
                moved[relay.Number] = rounds[i + 1][relay.Number];
                var ended = left & !space.Compose(known, moved);
                if (!ended.IsNever) return (relay, Array.FindIndex(rounds[i + 1][relay.Number]!, c => !(c & ended).IsNever));
            }
        }
        return null;
    }

    private Condition Settled(Condition known, MoveSearch? except)
    {
        var last = rounds[^1];
        if (except is not null)
        {
            last = (Condition[]?[])last.Clone();
            foreach (var relay in except.Relays) last[relay.Number] = null;
        }
        return space.Compose(Searches.Where(s => s != except).Aggregate(known, (c, search) => search.Any(c)), last);
    }

    private int RoundLimit => (2 * Relays.Length) + 4;

    private void MoveTogether()
    {
        var round = new Condition[]?[space.VariableCount];
        foreach (var relay in Relays) round[relay.Number] = [.. relay.Next.Select((_, p) => p == 0 ? space.AlwaysHolds : space.NeverHolds)];
        rounds.Add(round);
        Condition[]?[]? before = null;
        for (int i = 0; i < RoundLimit; i++)
        {
            var next = Round(round, before, round);
            if (isAtRest = AreEqual(next, round)) return;
            (before, round) = (round, next);
            rounds.Add(round);
        }
    }

    // From one round to the next. What only depends on relays that are where they were in another round goes where it went then.
    private Condition[]?[] Round(Condition[]?[] round, Condition[]?[]? before, Condition[]?[]? after)
    {
        var next = new Condition[]?[space.VariableCount];
        foreach (var relay in Relays)
            next[relay.Number] = before is not null && relay.Next.All(c => space.SupportOf(c).All(v => AreEqual(round[v], before[v]))) ? after![relay.Number]
                : [.. relay.Next.Select(c => space.Compose(c, round))];
        return next;
    }

    private bool AreEqual(Condition[]?[] a, Condition[]?[] b) => Relays.All(r => AreEqual(a[r.Number], b[r.Number]));

    private static bool AreEqual(Condition[]? a, Condition[]? b) => ReferenceEquals(a, b) || a.AsSpan().SequenceEqual(b);

    /// <summary>Puts relays where a round has them.</summary>
    public static void Put(int[] state, Condition[]?[] round)
    {
        var free = (int[])state.Clone();
        for (int number = 0; number < round.Length; number++)
            if (round[number] is { } function)
                state[number] = Math.Max(0, Array.FindIndex(function, c => c.HoldsIn(free)));
    }
}
