using Hotside.Alterations;
using Hotside.Kinds;
using Hotside.Reading;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Tests.Wording;

/// <summary>What the sheet tells people to do, worked out by hand from each circuit (common practice, no source).</summary>
public class SheetWordsTests
{
    private const string OneBattery = """
        parts:
          G1: battery, 12 V
          F1: fuse, 10 A
          S1: switch
          E1: lamp, 12 V, 24 W, 2 on chassis
          E2: lamp, 12 V, 24 W
        wires:
          w1: G1.pos to F1.1
          w2: G1.neg to chassis
          w3: F1.2 to S1.1
          w4: S1.2 to E1.1
          w5: F1.2 to E2.1
        """;

    [Fact]
    public void The_cable_on_the_grounded_post_is_named_before_and_after()
    {
        var turned = Made("6 V, positive ground", OneBattery.Replace("w1: G1.pos", "w1: G1.neg", StringComparison.Ordinal).Replace("w2: G1.neg", "w2: G1.pos", StringComparison.Ordinal),
            "12 V, negative ground", "replace G1 reversed: battery, 12 V");
        Assert.StartsWith("First off: the cable of the positive post, on ground now. Last on: the cable of the negative post, on ground then.", CautionsOf(turned)[0], StringComparison.Ordinal);
        Assert.StartsWith("Prove the new battery's polarity", CautionsOf(turned)[1], StringComparison.Ordinal);
        Assert.StartsWith("First off and last on: the cable of the negative post, which is on ground.", CautionsOf(Made("12 V, negative ground", OneBattery, null, "take out E2, w5"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void In_an_isolated_system_nothing_is_said_to_be_on_ground()
    {
        string parts = OneBattery.Replace("2 on chassis", "2 on X9", StringComparison.Ordinal).Replace("to chassis", "to X9", StringComparison.Ordinal)
            .Replace("parts:\n", "parts:\n  X9: stud, Minus stud\n", StringComparison.Ordinal);
        string first = CautionsOf(Made("12 V, isolated ground, return X9", parts, null, "take out E2, w5"))[0];
        Assert.StartsWith("First off and last on: the cable of the negative post, which is on the return, ", first, StringComparison.Ordinal);
        Assert.DoesNotContain("on ground", first, StringComparison.Ordinal);
        string second = CautionsOf(Made("12 V, isolated ground, return X9", parts, null, "replace E1: led-lamp, 12 V, 3 W"))[1];
        Assert.StartsWith("Prove each polarity with a meter before the return cable goes on.", second, StringComparison.Ordinal);
    }

    [Fact]
    public void All_batteries_on_ground_are_named()
    {
        string parts = OneBattery.Replace("parts:\n", "parts:\n  G2: battery, 12 V\n", StringComparison.Ordinal).Replace("wires:\n", "wires:\n  w8: G2.neg to chassis\n  w9: G2.pos to F1.1\n", StringComparison.Ordinal);
        Assert.StartsWith("First off and last on: the cables of the negative posts of G2, G1, all on ground.", CautionsOf(Made("12 V, negative ground", parts, null, "take out E2, w5"))[0], StringComparison.Ordinal);
    }

    // A plug or a disconnect between the battery and the metal takes nothing from which cable comes off first.
    [Theory]
    [InlineData("  Q1: battery-disconnect\n", "G1.neg to Q1.1", "Q1.2 to chassis")]
    [InlineData("  X7: trailer-socket\n", "G1.neg to X7.b31", "X7.a31 to chassis")]
    public void A_battery_grounded_through_a_plug_or_a_disconnect_has_its_cautions(string part, string first, string second)
    {
        string parts = OneBattery.Replace("parts:\n", "parts:\n" + part, StringComparison.Ordinal).Replace("w2: G1.neg to chassis", $"w2: {first}\n  w9: {second}", StringComparison.Ordinal);
        string[] cautions = CautionsOf(Made("12 V, negative ground", parts, null, "replace E1: led-lamp, 12 V, 3 W"));
        Assert.StartsWith("First off and last on: the cable of the negative post, which is on ground. Rings off, eyes protected; battery gas explodes", cautions[0], StringComparison.Ordinal);
        Assert.EndsWith("The wrong way round destroys LED lamp E1.", cautions[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_on_no_common_return_has_its_cautions_all_the_same()
    {
        string parts = OneBattery.Replace("  w2: G1.neg to chassis\n", "", StringComparison.Ordinal);
        Assert.StartsWith("Both cables off the battery before work, on again after it. Rings off", CautionsOf(Made("12 V, negative ground", parts, null, "take out E2, w5"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_battery_there_is_no_word_of_one()
    {
        string parts = OneBattery.Replace("G1: battery, 12 V", "G1: generator, 12 V", StringComparison.Ordinal).Replace("G1.pos", "G1.A", StringComparison.Ordinal).Replace("  w2: G1.neg to chassis\n", "", StringComparison.Ordinal);
        var alteration = Made("12 V, negative ground", parts, null, "take out E2, w5");
        Assert.DoesNotContain(CautionsOf(alteration), c => c.Contains("post", StringComparison.Ordinal));
        Assert.Equal("Changes, in order of work. The workshop manual and local rules take precedence.", SheetText.ListHead(alteration));
    }

    [Fact]
    public void The_battery_is_back_in_with_its_own_number_and_no_other()
    {
        Assert.Contains("back in with 1.", SheetText.ListHead(Made("12 V, negative ground", OneBattery, null, "replace G1: battery, 12 V, 60 Ah")), StringComparison.Ordinal);
        string withGenerator = OneBattery.Replace("parts:\n", "parts:\n  G3: generator, 12 V, case on chassis\n", StringComparison.Ordinal);
        Assert.Contains("back on after 1.", SheetText.ListHead(Made("12 V, negative ground", withGenerator, null, "replace G3: generator, 12 V, 20 A")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_switch_carries_what_a_load_draws_only_if_no_other_load_hangs_on_it()
    {
        Assert.Equal("by S1, which carries 2 A", ByOf(OneBattery, "E1"));
        Assert.Equal("by S1: 2 A", ByOf(OneBattery.Replace("2 on chassis", "2 on chassis\n  E3: lamp, 12 V, 24 W, 2 on chassis", StringComparison.Ordinal).Replace("wires:\n", "wires:\n  w8: S1.2 to E3.1\n", StringComparison.Ordinal), "E1"));
    }

    [Fact]
    public void A_load_that_never_comes_on_is_not_called_dead_for_its_terminals_may_be_hot()
    {
        // E2 hangs on the fuse and has no way to ground.
        var study = CircuitStudy.Of(Made("12 V, negative ground", OneBattery, null).Before, TestContext.Current.CancellationToken);
        Assert.Equal("never on (no way to the return)", study.Load("E2").Summary());
        Assert.Equal("no way to the return", ByOf(OneBattery, "E2"));
    }

    [Fact]
    public void British_words_reach_badges_legends_and_verdicts()
    {
        var british = Vocabulary.Of(Words.British);
        Assert.Equal("EARTH-SWITCHED", SideText.Badge(SwitchedSide.GroundSwitched, british));
        Assert.Equal("switched on the earth side", SideText.Legend(SwitchedSide.GroundSwitched, british));
        var study = CircuitStudy.Of(Made("12 V, negative ground", OneBattery, null).Before, TestContext.Current.CancellationToken);
        Assert.StartsWith("live-switched by S1", study.Load("E1").Summary(Words.British), StringComparison.Ordinal);
        string svg = Job.ReadFile(Support.Repository.Path("gallery", "horn", "job.yaml")).OrThrow().Draw(View.Pair, new() { Words = Words.British }).ToSvg();
        Assert.Contains("EARTH-SWITCHED", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("GROUND-SWITCHED", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_pointer_is_told_has_the_reader_s_words()
    {
        var job = Job.ReadFile(Support.Repository.Path("gallery", "charging", "job.yaml")).OrThrow();
        Assert.Contains("<title>G2, Generator, 6 V, 30 A</title>", job.Draw(View.Pair).ToSvg(), StringComparison.Ordinal);
        string british = job.Draw(View.Pair, new() { Words = Words.British }).ToSvg();
        Assert.Contains("<title>G2, Dynamo, 6 V, 30 A</title>", british, StringComparison.Ordinal);
        Assert.DoesNotContain("Generator, 6 V", british, StringComparison.Ordinal);
    }

    [Fact]
    public void Polarize_is_spelt_as_its_reader_does() =>
        Assert.Equal(("polarize", "polarise"), (Vocabulary.Of(Words.American).Polarize, Vocabulary.Of(Words.British).Polarize));

    private static string ByOf(string parts, string load)
    {
        var study = CircuitStudy.Of(Made("12 V, negative ground", parts, null).Before, TestContext.Current.CancellationToken);
        return Assert.Single(VerdictCaption.Of([study.Load(load)], study)).By;
    }

    private static string[] CautionsOf(Alteration alteration) => [.. Cautions.Of(alteration, Vocabulary.Of(Words.American))];

    private static Alteration Made(string system, string parts, string? systemAfter, params string[] changes)
    {
        string text = $"hotside: 1\ntitle: A test\nsystem: {system}\n{parts}\n";
        if (changes.Length > 0)
            text += $"alteration:\n  title: Altered\n{(systemAfter is null ? "" : $"  system: {systemAfter}\n")}  changes:\n" + string.Concat(changes.Select(c => $"    - {c}\n"));
        var reading = JobReader.Read("test", text, Catalogue.Standard, _ => null);
        Assert.DoesNotContain(reading.Diagnostics, d => d.Severity >= Hotside.Diagnostics.Severity.Error && !d.Code.StartsWith("HS2", StringComparison.Ordinal));
        return reading.Alteration!;
    }
}
