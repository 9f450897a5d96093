using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Finds when a path from one group of poles to another meets no point twice and passes a load, exactly: by single states where it must, by whole sets of states
/// where a path is found that nothing still undecided can disturb.
/// </summary>
/// <remarks>
/// A partial state decides some contacts. If even with all others as passable edges there is no path, there is none in any completion. If there is a path through decided
/// contacts alone, and no undecided contact can join two of its points or one of them to a foreign pole, it stands in all completions. Otherwise a variable
/// of a contact that matters is decided next.
/// </remarks>
internal sealed class PathSearch
{
    private readonly ContactGraph graph;
    private readonly DecisionSpace space;
    private readonly Supply supply;
    private readonly ImmutableArray<Branch> branches;
    private int budget;

    /// <summary>Prepares a search.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="supply">Between which poles.</param>
    /// <param name="throughConsumers">Whether other consumers are let through.</param>
    /// <param name="budget">The greatest number of partial states looked at over all loads.</param>
    public PathSearch(ContactGraph graph, Supply supply, bool throughConsumers, int budget = 20_000)
    {
        this.graph = graph;
        this.supply = supply;
        this.budget = budget;
        space = graph.Positions.Space;
        branches = [.. graph.Branches.Where(b => b.Source != b.Target && !b.When.IsNever && (throughConsumers || b.Role != BranchRole.Consumer))];
    }

    /// <summary>Whether a search was given up.</summary>
    public bool IsApproximate { get; private set; }

    /// <summary>When there is such a path.</summary>
    /// <param name="load">The load.</param>
    /// <param name="within">What the path must lie in: branches of other blocks are left out; <see langword="null"/>: everywhere.</param>
    /// <param name="confirm">Asked of each set of states with a path, given by the values known (−1: any): whether it counts; open where that differs within the set.</param>
    public Condition When(Branch load, Func<Branch, bool>? within = null, Func<int[], Condition>? confirm = null)
    {
        if (load.Source == load.Target || load.When.IsNever) return space.NeverHolds;
        var others = branches.Where(b => b != load && (within is null || within(b))).ToArray();
        int limit = Math.Min(budget, 2_000);
        budget -= limit;
        int[] known = new int[space.VariableCount];
        Array.Fill(known, -1);
        known[graph.Positions.Candour] = 0;
        PathView view = new(supply, load, others);
        Condition Now(Condition c) => c.Given(graph.Positions.Candour, 0);
        var result = Decide(view, [.. others.Select(b => Now(b.When))], [.. supply.Poles.Select(p => Now(p.When))], known, confirm, ref limit);
        budget += Math.Max(limit, 0);
        IsApproximate |= view.IsApproximate;
        return result & load.When;
    }

    /// <summary>The path in a full state.</summary>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    /// <returns>The branches passed beside the load; <see langword="null"/> when there is no path.</returns>
    public ImmutableArray<Branch>? PathIn(Branch load, int[] state)
    {
        if (load.Source == load.Target) return null;
        var others = branches.Where(b => b != load).ToArray();
        Condition Known(Condition c) => c.HoldsIn(state) ? space.AlwaysHolds : space.NeverHolds;
        PathView view = new(supply, load, others);
        return view.Find([.. others.Select(b => Known(b.When))], [.. supply.Poles.Select(p => Known(p.When))])?.Branches;
    }

    private Condition Decide(PathView view, Condition[] conducts, Condition[] poles, int[] known, Func<int[], Condition>? confirm, ref int limit)
    {
        if (--limit < 0)
        {
            IsApproximate = true;
            return space.NeverHolds;
        }
        int variable;
        if (Array.FindIndex(poles, p => p.IsOpen) is >= 0 and var open) variable = poles[open].TopVariable;
        else if (view.Find(conducts, poles) is not { } path) return space.NeverHolds;
        else if (path.FirstOpen is { } undecided) variable = undecided.TopVariable;
        else
        {
            if (view.Disturber(conducts, path) is { } disturber) variable = disturber.TopVariable;
            else if (confirm is null) return space.AlwaysHolds;
            else
            {
                var confirmed = confirm(known);
                if (!confirmed.IsOpen) return confirmed;
                variable = confirmed.TopVariable;
            }
        }

        var result = space.NeverHolds;
        for (int value = 0; value < space.ArityOf(variable); value++)
        {
            int v = value;
            int[] more = (int[])known.Clone();
            more[variable] = value;
            var sub = Decide(view, [.. conducts.Select(c => c.Given(variable, v))], [.. poles.Select(c => c.Given(variable, v))], more, confirm, ref limit);
            result |= space.Where(variable, value) & sub;
        }
        return result;
    }
}
