using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>The notation point by point.</summary>
public class NotationTests
{
    private static Job Everything { get; } = Job.ReadFile(Repository.Path("tests", "Hotside.Tests", "Reading", "notation", "everything.yaml")).OrThrow();

    private static Circuit Before => Everything.Alteration.Before;

    private static Circuit After => Everything.Alteration.After;

    /// <summary>A job of every item once, and what is understood of it in the canonical form.</summary>
    [Fact]
    public void What_is_understood_of_every_item_is_approved()
    {
        Assert.DoesNotContain(Everything.Findings, d => d.Severity >= Severity.Error && !d.Code.StartsWith("HS33", StringComparison.Ordinal));
        Approve.Text(Everything.ToYaml(), "tests", "Hotside.Tests", "Reading", "notation", "everything.approved.yaml");
    }

    [Fact]
    public void A_terminal_is_called_as_it_is_written() => Assert.Equal("G1.+", Before.FindConductor("w1")!.From.ToString());

    [Fact]
    public void One_line_makes_several_parts() => Assert.Equal(["1 on X1", "1 on X1"], new[] { "F1", "F2" }.Select(f => Before.FindPart(f)!.Joints[0]).Select(j => $"{j.Terminal} on {Before.TextOf(j.On)}"));

    [Fact]
    public void Feet_and_milliohms_are_metres_and_ohms()
    {
        Assert.Equal(0.6096, Before.FindConductor("w2")!.Wire.LengthInMetres!.Value, 12);
        Assert.Equal(0.0004, Before.FindConductor("w2")!.Wire.ResistanceInOhms!.Value, 12);
    }

    // 14 AWG is 1.628 mm across, 2.08 mm² (ASTM B258, from memory).
    [Fact]
    public void Gauges_and_square_millimetres_stand_in_one_file()
    {
        Assert.Equal(2.5, Before.FindConductor("w3")!.Wire.Size!.Value.Area);
        Assert.Equal(2.08, Before.FindConductor("w4")!.Wire.Size!.Value.Area, 2);
    }

    [Fact]
    public void A_kind_may_rate_each_element_or_all_or_one()
    {
        var lamp = Before.FindPart("E2")!;
        Assert.Equal((5.0, 21.0, 12.0, 12.0), (lamp.Rated("a", Unit.Watt)!.Value, lamp.Rated("b", Unit.Watt)!.Value, lamp.Rated("a", Unit.Volt)!.Value, lamp.Rated("b", Unit.Volt)!.Value));
    }

    [Fact]
    public void A_setting_after_wins_over_the_common_one_of_its_name()
    {
        Assert.Equal("left", Before.Settings.Single(s => s.Name == "turning").Positions[0].Position);
        Assert.Equal("right", After.Settings.Single(s => s.Name == "turning").Positions[0].Position);
        Assert.Equal(["night", "parked", "turning"], After.Settings.Select(s => s.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_list_within_the_list_is_one_number()
    {
        var change = Everything.Alteration.Changes.Single(c => c.Acts.Length == 2);
        Assert.Equal("w10 w6", string.Join(' ', change.Acts.SelectMany(a => a.Items)));
    }

    [Fact]
    public void What_a_cut_inserts_stands_between_both_halves()
    {
        Conductor kept = After.FindConductor("w13")!, rest = After.FindConductor("w21")!;
        Assert.Equal("R1.1 S7.1 S7.2 X9.18", $"{kept.From} {kept.To} {rest.From} {rest.To}");
        Assert.Empty(After.FindPart("S7")!.Spec.FreeTerminals);
    }

    [Fact]
    public void Both_ends_of_a_wire_may_move() => Assert.Equal("S1.58 F4.2", string.Join(' ', After.FindConductor("w14")!.Ends));

    [Fact]
    public void A_mount_that_is_said_is_kept_and_one_remounted_is_another()
    {
        Assert.Equal("engine", Before.TextOf(Before.FindPart("M1")!.CaseOn!.Value));
        Assert.True(After.FindPart("M1")!.CaseOn!.Value.IsChassis);
    }

    [Fact]
    public void A_connector_with_fewer_ways_takes_what_its_map_says() => Assert.Equal("X6.a4", After.FindConductor("w3")!.To.ToString());

    [Theory]
    [InlineData("E1: lamp, 1 on X1, at 'left wing, front', Marker", "left wing, front", "Marker")]
    [InlineData("E1: lamp, 1 on X1, at left wing, Marker", "left wing", "Marker")]
    [InlineData("E1: lamp, 1 on X1, at \"driver's side\", 'Marker'", "driver's side", "Marker")]
    public void A_place_in_quotes_may_hold_commas(string line, string place, string name)
    {
        var part = Job.Read(HornJob.With("parts:\n  " + line + "\n")).OrThrow().Alteration.Before.FindPart("E1")!;
        Assert.Equal((place, name), (part.Place!, part.Name!));
    }

    [Theory]
    [InlineData("move: w4", "ends: { H1.2: X1 }", "move w4: H1.2 to X1")]
    [InlineData("run: w6", "wire: { from: F1.1, to: H1.2, size: 1.5 mm2, color: GN, resistance: 0.1 ohm, insulation: rubber, loom: L1, at: left sill }", "run w6: F1.1 to H1.2, 1.5 mm2 GN, 0.1 ohm, insulation rubber, loom L1, at left sill")]
    [InlineData("take out: [w3, w4]", "because: 'worn, both'", "take out w3, w4, because worn, both")]
    [InlineData("renew: w3", "wire: { size: 12, colour: GN, length: 2 m, flags: [good] }", "renew w3: 12 GN, 2 m, good")]
    [InlineData("run: w6", "wire: { from: F1.1, to: H1.2, size: 12, colour: GN }", "run w6: F1.1 to H1.2, 12 GN")]
    [InlineData("fit: K1", "part: { kind: relay, name: 'Relay, horn', ratings: [6 V, coil 0.2 A], joins: { 30: X1 } }", "'fit K1: relay, ''Relay, horn'', 6 V, coil 0.2 A, 30 on X1'")]
    [InlineData("replace: G1", "part: { kind: battery, ratings: [12 V] }, reversed: yes", "replace G1 reversed: battery, 12 V")]
    [InlineData("cut: w3", "insert: [S1.1, S1.2], as: w9", "cut w3: S1.1 and S1.2 as w9")]
    [InlineData("do: H1", "sentence: adjust the tone", "do H1: adjust the tone")]
    public void A_change_in_map_form_is_the_one_in_line_form(string verb, string rest, string line)
    {
        string Written(string change) => Job.Read(HornJob.With("alteration:\n  changes:\n    - " + change + "\n")).OrThrow().ToYaml();
        Assert.Equal(Written(line), Written($"{{ {verb}, {rest} }}"));
    }

    [Theory]
    [InlineData("E1: { kind: headlamp, name: 'Left, front', ratings: [6 V, 45/35 W], joins: { 31: chassis }, at: left wing }", "E1: headlamp, 'Left, front', 6 V, 45/35 W, 31 on chassis, at left wing")]
    [InlineData("M1: { kind: starter, ratings: 6 V, case: insulated, joins: { 1: X1 } }", "M1: starter, 6 V, case insulated, 1 on X1")]
    [InlineData("M1: { kind: motor, options: wound, free: 2, joins: { 1: X1 } }", "M1: motor, wound, 2 free, 1 on X1")]
    public void A_part_in_map_form_is_the_one_in_line_form(string map, string line)
    {
        string Written(string part) => Job.Read(HornJob.With("parts:\n  " + part + "\n")).OrThrow().ToYaml();
        Assert.Equal(Written(line), Written(map));
    }
}
