using Hotside.Studies;
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
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to E1.1|G1.pos to S3.1|S3.2 to E1.1|E1.2 to chassis", "by S3, or S2 and S1: 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to E1.1|S1.2 to E1.1|E1.2 to chassis", "by S1, which carries 2 A")]
    [InlineData("G1.pos to S1.1|S1.2 to S2.1|S2.2 to S3.1|S3.2 to E1.1|E1.2 to chassis", "by S3, S2 and S1: 2 A")]
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

    // A key of two contacts: cranking it feeds by itself, running only with the pressure up.
    [Fact]
    public void A_switch_that_feeds_alone_or_with_another_says_so()
    {
        var study = Job.Read("""
            hotside: 1
            title: Pump
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V
              S1: ignition-switch
              S2: oil-switch-make
              S3: switch
              M1: motor, 12 V, 24 W
            wires:
              w0: G1.neg to chassis
              w1: G1.pos to S1.30
              w2: S1.50 to M1.1
              w3: S1.15 to S3.1
              w4: S3.2 to M1.1
              w5: M1.2 to chassis
            """).OrThrow().Study.After;
        Assert.Equal("by S1 alone or with S3: 2 A", VerdictCaption.Of(study.Loads, study).Single().By);
    }

    // The disconnect is told with the rail that it feeds.
    [Fact]
    public void A_battery_disconnect_is_left_out_where_another_switch_is_in_the_way()
    {
        var study = Job.Read("""
            hotside: 1
            title: Behind a disconnect
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V
              Q1: battery-disconnect
              X1: feed-rail
              S1: push-button
              H1: horn, 12 V, 4 A
              E1: lamp, 12 V, 24 W
            wires:
              w0: G1.neg to chassis
              w1: G1.pos to Q1.1
              w2: Q1.2 to X1
              w3: X1 to H1.1
              w4: H1.2 to S1.1
              w5: S1.2 to chassis
              w6: X1 to E1.1
              w7: E1.2 to chassis
            """).OrThrow().Study.After;
        Assert.Equal(
            [(SwitchedSide.GroundSwitched, "by S1, which carries 4 A"), (SwitchedSide.HotSwitched, "by Q1: 2 A")],
            new[] { "H1", "E1" }.Select(id => VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == id), study).Single()).Select(c => (c.Side, c.By)));
    }

    // Without its ground each filament of E1 leads through the other and on through E2: what lies beyond the lamp is told, once for both.
    [Fact]
    public void Filaments_in_series_through_each_other_share_a_line()
    {
        var study = Job.Read("""
            hotside: 1
            title: A lost ground
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V
              S1: switch
              E1: headlamp, 12 V, 60/55 W
              E2: headlamp, 12 V, 60/55 W
            wires:
              w0: G1.neg to chassis
              w1: G1.pos to S1.1
              w2: S1.2 to E1.56a
              w3: E1.56b to E2.56b
              w4: E2.31 to chassis
            """).OrThrow().Study.After;
        var caption = Assert.Single(VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == "E1"), study));
        Assert.Equal((SwitchedSide.InSeries, "", "with E2.low, by S1"), (caption.Side, caption.Names, caption.By));
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

    // A lamp with a switch of its own, on a door's switch, too.
    [Fact]
    public void A_lamps_own_switch_is_called_so()
    {
        var study = Read("E1: roof-lamp, 12 V, 24 W, case on chassis|S1: switch|S2: switch", "G1.pos to E1.30|E1.D to S1.1|S1.2 to chassis|E1.D to S2.1|S2.2 to chassis");
        Assert.Equal("by S2, S1 or its own switch: 2 A", VerdictCaption.Of(study.Loads, study).Single().By);
    }

    // The buzzer on the same feed is not in the lamp's string; what a running machine drives backwards through the lamp and the buzzer is not what the lamp is for.
    [Fact]
    public void A_charge_lamp_tells_what_its_own_current_passes()
    {
        var study = Read("G3: alternator, 12 V, 45 A, case on chassis|S1: switch|H1: charge-lamp, 12 V, 2 W|H2: buzzer, 12 V, 0.3 A|B1: oil-switch",
            "G1.pos to S1.1|G3.B+ to G1.pos|S1.2 to H1.15|H1.61 to G3.D+|S1.2 to H2.1|H2.2 to B1.1");
        var load = study.Load("H1");
        Assert.Equal(["G3", "H2"], load.InSeriesWith);
        Assert.Equal([true, false], load.Strings.OrderBy(s => s.With[0] == "G3").Select(s => s.IsBackFed));
        Assert.Equal("with G3's D+, by S1", VerdictCaption.Of([load], study).Single().By);
        // The way of a machine that stands begins at the battery.
        Assert.StartsWith("G1", string.Join(' ', load.Paths[0].HotWay), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_fed_by_itself_has_the_badge_and_the_rest_stands_beside_it()
    {
        var study = Read("K1: starter-solenoid, 12 V|S1: switch|M1: starter, 12 V, 100 A|E2: tail-stop-lamp, 12 V, 5/21 W|S4: switch",
            "G1.pos to K1.30|G1.pos to S1.1|S1.2 to K1.50|K1.M to M1.1|G1.pos to S4.1|S4.2 to E2.54|E2.31 to chassis");
        Assert.Equal(["hold-in by S1", "pull-in: in series with M1"], Beside(study, "K1"));
        Assert.Equal(["stop by S4, which carries 1.8 A", "tail: never on, no way to a feed"], Beside(study, "E2"));
    }

    private static string[] Beside(CircuitStudy study, string part)
    {
        var captions = VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == part && !l.Element.IsInternal), study);
        return [.. captions.Select(c => c.Beside(captions[0], Vocabulary.Of(Words.American)))];
    }

    // A badge that no part has is not explained.
    [Fact]
    public void The_legend_has_the_badges_that_are_there()
    {
        const string meaning = "fed through another load", winding = "K1: starter-solenoid, 12 V|S1: switch|M1: starter, 12 V, 100 A", wires = "G1.pos to K1.30|G1.pos to S1.1|S1.2 to K1.50|K1.M to M1.1";
        Assert.DoesNotContain(meaning, Made(winding, wires).Draw(View.After).ToSvg(), StringComparison.Ordinal);
        Assert.Contains(meaning, Made(winding + "|E1: lamp, 12 V, 5 W|E2: lamp, 12 V, 5 W", wires + "|G1.pos to E1.1|E1.2 to E2.1|E2.2 to chassis").Draw(View.After).ToSvg(), StringComparison.Ordinal);
    }

    private static CircuitStudy Read(string parts, string wires) => Made(parts, wires).Study.After;

    private static Job Made(string parts, string wires) => Job.Read($"""
        hotside: 1
        title: Captions
        system: 12 V, negative ground
        parts:
          G1: battery, 12 V
        {string.Join('\n', parts.Split('|').Select(p => "  " + p))}
        wires:
          w0: G1.neg to chassis
        {string.Join('\n', wires.Split('|').Select((w, i) => $"  w{i + 1}: {w}"))}
        """).OrThrow();
}
