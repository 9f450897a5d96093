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

    // One relay on the hot side, another on the ground side; the feed comes by the stud of a third, which switches nothing of it.
    [Fact]
    public void All_relays_whose_contacts_the_current_passes_are_named()
    {
        var study = Job.Read("""
            hotside: 1
            title: Relays
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V
              K1: relay, 12 V, coil 0.15 A
              K2: relay, 12 V, coil 0.15 A
              K3: relay, 12 V, coil 0.15 A
              S1: switch
              M1: motor, 12 V, 24 W
            wires:
              w0: G1.neg to chassis
              w1: G1.pos to K3.30
              w2: K3.30 to K1.30
              w3: K1.87 to M1.1
              w4: M1.2 to K2.30
              w5: K2.87 to chassis
              w6: K3.30 to S1.1
              w7: S1.2 to K1.86
              w8: S1.2 to K2.86
              w9: K1.85 to chassis
              w10: K2.85 to chassis
              w11: S1.2 to K3.86
              w12: K3.85 to chassis
            """).OrThrow().Study.After;
        Assert.Equal("by K1 and K2: 2 A", VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == "M1"), study).Single().By);
    }
}
