using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>The states that a group of relays may pass when one moves after the other from all released, and those in which it rests.</summary>
internal sealed class MoveSearch
{
    /// <summary>The most relays that are searched: more have too many states.</summary>
    public const int Most = 10;

    private readonly DecisionSpace space;
    private readonly List<(int[] Values, Condition When)> states = [];
    private readonly List<(int[] Values, Condition When)> passed;
    private readonly Dictionary<(bool IsPassing, int Concerned), List<(int[] Values, Condition When)>> merged = [];

    public MoveSearch(DecisionSpace space, ImmutableArray<Relay> relays)
    {
        this.space = space;
        Relays = relays;
        passed = Reach();
        Condition rests = space.NeverHolds, races = space.NeverHolds;
        List<(int[] Values, Condition Reached, Condition Rests)> found = [];
        foreach (var (values, when) in passed)
        {
            var rest = relays.Select((r, i) => Known(r.Next[values[i]], values)).Aggregate(when, (all, c) => all & c);
            races |= rests & rest;
            rests |= rest;
            found.Add((values, when, rest));
        }
        NeverRests = !rests;
        Races = races;
        states.AddRange(found.Select(f => (f.Values, f.Rests | (f.Reached & NeverRests))).Where(s => !s.Item2.IsNever));
    }

    /// <summary>The relays.</summary>
    public ImmutableArray<Relay> Relays { get; }

    /// <summary>When no order of moves comes to rest.</summary>
    public Condition NeverRests { get; }

    /// <summary>When different orders come to rest differently.</summary>
    public Condition Races { get; }

    /// <summary>When a condition holds in any of the states of rest, or of all passed where there is no rest.</summary>
    public Condition Any(Condition condition) => Sum(isPassing: false, condition);

    /// <summary>When a condition holds in any of the states passed.</summary>
    public Condition Passing(Condition condition) => Sum(isPassing: true, condition);

    /// <summary>The move that puts out what a condition tells; <see langword="null"/> when none does.</summary>
    /// <param name="condition">A function of free positions and of the group's relays.</param>
    /// <param name="free">The free positions that matter.</param>
    public (Relay Relay, int Position)? EndedBy(Condition condition, Condition free)
    {
        foreach (var (values, when) in passed)
        for (int i = 0; i < Relays.Length; i++)
        for (int position = 0; position < Relays[i].Next.Length; position++)
        {
            if (position == values[i]) continue;
            int[] moved = (int[])values.Clone();
            moved[i] = position;
            var ended = free & when & Known(Relays[i].Next[position], values) & Known(condition, values) & !Known(condition, moved);
            if (!ended.IsNever) return (Relays[i], position);
        }
        return null;
    }

    /// <summary>Puts the group's relays of a state where a condition holds.</summary>
    /// <param name="state">Free positions; the relays' positions are written into it.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="isPassing">Whether the states passed are looked at, not those of rest.</param>
    /// <param name="holds">Whether what remains of the condition holds.</param>
    /// <returns>What remains of the condition.</returns>
    public Condition Fix(int[] state, Condition condition, bool isPassing, Predicate<Condition> holds)
    {
        foreach (var (values, when) in isPassing ? passed : states)
        {
            var rest = Known(condition, values);
            if (!when.HoldsIn(state) || !holds(rest)) continue;
            for (int i = 0; i < values.Length; i++) state[Relays[i].Number] = values[i];
            return rest;
        }
        return condition;
    }

    // Free positions always lead somewhere, so that what depends on none of the relays stays as it was; states that differ only in other relays are one.
    private Condition Sum(bool isPassing, Condition condition)
    {
        int concerned = 0;
        foreach (int variable in space.SupportOf(condition))
            for (int i = 0; i < Relays.Length; i++)
                if (Relays[i].Number == variable)
                    concerned |= 1 << i;
        if (concerned == 0) return condition;
        return Merged(isPassing, concerned).Aggregate(space.NeverHolds, (sum, s) => sum | (s.When & Known(condition, s.Values)));
    }

    private List<(int[] Values, Condition When)> Merged(bool isPassing, int concerned)
    {
        if (merged.TryGetValue((isPassing, concerned), out var known)) return known;
        var groups = (isPassing ? passed : states).GroupBy(s => Key(s.Values, concerned));
        return merged[(isPassing, concerned)] = [.. groups.Select(g => (g.First().Values, g.Aggregate(space.NeverHolds, (sum, s) => sum | s.When)))];
    }

    private List<(int[] Values, Condition When)> Reach()
    {
        List<(int[] Values, Condition When)> reached = [(new int[Relays.Length], space.AlwaysHolds)];
        Dictionary<long, int> index = new() { [Key(reached[0].Values)] = 0 };
        Queue<int> open = new([0]);
        while (open.TryDequeue(out int at))
        {
            var (values, when) = reached[at];
            for (int i = 0; i < Relays.Length; i++)
            for (int position = 0; position < Relays[i].Next.Length; position++)
            {
                var move = position == values[i] ? space.NeverHolds : when & Known(Relays[i].Next[position], values);
                if (move.IsNever) continue;
                int[] moved = (int[])values.Clone();
                moved[i] = position;
                if (!index.TryGetValue(Key(moved), out int to))
                {
                    index[Key(moved)] = to = reached.Count;
                    reached.Add((moved, space.NeverHolds));
                }
                var grown = reached[to].When | move;
                if (grown == reached[to].When) continue;
                reached[to] = (moved, grown);
                open.Enqueue(to);
            }
        }
        return reached;
    }

    // One number for the positions of a group.
    private long Key(int[] values, int concerned = -1)
    {
        long key = 0;
        for (int i = 0; i < values.Length; i++)
            key = (key * Relays[i].Next.Length) + ((concerned >> i & 1) == 1 ? values[i] : 0);
        return key;
    }

    private Condition Known(Condition condition, int[] values)
    {
        for (int i = 0; i < values.Length && condition.IsOpen; i++) condition = condition.Given(Relays[i].Number, values[i]);
        return condition;
    }
}
