using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Currents;
using Hotside.Solving;
using Hotside.Studies;
using Hotside.Tests.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Sizing;

/// <summary>In no state does a conductor carry more than the current that is told as its greatest.</summary>
public class BoundLawTests
{
    // Where a point is computed, what else is on makes the sources sag a little otherwise: a hundredth, own choice, where loads are told three hundredths more.
    private const double Sag = 1.01, Least = 1e-3;

    [Fact]
    public void In_no_state_of_a_generated_circuit_does_a_conductor_carry_more_than_its_greatest_current()
    {
        int compared = 0;
        List<string> low = [];
        for (int seed = 0; seed < 400; seed++)
        {
            var circuit = TestCircuit.Read(GeneratedCircuit.Of(seed));
            // Between two feeds, one of which sags in a short circuit, a load may get what no verdict counts as fed; a relay that never rests has a current that comes and goes.
            if (circuit.Sources.Length > 1 || Free(circuit).Aggregate(1.0, (n, v) => n * v.Actuator.Positions.Length) > 300) continue;
            var study = CircuitStudy.Of(circuit);
            if (study.Loads.Any(l => l.IsMomentary || l.IsInRace)) continue;
            CircuitModel model = new(circuit);
            // What a short circuit leaves of the volts, nobody sizes for.
            if (Greatest(model, States(circuit)) is not { } greatest) continue;
            compared += Compare(new(study, model), circuit, greatest, $"seed {seed}", low);
        }
        Assert.True(compared > 1500, $"only {compared} were compared");
        Assert.True(low.Count == 0, $"{low.Count} of {compared} are too low\n" + string.Join('\n', low.Take(20)));
    }

    public static TheoryData<string> Jobs => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void In_no_state_drawn_at_random_does_a_conductor_of_a_job_carry_more_than_its_greatest_current(string file)
    {
        if (JobFiles.Read(file).Alteration is not { } alteration) return;
        List<string> low = [];
        int compared = 0;
        foreach (var circuit in new[] { alteration.Before, alteration.After })
        {
            CircuitModel model = new(circuit);
            compared += Compare(new(CircuitStudy.Of(circuit), model), circuit, Greatest(model, Random(circuit, 200), skipsShorts: true)!, file, low);
        }
        Assert.NotEqual(0, compared);
        Assert.True(low.Count == 0, $"{low.Count} are too low\n" + string.Join('\n', low.Take(20)));
    }

    private static int Compare(WorstCurrents worst, Circuit circuit, double[] greatest, string name, List<string> low)
    {
        int compared = 0;
        for (int c = 0; c < greatest.Length; c++)
        {
            if (worst.Of(c) is not { How: not CurrentBasis.Searched } told) continue;
            compared++;
            if (greatest[c] > (told.Amperes * Sag) + Least) low.Add($"{name}: {circuit.Conductors[c].Id} carries {greatest[c]:0.000} A, told {told.Amperes:0.000} A ({told.How})");
        }
        return compared;
    }

    // The greatest current of each conductor; nothing where a state is a short circuit.
    private static double[]? Greatest(CircuitModel model, IEnumerable<ImmutableArray<SetPosition>> states, bool skipsShorts = false)
    {
        RunningCircuit running = new(model);
        double[] greatest = new double[model.Circuit.Conductors.Length];
        foreach (var positions in states)
        {
            var at = running.Solve(running.StateOf(positions));
            if (running.IsShort(at))
            {
                if (skipsShorts) continue;
                return null;
            }
            for (int c = 0; c < greatest.Length; c++) greatest[c] = Math.Max(greatest[c], Math.Abs(running.AmperesOf(at, c)));
        }
        return greatest;
    }

    private static IEnumerable<Variable> Free(Circuit circuit) => circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven);

    private static IEnumerable<ImmutableArray<SetPosition>> States(Circuit circuit)
    {
        IEnumerable<ImmutableArray<SetPosition>> states = [[]];
        foreach (var v in Free(circuit)) states = states.SelectMany(s => v.Actuator.Positions.Select(p => s.Add(new(v.Part, v.Actuator.Name, p))));
        return states;
    }

    private static IEnumerable<ImmutableArray<SetPosition>> Random(Circuit circuit, int count)
    {
        Random random = new(1);
        for (int n = 0; n < count; n++)
        {
            // Sometimes everything moves, sometimes little.
            int share = 1 + random.Next(4);
            yield return [.. Free(circuit).Where(_ => random.Next(share) == 0).Select(v => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[random.Next(v.Actuator.Positions.Length)]))];
        }
    }
}
