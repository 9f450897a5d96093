using System.Collections.Immutable;
using Hotside.Solving.Laws;
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

    private const int TurnedTogether = 10;

    private readonly Neighbourhood place;
    private readonly double[] siemens;
    private readonly bool[] isOut;
    private double[] potentials;

    /// <summary>Works out a state.</summary>
    /// <param name="place">What may share current.</param>
    /// <param name="state">A value for each variable.</param>
    /// <param name="except">A branch taken out.</param>
    public OperatingPoint(Neighbourhood place, int[] state, Branch? except)
    {
        this.place = place;
        var (branches, sources) = (place.Branches, place.Graph.Sources);
        siemens = new double[branches.Length + sources.Length];
        isOut = new bool[branches.Length];
        for (int i = 0; i < branches.Length; i++)
            if (branches[i] != except && branches[i].When.HoldsIn(state))
                siemens[i] = branches[i].Role == BranchRole.Link ? 1 / CopperResistance.Contact : 1 / place.Graph.OhmsOf(branches[i]);
        for (int i = 0; i < sources.Length; i++)
            if (sources[i].When.HoldsIn(state))
                siemens[branches.Length + i] = 1 / Consumption.Source;
        potentials = Solve();
        TurnOneWay();
    }

    /// <summary>Whether no choice of conducting one-way elements was found that their own volts confirm.</summary>
    public bool IsUnsettled { get; private set; }

    /// <summary>Volts from an element's first end to its second.</summary>
    public double VoltsAcross(Branch branch) => place.VoltsAt(branch.Source, potentials) - place.VoltsAt(branch.Target, potentials);

    /// <summary>Amperes through a consumer or a resistance of the neighbourhood, from its first end to its second.</summary>
    public double AmperesThrough(Branch branch)
    {
        int at = place.IndexOf(branch);
        return at < 0 ? 0 : AmperesAt(at);
    }

    private double AmperesAt(int index) => isOut[index] ? 0 : VoltsAcross(place.Branches[index]) * siemens[index];

    /// <summary>The consumers whose current falls by a good part of a load's when that load is taken out of a state: what its current goes through.</summary>
    /// <param name="place">What may share current with the load.</param>
    /// <param name="load">The load.</param>
    /// <param name="state">A value for each variable.</param>
    public static ImmutableArray<Branch> Carriers(Neighbourhood place, Branch load, int[] state)
    {
        OperatingPoint with = place.Point(state), without = place.Point(state, load);
        double share = CarrierShare * Math.Abs(with.AmperesThrough(load));
        return [.. place.Branches.Where((b, i) => b != load && b.Role == BranchRole.Consumer && Math.Abs(with.AmperesAt(i)) - Math.Abs(without.AmperesAt(i)) > share)];
    }

    // One-way elements: those against which current would flow are taken out, those that would conduct are put back, until nothing changes. All at once at first;
    // then the first that is wrong alone, which ends for a network of resistances and ideal one-way elements (a pivoting rule of least index: Murty 1974).
    private void TurnOneWay()
    {
        int[] oneWay = [.. place.OneWay.Where(i => siemens[i] > 0)];
        if (oneWay.Length == 0) return;
        int most = place.MostTurns ?? TurnedTogether + 50 + (10 * oneWay.Length);
        for (int round = 0; round < most; round++)
        {
            int[] wrong = [.. oneWay.Where(i => VoltsAcross(place.Branches[i]) is var volts && Math.Abs(volts) > Rounding && volts < 0 != isOut[i])];
            if (wrong.Length == 0) return;
            foreach (int i in round < TurnedTogether ? wrong : wrong[..1]) isOut[i] ^= true;
            potentials = Solve();
        }
        IsUnsettled = true;
    }

    private double[] Solve()
    {
        double[] now = [.. siemens], volts = new double[place.Network.NodeCount];
        for (int i = 0; i < isOut.Length; i++)
            if (isOut[i])
                now[i] = 0;
        for (int i = isOut.Length; i < now.Length; i++)
        {
            var (plus, minus) = place.Network.Edges[i];
            double amperes = place.Graph.Sources[i - isOut.Length].Volts * now[i];
            if (plus >= 0) volts[plus] += amperes;
            if (minus >= 0) volts[minus] -= amperes;
        }
        place.Mesh.Factor(now);
        place.Mesh.Solve(volts);
        return volts;
    }
}
