using Hotside.Wording;

namespace Hotside.Tests.Wording;

/// <summary>By what a load is switched, in words: whether its switches lie one behind the other or beside each other; the nearest to the load first.</summary>
public sealed class VerdictCaptionTests
{
    [Theory]
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to E1.1|E1.2 to chassis", "by S2 and S1: 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to E1.1|E1.2 to S2.1|S2.2 to chassis", "by S1 and S2: 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to E1.1|G1.pos to S2.1|S2.2 to E1.1|E1.2 to chassis", "by S2 or S1: 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to E1.1|S1.2 to S3.1|S3.2 to E1.1|E1.2 to chassis", "by S1 and (S3 or S2): 2 A")]
    // One way passes two, the other one: neither word is true of all.
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to E1.1|G1.pos to S3.1|S3.2 to E1.1|E1.2 to chassis", "by S3, S2, S1: 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to E1.1|E1.2 to chassis", "by S1, which carries 2 A")]
    public void Switches_are_joined_by_and_or_by_or(string wires, string told)
    {
        string job = $"""
            hotside: 1
            title: Switches
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V
              S1: switch
              S2: switch
              S3: switch
              E1: lamp, 12 V, 24 W
            wires:
              w0: G1.neg to chassis
            {string.Join('\n', wires.Split('|').Select((w, i) => $"  w{i + 1}: {w}"))}
            """;
        var study = Job.Read(job).OrThrow().Study.After;
        Assert.Equal(told, VerdictCaption.Of(study.Loads, study).Single().By);
    }
}
