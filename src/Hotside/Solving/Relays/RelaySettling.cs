using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving.Relays;

/// <summary>
/// Moves relays by the volts of their windings until none wants to. All that want to move do so at once; where that comes back to a state, or where one's move changes another's
/// mind, the moves are tried one by one in every order.
/// </summary>
internal sealed class RelaySettling(CircuitModel model, RegulatedSolver solver, ImmutableArray<Relay> usual)
{
    // Own choice: a vehicle's groups of relays have a handful of states.
    private const int MostStates = 2_000;

    /// <summary>Where the relays come to rest.</summary>
    /// <param name="start">The position of each variable.</param>
    /// <param name="parting">Positions of variables that are just being left: a contact is closed only if it is so in both; <see langword="null"/>: none.</param>
    /// <param name="values">Senders that are given a value.</param>
    /// <param name="change">What becomes of the laws, as by a fault; <see langword="null"/>: nothing.</param>
    /// <param name="near">Potentials that may be near.</param>
    /// <param name="isQuick">Whether all that want to move do so at once and no other order is tried.</param>
    /// <param name="first">The point of the start, where it is known. What it passed before may be near to what is passed now.</param>
    public RelayRest Settle(
        int[] start, IReadOnlyDictionary<int, int>? parting, ImmutableArray<SetValue> values, Func<Law?[], Law?[]>? change = null, double[]? near = null, bool isQuick = false, StatePoint? first = null) =>
        Under(values) is var relays && first is not null && isQuick && relays.All(r => r.Wants(first.State[r.Variable], first.Point, first.Laws) == first.State[r.Variable]) ? new(RestKind.Settled, [first])
        : new Search(model, solver, relays, parting, values, change, near, first).Settle(start, isQuick);

    // Hot windings move at other volts.
    private ImmutableArray<Relay> Under(ImmutableArray<SetValue> values) => Surroundings.AreIn(values) ? Relay.Of(model.Under(values)) : usual;

    /// <summary>The point while all relays stand as they do, whatever they want.</summary>
    /// <param name="state">The position of each variable.</param>
    /// <param name="laws">The law of each edge.</param>
    /// <param name="near">Potentials that may be near.</param>
    public StatePoint Held(int[] state, Law?[] laws, double[]? near)
    {
        var (point, amperes) = solver.Solve(laws, near);
        return new(state, laws, point, amperes);
    }

    private sealed class Search(
        CircuitModel model, RegulatedSolver solver, ImmutableArray<Relay> relays, IReadOnlyDictionary<int, int>? parting, ImmutableArray<SetValue> values,
        Func<Law?[], Law?[]>? change, double[]? near, StatePoint? first)
    {
        private readonly Dictionary<string, StatePoint> known = new(StringComparer.Ordinal);
        private double[]? last = near;

        public RelayRest Settle(int[] start, bool isQuick)
        {
            List<StatePoint> passed = [];
            bool orderMatters = false;
            var at = PointOf(start);
            while (true)
            {
                int again = passed.IndexOf(at);
                if (again >= 0) return isQuick ? new(RestKind.NeverSettles, [.. passed.Skip(again)]) : InEveryOrder(start, RestKind.NeverSettles, [.. passed.Skip(again)]);
                passed.Add(at);
                var moves = MovesOf(at);
                if (moves.Length == 0) break;
                orderMatters = orderMatters || (!isQuick && moves.Length > 1 && moves.Any(m => ChangesMinds(at, m, moves)));
                at = PointOf(With(at.State, moves));
            }
            return orderMatters ? InEveryOrder(start, RestKind.Settled, [at]) : new(RestKind.Settled, [at]);
        }

        // Whether after one of the moves another is no longer wanted: then it matters which relay is quicker.
        private bool ChangesMinds(StatePoint at, (int Relay, int To) move, (int Relay, int To)[] moves)
        {
            var after = MovesOf(PointOf(With(at.State, [move])));
            return moves.Any(m => m != move && !after.Contains(m));
        }

        private RelayRest InEveryOrder(int[] start, RestKind otherwise, ImmutableArray<StatePoint> found)
        {
            List<StatePoint> reached = [PointOf(start)];
            HashSet<StatePoint> seen = [.. reached];
            var rests = ImmutableArray.CreateBuilder<StatePoint>();
            for (int i = 0; i < reached.Count; i++)
            {
                if (reached.Count > MostStates) return new(RestKind.NotSearchedOut, found);
                var moves = MovesOf(reached[i]);
                if (moves.Length == 0) rests.Add(reached[i]);
                foreach (var move in moves)
                    if (PointOf(With(reached[i].State, [move])) is { } next && seen.Add(next))
                        reached.Add(next);
            }
            return rests.Count == 0 ? new(RestKind.NeverSettles, otherwise == RestKind.NeverSettles ? found : [.. reached])
                : new(rests.Count == 1 ? RestKind.Settled : RestKind.Race, rests.ToImmutable());
        }

        private (int Relay, int To)[] MovesOf(StatePoint at) =>
        [
            .. relays.Select((r, i) => (Relay: i, To: r.Wants(at.State[r.Variable], at.Point, at.Laws))).Where(m => m.To != at.State[relays[m.Relay].Variable]),
        ];

        private int[] With(int[] state, (int Relay, int To)[] moves)
        {
            int[] next = (int[])state.Clone();
            foreach (var (relay, to) in moves) next[relays[relay].Variable] = to;
            return next;
        }

        private bool IsAt(StatePoint point, int[] state)
        {
            foreach (var relay in relays)
                if (point.State[relay.Variable] != state[relay.Variable])
                    return false;
            return true;
        }

        public StatePoint PointOf(int[] state)
        {
            string key = string.Join(',', relays.Select(r => Numbers.Whole(state[r.Variable])));
            if (known.TryGetValue(key, out var found)) return found;
            if (first is not null && IsAt(first, state)) return known[key] = first;
            int[] before = (int[])state.Clone();
            foreach (var (variable, position) in parting ?? ImmutableDictionary<int, int>.Empty) before[variable] = position;
            var laws = model.LawsIn(state, before, values);
            if (change is not null) laws = change(laws);
            var (point, amperes) = solver.Solve(laws, first?.Cycle.FirstOrDefault(p => IsAt(p, state))?.Point.Volts ?? last);
            last = point.Volts;
            return known[key] = new(state, laws, point, amperes);
        }
    }
}
