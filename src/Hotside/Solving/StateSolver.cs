using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;

namespace Hotside.Solving;

/// <summary>
/// Computes points of a circuit some of whose laws are changed: a fault, cold filaments, a battery that is being charged. Quick, for it makes no tables. Made once for a
/// circuit; not to be used by several threads at once.
/// </summary>
internal sealed class StateSolver
{
    private readonly RelaySettling settling;

    /// <summary>A solver for a circuit.</summary>
    /// <param name="model">The circuit's model.</param>
    /// <param name="more">Further edges, behind those of the model, that conduct by a change only, and then as resistances as a rule.</param>
    public StateSolver(CircuitModel model, ImmutableArray<NetworkEdge> more = default)
    {
        Model = model;
        if (more.IsDefault) more = [];
        Network = model.Network with { Edges = [.. model.Network.Edges, .. more], Straight = [.. model.Network.Straight, .. more.Select(_ => true)] };
        settling = new(model, new RegulatedSolver(Network, model.Regulators), Relay.Of(model));
    }

    /// <summary>The circuit's model.</summary>
    public CircuitModel Model { get; }

    /// <summary>The model's network and the further edges.</summary>
    public Network Network { get; }

    /// <summary>The positions of all variables in a setting; what it does not name rests.</summary>
    public int[] StateOf(IEnumerable<SetPosition> positions) => Model.StateOf(positions);

    /// <summary>The point where the relays come to rest, all that want to move moving at once, from where the state has them; of a cycle the first point.</summary>
    /// <param name="state">The position of each variable.</param>
    /// <param name="values">Senders that are given a value.</param>
    /// <param name="change">What becomes of the laws; gets those of the model and returns one for every edge of <see cref="Network"/>.</param>
    /// <param name="near">Potentials that may be near.</param>
    public StatePoint Solve(int[] state, ImmutableArray<SetValue> values, Func<Law?[], Law?[]>? change = null, double[]? near = null) =>
        First(settling.Settle(state, null, values, change ?? Widened, near, isQuick: true));

    /// <summary>The point while all relays stand as the state has them, whatever they want.</summary>
    public StatePoint SolveHeld(int[] state, ImmutableArray<SetValue> values, Func<Law?[], Law?[]> change, double[]? near) =>
        settling.Held(state, change(Widened(Model.LawsIn(state, state, values))), near);

    /// <summary>The point while all relays stand as they do in another: the first moment of a change, before any has moved.</summary>
    /// <param name="from">The point before the change, one of this solver's.</param>
    /// <param name="change">What becomes of its laws; gets a copy of them.</param>
    /// <param name="near">Potentials that may be near; <see langword="null"/>: those before the change.</param>
    public StatePoint SolveHeld(StatePoint from, Func<Law?[], Law?[]> change, double[]? near = null) =>
        settling.Held(from.State, change((Law?[])from.Laws.Clone()), near ?? from.Point.Volts) with { Cycle = from.Cycle };

    /// <summary>The point where the relays come to rest after a change, from where they stand in its first moment.</summary>
    /// <param name="held">The first moment of the change.</param>
    /// <param name="values">Senders that are given a value.</param>
    /// <param name="change">What becomes of the laws, as in that moment.</param>
    public StatePoint SolveOn(StatePoint held, ImmutableArray<SetValue> values, Func<Law?[], Law?[]> change) =>
        settling.Settle(held.State, null, values, laws => change(Widened(laws)), held.Point.Volts, isQuick: true, held).Points[0] with { Cycle = [] };

    /// <summary>The current of an edge in amperes, from its first end to its second.</summary>
    public double AmperesOf(StatePoint at, int edge) => at.AmperesOf(Network.Edges, edge);

    /// <summary>The current through an element in amperes.</summary>
    public double AmperesOf(StatePoint at, ModelElement element) => at.AmperesOf(Network.Edges, element);

    /// <summary>The volts along an element.</summary>
    public static double VoltsOf(StatePoint at, ModelElement element) => at.Point.At(element.A) - at.Point.At(element.B);

    private static StatePoint First(RelayRest rest) => rest.Points.Length > 1 ? rest.Points[0] with { Cycle = rest.Points } : rest.Points[0];

    // Laws for the further edges, too: open.
    private Law?[] Widened(Law?[] laws)
    {
        Array.Resize(ref laws, Network.Edges.Length);
        return laws;
    }
}
