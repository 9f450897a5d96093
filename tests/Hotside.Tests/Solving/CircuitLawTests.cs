using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Tests.Solving;

/// <summary>What holds of every circuit: Kirchhoff's two laws, and that nature does not know which pole is grounded.</summary>
public class CircuitLawTests
{
    private static IEnumerable<(int Seed, Circuit Circuit, Solution Solution)> Solved =>
        Enumerable.Range(1, 150).Select(seed => (seed, Circuit: GeneratedWiring.Of(seed))).Select(c => (c.seed, c.Circuit, new CircuitSolver(c.Circuit).Solve(GeneratedWiring.SettingOf(c.seed, c.Circuit))));

    [Fact]
    public void At_every_node_currents_close_and_around_the_whole_power_balances()
    {
        double worst = 0;
        foreach (var (seed, circuit, solution) in Solved)
        {
            SpiceNodes nodes = new(circuit);
            Dictionary<string, (double Sum, double Size)> sums = [];
            double power = 0, flow = 0;
            foreach (var conductor in solution.Conductors) Flow(nodes[conductor.Conductor.From], nodes[conductor.Conductor.To], conductor.Amperes, conductor.Volts);
            foreach (var point in solution.Elements)
            {
                var source = circuit.Sources.FirstOrDefault(s => s.Part == point.Part && s.Element == point.Element);
                var (from, to) = source is null ? (SpiceNodes.EndOf(point.Part, point.Element.From), SpiceNodes.EndOf(point.Part, point.Element.To))
                    : source.PlusIsFeed ? (source.Feed, source.Return) : (source.Return, source.Feed);
                Flow(nodes[from], nodes[to], point.Amperes, point.Volts);
            }
            foreach (var (sum, size) in sums.Where(s => s.Key != "0").Select(s => s.Value))
            {
                // Of a joint of a microhm at 24 V the last digits are some nanoamperes.
                Assert.True(Math.Abs(sum) < 1e-7 + (1e-9 * size), $"seed {seed}: {sum} A are left of {size}");
                worst = Math.Max(worst, Math.Abs(sum));
            }
            Assert.True(Math.Abs(power) < 1e-6 + (1e-8 * flow), $"seed {seed}: {power} W are left of {flow}");

            void Flow(string from, string to, double amperes, double volts)
            {
                foreach (var (node, out_) in new[] { (from, amperes), (to, -amperes) })
                {
                    var (sum, size) = sums.GetValueOrDefault(node);
                    sums[node] = (sum + out_, size + Math.Abs(out_));
                }
                (power, flow) = (power + (volts * amperes), flow + Math.Abs(volts * amperes));
            }
        }
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"worst {worst:E1} A"));
    }

    [Fact]
    public void With_the_other_pole_grounded_every_current_is_the_same()
    {
        for (int seed = 1; seed <= 100; seed++)
        {
            var (minus, plus) = (Solved(Ground.Negative), Solved(Ground.Positive));
            foreach (var (here, there) in minus.Conductors.Zip(plus.Conductors)) Same(here.Amperes, there.Amperes, $"seed {seed}: {here.Conductor.Id}");
            foreach (var (here, there) in minus.Elements.Zip(plus.Elements)) Same(here.Amperes, there.Amperes, $"seed {seed}: {here.Part.Id}.{here.Element.Name}");

            Solution Solved(Ground ground)
            {
                var circuit = GeneratedWiring.Of(seed, ground);
                return new CircuitSolver(circuit).Solve(GeneratedWiring.SettingOf(seed, circuit));
            }
        }

        static void Same(double here, double there, string what) => Assert.True(Math.Abs(Math.Abs(here) - Math.Abs(there)) <= 2e-8 + (1e-9 * Math.Abs(here)), $"{what}: {here} and {there} A");
    }
}
