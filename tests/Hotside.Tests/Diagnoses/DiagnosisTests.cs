using System.Text.Json;
using Hotside.Diagnoses;
using Hotside.Solving;
using Hotside.Tests.Outputs;
using Hotside.Tests.Solving;
using Hotside.Tests.Support;

namespace Hotside.Tests.Diagnoses;

/// <summary>Complaints and readings of the horn circuit, before: battery, rail, fuse F2, w3, horn H1, w4, button S1, w5 to the chassis.</summary>
public class DiagnosisTests
{
    private static readonly Job Horn = GalleryJobs.Read("horn");

    private static Diagnosis Dead(params string[] readings) => Horn.Diagnose(new() { Dead = ["H1"], Readings = [.. readings] }, View.Before);

    // Volts in series circuits: all of them across one piece, that piece is open (Ohm's law).
    [Theory]
    [InlineData("H1 open inside", "H1.1 = -6.3 V @ horn pressed", "H1.2 = 0 V @ horn pressed")]
    [InlineData("F2 blown by itself, or open", "F2.1 = -6.3 V @ horn pressed", "F2.2 = 0 V @ horn pressed", "F2 = blown")]
    [InlineData("w5 open, or off a terminal", "S1.1 = -6.3 V @ horn pressed", "S1.2 = -6.3 V @ horn pressed")]
    [InlineData("w4 open, or off a terminal", "H1.2 = -6.3 V @ horn pressed", "S1.1 = 0 V @ horn pressed")]
    public void All_the_volts_across_a_piece_mean_that_it_is_open(string text, params string[] readings)
    {
        var suspects = Dead(readings).Suspects;
        Assert.Contains(text, suspects.Take(3).SelectMany(s => s.Others.Prepend(s.Text)));
    }

    [Fact]
    public void Some_of_the_volts_across_a_wire_under_load_mean_resistance_there()
    {
        var diagnosis = Horn.Diagnose(new() { Dim = ["H1"], Readings = ["F2.2 to H1.1 = -2.9 V @ horn pressed"] }, View.Before);
        Assert.Equal("resistance in w3 or at its ends", diagnosis.Suspects[0].Text);
        Assert.Contains("w3", diagnosis.Suspects[0].Items);
        Assert.True(diagnosis.Suspects[0].Share.Percent > 80, diagnosis.ToText());
        Assert.Contains("Proof: F2.2 to H1.1 then reads", diagnosis.Suspects[0].Repair, StringComparison.Ordinal);
    }

    // The fault is put into the circuit itself, and ngspice, an independent program, says what a meter would show.
    [Theory]
    [InlineData("w3", 2.2, "H1", "F2.2", "H1.1")]
    [InlineData("w4", 1.1, "H1", "H1.2", "S1.1")]
    [InlineData("w5", 4.0, "H1", "S1.2", "")]
    public void A_resistance_that_ngspice_computes_is_found_from_its_readings(string wire, double ohms, string load, string red, string black)
    {
        OutsideProgram.Needed("ngspice");
        var circuit = Horn.Alteration.Before;
        var faulty = circuit.With([.. circuit.Conductors.Select(c => c.Id == wire ? c with { Wire = c.Wire with { ResistanceInOhms = ohms } } : c)]);
        var solution = new CircuitSolver(faulty).Solve(faulty.Settings.Single(s => s.Name == "horn pressed"));
        SpicePoint point = new(faulty, solution);
        var values = SpiceRun.Find(point)!.Value.Values;
        double At(string end) => values[point.Figures.First(f => f.What == end).Name];
        double shown = At(red) - (black.Length == 0 ? 0 : At(black)), across = Math.Abs(At("H1.1") - At("H1.2"));
        string state = across < 0.3 * 6.2 ? "off" : "dim", reading = FormattableString.Invariant($"{red}{(black.Length == 0 ? "" : " to " + black)} = {shown:0.00} V @ horn pressed");
        var suspect = Horn.Diagnose(new() { Readings = [$"{load} = {state} @ horn pressed", reading] }, View.Before).Suspects[0];
        Assert.Contains(wire, suspect.Items);
        Assert.StartsWith("resistance", suspect.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_reading_says_where_the_leads_go_why_and_what_each_leading_suspect_would_make_it()
    {
        var next = Dead().Next!;
        Assert.NotEmpty(next.RedOn);
        Assert.Matches(@"^splits \d+ suspects \d+( / \d+)+$", next.Why);
        Assert.Equal(3, next.Expected.Length);
        Assert.Contains(" = ?", next.Entry, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_readings_of_a_page_differ_and_each_has_its_values()
    {
        var readings = Dead().FirstReadings(3);
        Assert.Equal(readings.Length, readings.Select(r => r.Entry).Distinct().Count());
        Assert.InRange(readings.Length, 2, 3);
        Assert.All(readings, r => Assert.NotEmpty(r.Expected));
    }

    [Fact]
    public void What_cannot_be_reached_is_not_asked_for_again()
    {
        var diagnosis = Dead();
        for (int i = 0; i < 4 && diagnosis.Next is { } next; i++)
        {
            diagnosis = diagnosis.WithoutNext();
            Assert.NotEqual((next.RedOn, next.BlackOn, next.Setting, next.Asks), (diagnosis.Next?.RedOn, diagnosis.Next?.BlackOn, diagnosis.Next?.Setting, diagnosis.Next?.Asks));
        }
    }

    // A short behind a fuse is why it blew: ohms come before a new fuse (common practice, no source).
    [Fact]
    public void A_blown_fuse_is_never_the_answer_alone()
    {
        var diagnosis = Horn.Diagnose(new() { Dead = ["H1"], Blown = ["F2"] }, View.Before);
        Assert.Contains(diagnosis.Suspects, s => s.Text.StartsWith("F2 blown by itself", StringComparison.Ordinal));
        Assert.Contains(diagnosis.Suspects, s => s.Text.Contains("touches the chassis", StringComparison.Ordinal));
        Assert.Contains(diagnosis.Notes, n => n.StartsWith("F2 is blown, and that is not the fault", StringComparison.Ordinal));
        Assert.Contains("ohms, battery out", diagnosis.Next!.Asks, StringComparison.Ordinal);
        Assert.Contains("the cable of the positive post", Assert.Single(diagnosis.Next.Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_it_smokes_nothing_is_measured_under_power()
    {
        var diagnosis = Horn.Diagnose(new() { Dead = ["H1"], IsSmoking = true }, View.Before);
        Assert.Contains(diagnosis.Notes, n => n.Contains("measure ohms only", StringComparison.Ordinal));
        while (diagnosis.Next is { } next)
        {
            Assert.DoesNotContain("volts", next.Asks, StringComparison.Ordinal);
            diagnosis = diagnosis.WithoutNext();
        }
    }

    [Fact]
    public void Readings_that_no_single_fault_gives_are_said_to_be_so()
    {
        var diagnosis = Dead("H1.1 = -3.1 V @ horn pressed", "H1.2 = -1.6 V @ horn pressed", "F2.2 = -4.7 V @ horn pressed");
        Assert.Contains(diagnosis.Notes, n => n.StartsWith("No single fault explains", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reading_that_surprises_is_asked_back() =>
        Assert.Contains(Dead().With("H1.1 = 6.3 V @ horn pressed").Notes, n => n.Contains("Repeat it", StringComparison.Ordinal));

    [Fact]
    public void A_mended_fault_falls_back_and_the_next_one_leads()
    {
        var diagnosis = Dead("H1.1 = -6.3 V @ horn pressed", "H1.2 = 0 V @ horn pressed");
        Assert.Equal("H1 open inside", diagnosis.Suspects[0].Text);
        Assert.DoesNotContain(diagnosis.Mended().With("H1 = dead @ horn pressed").Suspects.Take(3), s => s.Text == "H1 open inside");
    }

    [Theory]
    [InlineData("H1.3 = 6 V", "\"H1.3\"")]
    [InlineData("H2.1 = 6 V", "H1")]
    [InlineData("H1.1 = 6", "H1.1 = 6 V")]
    [InlineData("H1.1 = 6 A", "no unit of volts or ohms")]
    [InlineData("H1.1 = 6 V @ horn presed", "did you mean \"horn pressed\"")]
    [InlineData("H1 = ded", "did you mean \"dead\"")]
    [InlineData("H1.1 is hot", "H1.1 = 3.1 V @ horn pressed")]
    [InlineData("H1.1 = 10 to 70 ohm", "one value")]
    [InlineData("H1.1 = 10..70 ohm", "one value")]
    [InlineData("F2.2 to H1.1 = lamp dark @ horn pressed", "read volts")]
    public void A_mistake_in_a_reading_names_the_nearest_right_thing(string reading, string told) =>
        Assert.Contains(told, Assert.Throws<ArgumentException>(() => Dead(reading)).Message, StringComparison.Ordinal);

    // A test lamp loads the point: with a resistance of half its own in the way it has far less than its volts, and a meter alone would show nearly all of them (Ohm's law).
    [Theory]
    [InlineData("dead", "lamp lights", "H1 open inside", "w3 open, or off a terminal")]
    [InlineData("dead", "lamp dark", "w3 open, or off a terminal", "H1 open inside")]
    [InlineData("dim", "lamp dim", "resistance in w3 or at its ends", "resistance in w4 or at its ends")]
    public void A_test_lamp_tells_what_feeds_a_point(string complaint, string seen, string likelier, string than)
    {
        double Share(Diagnosis diagnosis, string text) => diagnosis.Suspects.Where(s => s.Others.Prepend(s.Text).Contains(text)).Sum(s => (double)s.Share.Percent);
        var diagnosis = Horn.Diagnose(new() { Dead = complaint == "dead" ? ["H1"] : [], Dim = complaint == "dim" ? ["H1"] : [], Readings = [$"H1.1 = {seen} @ horn pressed"] }, View.Before);
        Assert.True(Share(diagnosis, likelier) > 4 * Share(diagnosis, than), diagnosis.ToText(24));
    }

    [Theory]
    [InlineData("S1", "S1 is no load. It feeds H1: name one of these, such as H1, or give a reading, such as \"S1.1 = 0 V\".")]
    [InlineData("w4", "w4 is a wire. It feeds H1")]
    [InlineData("G1", "G1 gives current and takes none")]
    public void Who_names_what_is_no_load_is_told_what_to_say(string name, string told) =>
        Assert.Contains(told, NoLoad(name), StringComparison.Ordinal);

    // The library does not know what the options of a command are called.
    [Theory]
    [InlineData("S1")]
    [InlineData("w2")]
    public void The_library_speaks_of_no_options(string name) => Assert.DoesNotContain("--", NoLoad(name), StringComparison.Ordinal);

    private static string NoLoad(string name) => Assert.Throws<ArgumentException>(() => Horn.Diagnose(new() { Dead = [name] }, View.Before)).Message;

    // An ignition coil is neither seen nor heard: it may be complained of, and is measured.
    [Fact]
    public void What_is_known_by_its_effect_alone_may_be_dead_and_is_not_looked_at()
    {
        var diagnosis = GalleryJobs.Read("van").Diagnose(new() { Dead = ["T1"] });
        Assert.Contains(diagnosis.Suspects, s => s.Items.Any(i => i is "T1" or "S9" or "w15" or "w16"));
        Assert.DoesNotContain(diagnosis.FirstReadings(6), r => r.RedOn == "T1");
    }

    [Fact]
    public void A_load_that_is_not_there_is_answered_with_the_nearest() =>
        Assert.Contains("did you mean \"H1\"", Assert.Throws<ArgumentException>(() => Horn.Diagnose(new() { Dead = ["H2"] })).Message, StringComparison.Ordinal);

    [Fact]
    public void What_the_alteration_touched_is_likelier_than_what_it_left()
    {
        var suspects = Horn.Diagnose(new() { Dead = ["H1"] }).Suspects;
        double Of(string text) => suspects.Single(s => s.Text == text).Share.DecimalFractions;
        // w7 was run new, w8 too; w1 is old: five against three.
        Assert.Equal(5.0 / 3, Of("w7 open, or off a terminal") / Of("w1 open, or off a terminal"), 0.05);
    }

    // Ohm's law in series: what stands before the break has the battery's volts, whatever these are now.
    [Fact]
    public void Volts_go_with_the_battery_as_it_was_read()
    {
        Diagnosis Of(params string[] readings) => Horn.Diagnose(new() { Dead = ["H1"], Readings = [.. readings] });
        var low = Of("G1.pos = 11.7 V", "H1.1 = 11.5 V @ horn pressed", "H1.2 = 11.5 V @ horn pressed");
        Assert.Equal("w6 open, or off a terminal", low.Suspects[0].Text);
        Assert.Contains(low.Notes, n => n.StartsWith("The battery has 93 % of the volts that are computed with.", StringComparison.Ordinal));
        // A battery that is far off is a fault, not a measure.
        Assert.DoesNotContain(Of("G1.pos = 6 V").Notes, n => n.StartsWith("The battery has", StringComparison.Ordinal));
    }

    [Fact]
    public void A_way_of_a_fuse_block_is_named_and_found_by_itself()
    {
        var job = Job.Read(File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Diagnoses", "fuse-block.yaml"))).OrThrow();
        var suspects = job.Diagnose(new() { Dead = ["E1"], Works = ["E2"], Readings = ["F1.fuse1 = blown", "F1.2 = whole"] }, View.Before).Suspects;
        Assert.Contains("F1.fuse1 blown by itself, or open", suspects.Take(3).SelectMany(s => s.Others.Prepend(s.Text)));
        Assert.DoesNotContain(suspects.SelectMany(s => s.Others.Prepend(s.Text)), t => t.StartsWith("F1.fuse2 blown", StringComparison.Ordinal));
        var wrong = Assert.Throws<ArgumentException>(() => job.Diagnose(new() { Dead = ["E1"], Readings = ["F1 = blown"] }, View.Before));
        Assert.Contains("F1.fuse1, F1.fuse2", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_words_give_the_same_text_and_json()
    {
        Assert.Equal(Dead().ToText(), Dead().ToText());
        using var json = JsonDocument.Parse(Dead().ToJson());
        Assert.Equal("hotside-diagnosis/1", json.RootElement.GetProperty("schema").GetString());
        Assert.Equal(Dead().Suspects.Length, json.RootElement.GetProperty("suspects").GetArrayLength());
    }

    [Fact]
    public void A_shop_has_its_own_weights_and_mistakes_in_them_have_their_place()
    {
        var lists = DiagnosisLists.Standard.WithFaults("modes: {coil open: 400}\n").WithEffort("places: {K: 9}\nvolts: 2\n");
        Assert.Empty(lists.Problems);
        Diagnosis By(DiagnosisLists of) => GalleryJobs.Read("horn").Diagnose(new() { Dead = ["H1"], Lists = of });
        Assert.Equal("the coil of K1 open", By(lists).Suspects[0].Text);
        Assert.NotEqual("the coil of K1 open", By(DiagnosisLists.Standard).Suspects[0].Text);
        Assert.Contains(By(lists).Notes, n => n.Contains("faults.yaml", StringComparison.Ordinal));

        Assert.EndsWith("; the rest: " + Diagnosis.Source, By(lists).Lists.FaultSource, StringComparison.Ordinal);

        var wrong = DiagnosisLists.Standard.WithFaults("modes:\n  lmap burnt: 3\nfactors: {old: x}\n", "own.yaml").WithEffort("looks: 1\n", "trouble.yaml").Problems;
        Assert.Equal(["own.yaml:2:3", "own.yaml:3:16", "trouble.yaml:1:1"], wrong.Select(p => $"{p.Span!.File}:{p.Span.Line}:{p.Span.Column}"));
        Assert.All(wrong, p => Assert.Equal("HS3406", p.Code));
        Assert.Contains("lamp burnt", wrong[0].Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void The_source_of_own_numbers_is_told_before_that_of_the_rest()
    {
        var lists = DiagnosisLists.Standard.WithFaults("source: repairs of ten years\nmodes: {lamp burnt: 12}\n", "own.yaml").WithEffort("source: timed on the lift\nvolts: 2\n", "trouble.yaml");
        Assert.Empty(lists.Problems);
        var own = GalleryJobs.Read("horn").Diagnose(new() { Dead = ["H1"], Lists = lists });
        Assert.Contains($"Weights: repairs of ten years (own.yaml); the rest: {Diagnosis.Source}.\n", own.ToText(), StringComparison.Ordinal);
        Assert.Contains($"Trouble of readings: timed on the lift (trouble.yaml); the rest: {DiagnosisLists.Standard.EffortSource}.\n", own.ToText(), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(own.ToJson());
        Assert.StartsWith("repairs of ten years", json.RootElement.GetProperty("weights").GetString(), StringComparison.Ordinal);
        Assert.Contains($"Weights: {Diagnosis.Source}.\n", Dead().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Trouble of readings", Dead().ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("places: {fuel-pump: 4, splice: 2, other: 3, Q: 5}\nfar: {under the seat: 6}\n", null)]
    [InlineData("places: {fuel-pmup: 4}\n", "1:10")]
    [InlineData("places:\n  K: 4\n  KK: 4\n", "3:3")]
    [InlineData("far: {' ': 4}\n", "1:7")]
    [InlineData("source: [a]\n", "1:9")]
    public void A_place_of_ones_own_list_is_a_kind_or_a_class_letter(string text, string? place)
    {
        var problems = DiagnosisLists.Standard.WithEffort(text).Problems;
        Assert.Equal(place is null ? [] : [place], problems.Select(p => $"{p.Span!.Line}:{p.Span.Column}"));
        Assert.All(problems, p => Assert.Equal("HS3406", p.Code));
    }

    [Fact]
    public void A_kind_of_ones_own_has_its_place_in_the_list()
    {
        var kind = Hotside.Kinds.Catalogue.Standard.WithKind("kind: air-horn\nlike: horn\n").Find("air-horn")!;
        Assert.Single(DiagnosisLists.Standard.WithEffort("places: {air-horn: 4}\n").Problems);
        Assert.Empty(DiagnosisLists.Standard.WithEffort("places: {air-horn: 4}\n", kinds: [kind]).Problems);
    }

    [Fact]
    public void The_list_of_faults_says_where_it_is_from_and_every_change_is_used()
    {
        Assert.Contains("from memory", Diagnosis.Source, StringComparison.Ordinal);
        Assert.All(FaultModes.Standard.All, m => Assert.True(m.Weight > 0));
        Assert.Equal(Enum.GetValues<FaultChange>().Order(), FaultModes.Standard.All.Select(m => m.Change).Distinct().Order());
    }
}
