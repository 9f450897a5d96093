using System.Text;
using Hotside.Tests.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Wording;

public class ExplanationTests
{
    private static readonly Job Horn = Job.ReadFile(Repository.Path("gallery", "horn", "job.yaml")).OrThrow();

    [Fact]
    public void The_explanations_of_the_horn_circuit_are_the_approved_ones() =>
        Approve.Text(Horn.Explain("H1").ToString() + "\n" + Horn.Explain("K1", Words.British), "tests", "Hotside.Tests", "Wording", "horn.approved.txt");

    [Fact]
    public void The_explanations_of_the_twelve_circuits_are_the_approved_ones()
    {
        StringBuilder text = new();
        foreach (var (name, circuit) in TwelveCircuits.All)
        {
            var study = Hotside.Alterations.Alteration.Between(TestCircuit.Read(circuit), TestCircuit.Read(circuit), name);
            var job = Job.From(study);
            text.Append("### ").Append(name).Append('\n');
            foreach (var load in job.Study.After.Loads.Where(l => !l.Element.IsInternal)) text.Append(job.Explain(load.Name).Sections.First(s => s.Heading.StartsWith("After", StringComparison.Ordinal)) is var s
                ? load.Name + "\n" + string.Concat(s.Sentences.Select(t => "  " + t + "\n")) : "");
        }
        Approve.Text(text.ToString(), "tests", "Hotside.Tests", "Wording", "twelve.approved.txt");
    }

    [Fact]
    public void Every_load_of_every_job_file_can_be_explained_in_both_words()
    {
        foreach (string file in JobFiles.All)
        {
            if (JobFiles.Read(file).Alteration is not { } alteration) continue;
            var job = Job.From(alteration);
            foreach (var load in job.Study.Before.Loads.Concat(job.Study.After.Loads).Where(l => !l.Element.IsInternal).DistinctBy(l => l.Name))
            foreach (var words in Enum.GetValues<Words>())
            {
                string text = job.Explain(load.Name, words).ToString();
                Assert.Contains(load.Name, text, StringComparison.Ordinal);
                Assert.Contains("workshop manual", text, StringComparison.Ordinal);
                Assert.DoesNotContain("  .", text, StringComparison.Ordinal);
                Assert.DoesNotContain(" when .", text, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void A_relay_is_told_before_the_load_that_it_switches_and_the_button_no_longer_carries_the_horn()
    {
        var after = Horn.Explain("H1").Sections.Single(s => s.Heading.StartsWith("After", StringComparison.Ordinal)).Sentences;
        int coil = after.IndexOf(after.Single(t => t.StartsWith("1. ", StringComparison.Ordinal))), horn = after.IndexOf(after.Single(t => t.StartsWith("2. ", StringComparison.Ordinal)));
        Assert.True(coil < horn);
        Assert.Contains("coil of K1", after[coil], StringComparison.Ordinal);
        Assert.Contains("S1 (Horn button) carried 8 A for H1; now it carries 0.16 A for the coil of K1.", Horn.Explain("H1").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void British_words_say_earth_and_live_throughout()
    {
        string text = Horn.Explain("H1", Words.British).ToString();
        Assert.Contains("earth-switched", text, StringComparison.Ordinal);
        Assert.Contains("live-switched", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ground", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_load_is_answered_with_the_nearest()
    {
        Assert.Contains("did you mean \"H1\"", Assert.Throws<ArgumentException>(() => Horn.Explain("H11")).Message, StringComparison.Ordinal);
        Assert.Contains("S1 is a part, but no load", Assert.Throws<ArgumentException>(() => Horn.Explain("S1")).Message, StringComparison.Ordinal);
    }
}
