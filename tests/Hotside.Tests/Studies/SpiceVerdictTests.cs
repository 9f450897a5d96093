using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>
/// Verdicts against ngspice: where the study says a load is fed, ngspice gives it current with all other consumers open, and where it says not, ngspice gives it none.
/// </summary>
public class SpiceVerdictTests
{
    [Fact]
    public void In_every_state_of_the_twelve_circuits_ngspice_feeds_what_the_study_feeds() => Compare(TwelveCircuits.All.Select(c => c.Text), statesEach: int.MaxValue);

    [Fact]
    public void In_states_of_generated_circuits_ngspice_feeds_what_the_study_feeds() =>
        Compare(Enumerable.Range(0, 120).Select(i => GeneratedCircuit.Of(4 * i)), statesEach: 6);

    private static void Compare(IEnumerable<string> texts, int statesEach)
    {
        SpiceDeck deck = new();
        List<(string Text, string Case, bool IsFed, double Least, double Most, double Rated)> asked = [];
        foreach (string text in texts)
        {
            var circuit = TestCircuit.Read(text);
            var study = CircuitStudy.Of(circuit, TestContext.Current.CancellationToken);
            BruteForce truth = new(circuit);
            bool hasResistance = truth.Pieces.Any(p => p.Element.IsInLine && !p.Element.IsLink);
            // Feeds that differ by less than a quarter count as equal; what flows between them is less than a quarter, too.
            double most = circuit.Sources.Select(s => s.Volts).Distinct().Any(v => circuit.Sources.Any(s => s.Volts != v && Math.Abs(s.Volts - v) < 0.25 * Math.Max(s.Volts, v))) ? 0.25 : 0.01;
            int step = Math.Max(1, truth.States.Count / statesEach);
            for (int i = 0; i < truth.States.Count; i += step)
            {
                // One state of rest, and no short: elsewhere a single operating point is no witness.
                if (truth.Settle(truth.States[i]) is not { Rests: true, Counted: [{ IsShort: false } net] }) continue;
                foreach (var load in truth.Loads)
                {
                    var verdict = study.Loads.Single(l => l.Part.Id == load.Part.Id && l.Element == load.Element);
                    if (verdict.IsMomentary) continue;
                    bool isFed = verdict.Side is not (SwitchedSide.InSeries or SwitchedSide.Dead)
                        && verdict.Control.Any.Any(c => c.All.All(s => s.Positions.Contains(truth.States[i][s.Variable])));
                    deck.Add(truth, net, load);
                    double rated = Rating(load, "V") / BruteForce.Net.Ohms(load);
                    // About half its rated current or more, for a 12 V lamp may hang on 6 V; a resistance in line may leave less, but never next to nothing.
                    asked.Add((text, verdict.Name + " at " + string.Join(", ", net.State.Select(s => s.Key + " " + s.Value)), isFed, hasResistance ? 0.02 : 0.45, most, rated));
                }
            }
        }
        double[]? currents = deck.Currents();
        Assert.SkipUnless(currents is not null, "ngspice is not installed");
        Assert.True(asked.Count(a => a.IsFed) > 30 && asked.Count(a => !a.IsFed) > 30);
        for (int i = 0; i < asked.Count; i++)
        {
            double part = Math.Abs(currents[i]) / asked[i].Rated;
            Assert.True(asked[i].IsFed ? part > asked[i].Least : part < asked[i].Most, $"{asked[i].Case}: fed {asked[i].IsFed}, but ngspice gives {part:P1} of its rated current\n{asked[i].Text}");
        }
    }

    private static double Rating(BruteForce.Piece load, string name) => load.Part.Ratings.First(r => r.Name == name).Quantity.Value;
}
