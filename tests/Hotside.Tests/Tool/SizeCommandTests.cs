using Hotside.Tests.Sizing;
using Hotside.Tests.Support;

namespace Hotside.Tests.Tool;

/// <summary>Sizes, the work behind them and faults on the command line.</summary>
public sealed class SizeCommandTests : IDisposable
{
    // Three lamps of the example hang on the second battery without a fuse: a stop, and so the exit code of findings.
    private const int LampsWithoutFuse = 1;

    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public SizeCommandTests() => File.WriteAllText(Path.Combine(folder, "job.yaml"), TwoLamps.Text());

    [Fact]
    public void Sizes_are_a_table_of_wires_and_one_of_fuses()
    {
        var run = ToolRun.In(folder, null, "study", "job.yaml", "--sizes");
        Assert.Equal(LampsWithoutFuse, run.Code);
        Assert.Contains("  w2    F1.2     S1.1     6.42 A   14 AWG  16 AWG  strength  25 A       F1 10 A  37.5 % E1      good\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("  F1    10 A    6.42 A   10 A    w4, 20 A  good\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("The workshop manual, local codes and licensed practice take precedence.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_work_behind_a_size_is_shown_for_a_wire_and_refused_for_an_unknown_one()
    {
        var run = ToolRun.In(folder, null, "study", "job.yaml", "--show-work", "w2");
        Assert.Equal(LampsWithoutFuse, run.Code);
        Assert.Contains("I = 3.212 + 3.212 = 6.424 A, when S1 on  [Kirchhoff's first law]", run.Output, StringComparison.Ordinal);
        var wrong = ToolRun.In(folder, null, "study", "job.yaml", "--show-work", "w99");
        Assert.Equal(64, wrong.Code);
        Assert.Contains("hotside: There is no wire \"w99\"", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_a_wire_say_what_dies_and_which_fuse_opens_within_what_time()
    {
        var run = ToolRun.In(folder, null, "study", "job.yaml", "--faults", "w3");
        Assert.Equal(LampsWithoutFuse, run.Code);
        Assert.Contains("short at J1", run.Output, StringComparison.Ordinal);
        Assert.Contains("167 A", run.Output, StringComparison.Ordinal);
        Assert.Contains("0.1 s", run.Output, StringComparison.Ordinal);
        Assert.Contains("joint drops 2.58 V, 13.3 W: burns", run.Output, StringComparison.Ordinal);
        Assert.Contains("Computed, not to be tried.", run.Output, StringComparison.Ordinal);
        Assert.Contains("NOTHING OPENS", ToolRun.In(folder, null, "study", "job.yaml", "--faults", "all", "--setting", "lights").Output, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
