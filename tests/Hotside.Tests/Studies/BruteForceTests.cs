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
}
