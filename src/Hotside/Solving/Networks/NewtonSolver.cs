using System.Runtime.InteropServices;
using Hotside.Solving.Laws;

namespace Hotside.Solving.Networks;

/// <summary>
/// The operating point of a network whose laws never fall. Kirchhoff's equations are then the minimum of one convex function, and Newton's method with a line search reaches
/// it from anywhere.
/// </summary>
internal sealed class NewtonSolver
{
    private const int MostSteps = 300;

    // Currents close to this, and to this part of what flows; volts are known to the last but two of their digits, which is much current through a joint.
    private const double AbsoluteAmperes = 1e-8, RelativeAmperes = 1e-10, RoundingOfVolts = 4e-16, LeastStep = 1e-11;

    // Where no step leads on, so much may be left; more is a current that has no way back.
    private const double MostLeft = 1e-6;

    // Where more is left than this at some node, the currents cannot close yet: how exactly they must is not worked out.
    private const double FarFromClosed = 1e-2;

    private readonly Network network;
    private readonly StarMesh mesh;

    // The ends of each edge; the reference is a node of its own behind the others, at 0 V.
    private readonly int[] first, second;
    private readonly double[] slopes, emfs, across, currents, changes;
    private readonly double[] volts, residual, step, tolerances;
    private readonly List<int> curved = [], straight = [];
    private Law?[] laws = [];
    private double[] injected = [];
    private double constant, linear;

    /// <summary>A solver for a network.</summary>
    public NewtonSolver(Network network)
    {
        this.network = network;
        mesh = new(network);
        int edges = network.Edges.Length, nodes = network.NodeCount;
        first = [.. network.Edges.Select(e => e.A < 0 ? nodes : e.A)];
        second = [.. network.Edges.Select(e => e.B < 0 ? nodes : e.B)];
        (slopes, emfs, across, currents, changes) = (new double[edges], new double[edges], new double[edges], new double[edges], new double[edges]);
        (volts, residual, step, tolerances) = (new double[nodes + 1], new double[nodes + 1], new double[nodes + 1], new double[nodes + 1]);
    }

    private Span<double> Step => step.AsSpan(0, network.NodeCount);

    /// <summary>The operating point.</summary>
    /// <param name="laws">The law of each edge; <see langword="null"/>: open.</param>
    /// <param name="injected">The current fed into each node, in amperes.</param>
    /// <param name="start">Potentials to begin with; <see langword="null"/>: with every law as a straight line.</param>
    public NetworkPoint Solve(Law?[] laws, double[] injected, double[]? start)
    {
        (this.laws, this.injected) = (laws, injected);
        Sort();
        (start ?? Straight()).CopyTo(volts, 0);
        mesh.Keep(slopes);
        (double worst, bool closes) = Residual();
        for (int steps = 0; ; steps++)
        {
            if (closes || steps == MostSteps) return new(volts[..network.NodeCount], steps, worst, closes);
            mesh.Factor(CollectionsMarshal.AsSpan(curved), slopes);
            for (int i = 0; i < step.Length; i++) step[i] = -residual[i];
            mesh.Solve(Step);
            step[^1] = 0;
            double greatest = Go(out worst, out closes);
            if (greatest < LeastStep) return new(volts[..network.NodeCount], steps + 1, worst, worst <= MostLeft);
        }
    }

    // Newton's own step, or along it as far as is well; how far the potentials went. Most steps are taken whole, and what is left at their end is the beginning of the next.
    private double Go(out double worst, out bool closes)
    {
        double atStart = AlongStep(), length = 1;
        Move(1);
        (worst, closes) = Residual();
        if (curved.Count > 0 && !LineSearch.IsEnough(AlongStep(), atStart))
        {
            length = Length(atStart);
            Move(length - 1);
            (worst, closes) = Residual();
        }
        double greatest = 0;
        foreach (double change in step) greatest = Math.Max(greatest, Math.Abs(change));
        return length * greatest;
    }

    private void Move(double length)
    {
        for (int i = 0; i < volts.Length; i++) volts[i] += length * step[i];
    }

    private double AlongStep()
    {
        double sum = 0;
        for (int i = 0; i < step.Length; i++) sum += residual[i] * step[i];
        return sum;
    }

    /// <summary>By how much every potential rises for each ampere led from one node to another, around a point of the last laws.</summary>
    public double[] Sensitivity(NetworkPoint point, int from, int to)
    {
        point.Volts.CopyTo(volts, 0);
        Residual();
        mesh.Factor(CollectionsMarshal.AsSpan(curved), slopes);
        double[] change = new double[network.NodeCount];
        if (from >= 0) change[from] -= 1;
        if (to >= 0) change[to] += 1;
        mesh.Solve(change);
        return change;
    }

    // Straight lines keep their slope; only the others are looked at again, and what is open not at all.
    private void Sort()
    {
        curved.Clear();
        straight.Clear();
        for (int e = 0; e < laws.Length; e++)
        {
            (slopes[e], emfs[e], across[e]) = (0, 0, double.NaN);
            if (laws[e] is ClampLaw { IsLine: true } line)
            {
                (slopes[e], emfs[e]) = (line.Siemens, line.Emf);
                straight.Add(e);
            }
            else if (laws[e] is not null) curved.Add(e);
        }
    }

    private double[] Straight()
    {
        double[] volts = (double[])injected.Clone(), siemens = (double[])slopes.Clone();
        foreach (int e in curved) siemens[e] = laws[e]!.Chord.Siemens;
        for (int e = 0; e < siemens.Length; e++)
        {
            double amperes = siemens[e] * (laws[e]?.Chord.Emf ?? 0);
            if (amperes == 0) continue;
            var (a, b) = network.Edges[e];
            if (a >= 0) volts[a] += amperes;
            if (b >= 0) volts[b] -= amperes;
        }
        mesh.Factor(siemens);
        mesh.Solve(volts);
        return volts;
    }

    // What flows out of each node and is not fed in; slopes on the way. A curved law is asked anew only where its volts are others.
    private (double Worst, bool Closes) Residual()
    {
        int nodes = network.NodeCount;
        for (int i = 0; i < nodes; i++) residual[i] = -injected[i];
        foreach (int e in straight) Flow(e, currents[e] = slopes[e] * (volts[first[e]] - volts[second[e]] - emfs[e]));
        foreach (int e in curved)
        {
            double now = volts[first[e]] - volts[second[e]];
            if (now != across[e]) (currents[e], slopes[e]) = laws[e]!.At(across[e] = now);
            Flow(e, currents[e]);
        }
        residual[nodes] = 0;
        double worst = 0;
        for (int i = 0; i < nodes; i++) worst = Math.Max(worst, Math.Abs(residual[i]));
        return (worst, worst <= FarFromClosed && Closes());
    }

    private void Flow(int edge, double amperes)
    {
        residual[first[edge]] += amperes;
        residual[second[edge]] -= amperes;
    }

    // Whether what is left at each node is no more than rounding may leave.
    private bool Closes()
    {
        Array.Fill(tolerances, AbsoluteAmperes);
        foreach (int e in straight) Allow(e);
        foreach (int e in curved) Allow(e);
        for (int i = 0; i < network.NodeCount; i++)
            if (!(Math.Abs(residual[i]) <= tolerances[i]))
                return false;
        return true;
    }

    private void Allow(int edge)
    {
        int a = first[edge], b = second[edge];
        double tolerance = (RelativeAmperes * Math.Abs(currents[edge])) + (RoundingOfVolts * slopes[edge] * (Math.Abs(volts[a]) + Math.Abs(volts[b])));
        tolerances[a] += tolerance;
        tolerances[b] += tolerance;
    }

    // The slope of the convex function along the step is constant + linear · t + Σ over curved laws; t counts from the end of the whole step, where the volts stand.
    private double Length(double atStart)
    {
        (constant, linear) = (0, 0);
        for (int i = 0; i < injected.Length; i++) constant -= injected[i] * step[i];
        foreach (int e in straight)
        {
            double change = step[first[e]] - step[second[e]];
            constant += change * currents[e];
            linear += slopes[e] * change * change;
        }
        foreach (int e in curved) changes[e] = step[first[e]] - step[second[e]];
        return LineSearch.Along(SlopeAt, atStart);
    }

    private double SlopeAt(double length)
    {
        double past = length - 1, slope = constant + (linear * past);
        foreach (int e in curved)
            if (changes[e] != 0)
                slope += changes[e] * laws[e]!.At(across[e] + (past * changes[e])).Amperes;
        return slope;
    }
}
