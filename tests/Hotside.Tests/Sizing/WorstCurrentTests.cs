using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Currents;
using Hotside.Solving;
using Hotside.Studies;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Sizing;

/// <summary>Greatest currents of generated circuits, by all combinations and by a search.</summary>
public class WorstCurrentTests
{
    private const int MostStates = 300;

    private static IEnumerable<(CircuitStudy Study, CircuitModel Model)> Small(int count)
    {
        for (int seed = 0; seed < count; seed++)
        {
            var circuit = TestCircuit.Read(GeneratedCircuit.Of(seed));
            double states = circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Aggregate(1.0, (n, v) => n * v.Actuator.Positions.Length);
            // Between two feeds, one of which sags in a short circuit, a load may get what no verdict counts as fed.
            if (states > MostStates || circuit.Sources.Length > 1) continue;
            // A relay that never comes to rest has a current that comes and goes.
            var study = CircuitStudy.Of(circuit);
            if (study.Loads.All(l => !l.IsMomentary && !l.IsInRace)) yield return (study, new CircuitModel(circuit));
        }
    }

    // Where there are too many combinations a search takes their place: measured where both can be told.
    [Fact]
    public void A_search_finds_what_all_combinations_show_but_for_a_few_hundredths()
    {
        int compared = 0, low = 0;
        foreach (var (study, model) in Small(80))
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
}
