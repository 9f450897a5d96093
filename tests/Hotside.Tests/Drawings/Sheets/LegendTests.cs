using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings.Sheets;

/// <summary>A legend has what its sheet shows and nothing else.</summary>
public sealed class LegendTests
{
    private const string Lamp = """
        hotside: 1
        title: Lamp
        system: 12 V, negative ground, sizes in mm²
        parts:
          G1: battery, 12 V
          S1: switch, 1 on G1.pos
          E1: lamp, 12 V, 10 W, 2 on chassis
          S2: switch
        wires:
          w1: G1.neg to chassis, 10 BK
          w2: S1.2 to E1.1, 1 RD

        """;

    private static string Svg(string text, View view = View.Pair) => Job.Read(text).OrThrow().Draw(view).ToSvg();

    [Theory]
    [InlineData("replace E1: lamp, 12 V, 5 W", "part replaced", "part fitted|run new|part with leads swapped")]
    [InlineData("fit E2: lamp, 12 V, 5 W, 2 on chassis", "part fitted", "part replaced|part with leads swapped|to be replaced")]
    [InlineData("run w3: S1.2 to S2.1, 1 RD", "run new", "part fitted|part replaced|part with leads swapped")]
    [InlineData("reverse E1", "part with leads swapped|leads swapped", "part fitted|part replaced|run new|remounted")]
    public void What_is_done_to_parts_has_an_outline_and_what_is_done_to_wires_a_line(string change, string shown, string hidden)
    {
        string svg = Svg($"{Lamp}alteration:\n  title: Altered\n  changes:\n    - {change}\n");
        Assert.All(shown.Split('|'), s => Assert.Contains(">" + s + "<", svg, StringComparison.Ordinal));
        Assert.All(hidden.Split('|'), s => Assert.DoesNotContain(">" + s + "<", svg, StringComparison.Ordinal));
    }

    [Fact]
    public void A_terminal_without_a_wire_is_marked_and_explained()
    {
        Assert.Contains(">terminal without a wire<", Svg(Lamp), StringComparison.Ordinal);
        // What stands on metal with its case, or is bolted to another part, is no such terminal.
        Assert.DoesNotContain(">terminal without a wire<", Svg(Lamp.Replace("  S2: switch\n", "  M1: starter, 12 V, 50 A\n", StringComparison.Ordinal).Replace("1 RD\n", "1 RD\n  w3: S1.2 to M1.1, 1 RD\n", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_wires_met_before_is_explained_where_an_overlay_shows_it()
    {
        // Both headlamps' wires met at E1 before; each has its fuse after.
        var job = Job.ReadFile(Repository.Path("gallery", "headlamps", "job.yaml")).OrThrow();
        Assert.Contains(">wires met here before<", job.Draw(View.Overlay).ToSvg(), StringComparison.Ordinal);
        Assert.DoesNotContain(">wires met here before<", job.Draw().ToSvg(), StringComparison.Ordinal);
        Assert.DoesNotContain(">wires met here before<", Svg($"{Lamp}alteration:\n  title: Altered\n  changes:\n    - replace E1: lamp, 12 V, 5 W\n", View.Overlay), StringComparison.Ordinal);
    }
}
