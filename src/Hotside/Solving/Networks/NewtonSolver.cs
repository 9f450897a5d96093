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
    private const double FarFromClosed = 1e-4;

    private readonly Network network;
    private readonly StarMesh mesh;

    // The ends of each edge; the reference is a node of its own behind the others, at 0 V.
    private readonly int[] first, second;
    private readonly double[] slopes, across, currents, changes;
    private readonly double[] volts, fed, residual, step, tolerances;
    private readonly List<int> curved = [];
    private Law?[] laws = [];
    private double constant, linear, lost;
    private bool isBent;

    /// <summary>A solver for a network.</summary>
    public NewtonSolver(Network network)
    {
        this.network = network;
        mesh = new(network);
        int edges = network.Edges.Length, nodes = network.NodeCount;
        first = [.. network.Edges.Select(e => e.A < 0 ? nodes : e.A)];
        second = [.. network.Edges.Select(e => e.B < 0 ? nodes : e.B)];
        (slopes, across, currents, changes) = (new double[edges], new double[edges], new double[edges], new double[edges]);
        (volts, fed, residual, step, tolerances) = (new double[nodes + 1], new double[nodes + 1], new double[nodes + 1], new double[nodes + 1], new double[nodes + 1]);
    }

    /// <summary>The operating point.</summary>
    /// <param name="laws">The law of each edge; <see langword="null"/>: open.</param>
    /// <param name="injected">The current fed into each node, in amperes.</param>
    /// <param name="start">Potentials to begin with; <see langword="null"/>: with every law as a straight line.</param>
    public NetworkPoint Solve(Law?[] laws, double[] injected, double[]? start)
    {
        this.laws = laws;
        Sort(injected);
        (start ?? Straight(injected)).CopyTo(volts, 0);
        mesh.Keep(slopes, isBent);
        lost = mesh.PassOn(Nodes(fed));
        Array.Clear(step);
        (double worst, bool closes) = Residual();
        for (int steps = 0; ; steps++)
        {
            if (closes || steps == MostSteps) return Point(steps, worst, closes);
            mesh.Factor(CollectionsMarshal.AsSpan(curved), slopes);
            foreach (int node in mesh.Late) step[node] = -residual[node];
            mesh.SolveLate(Nodes(step));
            double greatest = Go(out worst, out closes);
            if (greatest < LeastStep) return Point(steps + 1, worst, worst <= MostLeft);
        }
    }

    private Span<double> Nodes(double[] values) => values.AsSpan(0, network.NodeCount);

    private NetworkPoint Point(int steps, double worst, bool isConverged)
    {
        mesh.Restore(Nodes(volts), Nodes(fed));
        return new(volts[..network.NodeCount], steps, worst, isConverged);
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
        double greatest = 0, highest = 0;
        foreach (int node in mesh.Late) (greatest, highest) = (Math.Max(greatest, Math.Abs(step[node])), Math.Max(highest, Math.Abs(volts[node])));
        // Below what rounding does to the volts themselves there is no step.
        return length * greatest <= RoundingOfVolts * highest ? 0 : length * greatest;
    }

    private void Move(double length)
    {
        foreach (int node in mesh.Late) volts[node] += length * step[node];
    }

    private double AlongStep()
    {
        double sum = 0;
        foreach (int node in mesh.Late) sum += residual[node] * step[node];
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

    // Straight lines keep their slope, and what their sources drive is fed in; only the others are looked at again, and what is open not at all.
    private void Sort(double[] injected)
    {
        curved.Clear();
        isBent = false;
        injected.CopyTo(fed, 0);
        for (int e = 0; e < laws.Length; e++)
        {
            (slopes[e], across[e]) = (0, double.NaN);
            if (laws[e] is ClampLaw { IsLine: true } line)
            {
                slopes[e] = line.Siemens;
                if (line.Emf != 0) Feed(fed, e, line.Siemens * line.Emf);
            }
            else if (laws[e] is not null)
            {
                curved.Add(e);
                isBent |= network.IsStraight(e);
            }
        }
    }

    private void Feed(double[] into, int edge, double amperes)
    {
        into[first[edge]] += amperes;
        into[second[edge]] -= amperes;
    }

    private double[] Straight(double[] injected)
    {
        double[] start = [.. injected, 0], siemens = (double[])slopes.Clone();
        foreach (int e in curved) siemens[e] = laws[e]!.Chord.Siemens;
        for (int e = 0; e < laws.Length; e++)
            if (laws[e]?.Chord.Emf is { } emf && emf != 0)
                Feed(start, e, siemens[e] * emf);
        mesh.Factor(siemens);
        mesh.Solve(Nodes(start));
        start[^1] = 0;
        return start;
    }

    // What flows out of each node and is not fed in; slopes on the way. A curved law is asked anew only where its volts are others.
    private (double Worst, bool Closes) Residual()
    {
        foreach (int node in mesh.Late) residual[node] = -fed[node];
        foreach (var (a, b, siemens) in mesh.Ties)
        {
            double amperes = siemens * (volts[a] - volts[b]);
            residual[a] += amperes;
            residual[b] -= amperes;
        }
        foreach (int e in curved)
        {
            double now = volts[first[e]] - volts[second[e]];
            if (now != across[e]) (currents[e], slopes[e]) = laws[e]!.At(across[e] = now);
            Feed(residual, e, currents[e]);
        }
        residual[^1] = 0;
        double worst = lost;
        foreach (int node in mesh.Late) worst = Math.Max(worst, Math.Abs(residual[node]));
        return (worst, worst <= FarFromClosed && Closes());
    }

    // Whether what is left at each node is no more than rounding may leave.
    private bool Closes()
    {
        if (lost > AbsoluteAmperes) return false;
        Array.Fill(tolerances, AbsoluteAmperes);
        foreach (var (a, b, siemens) in mesh.Ties) Allow(a, b, siemens * (volts[a] - volts[b]), siemens);
        foreach (int e in curved) Allow(first[e], second[e], currents[e], slopes[e]);
        foreach (int node in mesh.Late)
            if (!(Math.Abs(residual[node]) <= tolerances[node]))
                return false;
        return true;
    }

    private void Allow(int a, int b, double amperes, double siemens)
    {
        double tolerance = (RelativeAmperes * Math.Abs(amperes)) + (RoundingOfVolts * siemens * (Math.Abs(volts[a]) + Math.Abs(volts[b])));
        tolerances[a] += tolerance;
        tolerances[b] += tolerance;
    }

    // The slope of the convex function along the step is constant + linear · t + Σ over curved laws; t counts from the end of the whole step, where the volts stand.
    private double Length(double atStart)
    {
        (constant, linear) = (0, 0);
        foreach (int node in mesh.Late) constant -= fed[node] * step[node];
        foreach (var (a, b, siemens) in mesh.Ties)
        {
            double change = step[a] - step[b];
            constant += change * siemens * (volts[a] - volts[b]);
            linear += siemens * change * change;
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
