using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>
/// Which branches may lie on one path with a load: those of its block once all poles that always stand are one point. What lies elsewhere cannot matter to it.
/// </summary>
internal sealed class Neighbourhoods
{
    private readonly ContactGraph graph;
    private readonly int? mostTurns;
    private readonly int[] blocks;
    private readonly DisjointSets merged;
    private readonly ImmutableArray<(int, int)> poleEdges;
    private readonly Dictionary<int, int> consumers = [];
    private readonly Dictionary<Branch, ImmutableArray<Branch>> inLineWith = [];
    private readonly Dictionary<int, Neighbourhood> known = [];

    public Neighbourhoods(ContactGraph graph, ImmutableArray<Supply> supplies, int? mostTurns)
    {
        (this.graph, this.mostTurns) = (graph, mostTurns);
        var poles = supplies.SelectMany(s => s.Hot.Concat(s.Return).Select(p => (p.Point, Stands: p.When.IsAlways && !s.IsAcrossPosts))).Distinct().ToArray();
        merged = new(graph.Size);
        foreach (var (point, stands) in poles)
            if (stands)
                merged.Join(graph.Return, point);
        // A pole that stands at times only is a point of the way at other times, and yet may be where a way ends.
        // A switch between a battery and the return lies on a ring through the battery alone, and all current passes it.
        poleEdges = [.. poles.Where(p => !p.Stands).Select(p => (merged.Find(p.Point), merged.Find(graph.Return))), .. graph.Sources.Select(s => (merged.Find(s.Plus), merged.Find(s.Minus)))];
        blocks = BlocksOf(graph.Branches);
        foreach (var branch in graph.Branches)
            if (branch.Role == BranchRole.Consumer && blocks[branch.Number] >= 0)
                consumers[blocks[branch.Number]] = consumers.GetValueOrDefault(blocks[branch.Number]) + 1;
    }

    /// <summary>What may lie on a path with the load that passes no other consumer.</summary>
    public ImmutableArray<Branch> InLineWith(Branch load) => inLineWith.TryGetValue(load, out var known) ? known : inLineWith[load] = FindInLineWith(load);

    /// <summary>Whether another consumer may lie on a path with the load.</summary>
    public bool HasOtherConsumer(Branch load) => consumers.GetValueOrDefault(blocks[load.Number]) > 1;

    /// <summary>What may lie on one path with a branch; nothing where both its ends are one point.</summary>
    public Neighbourhood Of(Branch branch)
    {
        int block = blocks[branch.Number];
        return known.TryGetValue(block, out var found) ? found
            : known[block] = new(graph, [.. graph.Branches.Where(b => block >= 0 && blocks[b.Number] == block)]) { MostTurns = mostTurns };
    }

    // Within its block, for what lies on a ring without other consumers lies on one with them.
    private ImmutableArray<Branch> FindInLineWith(Branch load)
    {
        var inLine = Of(load).Branches.Where(b => b == load || b.Role != BranchRole.Consumer).ToImmutableArray();
        if (inLine.All(b => b.Role == BranchRole.Link || b == load)) return inLine;
        int[] own = BlocksOf(inLine);
        int block = own[inLine.IndexOf(load)];
        return block < 0 ? [] : [.. inLine.Where((_, i) => own[i] == block)];
    }

    private int[] BlocksOf(IEnumerable<Branch> branches) =>
        Blocks.Of(graph.Size, [.. branches.Select(b => (merged.Find(b.Source), merged.Find(b.Target))), .. poleEdges]);
}
