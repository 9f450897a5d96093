using System.Collections.Immutable;
using Hotside.Solving.Laws;

namespace Hotside.Solving.Networks;

/// <summary>
/// The operating point of a network with regulators in line. A regulator's current is sought by itself: by how much it is too small falls strictly with it, for a current from
/// the input to the output lowers the one and raises the other. Several take turns until none has to move; that this ends is measured, not proved, so it is capped.
/// </summary>
internal sealed class RegulatedSolver(Network network, ImmutableArray<SeriesRegulator> regulators)
{
    private const int MostSweeps = 60, MostSteps = 80;
    private const double EnoughVolts = 1e-8;

    private readonly NewtonSolver solver = new(network);

    /// <summary>The operating point, and the current of each regulator from its input to its output.</summary>
    /// <param name="laws">The law of each edge; <see langword="null"/>: open.</param>
    /// <param name="start">Potentials to begin with.</param>
    public (NetworkPoint Point, double[] Amperes) Solve(Law?[] laws, double[]? start)
    {
        double[] injected = new double[network.NodeCount], amperes = new double[regulators.Length];
        var point = solver.Solve(laws, injected, start);
        if (regulators.IsEmpty) return (point, amperes);
        int steps = point.Steps;
        double[] signs = [.. regulators.Select(r => r.WorksEitherWay && point.At(r.In) < point.At(r.Against) ? -1.0 : 1.0)];
        for (int sweep = 0; sweep < MostSweeps; sweep++)
        {
            bool rests = true;
            for (int i = 0; i < regulators.Length; i++) rests &= !Adjust(i);
            if (rests) return (point with { Steps = steps }, amperes);
        }
        return (point with { Steps = steps, IsConverged = false }, amperes);

        // Newton's method on one current within the bracket that its sign gives; whether it had to move.
        bool Adjust(int i)
        {
            var regulator = regulators[i];
            double low = 0, high = double.PositiveInfinity;
            for (int count = 0; count < MostSteps; count++)
            {
                double y = signs[i] * amperes[i], ground = point.At(regulator.Against);
                double input = signs[i] * (point.At(regulator.In) - ground), output = signs[i] * (point.At(regulator.Out) - ground);
                double volts = regulator.Short(input, output, y, 0, 0).Volts;
                if (Math.Abs(volts) <= EnoughVolts) return count > 0;
                if (volts > 0) low = y;
                else high = y;
                double[] change = solver.Sensitivity(point, regulator.In, regulator.Out);
                double At(int node) => node < 0 ? 0 : change[node];
                double slope = regulator.Short(input, output, y, At(regulator.In) - At(regulator.Against), At(regulator.Out) - At(regulator.Against)).Slope;
                double next = y - (volts / slope);
                if (!(next >= low && next < high)) next = double.IsInfinity(high) ? Math.Max(2 * low, 1e-3) : (low + high) / 2;
                Move(i, signs[i] * next, change);
            }
            return true;
        }

        // The potentials follow at once: what the network is content with would let them lag behind by more than a regulator may be off.
        void Move(int i, double to, double[] change)
        {
            double more = to - amperes[i];
            double[] volts = [.. point.Volts.Zip(change, (v, c) => v + (c * more))];
            amperes[i] = to;
            if (regulators[i].In >= 0) injected[regulators[i].In] -= more;
            if (regulators[i].Out >= 0) injected[regulators[i].Out] += more;
            point = solver.Solve(laws, injected, volts);
            steps += point.Steps;
        }
    }
}
