using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Finds when a path from one group of poles to another meets no point twice and passes a load, exactly. A state is taken and searched; what is found there is widened
/// to all states in which it holds for the same reason, and these are done with.
/// </summary>
/// <remarks>
/// A path passes resistances and consumers in some order, and between them what is joined. It stands in every state in which these conduct, their ends are joined as
/// they are here, and no two of its points are joined to each other, nor any to a pole: that is one condition, not a list of states. Where there is no path, positions are
/// forgotten one after the other as long as there is none even with every contact that they move taken as passable.
/// </remarks>
internal sealed class PathSearch
{
    /// <summary>The most paths and gaps that are looked at for one load.</summary>
    private const int Most = 400;

    private readonly ContactGraph graph;
    private readonly DecisionSpace space;
    private readonly Supply supply;
    private readonly bool throughConsumers;
    private readonly ImmutableArray<int> needed;
    private readonly Dictionary<Branch, PathView> views = [];
    private readonly Dictionary<(int, int, Condition, bool, Condition), (Condition When, bool IsGivenUp)> known = [];

    /// <summary>Prepares a search.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="supply">Between which poles.</param>
    /// <param name="throughConsumers">Whether other consumers are let through.</param>
    public PathSearch(ContactGraph graph, Supply supply, bool throughConsumers)
    {
        this.graph = graph;
        this.supply = supply;
        space = graph.Positions.Space;
        this.throughConsumers = throughConsumers;
        needed = [.. supply.Poles.SelectMany(p => space.SupportOf(p.When)).Append(graph.Positions.Candour).Distinct()];
    }

    /// <summary>The loads whose search was given up: paths may be missing.</summary>
    public HashSet<Branch> GivenUp { get; } = [];

    /// <summary>When there is such a path.</summary>
    /// <param name="load">The load.</param>
    /// <param name="possible">The states that matter; there are paths in no others.</param>
    /// <param name="within">What the path must lie in: branches of other blocks are left out.</param>
    public Condition When(Branch load, Condition possible, ImmutableArray<Branch> within)
    {
        possible = Now(possible);
        if (load.Source == load.Target || possible.IsNever) return space.NeverHolds;
        // What lies beside it between the same points, as one headlamp beside the other, has the same paths.
        var key = (load.Source, load.Target, load.When, load.IsOneWay, possible);
        if (!known.TryGetValue(key, out var found)) known[key] = found = Search(load, possible, within);
        if (found.IsGivenUp) GivenUp.Add(load);
        return found.When;
    }

    private (Condition When, bool IsGivenUp) Search(Branch load, Condition possible, ImmutableArray<Branch> within)
    {
        var result = space.NeverHolds;
        bool isGivenUp = false;
        var view = ViewOf(load, within);
        var left = possible;
        for (int looked = 0; !left.IsNever; looked++)
        {
            graph.Positions.Cancel.ThrowIfCancellationRequested();
            if (looked == Most)
            {
                isGivenUp = true;
                break;
            }
            int[] state = space.AnyState(left);
            Condition alike;
            if (Find(view, state) is { } path) result |= alike = Now(StatesOf(path)) & possible;
            else alike = WithoutPath(view, state);
            left &= !alike;
        }
        return (result, isGivenUp || view.IsApproximate);
    }

    /// <summary>The path in a full state.</summary>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    /// <param name="within">What the path must lie in.</param>
    /// <returns>The branches passed beside the load; <see langword="null"/> when there is no path.</returns>
    public ImmutableArray<Branch>? PathIn(Branch load, int[] state, ImmutableArray<Branch> within) =>
        load.Source == load.Target || Find(ViewOf(load, within), state) is not { } path ? null
        : [.. path.Steps.Select(s => s.Branch).Where(b => b != load)];

    private PathView ViewOf(Branch load, ImmutableArray<Branch> within) =>
        views.TryGetValue(load, out var view) ? view : views[load] = new(supply, load, [.. Passed(load, within)]);

    private IEnumerable<Branch> Passed(Branch load, ImmutableArray<Branch> within) =>
        within.Where(b => b != load && b.Source != b.Target && !b.When.IsNever && (throughConsumers || b.Role != BranchRole.Consumer));

    private Condition Now(Condition condition) => condition.Given(graph.Positions.Candour, 0);

    private FoundPath? Find(PathView view, int[] state)
    {
        var conducts = new Condition[view.Others.Length];
        for (int i = 0; i < conducts.Length; i++) conducts[i] = Known(view.Others[i].When);
        var poles = new Condition[supply.Poles.Length];
        for (int i = 0; i < poles.Length; i++) poles[i] = Known(supply.Poles[i].When);
        return view.Find(conducts, poles);

        Condition Known(Condition c) => c.HoldsIn(state) ? space.AlwaysHolds : space.NeverHolds;
    }

    // All states in which a path stands: its branches conduct, between them is joined what is joined here, and nothing else joins it to itself or to a pole.
    private Condition StatesOf(FoundPath path)
    {
        var steps = path.Steps;
        var stands = From(supply.Hot, steps[0].From) & From(supply.Return, steps[^1].To);
        foreach (var step in steps) stands &= step.Branch.When;
        for (int i = 0; i + 1 < steps.Length; i++)
        {
            var joined = graph.JoinedTo(steps[i].To);
            stands &= joined[steps[i + 1].From];
            for (int j = i + 1; j + 1 < steps.Length; j++) stands &= !joined[steps[j].To];
            foreach (var pole in supply.Poles) stands &= !(pole.When & joined[pole.Point]);
        }
        return stands;
    }

    private static Condition[] Given(ReadOnlySpan<Branch> branches, int[] known)
    {
        var conducts = new Condition[branches.Length];
        for (int i = 0; i < conducts.Length; i++) conducts[i] = branches[i].When.Given(known);
        return conducts;
    }

    private Condition From(ImmutableArray<Pole> poles, int point)
    {
        var joined = graph.JoinedTo(point);
        return poles.Aggregate(space.NeverHolds, (sum, pole) => sum | (pole.When & joined[pole.Point]));
    }

    // A set of states around one without a path in which there is none either.
    private Condition WithoutPath(PathView view, int[] state)
    {
        int[] known = new int[state.Length];
        Array.Fill(known, -1);
        foreach (int v in needed) known[v] = state[v];
        int[] free = [.. view.Variables.Where(v => known[v] < 0)];
        foreach (int v in free) known[v] = state[v];
        var poles = supply.Poles.Select(p => p.When.Given(known)).ToArray();
        Forget(free);
        var alike = space.AlwaysHolds;
        for (int v = 0; v < known.Length; v++)
            if (known[v] >= 0 && v != graph.Positions.Candour)
                alike &= space.Where(v, known[v]);
        return alike;

        // All at once if it can be, else half by half.
        void Forget(ReadOnlySpan<int> some)
        {
            if (some.IsEmpty) return;
            foreach (int v in some) known[v] = -1;
            if (view.Find(Given(view.Others, known), poles) is null) return;
            foreach (int v in some) known[v] = state[v];
            if (some.Length == 1) return;
            Forget(some[..(some.Length / 2)]);
            Forget(some[(some.Length / 2)..]);
        }
    }
}
