using System.Runtime.InteropServices;

namespace Hotside.Solving.Networks;

/// <summary>
/// Node potentials of a network of conductances by star-mesh elimination. It is the LDLᵀ factorisation written without its diagonal: positive numbers are added and never
/// subtracted, so the result is right to the last digits whatever the spread of the conductances (Grassmann, Taksar and Heyman, Operations Research 33 (1985) 1107, have
/// it for Markov chains, from memory). An island that nothing ties to the reference gets 0 V at one node, and the right differences.
/// </summary>
/// <remarks>
/// What stays the same from step to step is taken once (<see cref="Keep"/>), and nodes that touch nothing else are eliminated with it: what is left of them are
/// <see cref="Ties"/> between the others. The steps of a search then see the others alone.
/// </remarks>
internal sealed class StarMesh(Network network)
{
    private readonly EliminationOrder order = new(network);
    private readonly double[] toReference = new double[network.NodeCount];
    private readonly double[] keptToReference = new double[network.NodeCount];
    private readonly double[] pivots = new double[network.NodeCount];
    private readonly List<Tie> ties = [];
    private double[] conductances = [], kept = [];
    private int early;

    /// <summary>The nodes that are not eliminated early.</summary>
    public ReadOnlySpan<int> Late => order.Pivots.AsSpan(early);

    /// <summary>What is kept between nodes that are not eliminated early, and from them to the reference.</summary>
    public ReadOnlySpan<Tie> Ties => CollectionsMarshal.AsSpan(ties);

    /// <summary>Takes the conductance of each edge, in siemens, 0 or more.</summary>
    public void Factor(ReadOnlySpan<double> siemens)
    {
        Gather(siemens, 0);
        Factor([], siemens);
    }

    /// <summary>Takes the conductances that stay the same however often it is factored.</summary>
    /// <param name="siemens">The conductance of each edge, in siemens, 0 or more; 0 for those that are still to come.</param>
    /// <param name="isAll">Whether those to come may be any, not only edges that the network does not know to be straight.</param>
    public void Keep(ReadOnlySpan<double> siemens, bool isAll)
    {
        Gather(siemens, isAll ? 0 : order.EarlyCount);
        ties.Clear();
        for (int k = early; k < order.Pivots.Length; k++)
        {
            int node = order.Pivots[k];
            if (keptToReference[node] != 0) ties.Add(new(node, network.NodeCount, keptToReference[node]));
            for (int p = order.Starts[k]; p < order.Starts[k + 1]; p++)
                if (kept[order.Slots[p]] != 0)
                    ties.Add(new(node, order.Neighbours[p], kept[order.Slots[p]]));
        }
    }

    private void Gather(ReadOnlySpan<double> siemens, int earlyCount)
    {
        if (kept.Length != order.SlotCount) (kept, conductances) = (new double[order.SlotCount], new double[order.SlotCount]);
        Array.Clear(kept);
        Array.Clear(keptToReference);
        for (int e = 0; e < siemens.Length; e++)
            if (siemens[e] != 0)
                Add(e, siemens[e], kept, keptToReference);
        early = earlyCount;
        Eliminate(kept, keptToReference, 0, early);
    }

    /// <summary>Takes further conductances beside those that are kept.</summary>
    /// <param name="more">Which edges they are of.</param>
    /// <param name="siemens">The conductance of each edge, in siemens, 0 or more.</param>
    public void Factor(ReadOnlySpan<int> more, ReadOnlySpan<double> siemens)
    {
        Array.Copy(kept, conductances, kept.Length);
        Array.Copy(keptToReference, toReference, toReference.Length);
        foreach (int e in more) Add(e, siemens[e], conductances, toReference);
        Eliminate(conductances, toReference, early, order.Pivots.Length);
    }

    /// <summary>Turns the currents fed into the nodes, in amperes, into the nodes' potentials in volts, in place.</summary>
    public void Solve(Span<double> values)
    {
        Forward(values, conductances, 0, order.Pivots.Length);
        Back(values, conductances, 0, order.Pivots.Length);
    }

    /// <summary>The same for the nodes that are not eliminated early, nothing being fed into the others.</summary>
    public void SolveLate(Span<double> values)
    {
        Forward(values, conductances, early, order.Pivots.Length);
        Back(values, conductances, early, order.Pivots.Length);
    }

    /// <summary>Passes what is fed into the nodes that are eliminated early on to the others, in place.</summary>
    /// <returns>The greatest current that is fed into an island that nothing ties to the rest: it has no way back.</returns>
    public double PassOn(Span<double> values)
    {
        Forward(values, kept, 0, early);
        double lost = 0;
        foreach (int node in order.Pivots.AsSpan(0, early))
            if (pivots[node] == 0) lost = Math.Max(lost, Math.Abs(values[node]));
        return lost;
    }

    /// <summary>Finds the potentials of the nodes that are eliminated early from those of the others, in place.</summary>
    /// <param name="volts">The potentials of the others.</param>
    /// <param name="fed">What is fed in, as <see cref="PassOn"/> left it.</param>
    public void Restore(Span<double> volts, ReadOnlySpan<double> fed)
    {
        for (int k = 0; k < early; k++) volts[order.Pivots[k]] = fed[order.Pivots[k]];
        Back(volts, kept, 0, early);
    }

    private void Eliminate(double[] values, double[] grounds, int from, int to)
    {
        int[] starts = order.Starts, others = order.Neighbours, slots = order.Slots, pairs = order.PairSlots;
        int pair = order.PairStarts[from];
        for (int k = from; k < to; k++)
        {
            int node = order.Pivots[k], first = starts[k], end = starts[k + 1];
            double ground = grounds[node], sum = ground;
            for (int p = first; p < end; p++) sum += values[slots[p]];
            pivots[node] = sum;
            if (sum == 0)
            {
                pair = order.PairStarts[k + 1];
                continue;
            }
            for (int p = first; p < end; p++)
            {
                double share = values[slots[p]] / sum;
                grounds[others[p]] += share * ground;
                for (int q = p + 1; q < end; q++) values[pairs[pair++]] += share * values[slots[q]];
            }
        }
    }

    private void Forward(Span<double> values, double[] siemens, int from, int to)
    {
        int[] starts = order.Starts, others = order.Neighbours, slots = order.Slots;
        for (int k = from; k < to; k++)
        {
            int node = order.Pivots[k];
            if (pivots[node] == 0 || values[node] == 0) continue;
            double part = values[node] / pivots[node];
            for (int p = starts[k]; p < starts[k + 1]; p++) values[others[p]] += part * siemens[slots[p]];
        }
    }

    private void Back(Span<double> values, double[] siemens, int from, int to)
    {
        int[] starts = order.Starts, others = order.Neighbours, slots = order.Slots;
        for (int k = to - 1; k >= from; k--)
        {
            int node = order.Pivots[k];
            double flow = values[node];
            for (int p = starts[k]; p < starts[k + 1]; p++) flow += siemens[slots[p]] * values[others[p]];
            values[node] = pivots[node] == 0 ? 0 : flow / pivots[node];
        }
    }

    /// <summary>What <see cref="Ohms"/> tells of a node that nothing ties to the reference: this or more.</summary>
    public const double Untied = 1e15;

    /// <summary>
    /// The resistance from every node to the reference, in ohms: the diagonal of the inverse, found from the last node back with what it has in common with its neighbours
    /// (Takahashi, Fagan and Chen, Power Industry Computer Applications 1973, from memory). As quick as one factoring.
    /// </summary>
    public double[] Ohms()
    {
        int[] starts = order.Starts, others = order.Neighbours, slots = order.Slots, pairs = order.PairSlots;
        double[] ohms = new double[network.NodeCount], common = new double[order.SlotCount], along = new double[network.NodeCount];
        for (int k = order.Pivots.Length - 1; k >= 0; k--)
        {
            int node = order.Pivots[k], first = starts[k], end = starts[k + 1], pair = order.PairStarts[k];
            double sum = pivots[node];
            if (sum == 0)
            {
                ohms[node] = Untied;
                continue;
            }
            for (int p = first; p < end; p++) along[p - first] = conductances[slots[p]] / sum * ohms[others[p]];
            for (int p = first; p < end; p++)
                for (int q = p + 1; q < end; q++)
                {
                    double both = common[pairs[pair++]];
                    along[p - first] += conductances[slots[q]] / sum * both;
                    along[q - first] += conductances[slots[p]] / sum * both;
                }
            double all = 1 / sum;
            for (int p = first; p < end; p++)
            {
                common[slots[p]] = along[p - first];
                all += conductances[slots[p]] / sum * along[p - first];
            }
            ohms[node] = all;
        }
        return ohms;
    }

    private void Add(int edge, double siemens, double[] between, double[] against)
    {
        var (a, b) = network.Edges[edge];
        if (order.EdgeSlots[edge] is >= 0 and var slot) between[slot] += siemens;
        else if (a != b) against[Math.Max(a, b)] += siemens;
    }
}

/// <summary>A conductance between two nodes.</summary>
/// <param name="A">A node.</param>
/// <param name="B">Another, or the number of nodes for the reference.</param>
/// <param name="Siemens">The conductance, above 0.</param>
internal readonly record struct Tie(int A, int B, double Siemens);
