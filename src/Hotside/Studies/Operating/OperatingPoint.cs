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

    // Below so many volts a one-way element is neither turned nor reversed: rounding.
    private const double Rounding = 1e-9;

    private readonly ContactGraph graph;
    private readonly UnionFind joined;
    private readonly Branch[] resisting;
    private readonly SourceBranch[] sources;
    private readonly bool[] isConducting;
    private double[] potentials;

    private OperatingPoint(ContactGraph graph, int[] state, Branch? except)
    {
        this.graph = graph;
        joined = new(graph.Size);
        var closed = graph.Branches.Where(b => b != except && b.When.HoldsIn(state)).ToArray();
        foreach (var branch in closed)
            if (branch.Role == BranchRole.Link)
                joined.Join(branch.Source, branch.Target);
        resisting = [.. closed.Where(b => b.Role != BranchRole.Link && !joined.AreOne(b.Source, b.Target))];
        sources = [.. graph.Sources.Where(s => s.When.HoldsIn(state) && !joined.AreOne(s.Plus, s.Minus))];
        isConducting = new bool[graph.Branches.Length];
        foreach (var branch in resisting) isConducting[branch.Number] = true;
        potentials = Solve();
        TurnOneWay();
    }

    /// <summary>The operating point of a state.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="state">A value for each variable.</param>
    /// <param name="except">A branch taken out.</param>
    public static OperatingPoint Of(ContactGraph graph, int[] state, Branch? except = null) =>
        graph.OperatingPoints.Of(state, except, () => new OperatingPoint(graph, state, except));

    /// <summary>Whether no choice of conducting one-way elements was found that their own volts confirm.</summary>
    public bool IsUnsettled { get; private set; }

    /// <summary>Volts from an element's first end to its second.</summary>
    public double VoltsAcross(Branch branch) => potentials[joined.Find(branch.Source)] - potentials[joined.Find(branch.Target)];

    /// <summary>Amperes through a consumer or a resistance, from its first end to its second.</summary>
    public double AmperesThrough(Branch branch) => !isConducting[branch.Number] ? 0 : VoltsAcross(branch) / graph.OhmsOf(branch);

    /// <summary>The consumers whose current falls by a good part of a load's when that load is taken out of a state: what its current goes through.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    public static ImmutableArray<Branch> Carriers(ContactGraph graph, Branch load, int[] state)
    {
        OperatingPoint with = Of(graph, state), without = Of(graph, state, load);
        double share = CarrierShare * Math.Abs(with.AmperesThrough(load));
        return [.. graph.Branches.Where(b => b != load && b.Role == BranchRole.Consumer
            && Math.Abs(with.AmperesThrough(b)) - Math.Abs(without.AmperesThrough(b)) > share)];
    }

    // One-way elements: those against which current would flow are taken out, those that would conduct are put back, until nothing changes. All at once at first;
    // then the first that is wrong alone, which ends for a network of resistances and ideal one-way elements (a pivoting rule of least index: Murty 1974).
    private void TurnOneWay()
    {
        var oneWay = resisting.Where(b => b.IsOneWay).ToArray();
        int together = 10, alone = 50 + (10 * oneWay.Length);
        for (int round = 0; round < together + alone; round++)
        {
            var wrong = oneWay.Where(b => Math.Abs(VoltsAcross(b)) > Rounding && VoltsAcross(b) < 0 == isConducting[b.Number]).ToArray();
            if (wrong.Length == 0) return;
            foreach (var branch in round < together ? wrong : wrong[..1]) isConducting[branch.Number] ^= true;
            potentials = Solve();
        }
        IsUnsettled = true;
    }

    private double[] Solve()
    {
        int reference = joined.Find(graph.Return), count = 0;
        int[] index = new int[graph.Size];
        Array.Fill(index, -1);
        Conductances network = new();
        int IndexOf(int point)
        {
            int at = joined.Find(point);
            if (at == reference) return -1;
            if (index[at] < 0)
            {
                index[at] = count++;
                network.AddNode();
            }
            return index[at];
        }
        foreach (var branch in resisting)
            if (isConducting[branch.Number])
                network.Add(IndexOf(branch.Source), IndexOf(branch.Target), 1 / graph.OhmsOf(branch));
        foreach (var (plus, minus, volts, _) in sources)
        {
            network.Add(IndexOf(plus), IndexOf(minus), 1 / Consumption.Source);
            network.Inject(IndexOf(plus), volts / Consumption.Source);
            network.Inject(IndexOf(minus), -volts / Consumption.Source);
        }
        double[] solved = network.Solve();
        double[] all = new double[graph.Size];
        for (int point = 0; point < index.Length; point++)
            if (index[point] >= 0)
                all[point] = solved[index[point]];
        return all;
    }
}
