using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>The circuit as one load's search sees it, in partial states.</summary>
internal sealed class PathView
{
    private readonly Supply supply;
    private readonly Branch load;
    private readonly Branch[] others;
    private readonly bool hasOneWay;

    // Points are numbered anew, for a load's neighbourhood is small.
    private readonly int loadSource, loadTarget;
    private readonly int[] sources, targets, poleAt;
    private ImmutableArray<int> variables;
    private readonly DisjointSets joined;
    private readonly DisjointPaths paths;
    private readonly List<(int A, int B, int Edge, bool IsDear)> edges = [];

    public PathView(Supply supply, Branch load, Branch[] others)
    {
        (this.supply, this.load, this.others) = (supply, load, others);
        hasOneWay = load.IsOneWay || others.Any(b => b.IsOneWay);
        Dictionary<int, int> numbers = [];
        int Number(int point) => numbers.TryGetValue(point, out int n) ? n : numbers[point] = numbers.Count;
        (loadSource, loadTarget) = (Number(load.Source), Number(load.Target));
        sources = [.. others.Select(b => Number(b.Source))];
        targets = [.. others.Select(b => Number(b.Target))];
        poleAt = [.. supply.Poles.Select(p => Number(p.Point))];
        joined = new(numbers.Count);
        paths = new(numbers.Count, others.Length);
    }

    /// <summary>All branches but the load.</summary>
    public ReadOnlySpan<Branch> Others => others;

    /// <summary>The variables on which it depends what they conduct.</summary>
    public ImmutableArray<int> Variables =>
        variables.IsDefault ? variables = [.. others.Select(b => b.When).Distinct().SelectMany(w => w.Space.SupportOf(w)).Distinct().Order()] : variables;

    /// <summary>Whether a directed search was given up.</summary>
    public bool IsApproximate { get; private set; }

    /// <summary>A path in a partial state, undecided contacts taken as passable edges and avoided where it is easily done.</summary>
    /// <param name="conducts">What is known of each branch.</param>
    /// <param name="poles">What is known of each pole, in the supply's order; decided.</param>
    public FoundPath? Find(Condition[] conducts, Condition[] poles)
    {
        joined.Clear();
        edges.Clear();
        for (int i = 0; i < others.Length; i++)
            if (others[i].Role == BranchRole.Link && conducts[i].IsAlways)
                joined.Join(sources[i], targets[i]);
        if (GatherPoles(poles) is not var (hot, ground, foreign)) return null;
        int a = joined.Find(loadSource), b = joined.Find(loadTarget);
        if (hot == ground || a == b || foreign.Contains(a) || foreign.Contains(b)) return null;
        for (int i = 0; i < others.Length; i++)
        {
            int from = joined.Find(sources[i]), to = joined.Find(targets[i]);
            if (from == to || conducts[i].IsNever || foreign.Contains(from) || foreign.Contains(to)) continue;
            edges.Add((from, to, i, conducts[i].IsOpen));
        }
        if (paths.Find(edges, (a, b), (hot, ground)) is not { } found) return null;
        var (fromHot, toReturn) = found.First.Terminal == hot ? (found.First, found.Second) : (found.Second, found.First);
        List<int> along = [.. Enumerable.Reverse(fromHot.Edges), -1, .. toReturn.Edges];
        if (hasOneWay && !FollowsDirections(along, supply.HotIsHigher ? hot : ground))
        {
            var directed = DirectedWalk(supply.HotIsHigher ? hot : ground, supply.HotIsHigher ? ground : hot);
            if (directed is null) return null;
            if (!supply.HotIsHigher) directed.Reverse();
            along = directed;
        }
        return Describe(along, hot);
    }

    // The poles of a group are one point in a state in which they stand.
    private (int Hot, int Ground, HashSet<int> Foreign)? GatherPoles(Condition[] poles)
    {
        int hotCount = supply.Hot.Length, returnCount = supply.Return.Length;
        if (Gather(0, poles.AsSpan(0, hotCount)) is not { } hot) return null;
        if (Gather(hotCount, poles.AsSpan(hotCount, returnCount)) is not { } ground) return null;
        (hot, ground) = (joined.Find(hot), joined.Find(ground));
        HashSet<int> foreign = [];
        for (int i = hotCount + returnCount; i < poles.Length; i++)
            if (!poles[i].IsNever)
                foreign.Add(joined.Find(poleAt[i]));
        foreign.ExceptWith([hot, ground]);
        return (hot, ground, foreign);
    }

    private int? Gather(int from, ReadOnlySpan<Condition> live)
    {
        int? first = null;
        for (int i = 0; i < live.Length; i++)
        {
            if (live[i].IsNever) continue;
            if (first is { } known) joined.Join(known, poleAt[from + i]);
            first ??= poleAt[from + i];
        }
        return first;
    }

    // Step by step from the hot pole to the return.
    private FoundPath Describe(IEnumerable<int> along, int hot)
    {
        var steps = ImmutableArray.CreateBuilder<PathStep>();
        int at = hot;
        foreach (int i in along)
        {
            var branch = BranchAt(i);
            bool isForward = SourceAt(i) == at;
            steps.Add(isForward ? new(branch, branch.Source, branch.Target) : new(branch, branch.Target, branch.Source));
            at = isForward ? TargetAt(i) : SourceAt(i);
        }
        return new(steps.ToImmutable());
    }

    private int SourceAt(int i) => joined.Find(i < 0 ? loadSource : sources[i]);

    private int TargetAt(int i) => joined.Find(i < 0 ? loadTarget : targets[i]);

    private Branch BranchAt(int i) => i < 0 ? load : others[i];

    // The list runs from the hot pole to the return.
    private bool FollowsDirections(List<int> along, int higher)
    {
        var order = supply.HotIsHigher ? along : Enumerable.Reverse(along);
        int at = higher;
        foreach (int i in order)
        {
            int source = SourceAt(i), target = TargetAt(i);
            if (BranchAt(i).IsOneWay && source != at) return false;
            at = source == at ? target : source;
        }
        return true;
    }

    // A depth-first search with the current; only where one-way elements spoil the undirected paths.
    private List<int>? DirectedWalk(int from, int to)
    {
        int a = joined.Find(loadSource), b = joined.Find(loadTarget);
        var at = edges.Append((A: a, B: b, Edge: -1, IsDear: false)).OrderBy(e => e.IsDear).SelectMany(e => new[] { (Point: e.A, e), (Point: e.B, e) }).ToLookup(x => x.Point, x => x.e);
        HashSet<int> met = [from];
        List<int> along = [];
        int steps = 5_000;
        bool isFound = Walk(from, false);
        if (steps <= 0) IsApproximate = true;
        return isFound ? along : null;

        bool Walk(int point, bool hasLoad)
        {
            if (point == to) return hasLoad;
            foreach (var edge in at[point])
            {
                int next = edge.A == point ? edge.B : edge.A;
                if (BranchAt(edge.Edge).IsOneWay && SourceAt(edge.Edge) != point) continue;
                if (met.Contains(next) || --steps <= 0) continue;
                met.Add(next);
                along.Add(edge.Edge);
                if (Walk(next, hasLoad || edge.Edge < 0)) return true;
                along.RemoveAt(along.Count - 1);
                met.Remove(next);
            }
            return false;
        }
    }
}

/// <summary>A path found.</summary>
/// <param name="Steps">What it passes, the load among it, from the hot pole to the return.</param>
internal sealed record FoundPath(ImmutableArray<PathStep> Steps);

/// <summary>A branch that a path passes.</summary>
/// <param name="Branch">The branch.</param>
/// <param name="From">The point of the contact graph on the hot side.</param>
/// <param name="To">The point on the side of the return.</param>
internal sealed record PathStep(Branch Branch, int From, int To);
