using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>A finding that is right and is to stay, accepted by the job with a reason.</summary>
public class AcceptanceTests
{
    private const string Unfused = "parts:\n  S2: switch\n  E1: lamp, 6 V, 5 W, 2 on chassis\nwires:\n  w9: X1 to S2.1, 16 RD, 1 m\n  w10: S2.2 to E1.1, 16 RD, 1 m\n";

    private static Job Read(string accept) => Job.Read(HornJob.With(Unfused + "accept:\n" + accept)).OrThrow();

    [Theory]
    [InlineData("  HS3301 E1: an exhibit that is never driven\n")]
    [InlineData("  hs3301 E1, w9: an exhibit that is never driven\n")]
    public void An_accepted_finding_stays_on_the_list_and_counts_for_nothing(string accept)
    {
        var job = Read(accept);
        var found = Assert.Single(job.Findings, f => f.Code == "HS3301");
        Assert.Equal((Severity.Stop, "an exhibit that is never driven"), (found.Severity, found.Accepted));
        Assert.Contains("accepted stop HS3301", found.ToString(), StringComparison.Ordinal);
        Assert.False(job.HasErrors);
    }

    [Fact]
    public void One_of_other_items_is_not_accepted_and_the_line_is_told()
    {
        var job = Read("  HS3301 H1: it is the horn's affair\n");
        Assert.True(job.HasErrors);
        Assert.Null(Assert.Single(job.Findings, f => f.Code == "HS3301").Accepted);
        var idle = Assert.Single(job.Findings, f => f.Code == "HS3390");
        Assert.Equal("HS3301 H1 is accepted here, and nothing of that sort is found", idle.Message);
        Assert.NotNull(idle.Span);
    }

    [Fact]
    public void What_is_accepted_is_written_and_read_again()
    {
        var job = Read("  HS3301 E1: an exhibit that is never driven\n");
        string text = job.ToYaml();
        Assert.Contains("accept:\n  HS3301 E1: an exhibit that is never driven\n", text, StringComparison.Ordinal);
        Assert.Equal(text, Job.Read(text).OrThrow().ToYaml());
        Assert.False(Job.Read(text).OrThrow().HasErrors);
    }

    [Fact]
    public void The_json_tells_the_reason() =>
        Assert.Contains("\"accepted\": \"an exhibit that is never driven\"", Read("  HS3301 E1: an exhibit that is never driven\n").ToJson(), StringComparison.Ordinal);
}
