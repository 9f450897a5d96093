using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Diagnoses;

/// <summary>
/// A test lamp from a point to the return: dark, dim or bright. It loads the point as a meter does not, so a ghost leaves it dark and a bad joint makes it dim; the circuit is solved
/// with it in.
/// </summary>
internal sealed class TestLamp(FaultDictionary dictionary)
{
    // Below the first part of its volts no glow is seen by day, below the second it is seen to be dim; how soft the edges are, and how often it is judged wrongly (own choices).
    private const double DarkBelow = 0.25, DimBelow = 0.8, Soft = 0.05, Misjudged = 0.02;
    private const int States = 3;

    private readonly Dictionary<(int Setting, int Node, int Cell), double> shares = [];
    private readonly Dictionary<(StateSolver, int), StateSolver> solvers = [];

    /// <summary>How likely it is seen in a state with a fault.</summary>
    public double Likelihood(LampTest test, LookState state, int cell)
    {
        double dark = Below(ShareOf(test, cell), DarkBelow), notBright = Below(ShareOf(test, cell), DimBelow);
        double seen = state switch { LookState.Off => dark, LookState.Dim => notBright - dark, _ => 1 - notBright };
        return ((1 - Misjudged) * seen) + (Misjudged / States);
    }

    /// <summary>The state when nothing is known to be wrong: each as likely.</summary>
    public static double Unknown => 1.0 / States;

    /// <summary>How it looks when all is well.</summary>
    public LookState Sound(LampTest test) => ShareOf(test, dictionary.SoundCell) is var share && share < DarkBelow ? LookState.Off : share < DimBelow ? LookState.Dim : LookState.Right;

    private double ShareOf(LampTest test, int cell)
    {
        if (shares.TryGetValue((test.Setting, test.Node, cell), out double known)) return known;
        var bench = dictionary.Bench;
        var (number, size) = dictionary.Cells[cell];
        var fault = dictionary.Faults[number];
        var bare = fault.Crossed ?? bench.Solver;
        if (!solvers.TryGetValue((bare, test.Node), out var solver))
            solvers[(bare, test.Node)] = solver = new(bare.Model, [.. bench.NetNodes.Select(n => new NetworkEdge(n, NetworkEdge.Reference)), new(test.Node, NetworkEdge.Reference)]);
        var setting = dictionary.Settings[test.Setting];
        var at = solver.Solve(FaultDictionary.StateOf(solver, setting), setting.Values, laws =>
        {
            Array.Resize(ref laws, solver.Network.Edges.Length);
            FaultLaws.Apply(laws, fault, size.Middle, solver.Model, isPowered: true);
            foreach (int fuse in dictionary.BlownBy(cell)) laws[dictionary.Fuses[fuse].FirstEdge] = null;
            laws[^1] = new LampLaw(bench.Volts, TestBulb.Watts / bench.Volts);
            return laws;
        }, null);
        return shares[(test.Setting, test.Node, cell)] = Math.Abs(at.Point.Volts[test.Node]) / bench.Volts;
    }

    private static double Below(double share, double edge) => 1 / (1 + Math.Exp(-1.7 * (edge - share) / Soft));
}
