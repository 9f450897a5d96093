using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;

namespace Hotside.Solving;

/// <summary>
/// Which nodes have a potential that means something: those that something ties to the reference whose current changes with the volts, or that a regulator holds. The others float,
/// also those through which a current flows that nothing but leaks makes a potential of: the point between two motors in series that both draw their full current.
/// </summary>
internal static class Grounding
{
    // What leaks is far below, what any meter shows far above.
    private const double LeastSiemens = 1e-5, LeastAmperes = 1e-5;

    /// <summary>Whether each node is tied.</summary>
    public static bool[] Of(CircuitModel model, StatePoint at)
    {
        DisjointSets tied = new(model.Network.NodeCount + 1);
        foreach (var element in model.Elements)
        {
            for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++) Tie(e, element.Element.IsSource);
            if (element.Regulator >= 0 && model.Regulators[element.Regulator] is SeriesRegulator && Math.Abs(at.RegulatorAmperes[element.Regulator]) > LeastAmperes) tied.Join(element.A + 1, element.B + 1);
        }
        for (int e = 0; e < model.Circuit.Conductors.Length; e++) Tie(e, isSource: false);
        return [.. Enumerable.Range(1, model.Network.NodeCount).Select(n => tied.Find(n) == 0)];

        void Tie(int edge, bool isSource)
        {
            if (at.Laws[edge] is not { } law) return;
            var ends = model.Network.Edges[edge];
            double volts = at.Point.Across(ends);
            bool isOneWay = !isSource && law is ClampLaw { Least: 0 } or ClampLaw { Most: 0 };
            if (law.TieAt(volts) > LeastSiemens && (!isOneWay || Math.Abs(law.At(volts).Amperes) > LeastAmperes)) tied.Join(ends.A + 1, ends.B + 1);
        }
    }
}
