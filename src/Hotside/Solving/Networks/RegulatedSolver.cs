using System.Collections.Immutable;
using Hotside.Solving.Laws;

namespace Hotside.Solving.Networks;

/// <summary>
/// The operating point of a network with regulators in line and loads of constant power. Their currents are sought one by one. By how much a regulator's is too small falls
/// strictly with it, for a current from the input to the output lowers the one and raises the other. That of a load of constant power rises from nothing to the point of
/// highest volts. Several take turns until none has to move; that this ends is measured, not proved, so it is capped.
/// </summary>
internal sealed class RegulatedSolver(Network network, ImmutableArray<Injection> injections)
{
    private const int MostSweeps = 60, MostSteps = 80, MostRises = 400;
    private const double EnoughVolts = 1e-8, EnoughOfCurrent = 1e-9;

    private readonly NewtonSolver solver = new(network);

    /// <summary>The operating point, and the current of each injection from its input to its output.</summary>
    /// <param name="laws">The law of each edge; <see langword="null"/>: open.</param>
    /// <param name="start">Potentials to begin with.</param>
    public (NetworkPoint Point, double[] Amperes) Solve(Law?[] laws, double[]? start)
    {
        double[] injected = new double[network.NodeCount];
        var point = solver.Solve(laws, injected, start);
        if (injections.IsEmpty) return (point, []);
        Search search = new(solver, injections, laws, injected, point);
        bool rests = false;
        for (int sweep = 0; sweep < MostSweeps && !rests; sweep++)
        {
            rests = true;
            for (int i = 0; i < injections.Length; i++) rests &= !search.Adjust(i);
        }
        return (search.Point with { Steps = search.Steps, IsConverged = search.Point.IsConverged && rests }, search.Amperes);
    }

    private sealed class Search(NewtonSolver solver, ImmutableArray<Injection> injections, Law?[] laws, double[] injected, NetworkPoint first)
    {
        private readonly bool[] isLockedOut = new bool[injections.Length];
        private readonly double[] signs = [.. injections.Select(r => r is SeriesRegulator regulator && (regulator.WorksEitherWay ? first.At(regulator.In) < first.At(regulator.Against) : regulator.IsTurned) ? -1.0 : 1.0)];

        public NetworkPoint Point { get; private set; } = first;

        public double[] Amperes { get; } = new double[injections.Length];

        public int Steps { get; private set; } = first.Steps;

        /// <summary>Whether one had to move.</summary>
        public bool Adjust(int i) => injections[i] switch
        {
            SeriesRegulator regulator => Regulate(i, regulator),
            PowerLoad load => Raise(i, load),
            _ => false,
        };

        // Newton's method on one current within the bracket that its sign gives.
        private bool Regulate(int i, SeriesRegulator regulator)
        {
            double low = 0, high = double.PositiveInfinity;
            for (int count = 0; count < MostSteps; count++)
            {
                double y = signs[i] * Amperes[i], ground = Point.At(regulator.Against);
                double input = signs[i] * (Point.At(regulator.In) - ground), output = signs[i] * (Point.At(regulator.Out) - ground);
                double volts = regulator.Short(input, output, y, 0, 0).Volts;
                if (Math.Abs(volts) <= EnoughVolts) return count > 0;
                if (volts > 0) low = y;
                else high = y;
                double[] change = solver.Sensitivity(Point, regulator.In, regulator.Out);
                double At(int node) => node < 0 ? 0 : change[node];
                double slope = regulator.Short(input, output, y, At(regulator.In) - At(regulator.Against), At(regulator.Out) - At(regulator.Against)).Slope;
                double next = y - (volts / slope);
                if (!(next >= low && next < high)) next = double.IsInfinity(high) ? Math.Max(2 * low, 1e-3) : (low + high) / 2;
                Move(i, signs[i] * next, change);
            }
            return true;
        }

        // More current leaves fewer volts, which call for more current: from nothing upwards that ends at the first point there is. Once locked out it stays so.
        private bool Raise(int i, PowerLoad load)
        {
            for (int count = 0; count < MostRises; count++)
            {
                double next = isLockedOut[i] ? 0 : load.At(Point.At(load.In) - Point.At(load.Out));
                isLockedOut[i] |= next == 0 && Amperes[i] != 0;
                if (Math.Abs(next - Amperes[i]) <= EnoughOfCurrent * Math.Abs(next)) return count > 0;
                Move(i, next, solver.Sensitivity(Point, load.In, load.Out));
            }
            return true;
        }

        // The potentials follow at once: what the network is content with would let them lag behind by more than a regulator may be off.
        private void Move(int i, double to, double[] change)
        {
            double more = to - Amperes[i];
            double[] volts = [.. Point.Volts.Zip(change, (v, c) => v + (c * more))];
            Amperes[i] = to;
            if (injections[i].In >= 0) injected[injections[i].In] -= more;
            if (injections[i].Out >= 0) injected[injections[i].Out] += more;
            Point = solver.Solve(laws, injected, volts);
            Steps += Point.Steps;
        }
    }
}
