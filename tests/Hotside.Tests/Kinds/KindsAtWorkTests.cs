using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Studies;

namespace Hotside.Tests.Kinds;

/// <summary>Kinds in circuits: the verdicts were worked out by hand from how such parts are wired (common practice, no source).</summary>
public class KindsAtWorkTests
{
    private const string Text = """
        hotside: 1
        title: Kinds at work
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V
          X1: feed-rail, Battery feed
          A1: fuse-block, 4 ways, 30 on X1
          S1: light-switch-rheostat, 30 on X1
          E1: lamp-case, Panel lamp, 12 V, 2 W
          E2: courtesy-lamp, 12 V, 5 W
          S2: door-switch
          H1: warning-lamp, 12 V, 2 W
          S3: oil-switch
          K1: headlamp-relays
          S4: dimmer
          E3: lamp, Left high, 12 V, 45 W, 2 on X9
          X9: chassis-point
          M1: wiper-ground-switched, 12 V, 4 A
          S5: switch
          K2: relay-break, 12 V
          S6: switch
          E4: lamp, Rest lamp, 12 V, 5 W, 2 on X9
          Y1: holding-solenoid, 12 V
          S7: rotary-switch, 1 on X1
        wires:
          w1: G1.pos to X1, 2 BK
          w2: G1.neg to chassis, 2 BK
          w3: S1.58d to E1.1, 16 BK
          w4: A1.1 to E2.30, 16 BK
          w5: E2.31b to S2.1, 16 BK
          w6: A1.2 to H1.15, 16 BK
          w7: H1.2 to S3.1, 16 BK
          w8: A1.3 to K1.30, 10 BK
          w9: S1.56 to S4.56, 12 BK
          w10: S4.56a to K1.56a, 16 BK
          w11: S4.56b to K1.56b, 16 BK
          w12: K1.HL to E3.1, 14 BK
          w13: A1.4 to M1.53, 14 BK
          w14: M1.31b to S5.1, 14 BK
          w15: S5.2 to chassis, 14 BK
          w16: A1.1 to K2.30, 14 BK
          w17: K2.87a to E4.1, 14 BK
          w18: X1 to S6.1, 14 BK
          w19: S6.2 to K2.86, 14 BK
          w20: K2.85 to chassis, 14 BK
          w21: S7.a to Y1.1, 14 BK

        """;

    private static readonly Job Work = Job.Read(Text).OrThrow();

    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Where(k => !k.HoldsParts && !k.TakesAnyTerminal).Select(k => k.Id)];

    [Theory]
    [InlineData("E1", SwitchedSide.HotSwitched, "S1 park or head")]
    [InlineData("E2", SwitchedSide.GroundSwitched, "S2 open")]
    [InlineData("H1", SwitchedSide.GroundSwitched, "S3 low")]
    [InlineData("K1.high coil", SwitchedSide.HotSwitched, "S1 head and S4 high")]
    [InlineData("K1.low coil", SwitchedSide.HotSwitched, "S1 head and S4 low")]
    [InlineData("E3", SwitchedSide.HotSwitched, "S1 head and S4 high")]
    [InlineData("M1", SwitchedSide.GroundSwitched, "M1 away, or S5 on")]
    [InlineData("K2", SwitchedSide.HotSwitched, "S6 on")]
    [InlineData("E4", SwitchedSide.HotSwitched, "S6 off")]
    [InlineData("Y1.hold-in", SwitchedSide.HotSwitched, "S7 a")]
    public void A_load_is_switched_where_its_kind_puts_it(string load, SwitchedSide side, string control)
    {
        var study = Work.Study.After.Load(load);
        Assert.Equal((side, control), (study.Side, study.Control.ToString()));
    }

    [Fact]
    public void The_pull_in_winding_cuts_itself_off() => Assert.Equal(new SetPosition("Y1", "plunger", "in"), Work.Study.After.Load("Y1.pull-in").Until);

    [Fact]
    public void Nothing_is_found_wrong_with_them() => Assert.Empty(Work.Study.Findings.Where(d => d.Severity >= Severity.Warning));

    // Wired as it comes, top to the feed and the rest to a lamp each: whatever the studies find, they end, and it is drawn.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_can_be_wired_studied_and_drawn(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        string ways = kind.Ways is null ? "" : ", 3 ways";
        var terminals = (kind.Ways is null ? kind : kind.WithWays(3)).Terminals;
        string lamps = string.Concat(terminals.Select((t, i) => t.Side == TerminalSide.Top ? "" : $"  E{i}: lamp, 12 V, 5 W, 2 on chassis\n"));
        string wires = string.Concat(terminals.Select((t, i) => $"  w{i}: Z1.{t.Name} to {(t.Side == TerminalSide.Top ? "X1" : $"E{i}.1")}\n"));
        var job = Job.Read($"hotside: 1\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V\n  X1: feed-rail\n  Z1: {id}{ways}\n{lamps}wires:\n  wp: G1.pos to X1\n  wn: G1.neg to chassis\n{wires}").OrThrow();
        Assert.NotNull(job.Study.After);
        string svg = job.Draw(View.After).ToSvg();
        Assert.Contains("data-ref=\"Z1\"", svg, StringComparison.Ordinal);
    }
}
