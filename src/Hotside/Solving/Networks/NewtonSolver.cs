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

    private readonly Network network;
    private readonly StarMesh mesh;
    private readonly double[] slopes, emfs, across, changes;
    private readonly double[] residual, step, tolerances;
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
        (slopes, emfs, across, changes) = (new double[edges], new double[edges], new double[edges], new double[edges]);
        (residual, step, tolerances) = (new double[nodes], new double[nodes], new double[nodes]);
    }

    /// <summary>The operating point.</summary>
    /// <param name="laws">The law of each edge; <see langword="null"/>: open.</param>
    /// <param name="injected">The current fed into each node, in amperes.</param>
    /// <param name="start">Potentials to begin with; <see langword="null"/>: with every law as a straight line.</param>
    public NetworkPoint Solve(Law?[] laws, double[] injected, double[]? start)
    {
        (this.laws, this.injected) = (laws, injected);
        Sort();
        double[] volts = start is null ? Straight() : (double[])start.Clone();
        (double worst, bool closes) = Residual(volts);
        for (int steps = 0; ; steps++)
        {
            if (closes || steps == MostSteps) return new(volts, steps, worst, closes);
            mesh.Factor(slopes);
            for (int i = 0; i < step.Length; i++) step[i] = -residual[i];
            mesh.Solve(step);
            double greatest = Go(volts, out worst, out closes);
            if (greatest < LeastStep) return new(volts, steps + 1, worst, worst <= MostLeft);
        }
    }

    // Newton's own step, or along it as far as is well; how far the potentials went. Most steps are taken whole, and what is left at their end is the beginning of the next.
    private double Go(double[] volts, out double worst, out bool closes)
    {
        double atStart = AlongStep(), length = 1;
        Move(volts, 1);
        (worst, closes) = Residual(volts);
        if (curved.Count > 0 && !LineSearch.IsEnough(AlongStep(), atStart))
        {
            length = Length(atStart);
            Move(volts, length - 1);
            (worst, closes) = Residual(volts);
        }
        double greatest = 0;
        foreach (double change in step) greatest = Math.Max(greatest, Math.Abs(change));
        return length * greatest;
    }

    private void Move(double[] volts, double length)
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
        Residual(point.Volts);
        mesh.Factor(slopes);
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
            (slopes[e], emfs[e]) = (0, 0);
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

    // What flows out of each node and is not fed in; slopes on the way.
    private (double Worst, bool Closes) Residual(double[] volts)
    {
        Array.Fill(tolerances, AbsoluteAmperes);
        for (int i = 0; i < residual.Length; i++) residual[i] = -injected[i];
        foreach (int e in straight) Flow(e, slopes[e] * ((across[e] = Across(volts, e)) - emfs[e]), volts);
        foreach (int e in curved)
        {
            (double amperes, slopes[e]) = laws[e]!.At(across[e] = Across(volts, e));
            Flow(e, amperes, volts);
        }
        double worst = 0;
        bool closes = true;
        for (int i = 0; i < residual.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(residual[i]));
            closes &= Math.Abs(residual[i]) <= tolerances[i];
        }
        return (worst, closes);
    }

    private double Across(double[] volts, int edge)
    {
        var (a, b) = network.Edges[edge];
        return (a < 0 ? 0 : volts[a]) - (b < 0 ? 0 : volts[b]);
    }

    private void Flow(int edge, double amperes, double[] volts)
    {
        var (a, b) = network.Edges[edge];
        double tolerance = (RelativeAmperes * Math.Abs(amperes)) + (RoundingOfVolts * slopes[edge] * ((a < 0 ? 0 : Math.Abs(volts[a])) + (b < 0 ? 0 : Math.Abs(volts[b]))));
        if (a >= 0) (residual[a], tolerances[a]) = (residual[a] + amperes, tolerances[a] + tolerance);
        if (b >= 0) (residual[b], tolerances[b]) = (residual[b] - amperes, tolerances[b] + tolerance);
    }

    // The slope of the convex function along the step is constant + linear · t + Σ over curved laws; t counts from the end of the whole step, where the volts stand.
    private double Length(double atStart)
    {
        (constant, linear) = (0, 0);
        for (int i = 0; i < step.Length; i++) constant -= injected[i] * step[i];
        foreach (int e in straight)
        {
            double change = Across(step, e);
            constant += change * slopes[e] * (across[e] - emfs[e]);
            linear += slopes[e] * change * change;
        }
        foreach (int e in curved) changes[e] = Across(step, e);
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
