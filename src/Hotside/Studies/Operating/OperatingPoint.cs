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

    private readonly Neighbourhood place;
    private readonly UnionFind joined;
    private readonly Branch[] resisting;
    private readonly SourceBranch[] sources;
    private readonly HashSet<Branch> conducting;
    private double[] potentials;

    /// <summary>Works out a state.</summary>
    /// <param name="place">What may share current.</param>
    /// <param name="state">A value for each variable.</param>
    /// <param name="except">A branch taken out.</param>
    public OperatingPoint(Neighbourhood place, int[] state, Branch? except)
    {
        this.place = place;
        joined = new(place.Size);
        var closed = place.Branches.Where(b => b != except && b.When.HoldsIn(state)).ToArray();
        foreach (var branch in closed)
            if (branch.Role == BranchRole.Link)
                joined.Join(place.IndexOf(branch.Source), place.IndexOf(branch.Target));
        resisting = [.. closed.Where(b => b.Role != BranchRole.Link && At(b.Source) != At(b.Target))];
        sources = [.. place.Graph.Sources.Where(s => s.When.HoldsIn(state) && At(s.Plus) != At(s.Minus))];
        conducting = [.. resisting];
        potentials = Solve();
        TurnOneWay();
    }

    /// <summary>Whether no choice of conducting one-way elements was found that their own volts confirm.</summary>
    public bool IsUnsettled { get; private set; }

    /// <summary>Volts from an element's first end to its second.</summary>
    public double VoltsAcross(Branch branch) => place.IndexOf(branch.Source) < 0 ? 0 : potentials[At(branch.Source)] - potentials[At(branch.Target)];

    /// <summary>Amperes through a consumer or a resistance, from its first end to its second.</summary>
    public double AmperesThrough(Branch branch) => !conducting.Contains(branch) ? 0 : VoltsAcross(branch) / place.Graph.OhmsOf(branch);

    /// <summary>The consumers whose current falls by a good part of a load's when that load is taken out of a state: what its current goes through.</summary>
    /// <param name="place">What may share current with the load.</param>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    public static ImmutableArray<Branch> Carriers(Neighbourhood place, Branch load, int[] state)
    {
        OperatingPoint with = place.Point(state), without = place.Point(state, load);
        double share = CarrierShare * Math.Abs(with.AmperesThrough(load));
        return [.. place.Branches.Where(b => b != load && b.Role == BranchRole.Consumer
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
            var wrong = oneWay.Where(b => Math.Abs(VoltsAcross(b)) > Rounding && VoltsAcross(b) < 0 == conducting.Contains(b)).ToArray();
            if (wrong.Length == 0) return;
            foreach (var branch in round < together ? wrong : wrong[..1])
                if (!conducting.Remove(branch))
                    conducting.Add(branch);
            potentials = Solve();
        }
        IsUnsettled = true;
    }

    private int At(int point) => joined.Find(place.IndexOf(point));

    private double[] Solve()
    {
        int reference = joined.Find(place.Reference), count = 0;
        int[] index = new int[place.Size];
        Array.Fill(index, -1);
        Conductances network = new();
        int IndexOf(int point)
        {
            int at = At(point);
            if (at == reference) return -1;
            if (index[at] < 0)
            {
                index[at] = count++;
                network.AddNode();
            }
            return index[at];
        }
        foreach (var branch in resisting)
            if (conducting.Contains(branch))
                network.Add(IndexOf(branch.Source), IndexOf(branch.Target), 1 / place.Graph.OhmsOf(branch));
        foreach (var (plus, minus, volts, _) in sources)
        {
            network.Add(IndexOf(plus), IndexOf(minus), 1 / Consumption.Source);
            network.Inject(IndexOf(plus), volts / Consumption.Source);
            network.Inject(IndexOf(minus), -volts / Consumption.Source);
        }
        double[] solved = network.Solve(), all = new double[place.Size];
        for (int point = 0; point < index.Length; point++)
            if (index[point] >= 0)
                all[point] = solved[index[point]];
        return all;
    }
}
