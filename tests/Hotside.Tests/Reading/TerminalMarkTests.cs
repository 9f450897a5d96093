using System.Text.Json;
using System.Text.RegularExpressions;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Reading;

namespace Hotside.Tests.Reading;

/// <summary>A terminal that has several marks bears the one by which the file writes it first, wherever it is drawn or told.</summary>
public partial class TerminalMarkTests
{
    private const string Starter = """
        hotside: 1
        title: Starter
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V, 70 Ah
          K1: starter-solenoid, 12 V
          M1: starter, 12 V, 150 A
          F1: fuse, 20 A
          S1: push-button, 20 A
        wires:
          w1: G1.pos to K1.30, 1/0 RD, 0.6 m
          w2: G1.neg to chassis, 1/0 BK, 0.6 m
          w3: K1.MOT to M1.1, 1/0 RD, 0.1 m
          w4: K1.30 to F1.1, 12 RD, 0.2 m
          w5: F1.2 to S1.1, 12 RD, 1 m
          w6: S1.2 to K1.50, 12 YE, 1 m

        """;

    private static Job Read(string changes = "") => Job.Read(Starter + (changes.Length == 0 ? "" : "alteration:\n  changes:\n" + changes)).OrThrow();

    private static string[] MarksOf(Circuit circuit, string part) => [.. circuit.FindPart(part)!.Kind.Terminals.Select(t => t.Name)];

    private static string[] Drawn(Job job, View view) =>
        [.. Starters().Matches(job.Draw(view).ToSvg()).SelectMany(m => Text().Matches(m.Value)).Select(m => m.Groups[1].Value).Where(t => t is "B" or "30" or "BAT" or "M" or "MOT" or "S" or "50" or "R").Distinct().Order(StringComparer.Ordinal)];

    private static Diagnostic[] Notes(string text) => [.. JobReader.Read("job.yaml", text, Catalogue.Standard, _ => null).Diagnostics.Where(d => d.Code == "HS2011")];

    [Fact]
    public void What_the_file_writes_is_the_name_and_what_it_does_not_write_is_called_as_the_kind_has_it() =>
        Assert.Equal(["30", "MOT", "50", "R"], MarksOf(Read().Alteration.Before, "K1"));

    [Theory]
    [InlineData(View.Before)]
    [InlineData(View.After)]
    [InlineData(View.Pair)]
    [InlineData(View.Overlay)]
    public void Beside_its_pin_stands_what_the_file_writes(View view) => Assert.Equal(["30", "50", "MOT", "R"], Drawn(Read("    - renew w6: 10 YE\n"), view));

    [Fact]
    public void Lists_and_explanations_write_what_the_file_writes()
    {
        var job = Read("    - renew w6: 10 YE\n    - take out w4\n    - run w7: K1.30 to F1.1, 10 RD, 0.2 m\n");
        string told = string.Join('\n', job.ToYaml(), WireList.Of(job).ToText(), job.Explain("M1"), job.ToJson(), string.Join('\n', job.Findings));
        Assert.Contains("K1.50", told, StringComparison.Ordinal);
        Assert.DoesNotContain("K1.S", told, StringComparison.Ordinal);
        Assert.DoesNotContain("K1.B", told, StringComparison.Ordinal);
        Assert.DoesNotContain("K1.M\"", told, StringComparison.Ordinal);
        Assert.Equal(job.ToYaml(), Job.Read(job.ToYaml()).OrThrow().ToYaml());
    }

    [Fact]
    public void Json_says_what_the_kind_calls_a_terminal_that_is_written_otherwise()
    {
        using var json = JsonDocument.Parse(Read().ToJson());
        Assert.Equal(["K1.30 B", "K1.MOT M", "K1.50 S"], json.RootElement.GetProperty("before").GetProperty("marks").EnumerateObject().Select(m => $"{m.Name} {m.Value.GetString()}"));
    }

    [Fact]
    public void Of_two_marks_the_first_is_the_name_and_the_other_is_noted_at_its_place()
    {
        string text = Starter.Replace("w4: K1.30", "w4: K1.BAT", StringComparison.Ordinal);
        var note = Assert.Single(Notes(text));
        Assert.Equal((Severity.Note, 14, 7), (note.Severity, note.Span!.Line, note.Span.Column));
        Assert.Contains("K1.30", note.Message, StringComparison.Ordinal);
        Assert.Equal("K1.30", Job.Read(text).OrThrow().Alteration.Before.FindConductor("w4")!.From.ToString());
    }

    // The line of a part comes before its wires; its own name may be the first, too.
    [Fact]
    public void What_the_line_of_a_part_writes_comes_first()
    {
        string text = Starter.Replace("F1: fuse, 20 A", "X1: stud\n  K2: relay, 12 V, COM on X1, NO free\n  F1: fuse, 20 A", StringComparison.Ordinal) + "  w7: K2.30 to chassis, 12 RD\n";
        Assert.Equal(["86", "85", "COM", "NO"], MarksOf(JobReader.Read("job.yaml", text, Catalogue.Standard, _ => null).Alteration!.Before, "K2"));
        Assert.Equal("K2.30 and K2.COM are one terminal", Assert.Single(Notes(text)).Message);
        string own = text.Replace("COM on X1", "30 on X1", StringComparison.Ordinal).Replace("K2.30 to", "K2.COM to", StringComparison.Ordinal);
        Assert.Equal("K2.COM and K2.30 are one terminal", Assert.Single(Notes(own)).Message);
    }

    // What a part bears does not change by what is done to its wires.
    [Fact]
    public void A_part_that_stays_has_one_name_for_a_terminal_in_both_circuits()
    {
        var job = Read("    - fit E1: lamp, 12 V, 5 W, 2 on chassis\n    - run w7: K1.15a to E1.1, 16 WH, 1 m\n    - run w8: K1.S to E1.1, 16 WH, 1 m\n");
        Assert.Equal(["30", "MOT", "50", "15a"], MarksOf(job.Alteration.Before, "K1"));
        Assert.Same(job.Alteration.Before.FindPart("K1")!.Kind, job.Alteration.After.FindPart("K1")!.Kind);
        Assert.Equal("K1.50", job.Alteration.After.FindConductor("w8")!.From.ToString());
        var note = Assert.Single(job.Findings, f => f.Code == "HS2011");
        Assert.Equal(("K1.S and K1.50 are one terminal", 21, 15), (note.Message, note.Span!.Line, note.Span.Column));
    }

    [Fact]
    public void A_part_that_is_replaced_by_one_of_its_kind_keeps_the_marks_that_the_list_does_not_write()
    {
        var alteration = Read("    - replace K1: starter-solenoid, 24 V\n    - take out w6\n    - run w7: S1.2 to K1.S, 12 YE, 1 m\n").Alteration;
        Assert.Equal(["30", "MOT", "50", "R"], MarksOf(alteration.Before, "K1"));
        Assert.Equal(["30", "MOT", "S", "R"], MarksOf(alteration.After, "K1"));
    }

    [Fact]
    public void Another_kind_has_its_own_marks_or_those_that_the_list_writes()
    {
        var alteration = Read("    - replace K1: starter-relay, 12 V, MOT = 87, 50 = A1\n    - run w7: K1.85 to chassis, 12 BK, 1 m\n").Alteration;
        Assert.Equal(["30", "MOT", "50", "R"], MarksOf(alteration.Before, "K1"));
        Assert.Equal(["30", "87", "A1", "85"], MarksOf(alteration.After, "K1"));
        Assert.Equal(["S1.2 K1.50", "S1.2 K1.A1"], new[] { alteration.Before, alteration.After }.Select(c => c.FindConductor("w6")!).Select(w => $"{w.From} {w.To}"));
    }

    [Fact]
    public void Several_parts_of_one_line_bear_the_marks_that_are_written_of_each()
    {
        var after = Read("    - fit K2, K3: relay, 12 V, 20 A\n    - run w7: K2.A1 to F1.2, 16 RD\n    - run w8: K3.86 to F1.2, 16 RD\n    - run w9: K2.A2 to chassis, 16 BK\n    - run w10: K3.85 to chassis, 16 BK\n").Alteration.After;
        Assert.Equal(["A1", "A2", "30", "87"], MarksOf(after, "K2"));
        Assert.Equal(["86", "85", "30", "87"], MarksOf(after, "K3"));
    }

    [Fact]
    public void Of_two_complete_files_a_part_that_stays_bears_the_marks_of_the_first_and_another_its_own()
    {
        string marked = Starter.Replace("K1.50", "K1.S", StringComparison.Ordinal).Replace("K1.30", "K1.BAT", StringComparison.Ordinal);
        Circuit One(string text) => Job.Read(text).OrThrow().Alteration.Before;
        var same = Alteration.Between(One(Starter), One(marked), "");
        Assert.Equal(["30", "MOT", "50", "R"], MarksOf(same.After, "K1"));
        Assert.Empty(same.Changes);
        var other = Alteration.Between(One(Starter), One(marked.Replace("starter-solenoid, 12 V", "starter-solenoid, 24 V", StringComparison.Ordinal)), "");
        Assert.Equal(["BAT", "MOT", "S", "R"], MarksOf(other.After, "K1"));
        Assert.Equal("K1", Assert.Single(Assert.Single(other.Changes).Acts).Items[0]);
    }

    // Where only the second writes a terminal, the part had that mark before, too.
    [Fact]
    public void What_only_the_second_of_two_files_writes_is_the_name_in_both()
    {
        Circuit One(string text) => Job.Read(text).OrThrow().Alteration.Before;
        var alteration = Alteration.Between(One(Starter), One(Starter + "  w7: K1.15a to chassis, 16 WH, 1 m\n"), "");
        Assert.Equal(["30", "MOT", "50", "15a"], MarksOf(alteration.Before, "K1"));
        Assert.Equal(MarksOf(alteration.After, "K1"), MarksOf(alteration.Before, "K1"));
    }

    [Fact]
    public void Figures_are_asked_for_by_any_mark_of_a_terminal()
    {
        var figures = Read().Study.Before.Setting("cranking").Figures;
        Assert.Equal(figures.VoltageAt("K1.30"), figures.VoltageAt("K1.B"));
        Assert.Throws<ArgumentException>(() => figures.VoltageAt("K1.87"));
    }

    // Lists that know a terminal by its name in the kind know it by any mark.
    [Fact]
    public void What_goes_on_the_end_of_a_wire_does_not_hang_on_the_mark()
    {
        string text = Starter.Replace("  S1:", "  G2: alternator, 12 V, 30 A\n  S1:", StringComparison.Ordinal) + "  w7: G2.30 to K1.30, 10 RD, 1 m\n  w8: G2.61 to S1.2, 16 BU, 1 m\n";
        var circuit = Job.Read(text).OrThrow().Alteration.Before;
        Assert.Equal(["ring, stud", ""], new[] { "30", "61" }.Select(t => Hotside.Packs.Lists.TerminalFinder.Of(End.At("G2", t), circuit)));
    }

    [Fact]
    public void What_is_to_be_touched_at_a_regulator_is_said_by_its_marks()
    {
        string text = """
            hotside: 1
            system: 6 V, positive ground
            parts:
              G1: battery, 6 V
              G2: generator-field-inside, 6 V, 20 A
              N1: regulator-field-fed, 6 V, 20 A
            wires:
              w1: G1.neg to N1.B+
              w2: G1.pos to chassis
              w3: N1.D+ to G2.D+
              w4: N1.DF to G2.DF
            alteration:
              system: 6 V, negative ground
              changes:
                - reverse G1
            """;
        Assert.Contains("take DF off the regulator and touch it to B+ for a moment", Job.Read(text).OrThrow().Findings.Single(f => f.Code == "HS3323").Hint, StringComparison.Ordinal);
        Assert.Contains("take FLD off the regulator and touch it to BAT for a moment", Job.Read(text.Replace("N1.B+", "N1.BAT", StringComparison.Ordinal).Replace("N1.DF", "N1.FLD", StringComparison.Ordinal)).OrThrow().Findings.Single(f => f.Code == "HS3323").Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_is_a_word_and_no_mark() =>
        Assert.Equal(["1", "2"], MarksOf(Job.Read(Starter.Replace("S1.2 to K1.50", "S1.case to K1.50", StringComparison.Ordinal)).OrThrow().Alteration.Before, "S1"));

    // All of a part but its children's children.
    [GeneratedRegex("<g [^>]*part-K1\".*?</g>", RegexOptions.Singleline)]
    private static partial Regex Starters();

    [GeneratedRegex("<text[^>]*>([^<]*)</text>")]
    private static partial Regex Text();
}
