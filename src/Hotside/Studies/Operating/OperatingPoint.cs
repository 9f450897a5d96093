using System.Collections.Immutable;
using Hotside.Studies.Switching;

namespace Hotside.Studies.Operating;

/// <summary>
/// Potentials and currents of a circuit in one state, every consumer taken as the resistance of its rating. Good enough to tell whether something pulls in or glows;
/// it says nothing exact about a lamp's current.
/// </summary>
internal sealed class OperatingPoint
{
    // Less than this part of a load's current is a side way (own choice).
    private const double CarrierShare = 0.2;

    private readonly ContactGraph graph;
    private readonly UnionFind joined;
    private readonly double[] potentials;
    private readonly HashSet<int> conducting;

    private OperatingPoint(ContactGraph graph, UnionFind joined, double[] potentials, HashSet<int> conducting)
    {
        this.graph = graph;
        this.joined = joined;
        this.potentials = potentials;
        this.conducting = conducting;
    }

    /// <summary>The operating point of a state.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="conducts">Whether a condition holds in the state.</param>
    /// <param name="except">A branch taken out.</param>
    public static OperatingPoint Of(ContactGraph graph, Predicate<Condition> conducts, Branch? except = null)
    {
        UnionFind joined = new(graph.Size);
        var closed = graph.Branches.Where(b => b != except && conducts(b.When)).ToArray();
        foreach (var branch in closed)
            if (branch.Role == BranchRole.Link)
                joined.Join(branch.Source, branch.Target);
        var resisting = closed.Where(b => b.Role != BranchRole.Link && !joined.AreOne(b.Source, b.Target)).ToArray();
        var sources = graph.Circuit.Sources.Where(s => conducts(graph.Positions.WhenOf(s.Part, s.Element)))
            .Select(s => (Plus: graph.PointOf(s.PlusIsFeed ? s.Feed : s.Return), Minus: graph.PointOf(s.PlusIsFeed ? s.Return : s.Feed), s.Volts))
            .Where(s => !joined.AreOne(s.Plus, s.Minus)).ToArray();

        // One-way elements: those against which current would flow are taken out, those that would conduct are put back, until nothing changes.
        HashSet<int> conducting = [.. resisting.Select(b => b.Number)];
        double[] potentials = Solve(graph, joined, resisting, sources, conducting);
        for (int round = 0; round < 50; round++)
        {
            var turned = resisting.Where(b => b.IsOneWay && Across(b) < 0 == conducting.Contains(b.Number) && Across(b) != 0).ToArray();
            if (turned.Length == 0) break;
            // One at a time after a while, for a set that swings to and fro.
            foreach (var branch in round < 10 ? turned : turned.Take(1))
                if (!conducting.Remove(branch.Number)) conducting.Add(branch.Number);
            potentials = Solve(graph, joined, resisting, sources, conducting);
        }
        return new(graph, joined, potentials, conducting);

        double Across(Branch b) => potentials[joined.Find(b.Source)] - potentials[joined.Find(b.Target)];
    }

    /// <summary>Volts from an element's first end to its second.</summary>
    public double VoltsAcross(Branch branch) => potentials[joined.Find(branch.Source)] - potentials[joined.Find(branch.Target)];

    /// <summary>Amperes through a consumer or a resistance, from its first end to its second.</summary>
    public double AmperesThrough(Branch branch) => !conducting.Contains(branch.Number) ? 0 : VoltsAcross(branch) / Resistance(graph, branch);

    /// <summary>The consumers whose current falls by a good part of a load's when that load is taken out of a state: what its current goes through.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    public static ImmutableArray<Branch> Carriers(ContactGraph graph, Branch load, int[] state)
    {
        OperatingPoint with = Of(graph, c => c.HoldsIn(state)), without = Of(graph, c => c.HoldsIn(state), load);
        double share = CarrierShare * Math.Abs(with.AmperesThrough(load));
        return [.. graph.Branches.Where(b => b != load && b.Role == BranchRole.Consumer
            && Math.Abs(with.AmperesThrough(b)) - Math.Abs(without.AmperesThrough(b)) > share)];
    }

    private static double Resistance(ContactGraph graph, Branch branch) =>
        Consumption.ResistanceOf(branch.Part, branch.Element, graph.Circuit.System.Volts[0]);

    private static double[] Solve(ContactGraph graph, UnionFind joined, Branch[] resisting, (int Plus, int Minus, double Volts)[] sources, HashSet<int> conducting)
    {
        int reference = joined.Find(graph.Return);
        Dictionary<int, int> index = [];
        foreach (int point in resisting.SelectMany(b => ImmutableArray.Create(b.Source, b.Target)).Concat(sources.SelectMany(s => ImmutableArray.Create(s.Plus, s.Minus))))
            if (joined.Find(point) != reference)
                index.TryAdd(joined.Find(point), index.Count);
        double[,] between = new double[index.Count, index.Count];
        double[] toReference = new double[index.Count], injected = new double[index.Count];
        int IndexOf(int point) => index.GetValueOrDefault(joined.Find(point), -1);
        void Add(int a, int b, double siemens)
        {
            if (a < 0) toReference[b] += siemens;
            else if (b < 0) toReference[a] += siemens;
            else between[a, b] = between[b, a] = between[a, b] + siemens;
        }
        foreach (var branch in resisting)
            if (conducting.Contains(branch.Number))
                Add(IndexOf(branch.Source), IndexOf(branch.Target), 1 / Resistance(graph, branch));
        foreach (var (plus, minus, volts) in sources)
        {
            int a = IndexOf(plus), b = IndexOf(minus);
            Add(a, b, 1 / Consumption.Source);
            if (a >= 0) injected[a] += volts / Consumption.Source;
            if (b >= 0) injected[b] -= volts / Consumption.Source;
        }
        double[] solved = Conductances.Solve(between, toReference, injected);
        double[] potentials = new double[graph.Size];
        foreach (var (point, i) in index) potentials[point] = solved[i];
        return potentials;
    }
}
