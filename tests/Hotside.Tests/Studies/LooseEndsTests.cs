namespace Hotside.Tests.Studies;

/// <summary>A load that never comes on is told which terminal on its way has nothing on it.</summary>
public class LooseEndsTests
{
    [Theory]
    [InlineData("w1: G1.pos to S1.30", "w2: S1.58 to E1.1", "S1.30a (second feed)")]
    [InlineData("w1: G1.pos to S1.30a", "w2: S1.56 to E1.1", "S1.30 (battery)")]
    [InlineData("w1: G1.pos to S1.30", "", "E1.1 (feed)")]
    public void What_has_nothing_on_it_is_named(string feed, string lead, string named) =>
        Assert.Equal($"look for a wire, a feed or a return that is missing: nothing is on {named}", HintOf(feed, lead, "w3: E1.2 to chassis"));

    [Fact]
    public void A_way_that_is_whole_but_leads_nowhere_has_no_loose_end() =>
        Assert.Equal("look for a wire, a feed or a return that is missing", HintOf("w1: G1.pos to S1.30", "w2: E1.1 to chassis", "w3: E1.2 to chassis"));

    [Fact]
    public void The_return_that_is_missing_is_named_too() =>
        Assert.EndsWith("nothing is on E1.2 (return)", HintOf("w1: G1.pos to S1.30", "w2: S1.56 to E1.1", ""), StringComparison.Ordinal);

    private static string HintOf(params string[] wires)
    {
        var job = Job.Read($"""
            hotside: 1
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah
              S1: light-switch, 20 A
              E1: lamp, 12 V, 21 W
            wires:
              w0: G1.neg to chassis
              {string.Join("\n  ", wires.Where(w => w.Length > 0))}
            """).OrThrow();
        return Assert.Single(job.Findings, f => f.Code == "HS3005").Hint!;
    }
}
