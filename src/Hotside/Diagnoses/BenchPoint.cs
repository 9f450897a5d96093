using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Diagnoses;

/// <summary>A terminal where a lead can be put.</summary>
/// <param name="End">The terminal.</param>
/// <param name="Node">Its node.</param>
/// <param name="Reach">What it takes to get at it.</param>
internal sealed record BenchPoint(End End, int Node, double Reach)
{
    /// <summary>The points of a circuit: of each node the terminal that is easiest to get at, the first of several; nodes in order.</summary>
    public static ImmutableArray<BenchPoint> Of(Circuit circuit, TerminalNodes nodes, Effort effort)
    {
        Dictionary<int, BenchPoint> best = [];
        foreach (var end in nodes.Ends)
        {
            if (end.Part is not { } id || circuit.FindPart(id) is not { } part || part.Kind.TerminalNamed(end.Terminal) is null) continue;
            int node = nodes.NodeOf(end);
            double reach = effort.ToReach(part);
            if (node >= 0 && (!best.TryGetValue(node, out var known) || reach < known.Reach)) best[node] = new(end, node, reach);
        }
        return [.. best.Values.OrderBy(p => p.Node)];
    }

    /// <summary>As it is named: <c>H1.1</c>, <c>case of E1</c>, <c>X1</c>.</summary>
    public string TextIn(Circuit circuit) => End.Terminal == "case" ? $"case of {End.Part}" : circuit.TextOf(End);
}
