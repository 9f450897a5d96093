using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Faults;

/// <summary>Conductors that carry one current for good, having nothing but single nodes and elements between them: an open or a bad joint in any of them does the same.</summary>
internal static class SeriesRuns
{
    /// <summary>The run of each conductor, by the number of one of the model's edges.</summary>
    public static ImmutableArray<int> Of(CircuitModel model)
    {
        var edges = model.Network.Edges;
        DisjointSets runs = new(edges.Length);
        int[] degree = new int[model.Network.NodeCount], first = new int[model.Network.NodeCount];
        for (int e = 0; e < edges.Length; e++)
            foreach (int node in new[] { edges[e].A, edges[e].B })
                if (node >= 0 && degree[node]++ == 0) first[node] = e;
        // A regulator is no edge, yet it carries current.
        foreach (var element in model.Elements.Where(e => e.Regulator >= 0))
            foreach (int node in new[] { element.A, element.B })
                if (node >= 0) degree[node] += 2;
        for (int e = 0; e < edges.Length; e++)
            foreach (int node in new[] { edges[e].A, edges[e].B })
                if (node >= 0 && degree[node] == 2) runs.Join(first[node], e);
        return [.. Enumerable.Range(0, model.Circuit.Conductors.Length).Select(runs.Find)];
    }
}
