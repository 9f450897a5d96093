using Hotside.Alterations;
using Hotside.Kinds;
using Hotside.Reading;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Tests.Wording;

/// <summary>Lines of the change list, captions and cautions as somebody with the hood open reads them (common practice, no source).</summary>
public class ChangeTextTests
{
    private const string Gauges = """
        parts:
          G1: battery, 12 V
          X0: feed-rail, Starter stud
          F1: fuse, 5 A, Bilge pump, 1 on X0
          P1: gauge, Fuel, 6 V, 20 ohm
          P2: gauge, Oil, 6 V, 20 ohm
          B1: sender, 0..90 ohm
          K1: starter-relay-internal, 6 V, coil 8 A
          E1: headlamp, 6 V, 45/35 W, 31 on chassis
          S1: switch, 10 A
        wires:
          w1: G1.pos to X0, 2 BK
          w2: G1.neg to chassis, 2 BK
          w3: F1.2 to P1.I, 16 GN
          w4: P1.I to P2.I, 16 GN
          w5: P1.S to B1.1, 18 VT
          w6: X0 to K1.BAT, 2 BK
          w7: F1.2 to S1.1, 14 BK
          w8: S1.2 to E1.56a, 14 BK
          w9: S1.2 to E1.56b, 14 BK
        """;

    [Fact]
    public void A_moved_wire_is_told_with_its_terminals_and_by_its_other_end_where_two_look_alike() =>
        Is("move 16 GN (the one from F1) from P1.I to N1.in", 2, "fit N1: reducer, Gauge reducer, 12 V, out 6 V, out 1.5 A", "move w3: P1.I to N1.in");

    [Fact]
    public void A_new_part_is_told_by_its_name_its_place_and_the_reason() =>
        Is("fit K6 (headlamp relay): 12 V, 40 A, coil 0.15 A, 30 on X0; at bulkhead; because the switch is tired", 1,
            "fit K6: relay, Headlamp relay, 12 V, 40 A, coil 0.15 A, 30 on X0, at bulkhead, because the switch is tired");

    [Fact]
    public void A_reducer_says_out_once() => Is("fit N1 (gauge reducer): voltage reducer, 12 V, out 6 V, 1.5 A", 1, "fit N1: reducer, Gauge reducer, 12 V, out 6 V, out 1.5 A");

    [Fact]
    public void A_fuse_that_is_named_after_a_pump_is_no_pump() => Is("replace F1 (fuse \"Bilge pump\"): now 10 A", 1, "replace F1: fuse, 10 A");

    [Fact]
    public void Old_and_new_terminals_of_a_replaced_part_are_told() =>
        Is("replace K1 (starter relay): now 12 V, coil 4 A; its wires: BAT to 30", 1, "replace K1: starter-relay, 12 V, coil 4 A, BAT = 30");

    [Fact]
    public void Alike_parts_under_one_number_stand_together() =>
        Is("fit F7, F8, F9 (fuses): each 5 A, one end on X0", 1, "- fit F7: fuse, 5 A, 1 on X0\n      - fit F8: fuse, 5 A, 1 on X0\n      - fit F9: fuse, 5 A, 1 on X0");

    [Fact]
    public void Parts_and_wires_that_go_are_read_apart() =>
        Is("take out P2 (gauge \"Oil\"); wire 16 GN (P1.I to P2.I)", 1, "take out P2, w4");

    [Fact]
    public void A_caution_names_what_a_wrong_polarity_destroys()
    {
        var alteration = Made("fit N1: reducer, 12 V, out 6 V, out 1.5 A", "run w20: X0 to N1.in", "run w21: N1.out to P2.I");
        Assert.Contains(Cautions.Of(alteration, Vocabulary.Of(Words.American)), c => c.EndsWith("The wrong way round destroys voltage reducer N1.", StringComparison.Ordinal));
        Assert.DoesNotContain(Cautions.Of(Made("take out P2, w4"), Vocabulary.Of(Words.American)), c => c.Contains("destroys", StringComparison.Ordinal));
    }

    // What the file calls so, and only where somebody puts a hand to it.
    [Fact]
    public void A_bulb_under_pressure_is_handled_with_care_where_it_is_touched()
    {
        var fitted = Made("replace E1: headlamp, 12 V, 60/55 W, halogen");
        Assert.Contains(Cautions.Of(fitted, Vocabulary.Of(Words.American)), c => c.StartsWith("Halogen bulb (E1): hot and under pressure.", StringComparison.Ordinal));
        Assert.Contains(Job.From(fitted).WorkOrder.Steps, s => s.Acts.Any(a => a.Item == "E1") && s.Caution?.StartsWith("Halogen bulb (E1)", StringComparison.Ordinal) == true);
        Assert.DoesNotContain(Cautions.Of(Made("replace E1: headlamp, 12 V, 60/55 W"), Vocabulary.Of(Words.American)), c => c.Contains("alogen", StringComparison.Ordinal));
        var untouched = fitted.After.Alter("Gauge out").TakeOut(["P2", "w4"]).Build();
        Assert.DoesNotContain(Cautions.Of(untouched, Vocabulary.Of(Words.American)), c => c.Contains("alogen", StringComparison.Ordinal));
    }

    [Fact]
    public void A_current_through_a_sender_is_at_most_that_of_the_gauge_alone()
    {
        // 6 V at 20 ohm are 0.3 A; at half tank the sender takes its share.
        var study = CircuitStudy.Of(Made().Before, TestContext.Current.CancellationToken);
        Assert.Equal("at most 0.3 A", VerdictCaption.AmperesText(study.Load("P1"), study.Circuit));
    }

    [Fact]
    public void Both_filaments_tell_their_current()
    {
        // 45 W and 35 W at 6 V are 7.5 A and 5.8 A.
        var study = CircuitStudy.Of(Made().Before, TestContext.Current.CancellationToken);
        Assert.Equal("by S1: high 7.5 A, low 5.8 A", Assert.Single(VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == "E1"), study)).By);
    }

    [Theory]
    [InlineData(0.3333, "0.33 A")]
    [InlineData(8.752, "8.8 A")]
    [InlineData(13.67, "14 A")]
    [InlineData(0.0833, "0.083 A")]
    public void Currents_that_are_worked_out_have_two_figures(double value, string text) => Assert.Equal(text, QuantityWords.Amperes(value));

    [Fact]
    public void A_part_without_a_name_is_called_as_its_reader_calls_it()
    {
        var lamp = Made("fit H1: charge-lamp, 12 V, 2 W").After.FindPart("H1")!;
        Assert.Equal("Charge lamp", Vocabulary.Of(Words.American).Title(lamp));
        Assert.Equal("Ignition warning lamp", Vocabulary.Of(Words.British).Title(lamp));
    }

    [Theory]
    [InlineData("battery", "batteries")]
    [InlineData("relay", "relays")]
    [InlineData("ignition switch", "ignition switches")]
    public void Several_are_spelt_right(string one, string several) => Assert.Equal(several, Vocabulary.Plural(one));

    private static void Is(string text, int number, params string[] changes)
    {
        var alteration = Made(changes);
        Assert.Equal(text, ChangeText.Of(alteration.Changes[number - 1], alteration, Vocabulary.Of(Words.American)));
    }

    private static Alteration Made(params string[] changes)
    {
        string text = $"hotside: 1\ntitle: A test\nsystem: 12 V, negative ground, sizes in AWG\n{Gauges}\n";
        if (changes.Length > 0) text += "alteration:\n  title: Altered\n  changes:\n" + string.Concat(changes.Select(c => $"    - {c}\n"));
        var reading = JobReader.Read("test", text, Catalogue.Standard, _ => null);
        Assert.DoesNotContain(reading.Diagnostics, d => d.Severity >= Hotside.Diagnostics.Severity.Error && !d.Code.StartsWith("HS2", StringComparison.Ordinal));
        return reading.Alteration!;
    }
}
