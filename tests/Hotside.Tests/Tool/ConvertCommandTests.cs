using Hotside.Tests.Support;

namespace Hotside.Tests.Tool;

/// <summary>The command that proposes, in a process of its own.</summary>
public sealed class ConvertCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;
    private static readonly string Horn = Repository.Path("gallery", "horn", "job.yaml");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private ToolRun Run(params string[] arguments) => ToolRun.In(folder, null, ["convert", .. arguments]);

    [Fact]
    public void A_proposal_with_questions_ends_with_1_and_is_a_file_that_check_reads()
    {
        var run = Run(Horn, "--to", "12 V negative", "-o", "horn.yaml");
        Assert.Equal(1, run.Code);
        Assert.Contains("HS4304: G1: ampere-hours?", run.Error, StringComparison.Ordinal);
        Assert.Contains("HS4301", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, ToolRun.In(folder, null, "check", "horn.yaml").Code);
        var again = Run("horn.yaml", "--from", "after", "--to", "12 V negative", "-o", "again.yaml");
        Assert.Equal((0, true), (again.Code, again.Error.Contains("HS4305", StringComparison.Ordinal)));
    }

    [Fact]
    public void Mistakes_are_told_in_a_line_and_end_with_64()
    {
        foreach (string[] wrong in new string[][] { [Horn, "--to", "12 V negatve"], [Horn, "--to", "12 V", "--option", "realy=always"], [Horn, "--only", "H7"], [Horn], [Horn, "--to", "12 V", "--option", "relay"] })
        {
            var run = Run(wrong);
            Assert.Equal(64, run.Code);
            Assert.NotEmpty(run.Error);
            Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        }
    }
}
