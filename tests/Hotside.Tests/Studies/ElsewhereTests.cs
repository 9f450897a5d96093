using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>Loads whose feed lies off the page; the verdicts were worked out by hand.</summary>
public sealed class ElsewhereTests
{
    private const string Caravan = """
        hotside: 1
        system: 12 V, negative ground, sizes in AWG
        parts:
          A1: elsewhere, Towing vehicle
          X1: splice
          G1: battery, 12 V, 60 Ah
          S1: switch
          E1: lamp, 12 V, 5 W, 2 on chassis
          E2: lamp, 12 V, 10 W, 2 on chassis
          E3: lamp, 12 V, 5 W
          K1: relay, 12 V, 30 A, coil 0.15 A
        wires:
          w1: A1.58 to E1.1, 16 GY
          w2: G1.neg to chassis, 10 BK
          w3: G1.pos to S1.1, 14 RD
          w4: S1.2 to E2.1, 14 YE
          w5: S1.2 to A1.30, 14 RD
          w6: A1.54 to X1, 14 RD
          w7: X1 to K1.86, 14 RD
          w8: K1.85 to chassis, 14 BK
          w9: X1 to K1.30, 14 RD
          w10: K1.87 to G1.pos, 14 RD
          w11: A1.L to E3.1, 16 BK
          w12: E3.2 to A1.R, 16 GN
        """;

    private readonly CircuitStudy study = Study(Caravan);

    private static CircuitStudy Study(string text) => JobOf(text).Study.After;

    private static Job JobOf(string text) => Job.Read(text).Job!;

    [Theory]
    [InlineData("E1", "A1.58")]
    [InlineData("E3", "A1.L A1.R")]
    [InlineData("K1", "A1.54")]
    public void What_lies_elsewhere_feeds_it_and_nobody_knows_by_which_switch(string load, string from)
    {
        Assert.Equal((SwitchedSide.Elsewhere, from), (study.Load(load).Side, string.Join(" ", study.Load(load).FedFrom)));
        Assert.Null(study.Load(load).DeadBecause);
        Assert.DoesNotContain(study.Findings, f => f.Code == "HS3005");
    }

    [Fact]
    public void What_has_a_feed_of_its_own_is_judged_by_that()
    {
        Assert.Equal(SwitchedSide.HotSwitched, study.Load("E2").Side);
        Assert.Empty(study.Load("E2").FedFrom);
    }

    [Fact]
    public void Without_a_return_it_never_comes_on()
    {
        var broken = Study(Caravan.Replace("E1: lamp, 12 V, 5 W, 2 on chassis", "E1: lamp, 12 V, 5 W", StringComparison.Ordinal));
        Assert.Equal(SwitchedSide.Dead, broken.Load("E1").Side);
    }

    [Fact]
    public void Its_words_tell_where_the_feed_comes_from()
    {
        Assert.Equal("fed from elsewhere: A1.58", study.Load("E1").Summary());
        Assert.Contains("not in this file", JobOf(Caravan).Explain("E1").ToString(), StringComparison.Ordinal);
    }
}
