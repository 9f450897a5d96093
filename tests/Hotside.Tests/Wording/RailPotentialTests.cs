using Hotside.Wording;

namespace Hotside.Tests.Wording;

/// <summary>A rail behind a switch says when it is live.</summary>
public sealed class RailPotentialTests
{
    [Theory]
    [InlineData("G1.pos to Q1.1|Q1.2 to X1", "+24 V with Q1 on")]
    [InlineData("G1.pos to Q1.1|Q1.2 to F1.1|F1.2 to X1", "+24 V with Q1 on")]
    [InlineData("G1.pos to Q2.1|G2.pos to Q2.2|Q2.C to X1", "+24 V unless Q2 off")]
    // A key that feeds it in two positions; two switches one behind the other; a relay; no switch at all.
    [InlineData("G1.pos to S1.30|S1.15 to X1", "+24 V with S1 run or start")]
    [InlineData("G1.pos to Q1.1|Q1.2 to S2.1|S2.2 to X1", "")]
    [InlineData("G1.pos to Q1.1|Q1.2 to X1|G1.pos to S2.1|S2.2 to X1", "")]
    [InlineData("G1.pos to K1.30|K1.87 to X1", "")]
    [InlineData("G1.pos to X1", "")]
    public void A_rail_behind_one_switch_says_with_which_it_is_live(string wires, string told)
    {
        var circuit = Job.Read($"""
            hotside: 1
            title: A rail
            system: 24 V, negative ground
            parts:
              G1: battery, 24 V
              G2: battery, 24 V
              Q1: battery-disconnect
              Q2: battery-selector
              F1: fuse, 10 A
              S1: ignition-switch
              S2: switch
              K1: relay, 24 V
              X1: feed-rail, Feed
              E1: lamp, 24 V, 5 W, 2 on chassis
            wires:
              w0: G1.neg to chassis
              w19: G2.neg to chassis
              w20: X1 to E1.1
            {string.Join('\n', wires.Split('|').Select((w, i) => $"  w{i + 1}: {w}"))}
            """).OrThrow().Study.After.Circuit;
        Assert.Equal(told, RailPotential.Of("X1", circuit));
    }

    [Fact]
    public void It_stands_at_the_rails_name()
    {
        string svg = Job.Read("""
            hotside: 1
            title: A rail
            system: 24 V, positive ground
            parts:
              G1: battery, 24 V
              G2: switched-alternator, 24 V, 30 A
              Q1: battery-disconnect
              X1: feed-rail, Feed
              E1: lamp, 24 V, 5 W, 2 on chassis
            wires:
              w1: G1.pos to chassis
              w2: G1.neg to Q1.1
              w3: Q1.2 to X1
              w4: X1 to E1.1
              w5: G2.B+ to chassis
              w6: G2.B- to X1
            """).OrThrow().Draw(View.After).ToSvg();
        Assert.Contains(">\u221224 V with Q1 on<", svg, StringComparison.Ordinal);
        // What is stamped on a pole is set with a minus.
        Assert.Contains(">B\u2212<", svg, StringComparison.Ordinal);
        Assert.DoesNotContain(">B-<", svg, StringComparison.Ordinal);
    }
}
