using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Where a group of relays may come to rest when one moves after the other from all released. Only its core is searched; where what follows comes to rest is put in its
/// place. What is passed on the way is searched for the relays that matter to what is asked, and those that act on them.
/// </summary>
internal sealed class MoveSearch
{
    // Own choices. The most relays of a core, and of a group: more have too many states.
    private const int MostOfCore = 10, Most = 14;

    private readonly DecisionSpace space;
    private readonly RelayGroup group;
    private readonly RelayMoves core;
    private readonly Condition[]?[] following;
    private readonly Dictionary<string, RelayMoves> passed = new(StringComparer.Ordinal);

    public MoveSearch(DecisionSpace space, RelayGroup group)
    {
        (this.space, this.group) = (space, group);
        core = new(space, group.Core);
        following = new Condition[space.VariableCount][];
        foreach (var follower in group.Followers)
        {
            // A new array each time: what is worked out with one is kept by it.
            var more = (Condition[]?[])following.Clone();
            more[follower.Number] = [.. follower.Next.Select(next => space.Compose(next, following))];
            following = more;
        }
    }

    /// <summary>The relays.</summary>
    public ImmutableArray<Relay> Relays => group.Relays;

    /// <summary>When no order of moves comes to rest.</summary>
    public Condition NeverRests => core.NeverRests;

    /// <summary>When different orders come to rest differently.</summary>
    public Condition Races => core.Races;

    /// <summary>Whether a group has few enough relays.</summary>
    public static bool IsFewEnough(RelayGroup group) => group.Core.Length <= MostOfCore && group.Relays.Length <= Most;

    /// <summary>When a condition holds in any of the states of rest, or of all passed where there is no rest.</summary>
    public Condition Any(Condition condition)
    {
        var atRest = core.AtRest(space.Compose(condition, following));
        return NeverRests.IsNever ? atRest : atRest | (NeverRests & Passing(condition));
    }

    /// <summary>When a condition holds in any of the states passed.</summary>
    public Condition Passing(Condition condition) => Behind(condition) is { } moves ? moves.Passing(condition) : condition;

    /// <summary>The move that puts out what a condition tells; <see langword="null"/> when none does.</summary>
    /// <param name="condition">A function of free positions and of the group's relays.</param>
    /// <param name="free">The free positions that matter.</param>
    public (Relay Relay, int Position)? EndedBy(Condition condition, Condition free) => Behind(condition)?.EndedBy(condition, free);

    /// <summary>Puts the group's relays of a state where a condition holds.</summary>
    /// <param name="state">Free positions; the relays' positions are written into it.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="isPassing">Whether the states passed are looked at, not those of rest.</param>
    /// <param name="holds">Whether what remains of the condition holds.</param>
    /// <returns>What remains of the condition.</returns>
    public Condition Fix(int[] state, Condition condition, bool isPassing, Predicate<Condition> holds)
    {
        IEnumerable<int[]> candidates = isPassing ? [] : AtRest(state);
        if (isPassing || NeverRests.HoldsIn(state)) candidates = candidates.Concat(PassedIn(state, condition));
        foreach (int[] candidate in candidates)
        {
            var left = Relays.Aggregate(condition, (c, relay) => c.Given(relay.Number, candidate[relay.Number]));
            if (!holds(left)) continue;
            candidate.CopyTo(state, 0);
            return left;
        }
        return condition;
    }

    private IEnumerable<int[]> AtRest(int[] free)
    {
        foreach (var (values, when) in core.Resting)
        {
            if (!when.HoldsIn(free)) continue;
            int[] rest = (int[])free.Clone();
            core.Put(rest, values);
            Settling.Put(rest, following);
            yield return rest;
        }
    }

    // The relays that do not matter to the condition have not moved yet.
    private IEnumerable<int[]> PassedIn(int[] free, Condition condition)
    {
        int[] released = (int[])free.Clone();
        foreach (var relay in Relays) released[relay.Number] = 0;
        if (Behind(condition) is not { } moves)
        {
            yield return released;
            yield break;
        }
        foreach (var (values, when) in moves.Passed)
        {
            if (!when.HoldsIn(free)) continue;
            int[] passed = (int[])released.Clone();
            moves.Put(passed, values);
            yield return passed;
        }
    }

    // The moves of those relays that matter to a condition; none where it depends on none.
    private RelayMoves? Behind(Condition condition)
    {
        var relays = group.Behind(space.SupportOf(condition));
        if (relays.IsEmpty) return null;
        string key = string.Join(',', relays.Select(r => r.Number));
        return passed.TryGetValue(key, out var known) ? known : passed[key] = new(space, relays);
    }
}
