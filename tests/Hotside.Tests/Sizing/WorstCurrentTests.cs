using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Currents;
using Hotside.Solving;
using Hotside.Studies;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Sizing;

/// <summary>Greatest currents of generated circuits against every one of their states.</summary>
public class WorstCurrentTests
{
    private const int MostStates = 300;

    private static IEnumerable<(int Seed, CircuitStudy Study, CircuitModel Model)> Small(int count)
    {
        for (int seed = 0; seed < count; seed++)
        {
            var circuit = TestCircuit.Read(GeneratedCircuit.Of(seed));
            double states = circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Aggregate(1.0, (n, v) => n * v.Actuator.Positions.Length);
            // Between feeds of different volts a load may get what no verdict counts as fed.
            if (states <= MostStates && circuit.Sources.Select(s => s.Volts).Distinct().Count() == 1) yield return (seed, CircuitStudy.Of(circuit), new CircuitModel(circuit));
        }
    }

    [Fact]
    public void No_state_drives_more_through_a_conductor_than_its_bound()
    {
        int checkedBounds = 0;
        foreach (var (seed, study, model) in Small(80))
        {
            WorstCurrents worst = new(study, model);
            RunningCircuit running = new(model);
            int[] bounds = [.. Enumerable.Range(0, model.Circuit.Conductors.Length).Where(c => worst.Of(c).How == CurrentBasis.Bound)];
            foreach (int[] state in States(model.Circuit))
            {
                var point = running.Solve(state);
                // A short circuit is no steady state; all loads of such a circuit together draw less than this.
                if (model.Elements.Where(e => e.Element.IsSource).Sum(e => Math.Abs(running.AmperesOf(point, e))) > 60) continue;
                foreach (int c in bounds)
                {
                    checkedBounds++;
                    double amperes = Math.Abs(running.AmperesOf(point, c));
                    Assert.True(amperes <= (worst.Of(c).Amperes * 1.001) + 1e-3, $"seed {seed}, conductor {model.Circuit.Conductors[c].Id}: {amperes:0.000} A, bound {worst.Of(c).Amperes:0.000} A\n{GeneratedCircuit.Of(seed)}");
                }
            }
        }
        Assert.True(checkedBounds > 2_000, $"only {checkedBounds} bounds were looked at");
    }

    // Where there are too many combinations a search takes their place: measured where both can be told.
    [Fact]
    public void A_search_finds_what_all_combinations_show_but_for_a_few_hundredths()
    {
        int compared = 0, low = 0;
        foreach (var (_, study, model) in Small(80))
        {
            WorstCurrents all = new(study, model), search = new(study, model, most: 1);
            for (int c = 0; c < model.Circuit.Conductors.Length; c++)
            {
                if (all.Of(c) is not { How: CurrentBasis.Enumerated, Amperes: > 0.01 and < 100 } known) continue;
                compared++;
                Assert.True(search.Of(c).Amperes <= known.Amperes * 1.001);
                if (search.Of(c).Amperes < known.Amperes * 0.99) low++;
            }
        }
        Assert.True(compared > 50, $"only {compared} were compared");
        Assert.True(low <= compared / 20, $"{low} of {compared} were found too low");
    }

    private static IEnumerable<int[]> States(Circuit circuit)
    {
        int[] free = [.. Enumerable.Range(0, circuit.Variables.Length).Where(v => circuit.Variables[v].Actuator.Drive != ActuatorDrive.Driven)];
        int count = free.Aggregate(1, (n, v) => n * circuit.Variables[v].Actuator.Positions.Length);
        for (int n = 0; n < count; n++)
        {
            int[] state = new int[circuit.Variables.Length];
            for (int i = 0, rest = n; i < free.Length; rest /= circuit.Variables[free[i]].Actuator.Positions.Length, i++) state[free[i]] = rest % circuit.Variables[free[i]].Actuator.Positions.Length;
            yield return state;
        }
    }
}
