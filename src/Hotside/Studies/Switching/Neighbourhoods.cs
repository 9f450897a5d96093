using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Which branches may lie on one path with a load: those of its block once all poles that always stand are one point. What lies elsewhere cannot matter to it.
/// </summary>
internal sealed class Neighbourhoods
{
    private readonly int[] blocks;
    private readonly HashSet<int> resisting = [];
    private readonly Dictionary<int, int> consumers = [];

    public Neighbourhoods(ContactGraph graph, ImmutableArray<Supply> supplies)
    {
        var poles = supplies.SelectMany(s => s.Hot.Concat(s.Return).Select(p => (p.Point, Stands: p.When.IsAlways && !s.IsAcrossPosts))).ToArray();
        UnionFind merged = new(graph.Size);
        foreach (var pole in poles)
            if (pole.Stands)
                merged.Join(graph.Return, pole.Point);
        var edges = graph.Branches.Select(b => (merged.Find(b.Source), merged.Find(b.Target))).ToList();
        // A pole that stands at times only is a point of the way at other times, and yet may be where a way ends.
        edges.AddRange(poles.Where(p => !p.Stands).Select(p => (merged.Find(p.Point), merged.Find(graph.Return))));
        blocks = Blocks.Of(graph.Size, edges);
        foreach (var branch in graph.Branches)
        {
            int block = blocks[branch.Number];
            if (block < 0) continue;
            if (branch.Role == BranchRole.InLine) resisting.Add(block);
            if (branch.Role == BranchRole.Consumer) consumers[block] = consumers.GetValueOrDefault(block) + 1;
        }
    }

    /// <summary>Whether a resistance or a one-way element may lie on a path with the load.</summary>
    public bool HasResistance(Branch load) => resisting.Contains(blocks[load.Number]);

    /// <summary>Whether another consumer may.</summary>
    public bool HasOtherConsumer(Branch load) => consumers.GetValueOrDefault(blocks[load.Number]) > 1;

    /// <summary>Whether two branches may lie on one path.</summary>
    public bool AreTogether(Branch a, Branch b) => blocks[a.Number] >= 0 && blocks[a.Number] == blocks[b.Number];
}
