using Hotside.Studies.Switching;

namespace Hotside.Studies.Operating;

/// <summary>
/// The currents of one state with every consumer at its rated resistance: nodal equations, one-way elements opened and closed until they agree
/// with their currents. It tells whether and where current flows, not how much to the ampere.
/// </summary>
internal sealed class NodalSolution
{
    private const double Leak = 1e-9;

    private readonly ContactGraph graph;
    private readonly int[] node;
    private readonly List<Branch> branches = [];
    private readonly double[] volts;

    /// <summary>Solves one state.</summary>
    /// <param name="graph">The contact graph.</param>
    /// <param name="state">A position for each variable.</param>
    /// <param name="without">A consumer to be left out.</param>
    public NodalSolution(ContactGraph graph, IReadOnlyList<int> state, Func<ContactEdge, bool>? without = null)
    {
        this.graph = graph;
        node = Merge(state);
        double system = graph.Circuit.System.Volts.Max();
        foreach (var edge in graph.Edges.Where(e => !e.IsLink && graph.Diagrams.Value(e.Condition, state)))
            branches.Add(new(edge, node[edge.From], node[edge.To], 1 / Resistance.Of(edge.Part, edge.Element, system), 0));
        foreach (var consumer in graph.Consumers.Where(c => without is null || !without(c)))
            branches.Add(new(consumer, node[consumer.From], node[consumer.To], 1 / Resistance.Of(consumer.Part, consumer.Element, system), 0));
        foreach (var feed in graph.Feeds.Where(f => graph.Diagrams.Value(f.Runs, state)))
        {
            double force = feed.Source.PlusIsFeed ? feed.Source.Volts : -feed.Source.Volts;
            branches.Add(new(null, node[feed.Point], node[feed.Return], 1 / Resistance.Source, force));
        }
        volts = Solve();
    }

    /// <summary>Volts from the first end of an element to its second.</summary>
    public double VoltsAcross(ContactEdge edge) => volts[node[edge.From]] - volts[node[edge.To]];

    /// <summary>Amperes through an element from its first end to its second; 0 where it does not conduct.</summary>
    public double Through(ContactEdge edge) => branches.Where(b => b.Edge == edge).Sum(b => b.IsOpen ? 0 : (volts[b.From] - volts[b.To]) * b.Conductance);

    // What is joined without resistance in this state is one node; the return is node 0.
    private int[] Merge(IReadOnlyList<int> state)
    {
        int[] parent = [.. Enumerable.Range(0, graph.Count)];
        int Find(int p)
        {
            while (parent[p] != p) p = parent[p] = parent[parent[p]];
            return p;
        }
        foreach (var edge in graph.Edges.Where(e => e.IsLink && graph.Diagrams.Value(e.Condition, state))) parent[Find(edge.From)] = Find(edge.To);
        var numbers = new Dictionary<int, int> { [Find(graph.Return)] = 0 };
        return [.. Enumerable.Range(0, graph.Count).Select(p => numbers.TryGetValue(Find(p), out int n) ? n : numbers[Find(p)] = numbers.Count)];
    }

    private double[] Solve()
    {
        int count = node.Max() + 1;
        double[] solution = new double[count];
        // One-way elements begin conducting; a few rounds settle which do. Each round changes all that contradict their current.
        for (int round = 0; round < 24; round++)
        {
            solution = Linear(count);
            bool changed = false;
            foreach (var branch in branches.Where(b => b.Edge is { Element.Directs: true }))
            {
                double across = solution[branch.From] - solution[branch.To];
                bool open = across < 0;
                if (open == branch.IsOpen) continue;
                branch.IsOpen = open;
                changed = true;
                // Late rounds change one at a time, so that two that depend on each other cannot swap for ever.
                if (round > 8) break;
            }
            if (!changed) break;
        }
        return solution;
    }

    private double[] Linear(int count)
    {
        double[,] matrix = new double[count, count + 1];
        for (int i = 1; i < count; i++) matrix[i, i] = Leak;
        foreach (var b in branches.Where(b => !b.IsOpen && b.From != b.To))
        {
            matrix[b.From, b.From] += b.Conductance;
            matrix[b.To, b.To] += b.Conductance;
            matrix[b.From, b.To] -= b.Conductance;
            matrix[b.To, b.From] -= b.Conductance;
            matrix[b.From, count] += b.Conductance * b.Force;
            matrix[b.To, count] -= b.Conductance * b.Force;
        }
        for (int i = 0; i <= count; i++) matrix[0, i] = i == 0 ? 1 : 0;
        Eliminate(matrix, count);
        return [.. Enumerable.Range(0, count).Select(i => matrix[i, count] / matrix[i, i])];
    }

    // The matrix is diagonally dominant: no pivoting is needed.
    private static void Eliminate(double[,] m, int count)
    {
        for (int k = 0; k < count; k++)
            for (int i = 0; i < count; i++)
            {
                if (i == k || m[i, k] == 0) continue;
                double factor = m[i, k] / m[k, k];
                for (int j = k; j <= count; j++) m[i, j] -= factor * m[k, j];
            }
    }

    private sealed class Branch(ContactEdge? edge, int from, int to, double conductance, double force)
    {
        public ContactEdge? Edge { get; } = edge;

        public int From { get; } = from;

        public int To { get; } = to;

        public double Conductance { get; } = conductance;

        public double Force { get; } = force;

        public bool IsOpen { get; set; }
    }
}
