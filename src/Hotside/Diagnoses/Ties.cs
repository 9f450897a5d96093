using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Relays;

namespace Hotside.Diagnoses;

/// <summary>Which nodes float: a meter put there drifts, since nothing ties them to the return. Bridges tie, too.</summary>
internal static class Ties
{
    // What leaks is far below, what any meter shows far above.
    private const double LeastSiemens = 1e-5, LeastAmperes = 1e-5;

    /// <summary>Whether each node floats.</summary>
    public static bool[] FloatingAt(StateSolver solver, StatePoint at)
    {
        var network = solver.Network;
        DisjointSets tied = new(network.NodeCount + 1);
        for (int e = 0; e < network.Edges.Length; e++)
        {
            if (at.Laws[e] is not { } law) continue;
            var ends = network.Edges[e];
            double volts = at.Point.Across(ends);
            bool isOneWay = law is ClampLaw { Least: 0, Emf: 0 } or ClampLaw { Most: 0, Emf: 0 };
            if (Math.Abs(law.At(volts).Amperes) > LeastAmperes || (!isOneWay && law.TieAt(volts) > LeastSiemens)) tied.Join(ends.A + 1, ends.B + 1);
        }
        foreach (var element in solver.Model.Elements.Where(e => e.Regulator >= 0 && Math.Abs(at.RegulatorAmperes[e.Regulator]) > LeastAmperes)) tied.Join(element.A + 1, element.B + 1);
        bool[] floating = new bool[network.NodeCount];
        for (int n = 0; n < floating.Length; n++) floating[n] = tied.Find(n + 1) != 0;
        return floating;
    }
}
