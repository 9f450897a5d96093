using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>Positions of some relays, and the free positions in which they stand so.</summary>
/// <param name="Values">A position for each relay.</param>
/// <param name="When">The free positions.</param>
internal readonly record struct RelayState(int[] Values, Condition When);

/// <summary>The states that relays may pass when one moves after the other from all released, and those in which they rest. They depend on no relays but each other.</summary>
internal sealed class RelayMoves
{
    private readonly DecisionSpace space;
    private readonly ImmutableArray<Relay> relays;
    private readonly Dictionary<(bool IsResting, int Concerned), List<RelayState>> merged = [];

    public RelayMoves(DecisionSpace space, ImmutableArray<Relay> relays)
    {
        (this.space, this.relays) = (space, relays);
        Passed = Reach();
        Condition rests = space.NeverHolds, races = space.NeverHolds;
        foreach (var (values, when) in Passed)
        {
            var rest = when;
            for (int i = 0; i < values.Length && !rest.IsNever; i++) rest &= Known(relays[i].Next[values[i]], values);
            if (rest.IsNever) continue;
            races |= rests & rest;
            rests |= rest;
            Resting.Add(new(values, rest));
        }
        (NeverRests, Races) = (!rests, races);
    }

    /// <summary>The states passed, those that fewest moves lead to first.</summary>
    public List<RelayState> Passed { get; }

    /// <summary>The states of rest, in the same order.</summary>
    public List<RelayState> Resting { get; } = [];

    /// <summary>When no order of moves comes to rest.</summary>
    public Condition NeverRests { get; }

    /// <summary>When different orders come to rest differently.</summary>
    public Condition Races { get; }

    /// <summary>When a condition holds in any of the states passed.</summary>
    public Condition Passing(Condition condition) => Sum(isResting: false, condition);

    /// <summary>When a condition holds in any of the states of rest.</summary>
    public Condition AtRest(Condition condition) => Sum(isResting: true, condition);

    /// <summary>What remains of a condition with the relays in some positions.</summary>
    public Condition Known(Condition condition, int[] values)
    {
        for (int i = 0; i < values.Length && condition.IsOpen; i++) condition = condition.Given(relays[i].Number, values[i]);
        return condition;
    }

    /// <summary>The move that puts out what a condition tells; <see langword="null"/> when none does.</summary>
    /// <param name="condition">A function of free positions and of these relays.</param>
    /// <param name="free">The free positions that matter.</param>
    public (Relay Relay, int Position)? EndedBy(Condition condition, Condition free)
    {
        foreach (var (values, when) in Passed)
        for (int i = 0; i < relays.Length; i++)
        for (int position = 0; position < relays[i].Next.Length; position++)
        {
            if (position == values[i]) continue;
            int[] moved = (int[])values.Clone();
            moved[i] = position;
            var ended = free & when & Known(relays[i].Next[position], values) & Known(condition, values) & !Known(condition, moved);
            if (!ended.IsNever) return (relays[i], position);
        }
        return null;
    }

    /// <summary>Puts the relays of a full state where they stand.</summary>
    public void Put(int[] state, int[] values)
    {
        for (int i = 0; i < values.Length; i++) state[relays[i].Number] = values[i];
    }

    // What depends on none of the relays stays as it was; states that differ only in other relays are one.
    private Condition Sum(bool isResting, Condition condition)
    {
        int concerned = 0;
        foreach (int variable in space.SupportOf(condition))
            for (int i = 0; i < relays.Length; i++)
                if (relays[i].Number == variable)
                    concerned |= 1 << i;
        if (concerned == 0) return condition;
        var sum = space.NeverHolds;
        foreach (var (values, when) in Merged(isResting, concerned)) sum |= when & Known(condition, values);
        return sum;
    }

    private List<RelayState> Merged(bool isResting, int concerned)
    {
        if (merged.TryGetValue((isResting, concerned), out var known)) return known;
        var groups = (isResting ? Resting : Passed).GroupBy(s => Key(s.Values, concerned));
        return merged[(isResting, concerned)] = [.. groups.Select(g => new RelayState(g.First().Values, g.Aggregate(space.NeverHolds, (sum, s) => sum | s.When)))];
    }

    private List<RelayState> Reach()
    {
        List<RelayState> reached = [new(new int[relays.Length], space.AlwaysHolds)];
        Dictionary<long, int> index = new() { [Key(reached[0].Values)] = 0 };
        Queue<int> open = new([0]);
        while (open.TryDequeue(out int at))
        {
            var (values, when) = reached[at];
            for (int i = 0; i < relays.Length; i++)
            for (int position = 0; position < relays[i].Next.Length; position++)
            {
                var move = position == values[i] ? space.NeverHolds : when & Known(relays[i].Next[position], values);
                if (move.IsNever) continue;
                int[] moved = (int[])values.Clone();
                moved[i] = position;
                if (!index.TryGetValue(Key(moved), out int to))
                {
                    index[Key(moved)] = to = reached.Count;
                    reached.Add(new(moved, space.NeverHolds));
                }
                var grown = reached[to].When | move;
                if (grown == reached[to].When) continue;
                reached[to] = new(moved, grown);
                open.Enqueue(to);
            }
        }
        return reached;
    }

    // One number for the positions of those relays that are concerned.
    private long Key(int[] values, int concerned = -1)
    {
        long key = 0;
        for (int i = 0; i < values.Length; i++)
            key = (key * relays[i].Next.Length) + ((concerned >> i & 1) == 1 ? values[i] : 0);
        return key;
    }
}
