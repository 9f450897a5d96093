using Hotside.Circuits;
using Hotside.Tests.Outputs;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Solving;

/// <summary>What the study calls fed carries current, and what it does not carries none.</summary>
public class StudyComparisonTests
{
    [Fact]
    public void In_every_state_of_the_twelve_circuits_volts_and_paths_agree() =>
        Agree(TwelveCircuits.All.Select(c => (c.Name, TestCircuit.Read(c.Text), 500)));

    [Fact]
    public void In_states_of_generated_circuits_volts_and_paths_agree() =>
        Agree(Enumerable.Range(0, 200).Select(seed => ($"seed {seed}", TestCircuit.Read(GeneratedCircuit.Of(seed)), 16)));

    // A machine whose ground is lost drives current through whatever else stands on the engine, against the battery: of that the study says nothing.
    [Fact]
    public void In_states_of_generated_vehicles_volts_and_paths_agree() =>
        Agree(Enumerable.Range(1, 40).Select(seed => ($"seed {seed}", GeneratedWiring.Of(seed), 12)).Where(c => c.Item2 is var circuit
            && Nodes.Of(circuit, throughLinks: true) is var nodes && circuit.Sources.All(s => nodes.AreOne(s.Return, circuit.System.ReturnNode))));

    [Fact]
    public void In_states_of_the_gallery_volts_and_paths_agree() =>
        Agree(GalleryJobs.Names.SelectMany(name => GalleryJobs.Read(name).Alteration is var alteration ? new[] { (name + " before", alteration.Before, 24), (name + " after", alteration.After, 24) } : []));

    private static void Agree(IEnumerable<(string Name, Circuit Circuit, int States)> circuits)
    {
        List<string> wrong = [];
        Dictionary<string, int> allowed = [];
        int fed = 0, notFed = 0;
        foreach (var (name, circuit, states) in circuits)
        {
            StudyComparison comparison = new(name, circuit, states);
            wrong.AddRange(comparison.Wrong);
            foreach (var (reason, count) in comparison.Allowed) allowed[reason] = allowed.GetValueOrDefault(reason) + count;
            (fed, notFed) = (fed + comparison.Compared.Fed, notFed + comparison.Compared.NotFed);
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"{fed} fed, {notFed} not fed; relays otherwise: {string.Join(", ", allowed.OrderBy(a => a.Key, StringComparer.Ordinal).Select(a => $"{a.Value} {a.Key}"))}");
        Assert.True(wrong.Count == 0, $"{wrong.Count} differ\n" + string.Join('\n', wrong.Take(12)));
        Assert.True(fed >= 50 && notFed >= 50);
    }
}
