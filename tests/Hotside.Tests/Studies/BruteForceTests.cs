using Hotside.Studies;

namespace Hotside.Tests.Studies;

public class BruteForceTests
{
    public static IEnumerable<TheoryDataRow<string>> Names => TwelveCircuits.All.Select(c => new TheoryDataRow<string>(c.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_twelve_circuits_agree_with_the_definition_state_by_state(string name) =>
        Assert.Empty(BruteForceComparison.Differences(TestCircuit.Read(TwelveCircuits.All.Single(c => c.Name == name).Text)));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Generated_circuits_agree_with_the_definition_state_by_state(int hundred)
    {
        for (int seed = 100 * hundred; seed < 100 * (hundred + 1); seed++)
        {
            string text = GeneratedCircuit.Of(seed);
            var found = BruteForceComparison.Differences(TestCircuit.Read(text));
            if (found.Count == 0) continue;
            string least = GeneratedCircuit.Shrink(text, t => BruteForceComparison.Differences(TestCircuit.Read(t)).Count > 0);
            Assert.Fail($"Seed {seed}: {string.Join("; ", BruteForceComparison.Differences(TestCircuit.Read(least)))}\n{least}");
        }
    }

    [Fact]
    public void Generated_circuits_behind_battery_disconnects_agree_too()
    {
        int told = 0;
        for (int seed = 0; seed < 150; seed++)
        {
            string text = GeneratedCircuit.WithDisconnects(seed);
            told += TestCircuit.Study(text).Loads.Count(l => l.SideWithDisconnects is { } whole && whole != l.Side);
            if (BruteForceComparison.Differences(TestCircuit.Read(text)).Count == 0) continue;
            string least = GeneratedCircuit.Shrink(text, t => BruteForceComparison.Differences(TestCircuit.Read(t)).Count > 0);
            Assert.Fail($"Seed {seed}: {string.Join("; ", BruteForceComparison.Differences(TestCircuit.Read(least)))}\n{least}");
        }
        // Else nothing was tried.
        Assert.True(told >= 30, told.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void The_generated_circuits_have_something_of_everything()
    {
        var loads = Enumerable.Range(0, 500).SelectMany(seed => TestCircuit.Study(GeneratedCircuit.Of(seed)).Loads).ToArray();
        // Nothing of a generated circuit lies elsewhere.
        foreach (var side in Enum.GetValues<SwitchedSide>().Where(s => s != SwitchedSide.Elsewhere)) Assert.True(loads.Count(l => l.Side == side) >= 10, side.ToString());
        Assert.True(loads.Count(l => l.Holds is not null) >= 10);
        Assert.True(loads.Count(l => l.IsMomentary) >= 10);
        Assert.True(loads.Count(l => l.Sneaks is not null) >= 50);
        Assert.DoesNotContain(loads, l => l.IsApproximate);
    }
}
