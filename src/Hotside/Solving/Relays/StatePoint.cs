using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving.Relays;

/// <summary>The operating point of a circuit in one state.</summary>
/// <param name="State">The position of each variable of the circuit.</param>
/// <param name="Laws">The law of each edge.</param>
/// <param name="Point">The potentials.</param>
/// <param name="RegulatorAmperes">The current of each regulator from its input to its output.</param>
internal sealed record StatePoint(int[] State, Law?[] Laws, NetworkPoint Point, double[] RegulatorAmperes)
{
    /// <summary>Where relays never come to rest, the points that they pass for ever; empty for a point of rest.</summary>
    public ImmutableArray<StatePoint> Cycle { get; init; } = [];

    /// <summary>The current of an edge in amperes, from its first end to its second.</summary>
    public double AmperesOf(ImmutableArray<NetworkEdge> edges, int edge) => Laws[edge]?.At(Point.Across(edges[edge])).Amperes ?? 0;

    /// <summary>The current through an element in amperes.</summary>
    public double AmperesOf(ImmutableArray<NetworkEdge> edges, ModelElement element)
    {
        double amperes = element.Regulator >= 0 ? (element.Element.Traits.HasFlag(ElementTraits.HoldsFirst) ? -1 : 1) * RegulatorAmperes[element.Regulator] : 0;
        for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++) amperes += AmperesOf(edges, e);
        return amperes;
    }
}
