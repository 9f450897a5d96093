using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using MathNet.Numerics.LinearAlgebra;

namespace Hotside.Tests.Solving;

/// <summary>Elimination and Newton's method on networks made from seeds.</summary>
public class NetworkTests
{
    private static int[] Seeds(int count) => [.. Enumerable.Range(1, count)];

    [Fact]
    public void Elimination_agrees_with_the_LU_factorisation_of_MathNet_up_to_200_nodes()
    {
        foreach (int nodes in new[] { 1, 2, 5, 20, 60, 120, 200 })
        {
            var net = RandomNetwork.Lines(nodes, nodes).Network;
            Random random = new(nodes);
            double[] siemens = [.. net.Edges.Select(_ => Math.Pow(10, (4 * random.NextDouble()) - 2))], injected = [.. Enumerable.Range(0, nodes).Select(_ => random.NextDouble() - 0.5)];
            var matrix = Matrix<double>.Build.Dense(nodes, nodes);
            for (int e = 0; e < siemens.Length; e++)
            {
                var (a, b) = net.Edges[e];
                if (a == b) continue;
                if (a >= 0) matrix[a, a] += siemens[e];
                if (b >= 0) matrix[b, b] += siemens[e];
                if (a >= 0 && b >= 0) (matrix[a, b], matrix[b, a]) = (matrix[a, b] - siemens[e], matrix[b, a] - siemens[e]);
            }
            double[] expected = [.. matrix.LU().Solve(Vector<double>.Build.DenseOfArray(injected))];
            StarMesh mesh = new(net);
            mesh.Factor(siemens);
            double[] volts = (double[])injected.Clone();
            mesh.Solve(volts);
            double scale = expected.Max(Math.Abs);
            Assert.All(volts.Zip(expected), v => Assert.Equal(v.Second, v.First, 1e-9 * scale));
            double[] ohms = [.. matrix.Inverse().Diagonal()];
            Assert.All(mesh.Ohms().Zip(ohms), o => Assert.Equal(o.Second, o.First, 1e-9 * ohms.Max()));
        }
    }

    [Fact]
    public void What_nothing_ties_to_the_reference_has_no_ohms_to_it()
    {
        // 0 stands on the reference; 1 and 2 are joined with each other alone.
        StarMesh mesh = new(new(3, [new(0, NetworkEdge.Reference), new(1, 2)]));
        mesh.Factor([0.5, 100]);
        double[] ohms = mesh.Ohms();
        Assert.Equal(2, ohms[0], 1e-12);
        Assert.All(ohms[1..], o => Assert.True(o >= StarMesh.Untied));
    }

    [Fact]
    public void Every_network_settles_with_currents_that_close_and_power_that_balances()
    {
        int most = 0;
        List<int> steps = [];
        foreach (int seed in Seeds(400))
        {
            var net = RandomNetwork.Of(seed);
            var point = new NewtonSolver(net.Network).Solve(net.Laws, new double[net.Network.NodeCount], null);
            Assert.True(point.IsConverged, $"seed {seed}");
            steps.Add(point.Steps);
            most = Math.Max(most, point.Steps);
            double[] sums = new double[net.Network.NodeCount + 1];
            double power = 0, flow = 0;
            for (int e = 0; e < net.Laws.Length; e++)
            {
                if (net.Laws[e] is not { } law) continue;
                double volts = point.Across(net.Network.Edges[e]), amperes = law.At(volts).Amperes;
                sums[net.Network.Edges[e].A + 1] += amperes;
                sums[net.Network.Edges[e].B + 1] -= amperes;
                power += volts * amperes;
                flow += Math.Abs(volts * amperes);
            }
            Assert.All(sums, s => Assert.Equal(0, s, 1e-7));
            Assert.Equal(0, power, 1e-6 + (1e-7 * flow));
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"Newton steps: mean {steps.Average():0.0}, 95 % at most {steps.Order().ElementAt((int)(0.95 * steps.Count))}, worst {most}");
    }

    [Fact]
    public void Where_the_search_begins_changes_no_current()
    {
        foreach (int seed in Seeds(60))
        {
            var net = RandomNetwork.Of(seed);
            NewtonSolver solver = new(net.Network);
            Random random = new(seed);
            double[] none = new double[net.Network.NodeCount];
            var first = solver.Solve(net.Laws, none, null);
            var second = solver.Solve(net.Laws, none, [.. none.Select(_ => (2000 * random.NextDouble()) - 1000)]);
            Assert.True(second.IsConverged);
            for (int e = 0; e < net.Laws.Length; e++)
                Assert.Equal(Current(net, first, e), Current(net, second, e), 1e-5);
        }
    }

    [Fact]
    public void Turned_round_every_current_is_the_same_to_the_last_digits()
    {
        foreach (int seed in Seeds(60))
        {
            var net = RandomNetwork.Of(seed);
            Network turned = new(net.Network.NodeCount, [.. net.Network.Edges.Select(e => new NetworkEdge(e.B, e.A))]);
            double[] none = new double[turned.NodeCount];
            var point = new NewtonSolver(net.Network).Solve(net.Laws, none, null);
            var mirrored = new NewtonSolver(turned).Solve(net.Laws, none, null);
            Assert.All(point.Volts.Zip(mirrored.Volts), v => Assert.Equal(v.First, -v.Second, 1e-9));
        }
    }

    [Fact]
    public void Nodes_between_straight_lines_eliminated_once_change_no_volts()
    {
        foreach (int seed in Seeds(120))
        {
            var net = RandomNetwork.Of(seed);
            var known = net.Network with { Straight = [.. net.Laws.Select(l => l is null or ClampLaw { IsLine: true })] };
            double[] injected = new double[known.NodeCount];
            var plain = new NewtonSolver(net.Network).Solve(net.Laws, injected, null);
            NewtonSolver solver = new(known);
            var quick = solver.Solve(net.Laws, injected, null);
            Assert.Equal(plain.IsConverged, quick.IsConverged);
            for (int e = 0; e < net.Laws.Length; e++)
                Assert.Equal(Current(net, plain, e), Current(net, quick, e), 1e-5);
            // Kirchhoff's law holds at the nodes that were eliminated, too.
            double[] left = new double[known.NodeCount];
            for (int e = 0; e < net.Laws.Length; e++)
            {
                var (a, b) = known.Edges[e];
                if (a >= 0) left[a] += Current(net, quick, e);
                if (b >= 0) left[b] -= Current(net, quick, e);
            }
            if (quick.IsConverged) Assert.All(left, l => Assert.Equal(0, l, 2e-5));
        }
    }

    [Fact]
    public void A_current_fed_into_an_island_has_no_way_back_and_is_said_to_have_none()
    {
        Network island = new(3, [new(0, -1), new(1, 2)]) { Straight = [true, true] };
        Assert.False(new NewtonSolver(island).Solve([ClampLaw.Resistance(1), ClampLaw.Resistance(5)], [0, 0.5, 0], null).IsConverged);
        var through = new NewtonSolver(island).Solve([ClampLaw.Resistance(1), ClampLaw.Resistance(5)], [2, 0.5, -0.5], null);
        Assert.True(through.IsConverged);
        Assert.Equal(2, through.Volts[0], 1e-9);
        Assert.Equal(2.5, through.Volts[1] - through.Volts[2], 1e-9);
    }

    [Fact]
    public void An_edge_that_was_taken_for_straight_and_is_not_is_solved_all_the_same()
    {
        Network lamp = new(2, [new(0, -1), new(0, 1), new(1, -1)]) { Straight = [true, true, true] };
        Law?[] laws = [new ClampLaw(1e6, 12), new LampLaw(12, 21 / 12.0), new LampLaw(12, 5 / 12.0)];
        Assert.Equal(11.177, new NewtonSolver(lamp).Solve(laws, new double[2], null).Volts[1], 1e-3);
    }

    // Unbalanced bridge by Kirchhoff's laws (Wheatstone; Maxwell, Treatise, article 347): own numbers.
    [Fact]
    public void An_unbalanced_bridge_has_the_current_that_Kirchhoff_gives_it()
    {
        // 0 is the feed, 1 and 2 the midpoints.
        Network bridge = new(3, [new(0, -1), new(0, 1), new(1, -1), new(0, 2), new(2, -1), new(1, 2)]);
        Law?[] laws = [new ClampLaw(1e6, 12), .. new double[] { 100, 200, 300, 400, 50 }.Select(ClampLaw.Resistance)];
        var point = new NewtonSolver(bridge).Solve(laws, new double[3], null);
        Assert.Equal(7.7355, point.Volts[1], 1e-4);
        Assert.Equal(7.5372, point.Volts[2], 1e-4);
        Assert.Equal(3.967e-3, laws[5]!.At(point.Across(bridge.Edges[5])).Amperes, 1e-6);
        Assert.Equal(-57.52e-3, laws[0]!.At(point.Across(bridge.Edges[0])).Amperes, 1e-5);
    }

    // Two lamps in series: exponent of Fink and Beaty, page 22-8; own numbers.
    [Fact]
    public void A_lamp_of_21_watts_in_series_with_one_of_5_stays_dark()
    {
        Network string2 = new(2, [new(0, -1), new(0, 1), new(1, -1)]);
        Law?[] laws = [new ClampLaw(1e6, 12), new LampLaw(12, 21 / 12.0), new LampLaw(12, 5 / 12.0)];
        var point = new NewtonSolver(string2).Solve(laws, new double[2], null);
        Assert.Equal(11.177, point.Volts[1], 1e-3);
        Assert.Equal(0.4007, laws[1]!.At(point.Across(string2.Edges[1])).Amperes, 1e-4);
    }

    [Fact]
    public void An_island_on_nothing_has_the_right_currents_inside()
    {
        Network island = new(3, [new(0, -1), new(1, 2), new(1, 2)]);
        Law?[] laws = [ClampLaw.Resistance(1), new ClampLaw(100, 12), ClampLaw.Resistance(5.99)];
        var point = new NewtonSolver(island).Solve(laws, new double[3], null);
        Assert.Equal(2, laws[2]!.At(point.Across(island.Edges[2])).Amperes, 1e-9);
    }

    [Theory]
    [InlineData(14, 100, 5, 0.05)]   // holds
    [InlineData(6, 100, 0, 0)]       // drops out: the output is the input less 1.5 V and 0.5 Ω
    [InlineData(14, 2, 0, 1)]        // in its limit
    public void A_regulator_holds_drops_out_or_limits(double input, double load, double held, double limited)
    {
        Network net = new(2, [new(0, -1), new(1, -1)]);
        RegulatedSolver solver = new(net, [new SeriesRegulator(0, 1, -1, 1.5, 0.5, 5, 0.02, 1, false)]);
        var (point, amperes) = solver.Solve([new ClampLaw(100, input), ClampLaw.Resistance(load)], null);
        Assert.True(point.IsConverged);
        Assert.Equal(amperes[0], point.Volts[1] / load, 1e-6);
        double expected = limited == 1 ? 2 : held > 0 ? held - (0.02 * amperes[0]) : input - (0.01 * amperes[0]) - 1.5 - (0.5 * amperes[0]);
        Assert.Equal(expected, point.Volts[1], 1e-6);
    }

    private static double Current(RandomNetwork net, NetworkPoint point, int edge) => net.Laws[edge]?.At(point.Across(net.Network.Edges[edge])).Amperes ?? 0;
}
