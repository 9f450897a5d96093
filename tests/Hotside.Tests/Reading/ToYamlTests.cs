using CsCheck;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Reading;
using Hotside.Tests.Alterations;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>A job that is written and read again is the same job, however it was made.</summary>
public class ToYamlTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_job_that_was_read_is_the_same_when_written_and_read_again(string file) => SameAgain(Job.Read(JobFiles.Text(file)).OrThrow());

    [Fact]
    public void A_circuit_of_any_parts_and_wires_is_the_same_again() =>
        Gen.Int[0, 1_000_000].Sample(seed => SameAgain(Job.From(GeneratedJob.Of(seed))), iter: 150, seed: "0000000000001");

    [Fact]
    public void An_alteration_of_any_changes_is_the_same_again() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var (before, groups) = GeneratedAlterations.Of(seed);
            var made = Lines.Apply(before, groups).Alteration;
            if (made is not null) SameAgain(Job.From(made));
        }, iter: 150, seed: "0000000000001");

    [Fact]
    public void An_alteration_told_from_two_circuits_is_the_same_again() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var (before, groups) = GeneratedAlterations.Of(seed);
            if (Lines.Apply(before, groups).Alteration is { } made) SameAgain(Job.From(Alteration.Between(made.Before, made.After, "Told")));
        }, iter: 150, seed: "0000000000001");

    [Fact]
    public void Two_complete_files_give_the_same_bytes_as_the_list_of_changes() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var (before, groups) = GeneratedAlterations.Of(seed);
            if (Lines.Apply(before, groups).Alteration is not { } made) return;
            string list = Job.From(made).ToYaml();
            string first = JobWriter.Text(made.Before) + "alteration:\n  title: Test\n  after: after.yaml\n", second = JobWriter.Text(made.After);
            var read = JobReader.Read("job.yaml", first, Hotside.Kinds.Catalogue.Standard, name => name == "after.yaml" ? second : null);
            Assert.True(read.Alteration is not null, string.Join('\n', read.Diagnostics));
            Assert.Equal(list, JobWriter.Write("Test", [], read.Alteration));
        }, iter: 60, seed: "0000000000001");

    [Fact]
    public void Reasons_and_sentences_with_commas_and_colons_are_the_same_again() => SameAgain(Job.From(Samples.Starter().Alter("Reasons: all of them")
        .Do("M1", "let it cool, then crank: 10 s", because: "it gets hot, and smells")
        .TakeOut("w8", because: "worn: see photo, page 2")
        .Renew("w7", new() { Size = WireSize.Awg(6), Place = "left, low", Loom = "front, main" }, because: "'burnt'")
        .Fit("F5", Hotside.Kinds.Kind.Fuse, new() { Name = "Fuse: spare", Joints = System.Collections.Immutable.ImmutableDictionary<string, string>.Empty.Add("1", "K2.BAT"), Place = "dash, left" }, because: "first, last")
        .Build()));

    [Fact]
    public void The_horn_and_the_starter_built_in_code_are_the_same_again()
    {
        SameAgain(Job.From(Samples.HornAltered()));
        SameAgain(Job.From(Samples.StarterAltered()));
    }

    [Theory]
    // The old kind brings its mount, the new one none: "case on chassis" is said, and must be written.
    [InlineData("  M1: starter, 6 V, 1 on X1\n  E1: lamp, 6 V, 1 on X1\n", "    - 'replace M1: starter-isolated, 6 V, 1 on X1, 2 on chassis'\n")]
    [InlineData("  K1: relay-diode, 6 V, 30 on X1\n", "    - 'replace K1: starter-relay-case, 6 V, case on chassis, 30 = BAT'\n")]
    // Fewer ways, and a map between terminals that both kinds have.
    [InlineData("  X6: connector, 6 ways, a6 on X1\n", "    - 'replace X6: connector, 4 ways, a6 = a2'\n")]
    [InlineData("  X6: connector, 6 ways, a1 on X1\n", "    - 'replace X6: connector, 6 ways, a1 = a3'\n")]
    // A joint that goes, a mount on a part that is replaced as well, a reason, a title with a colon.
    [InlineData("  K1: relay, 6 V, 30 on X1\n", "    - 'replace K1: relay, 12 V, 30 free, because worn: loose, too'\n")]
    [InlineData("  X2: stud\n  K1: relay, 6 V, 30 on X1\n  M1: starter, 6 V, case on K1.85, 1 on X1\n", "    - 'replace K1: horn-relay, 6 V, 30 = B, 85 = S'\n")]
    public void What_a_replacement_says_and_inherits_comes_back(string parts, string changes)
    {
        var read = Job.Read(HornJob.With("parts:\n" + parts + "alteration:\n  title: 'Old: new'\n  changes:\n" + changes));
        if (read.Job is null) Assert.Fail(string.Join('\n', read.Diagnostics));
        SameAgain(read.Job);
    }

    [Fact]
    public void A_job_without_changes_but_with_another_system_or_setting_is_the_same_again() =>
        SameAgain(Job.Read(HornJob.With("alteration:\n  system: 12 V, positive ground\n  settings:\n    horn pressed: S1 released\n")).OrThrow());

    [Fact]
    public void A_kind_that_the_job_defines_otherwise_is_written_into_it()
    {
        var job = Job.Read(HornJob.With("kinds:\n  horn:\n    like: horn\n    summary: a horn of three tones\n    ratings:\n      V: horn\n      A: horn\n      ohm: horn\n")).OrThrow();
        Assert.Contains("a horn of three tones", job.ToYaml(), StringComparison.Ordinal);
        SameAgain(job);
    }

    [Fact]
    public void A_connector_of_a_kind_of_one_s_own_keeps_its_ways()
    {
        var job = Job.Read(HornJob.With("kinds:\n  my-plug:\n    like: connector\n    summary: a plug\nparts:\n  X6: my-plug, 3 ways, a1 on X1\n")).OrThrow();
        Assert.Contains("ways: 1 to", job.ToYaml(), StringComparison.Ordinal);
        SameAgain(job);
    }

    [Fact]
    public void Temperatures_charges_speeds_duties_and_bad_joints_are_the_same_again()
    {
        var job = Job.Read(File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Solving", "circumstances.yaml"))).OrThrow();
        SameAgain(job);
        // Two complete files: what was a bad joint is made anew by the change, or it would still be there.
        SameAgain(Job.From(Alteration.Between(job.Alteration.Before, job.Alteration.After, "Told")));
    }

    private static void SameAgain(Job job)
    {
        string text = job.ToYaml();
        var read = Job.Read(text);
        Assert.True(read.Job is not null, string.Join('\n', read.Diagnostics.Select(read.Print)) + "\n" + text);
        Alteration was = job.Alteration, now = read.Job.Alteration;
        Assert.Equal(job.Title, read.Job.Title);
        Assert.Equal(was.Title, now.Title);
        Assert.Equal(job.TitleBlock, read.Job.TitleBlock);
        Same(was.Before, now.Before, text);
        Same(was.After, now.After, text);
        Assert.Equal(ChangeDump.Of(was), ChangeDump.Of(now));
        Assert.Equal(text, read.Job.ToYaml());
    }

    // Changes are written in the order of work, so what they bring may stand in another order.
    private static void Same(Circuit was, Circuit now, string text)
    {
        string[] expected = Sorted(was), actual = Sorted(now);
        string lost = string.Join('\n', expected.Except(actual).Select(l => "- " + l).Concat(actual.Except(expected).Select(l => "+ " + l)));
        Assert.True(lost.Length == 0, lost + "\nof\n" + text);
        Assert.Equal(was.System.ToString(), now.System.ToString());
    }

    private static string[] Sorted(Circuit circuit) => [.. JobWriter.Text(circuit).Split('\n').Order(StringComparer.Ordinal)];
}
