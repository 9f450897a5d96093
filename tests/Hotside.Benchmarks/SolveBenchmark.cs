using System.Diagnostics;
using System.Globalization;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Networks;
using Hotside.Tests.Solving;

namespace Hotside.Benchmarks;

/// <summary>
/// <c>solve</c>: an operating point against ngspice on the same netlist in the same run, at 100, 1,000 and 10,000 conductors. The netlists are of parts whose laws have no corners,
/// for of others ngspice finds a point late or never; it has the relays as found, is asked for no current, and is given no start, which would cost it more than it saves, and stops at its own tolerances. Each time is
/// the best of several runs, since other work on the machine only ever adds. Returns 1 where ours is slower than it may be.
/// </summary>
internal static class SolveBenchmark
{
    private const double LeastAgainstProcess = 20, LeastAgainstAnalysis = 10, MostMilliseconds = 20, MostPower = 1.25;
    private const int Seed = 2;
    private static readonly int[] Sizes = [100, 1_000, 10_000];

    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is ["once", var asked]) return Once(asked);
        if (arguments.Length > 0) return 64;
        bool hasPeer = Spice.IsThere;
        if (!hasPeer) output.WriteLine("ngspice is not installed: its columns are left out, and what is required against it is not tested.");
        output.WriteLine("                 our network  our solution   ngspice:  analysis   process   network is faster than:        whole processes: ours   ngspice's");
        output.WriteLine("conductors  nodes  warm, ms     warm, ms                  ms        ms      its analysis   its process               ms          ms");
        List<(int Conductors, double Milliseconds)> times = [];
        bool keeps = true;
        foreach (int size in Sizes)
        {
            var circuit = GeneratedWiring.OfSize(Seed, size, isSmooth: true);
            var setting = GeneratedWiring.SettingOf(Seed, circuit);
            CircuitSolver solver = new(circuit);
            var solution = solver.Solve(setting);
            int[] state = [.. circuit.Variables.Select((v, i) => v.Actuator.Positions.IndexOf(solution.Positions[i].Position))];
            double network = Network(circuit, state), everything = Best(() => solver.Solve(setting), runs: 1, warmUps: 0);
            times.Add((circuit.Conductors.Length, network));
            string line = string.Create(CultureInfo.InvariantCulture, $"{circuit.Conductors.Length,10}  {new CircuitModel(circuit).Network.NodeCount,5}  {network,8:0.000}     {everything,8:0.00}");
            if (hasPeer)
            {
                var (analysis, process) = Spice.Times(new(circuit, solution, hasMeters: false), size);
                keeps &= process / network >= LeastAgainstProcess && analysis / network >= LeastAgainstAnalysis;
                line += string.Create(CultureInfo.InvariantCulture, $"              {analysis,8:0.0}  {process,8:0}      {analysis / network,8:0} ×     {process / network,8:0} ×              {OwnProcess(size),8:0}    {process,8:0}");
            }
            output.WriteLine(line);
        }
        output.WriteLine("With motors, diodes, light-emitting diodes, machines, two regulators and a converter, which ngspice does not take:");
        foreach (int size in Sizes)
        {
            var circuit = GeneratedWiring.OfSize(Seed, size, isSmooth: false);
            var set = GeneratedWiring.SettingOf(Seed, circuit).Positions;
            int[] state = [.. circuit.Variables.Select(v => set.FirstOrDefault(p => p.Part == v.Part && p.Actuator == v.Actuator.Name) is { } there ? v.Actuator.Positions.IndexOf(there.Position) : 0)];
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{circuit.Conductors.Length,10}  {new CircuitModel(circuit).Network.NodeCount,5}  {Network(circuit, state),8:0.000}"));
        }
        double power = Math.Log(times[^1].Milliseconds / times[^2].Milliseconds) / Math.Log((double)times[^1].Conductors / times[^2].Conductors);
        keeps &= times[^1].Milliseconds < MostMilliseconds && power < MostPower;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Required: {LeastAgainstProcess} × its process, {LeastAgainstAnalysis} × its analysis, {MostMilliseconds} ms at {Sizes[^1]}, growth below the {MostPower}th power ({power:0.00}): {(keeps ? "kept" : "NOT KEPT")}."));
        return keeps ? 0 : 1;
    }

    // One operating point from nothing, contacts as found: what ngspice is asked for, too. The order of elimination is there, as it is from the second setting on.
    private static double Network(Circuit circuit, int[] state)
    {
        CircuitModel model = new(circuit);
        RegulatedSolver solver = new(model.Network, model.Regulators);
        var laws = model.LawsIn(state, state, []);
        if (!solver.Solve(laws, null).Point.IsConverged) throw new InvalidOperationException("no operating point");
        return Best(() => solver.Solve(laws, null), 21);
    }

    private static double Best(Action work, int runs, int warmUps = 2)
    {
        for (int i = 0; i < warmUps; i++) work();
        double best = double.PositiveInfinity;
        for (int i = 0; i < runs; i++)
        {
            long start = Stopwatch.GetTimestamp();
            work();
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }
        return best;
    }

    // What a process of ours takes that makes the circuit, solves it once and ends.
    private static double OwnProcess(int size) => Best(() =>
    {
        using var process = Process.Start(new ProcessStartInfo(
            Path.Combine(AppContext.BaseDirectory, "Hotside.Benchmarks"), ["solve", "once", size.ToString(CultureInfo.InvariantCulture)]))!;
        process.WaitForExit();
    }, 2, warmUps: 0);

    private static int Once(string asked)
    {
        if (!int.TryParse(asked, NumberStyles.None, CultureInfo.InvariantCulture, out int size)) return 64;
        var circuit = GeneratedWiring.OfSize(Seed, size, isSmooth: true);
        return new CircuitSolver(circuit).Solve(GeneratedWiring.SettingOf(Seed, circuit)).IsExact ? 0 : 1;
    }
}
