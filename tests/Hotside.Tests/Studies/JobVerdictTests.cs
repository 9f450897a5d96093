using Hotside.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies;

/// <summary>The verdicts that were written by hand beside each circuit, before anything computed them (no published source: worked out by Kirchhoff's laws).</summary>
public class JobVerdictTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    public static TheoryData<string> Cases => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_load_has_the_verdict_written_beside_the_circuit(string file)
    {
        string text = JobFiles.Text(file);
        var study = StudyOf(file);
        Assert.True(ExpectedVerdicts.Parse(text).Length > 0 || file.StartsWith("more/parts", StringComparison.Ordinal), "no verdict is written in " + file);
        Assert.Empty(ExpectedVerdicts.Differences(text, "before", study.Before));
        Assert.Empty(ExpectedVerdicts.Differences(text, "after", study.After));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_load_of_the_gallery_has_the_verdict_written_beside_the_circuit(string name)
    {
        string file = Repository.Path("gallery", name, "job.yaml"), text = File.ReadAllText(file);
        var study = Study.Of(Job.ReadFile(file).OrThrow().Alteration, TestContext.Current.CancellationToken);
        Assert.NotEmpty(ExpectedVerdicts.Parse(text));
        Assert.Empty(ExpectedVerdicts.Differences(text, "before", study.Before));
        Assert.Empty(ExpectedVerdicts.Differences(text, "after", study.After));
    }

    [Fact]
    public void A_reader_of_expectations_sees_a_wrong_one()
    {
        const string file = "small/02-self-holding-relay.yaml";
        string text = JobFiles.Text(file), wrong = text.Replace("after E1.lamp: hot-switched", "after E1.lamp: ground-switched by K7", StringComparison.Ordinal).Replace("until S2 pressed", "until S1 pressed", StringComparison.Ordinal);
        Assert.NotEqual(text, wrong);
        string[] differences = [.. ExpectedVerdicts.Differences(wrong, "after", StudyOf(file).After)];
        Assert.Contains("after E1.lamp: is hot-switched, expected ground-switched", differences);
        Assert.Contains(differences, d => d.StartsWith("after E1.lamp: goes by ", StringComparison.Ordinal) && d.EndsWith("expected K7", StringComparison.Ordinal));
        Assert.Contains(differences, d => d.StartsWith("after K1.coil: released by {S2 pressed} differs", StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_feed_that_comes_back_past_the_disconnect_is_found()
    {
        var study = StudyOf("small/13-back-feed.yaml");
        string[] added = [.. study.Findings.Except(study.After.Findings).Select(f => f.ToString().Split('\n')[0])];
        Assert.Contains(added, f => f.StartsWith("warning HS3009: E1 is now fed when ", StringComparison.Ordinal) && f.EndsWith("past Q1 on, which cut it off before", StringComparison.Ordinal));
        Assert.Contains(added, f => f.StartsWith("note HS3014: M2 has a feed of its own when ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_machine_that_also_feeds_is_told_apart_from_the_verdict() =>
        Assert.Equal(["G3"], StudyOf("launch.yaml").Before.Load("E1").AlsoFedBy);

    [Fact]
    public void A_filament_whose_ground_is_lost_is_found() =>
        Assert.Contains(StudyOf("small/03-lost-ground.yaml").Before.Findings, f => f.Code == "HS3017" && f.Items[0].StartsWith("E3", StringComparison.Ordinal));

    [Fact]
    public void Both_coils_of_a_latching_relay_at_once_are_found() =>
        Assert.Contains(StudyOf("small/11-latching-relay.yaml").After.Findings, f => f.Code == "HS3004" && f.Items[0] == "K1");

    private static Study StudyOf(string file) => Study.Of(JobFiles.Read(file).Alteration!, TestContext.Current.CancellationToken);
}
