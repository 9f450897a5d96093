namespace Hotside.Layouts.Passes;

/// <summary>
/// Finds whole numbers x that minimise Σ weight·(x_to − x_from) under x_to − x_from ≥ length, by the network simplex method of
/// Gansner, Koutsofios, North and Vo (IEEE Transactions on Software Engineering 19(3), 1993). Exact, so integers stay integers.
/// </summary>
internal sealed class NetworkSimplex
{
    // Far below every real distance: a constraint that only ties loose groups of variables to a common root.
    private const int Loose = -1_000_000;
    private readonly List<Constraint> constraints = [];
    private int variables;

    private readonly record struct Constraint(int From, int To, int Length, int Weight);

    public int AddVariable() => variables++;

    /// <summary>Demands to − from ≥ length; each module of to − from costs <paramref name="weight"/>.</summary>
    public void AtLeast(int from, int to, int length, int weight = 0) => constraints.Add(new(from, to, length, weight));

    /// <summary>Each module between a + offset and b + offset costs <paramref name="weight"/>.</summary>
    public void Near(int a, int aOffset, int b, int bOffset, int weight)
    {
        int below = AddVariable();
        AtLeast(below, a, -aOffset, weight);
        AtLeast(below, b, -bOffset, weight);
    }

    /// <summary>The values by variable, or null when the constraints contradict each other.</summary>
    /// <param name="near">Values of the first variables in a like system: a start close to the end saves most of the way.</param>
    public int[]? Solve(int[]? near = null)
    {
        int root = variables;
        List<Constraint> edges = [.. constraints];
        for (int i = 0; i < variables; i++) edges.Add(new(root, i, Loose, 0));
        int[]? start = Feasible(edges, variables + 1, near ?? []);
        if (start is null) return null;
        Tree tree = new([.. edges], start);
        tree.Optimise();
        return tree.Values[..variables];
    }

    /// <summary>Longest paths from the sources, and from where the first variables would like to be; null when there is a cycle of constraints.</summary>
    private static int[]? Feasible(List<Constraint> edges, int count, int[] near)
    {
        int[] waiting = new int[count];
        List<int>[] outgoing = Lists(count);
        for (int e = 0; e < edges.Count; e++)
        {
            waiting[edges[e].To]++;
            outgoing[edges[e].From].Add(e);
        }
        int[] x = new int[count];
        Array.Fill(x, near.Length > 0 ? Loose : 0);
        near.CopyTo(x, 0);
        if (near.Length > 0) x[^1] = near.Min();
        Queue<int> ready = new(Enumerable.Range(0, count).Where(i => waiting[i] == 0));
        int done = 0;
        for (; ready.TryDequeue(out int at); done++)
            foreach (int e in outgoing[at])
            {
                x[edges[e].To] = Math.Max(x[edges[e].To], x[at] + edges[e].Length);
                if (--waiting[edges[e].To] == 0) ready.Enqueue(edges[e].To);
            }
        if (done < count) return null;
        // What only hangs on others comes as close to them as it may.
        for (int i = near.Length; near.Length > 0 && i < count - 1; i++)
            x[i] = outgoing[i].Select(e => x[edges[e].To] - edges[e].Length).DefaultIfEmpty(x[i]).Min();
        return x;
    }

    private static List<int>[] Lists(int count) => [.. Enumerable.Range(0, count).Select(_ => new List<int>())];

    /// <summary>The spanning tree of tight constraints that the method walks along.</summary>
    private sealed class Tree
    {
        private const int PivotLimit = 20_000;
        private readonly Constraint[] edges;
        private readonly int[] incident, firstIncident;
        private readonly List<int>[] branches;
        private readonly bool[] inTree;
        private readonly int[] parent, parentEdge, first, last, postorder, stack, next;
        private readonly long[] cut;
        private int cursor;

        public Tree(Constraint[] edges, int[] start)
        {
            this.edges = edges;
            Values = start;
            int count = start.Length;
            branches = Lists(count);
            (incident, firstIncident) = Incidence(edges, count);
            (inTree, cut) = (new bool[edges.Length], new long[edges.Length]);
            (parent, parentEdge, first) = (new int[count], new int[count], new int[count]);
            (last, postorder, stack, next) = (new int[count], new int[count], new int[count], new int[count]);
        }

        // The constraints at each variable, one after the other in one array.
        private static (int[] Incident, int[] First) Incidence(Constraint[] edges, int count)
        {
            int[] first = new int[count + 1], incident = new int[2 * edges.Length];
            foreach (var edge in edges)
            {
                first[edge.From + 1]++;
                first[edge.To + 1]++;
            }
            for (int i = 0; i < count; i++) first[i + 1] += first[i];
            int[] next = first[..count];
            for (int e = 0; e < edges.Length; e++)
            {
                incident[next[edges[e].From]++] = e;
                incident[next[edges[e].To]++] = e;
            }
            return (incident, first);
        }

        private ReadOnlySpan<int> At(int variable) => incident.AsSpan(firstIncident[variable]..firstIncident[variable + 1]);

        public int[] Values { get; }

        public void Optimise()
        {
            GrowTightTree();
            int root = Values.Length - 1;
            (parent[root], parentEdge[root], first[root]) = (-1, -1, 1);
            Number(root);
            CutValues();
            for (int pivots = 0; pivots < PivotLimit; pivots++)
            {
                int leaving = Leaving();
                if (leaving < 0 || !Pivot(leaving)) return;
            }
        }

        private int Slack(int e) => Values[edges[e].To] - Values[edges[e].From] - edges[e].Length;

        private int Other(int e, int end) => edges[e].From == end ? edges[e].To : edges[e].From;

        private void GrowTightTree()
        {
            bool[] reached = new bool[Values.Length];
            List<int> members = [0];
            reached[0] = true;
            for (int scanned = 0; ;)
            {
                for (; scanned < members.Count; scanned++)
                    foreach (int e in At(members[scanned]))
                        if (!reached[Other(e, members[scanned])] && Slack(e) == 0) Reach(e, Other(e, members[scanned]));
                if (members.Count == Values.Length) return;
                int nearest = Nearest(members, reached);
                int shift = reached[edges[nearest].To] ? -Slack(nearest) : Slack(nearest);
                foreach (int member in members) Values[member] += shift;
                Reach(nearest, reached[edges[nearest].From] ? edges[nearest].To : edges[nearest].From);
                scanned = 0;
            }

            void Reach(int e, int member)
            {
                reached[member] = true;
                members.Add(member);
                AddBranch(e);
            }
        }

        private int Nearest(List<int> members, bool[] reached)
        {
            int nearest = -1, least = int.MaxValue;
            foreach (int member in members)
                foreach (int e in At(member))
                    if (!reached[Other(e, member)] && Slack(e) < least)
                    {
                        (nearest, least) = (e, Slack(e));
                        if (least <= 1) return nearest;
                    }
            return nearest;
        }

        private void AddBranch(int e)
        {
            inTree[e] = true;
            branches[edges[e].From].Add(e);
            branches[edges[e].To].Add(e);
        }

        /// <summary>Postorder numbers: a variable's subtree is the numbers from its first to its last. What hangs elsewhere keeps its own.</summary>
        private void Number(int top)
        {
            int depth = 0, number = first[top];
            (stack[0], next[top]) = (top, 0);
            while (depth >= 0)
            {
                int at = stack[depth];
                if (next[at] == branches[at].Count)
                {
                    postorder[number - 1] = at;
                    last[at] = number++;
                    depth--;
                    continue;
                }
                int e = branches[at][next[at]++];
                if (e == parentEdge[at]) continue;
                int child = Other(e, at);
                (parent[child], parentEdge[child], first[child], next[child]) = (at, e, number, 0);
                stack[++depth] = child;
            }
        }

        /// <summary>What a module of stretch of a branch costs: the weights that cross between its two sides.</summary>
        private void CutValues()
        {
            long[] sum = new long[Values.Length];
            foreach (Constraint edge in edges)
            {
                sum[edge.From] += edge.Weight;
                sum[edge.To] -= edge.Weight;
            }
            for (int k = 0; k < Values.Length - 1; k++)
            {
                int at = postorder[k], e = parentEdge[at];
                sum[parent[at]] += sum[at];
                cut[e] = edges[e].From == at ? sum[at] : -sum[at];
            }
        }

        /// <summary>A branch whose stretching lowers the cost; searched round about, the worst of a handful.</summary>
        private int Leaving()
        {
            const int handful = 20;
            int leaving = -1, found = 0;
            for (int k = 0; k < Values.Length - 1 && found <= handful; k++)
            {
                int e = parentEdge[postorder[cursor]];
                cursor = cursor + 1 >= Values.Length - 1 ? 0 : cursor + 1;
                if (cut[e] >= (leaving < 0 ? 0 : cut[leaving])) continue;
                leaving = e;
                found++;
            }
            return leaving;
        }

        private bool Pivot(int leaving)
        {
            int child = parentEdge[edges[leaving].From] == leaving ? edges[leaving].From : edges[leaving].To;
            bool childIsFrom = child == edges[leaving].From;
            int entering = Entering(child, childIsFrom);
            if (entering < 0) return false;
            int shift = childIsFrom ? -Slack(entering) : Slack(entering);
            for (int k = first[child]; shift != 0 && k <= last[child]; k++) Values[postorder[k - 1]] += shift;
            long value = cut[leaving];
            int top = Update(edges[entering].From, edges[entering].To, value, true);
            Update(edges[entering].To, edges[entering].From, value, false);
            (cut[entering], cut[leaving], inTree[leaving]) = (-value, 0, false);
            branches[edges[leaving].From].Remove(leaving);
            branches[edges[leaving].To].Remove(leaving);
            AddBranch(entering);
            Number(top);
            return true;
        }

        /// <summary>The tightest constraint that holds the child's subtree back from moving the way the leaving branch pulls.</summary>
        private int Entering(int child, bool childIsFrom)
        {
            int entering = -1, least = int.MaxValue, from = first[child], to = last[child];
            for (int k = from; k <= to; k++)
            {
                int inside = postorder[k - 1];
                foreach (int e in At(inside))
                {
                    ref readonly var edge = ref edges[e];
                    if (childIsFrom != (edge.To == inside)) continue;
                    int outside = childIsFrom ? last[edge.From] : last[edge.To];
                    if (outside >= from && outside <= to) continue;
                    int slack = Values[edge.To] - Values[edge.From] - edge.Length;
                    if (slack >= least || inTree[e]) continue;
                    (entering, least) = (e, slack);
                    if (least == 0) return entering;
                }
            }
            return entering;
        }

        // Up to where both ends of the new branch hang; returns that.
        private int Update(int at, int until, long value, bool down)
        {
            while (!(first[at] <= last[until] && last[until] <= last[at]))
            {
                int e = parentEdge[at];
                cut[e] += (at == edges[e].From) == down ? value : -value;
                at = parent[at];
            }
            return at;
        }
    }
}
