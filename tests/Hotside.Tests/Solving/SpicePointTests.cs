using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Tests.Outputs;
using Hotside.Tests.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Solving;

/// <summary>Volts and amperes against ngspice: volts within 0.1 % of the system's, currents within 0.2 % or 1 mA.</summary>
public class SpicePointTests
{
    [Fact]
    public void Every_setting_of_the_gallery_has_the_volts_and_amperes_that_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        Judge(GalleryJobs.Names.Select(name =>
        {
            var alteration = GalleryJobs.Read(name).Alteration;
            SpicePoints points = new();
            foreach (var (side, circuit) in new[] { ("before", alteration.Before), ("after", alteration.After) })
            {
                CircuitSolver solver = new(circuit);
                foreach (var setting in circuit.Settings.Prepend(new("at rest", [], [])))
                    foreach (var solution in solver.Solve(setting) is var found ? found.Others.Prepend(found) : [])
                    {
                        Assert.True(solution.IsExact, $"{name} {side} {setting.Name}");
                        points.Add($"{name} {side} {setting.Name}", circuit, solution);
                    }
            }
            return points;
        }));
    }

    [Fact]
    public void Generated_circuits_have_the_volts_and_amperes_that_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        Judge(Enumerable.Range(0, 500).Chunk(25).Select(seeds =>
        {
            SpicePoints points = new();
            foreach (int seed in seeds)
            {
                var circuit = TestCircuit.Read(GeneratedCircuit.Of(seed));
                Random random = new(seed);
                var positions = circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven)
                    .Select(v => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[random.Next(v.Actuator.Positions.Length)]));
                var solution = new CircuitSolver(circuit).Solve(new Setting("some", [.. positions], []));
                Assert.True(solution.IsExact, $"seed {seed}");
                points.Add($"seed {seed}", circuit, solution);
            }
            return points;
        }));
    }

    private static void Judge(IEnumerable<SpicePoints> decks)
    {
        List<string> wrong = [];
        double volts = 0, amperes = 0;
        int count = 0;
        foreach (var deck in decks)
        {
            var (differ, worstVolts, worstAmperes) = deck.Compare();
            wrong.AddRange(differ);
            (volts, amperes, count) = (Math.Max(volts, worstVolts), Math.Max(amperes, worstAmperes), count + deck.Count);
        }
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{count} figures; worst volts {volts:E2}, worst amperes {amperes:E2} of what is allowed"));
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {count} differ\n" + string.Join('\n', wrong.Take(12)));
    }
}
