using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Checks.Protection;

/// <summary>What flows into a short circuit right behind a fuse: the battery's rest volts over its own resistance, the wires on the way and the fuse.</summary>
internal static class ShortCircuitCurrent
{
    /// <summary>The current in amperes; 0 where a wire on the way is of unknown resistance, for then it would be told too high.</summary>
    public static double Behind(CheckedCircuit circuit, Part battery, Part fuse)
    {
        if (circuit.Points.Solve(new("", [], [])) is not { } rest) return 0;
        var cells = circuit.Circuit.Sources.First(s => s.Part == battery && s.Element.When is null);
        var point = rest.Element(battery.Id, cells.Element.Name);
        double own = SourceLaws.BatteryOhms(battery, cells.Element, cells.Volts);
        var ahead = Ohms(circuit, circuit.Graph.NodeOf(cells.Feed), fuse);
        var back = Ohms(circuit, circuit.Graph.NodeOf(cells.Return), null);
        return ahead is { } there && back is { } home ? point.Volts / (own + there + home) : 0;
    }

    // The least resistance on the way to a fuse's far end, or to the return; null where an unknown wire lies on it, or there is no way.
    private static double? Ohms(CheckedCircuit circuit, int from, Part? fuse)
    {
        if (from == WireGraph.Return) return fuse is null ? 0 : null;
        Dictionary<int, (double Ohms, bool IsKnown)> best = new() { [from] = (0, true) };
        PriorityQueue<int, double> open = new();
        open.Enqueue(from, 0);
        while (open.TryDequeue(out int node, out double so))
        {
            if (so > best[node].Ohms || node == WireGraph.Return) continue;
            foreach (var edge in circuit.Graph.At(node).Where(e => e.IsLink && (!e.IsProtection || fuse is not null && e.Part == fuse)))
            {
                double? ohms = edge.Conductor is { } conductor ? CopperResistance.Of(conductor.Wire, CopperResistance.TableCelsius) : edge.IsProtection ? FuseOhms(edge.Part!, edge.Element!) : 0;
                double there = so + (ohms ?? 0);
                if (edge.IsProtection) return best[node].IsKnown ? there : null;
                int next = edge.Other(node);
                if (next == WireGraph.Return && fuse is not null) continue;
                if (best.TryGetValue(next, out var known) && known.Ohms <= there) continue;
                best[next] = (there, best[node].IsKnown && ohms is not null);
                open.Enqueue(next, there);
            }
        }
        return fuse is null && best.TryGetValue(WireGraph.Return, out var home) && home.IsKnown ? home.Ohms : null;
    }

    private static double FuseOhms(Part fuse, Element element) => fuse.Rated(element.Name, Unit.Ampere) is { } amperes ? FuseResistance.Of(amperes) : 0;
}
