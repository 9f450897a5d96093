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
        Condition Now(Condition c) => c.Given(graph.Positions.Candour, 0);
        var result = Decide(new(this, load, others), [.. others.Select(b => Now(b.When))], [.. AllPoles.Select(p => Now(p.When))], known, confirm, ref limit);
        budget += Math.Max(limit, 0);
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
        PathView view = new(this, load, others);
        return view.Find([.. others.Select(b => Known(b.When))], [.. AllPoles.Select(p => Known(p.When))])?.Branches;
    }

    private IEnumerable<Pole> AllPoles => supply.Hot.Concat(supply.Return).Concat(supply.Others);

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

    /// <summary>A path found.</summary>
    /// <param name="Branches">The branches passed beside the load.</param>
    /// <param name="Inner">The points met, the two poles left out.</param>
    /// <param name="Poles">The two poles.</param>
    /// <param name="Foreign">The points of foreign poles.</param>
    /// <param name="FirstOpen">A condition on it that is undecided.</param>
    private sealed record Path(ImmutableArray<Branch> Branches, HashSet<int> Inner, (int Hot, int Return) Poles, HashSet<int> Foreign, Condition? FirstOpen);

    /// <summary>The circuit as one load's search sees it, in partial states.</summary>
    private sealed class PathView
    {
        private readonly PathSearch search;
        private readonly Branch load;
        private readonly Branch[] others;
        private readonly bool hasOneWay;

        // Points are numbered anew, for a load's neighbourhood is small.
        private readonly int size;
        private readonly int loadSource, loadTarget;
        private readonly int[] sources, targets, poleAt;
        private UnionFind joined = new(0);

        public PathView(PathSearch search, Branch load, Branch[] others)
        {
            (this.search, this.load, this.others) = (search, load, others);
            hasOneWay = load.IsOneWay || others.Any(b => b.IsOneWay);
            Dictionary<int, int> numbers = [];
            int Number(int point) => numbers.TryGetValue(point, out int n) ? n : numbers[point] = numbers.Count;
            (loadSource, loadTarget) = (Number(load.Source), Number(load.Target));
            sources = [.. others.Select(b => Number(b.Source))];
            targets = [.. others.Select(b => Number(b.Target))];
            poleAt = [.. search.AllPoles.Select(p => Number(p.Point))];
            size = numbers.Count;
        }

        public Path? Find(Condition[] conducts, Condition[] poles)
        {
            var supply = search.supply;
            joined = new(size);
            for (int i = 0; i < others.Length; i++)
                if (others[i].Role == BranchRole.Link && conducts[i].IsAlways)
                    joined.Join(sources[i], targets[i]);
            int hotCount = supply.Hot.Length, returnCount = supply.Return.Length;
            if (Gather(0, poles.AsSpan(0, hotCount)) is not { } hot) return null;
            if (Gather(hotCount, poles.AsSpan(hotCount, returnCount)) is not { } ground) return null;
            (hot, ground) = (joined.Find(hot), joined.Find(ground));
            int a = joined.Find(loadSource), b = joined.Find(loadTarget);
            HashSet<int> foreign = [];
            for (int i = hotCount + returnCount; i < poles.Length; i++)
                if (!poles[i].IsNever)
                    foreign.Add(joined.Find(poleAt[i]));
            foreign.ExceptWith([hot, ground]);
            if (hot == ground || a == b || foreign.Contains(a) || foreign.Contains(b)) return null;

            List<(int A, int B, int Edge, bool IsDear)> edges = [];
            for (int i = 0; i < others.Length; i++)
            {
                int from = joined.Find(sources[i]), to = joined.Find(targets[i]);
                if (from == to || conducts[i].IsNever || foreign.Contains(from) || foreign.Contains(to)) continue;
                edges.Add((from, to, i, conducts[i].IsOpen));
            }
            if (DisjointPaths.Find(size, edges, (a, b), (hot, ground)) is not { } found) return null;
            var (fromHot, toReturn) = found.First.Terminal == hot ? (found.First, found.Second) : (found.Second, found.First);
            List<int> along = [.. Enumerable.Reverse(fromHot.Edges), -1, .. toReturn.Edges];
            if (hasOneWay && !FollowsDirections(along, supply.HotIsHigher ? hot : ground))
            {
                var directed = DirectedWalk(edges, supply.HotIsHigher ? hot : ground, supply.HotIsHigher ? ground : hot);
                if (directed is null) return null;
                along = directed;
            }
            return Describe(along.Where(i => i >= 0).ToArray(), conducts, (hot, ground), foreign);
        }

        /// <summary>An undecided contact that could join two points of a path, or one of them to a foreign pole.</summary>
        public Condition? Disturber(Condition[] conducts, Path path)
        {
            int[] labels = new int[size];
            Dictionary<int, List<int>> open = [];
            for (int i = 0; i < others.Length; i++)
                if (others[i].Role == BranchRole.Link && conducts[i].IsOpen)
                    foreach (int point in new[] { sources[i], targets[i] })
                        (open.TryGetValue(joined.Find(point), out var list) ? list : open[joined.Find(point)] = []).Add(i);
            // Labels: 1 the hot pole, 2 the return, 3 foreign poles, then one for each inner point.
            Queue<int> queue = new();
            void Mark(int point, int label)
            {
                labels[point] = label;
                queue.Enqueue(point);
            }
            Mark(path.Poles.Hot, 1);
            Mark(path.Poles.Return, 2);
            foreach (int point in path.Foreign) Mark(point, 3);
            int next = 4;
            foreach (int point in path.Inner) Mark(point, next++);
            while (queue.TryDequeue(out int point))
                foreach (int i in open.GetValueOrDefault(point) ?? [])
                {
                    int a = joined.Find(sources[i]), other = a == point ? joined.Find(targets[i]) : a;
                    if (labels[other] == 0) Mark(other, labels[point]);
                    else if (labels[other] != labels[point] && Math.Max(labels[other], labels[point]) > 3) return conducts[i];
                }
            return null;
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

        private Path Describe(int[] passed, Condition[] conducts, (int Hot, int Return) poles, HashSet<int> foreign)
        {
            HashSet<int> inner = [joined.Find(loadSource), joined.Find(loadTarget)];
            foreach (int i in passed) inner.UnionWith([joined.Find(sources[i]), joined.Find(targets[i])]);
            inner.ExceptWith([poles.Hot, poles.Return]);
            int open = Array.FindIndex(passed, i => conducts[i].IsOpen);
            return new([.. passed.Select(i => others[i])], inner, poles, foreign, open < 0 ? null : conducts[passed[open]]);
        }

        private int SourceAt(int i) => joined.Find(i < 0 ? loadSource : sources[i]);

        private Branch BranchAt(int i) => i < 0 ? load : others[i];

        // The list runs from the hot pole to the return.
        private bool FollowsDirections(List<int> along, int higher)
        {
            var order = search.supply.HotIsHigher ? along : Enumerable.Reverse(along);
            int at = higher;
            foreach (int i in order)
            {
                int source = SourceAt(i), target = joined.Find(i < 0 ? loadTarget : targets[i]);
                if (BranchAt(i).IsOneWay && source != at) return false;
                at = source == at ? target : source;
            }
            return true;
        }

        // A depth-first search with the current; only where one-way elements spoil the undirected paths.
        private List<int>? DirectedWalk(List<(int A, int B, int Edge, bool IsDear)> edges, int from, int to)
        {
            int a = joined.Find(loadSource), b = joined.Find(loadTarget);
            var at = edges.Append((A: a, B: b, Edge: -1, IsDear: false)).OrderBy(e => e.IsDear).SelectMany(e => new[] { (Point: e.A, e), (Point: e.B, e) }).ToLookup(x => x.Point, x => x.e);
            HashSet<int> met = [from];
            List<int> along = [];
            int steps = 5_000;
            bool isFound = Walk(from, false);
            if (steps <= 0) search.IsApproximate = true;
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
}
