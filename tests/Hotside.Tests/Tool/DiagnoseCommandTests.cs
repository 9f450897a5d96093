using Hotside.Tests.Support;

namespace Hotside.Tests.Tool;

/// <summary>Check sheets and fault finding on the command line.</summary>
public sealed class DiagnoseCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public DiagnoseCommandTests() => File.Copy(Repository.Path("gallery", "horn", "job.yaml"), Path.Combine(folder, "job.yaml"));

    [Fact]
    public void A_dead_horn_has_suspects_a_next_reading_and_a_caution()
    {
        var run = ToolRun.In(folder, null, "diagnose", "job.yaml", "--dead", "H1", "--top", "3");
        Assert.Equal(0, run.Code);
        Assert.Contains("Known: H1 = dead @ horn pressed", run.Output, StringComparison.Ordinal);
        Assert.Contains("  3. ", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("  4. ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Next, horn pressed: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("the workshop manual, local codes and licensed practice take precedence", run.Output, StringComparison.Ordinal);
    }

    // Before the alteration: all the volts across the horn under load, so it is open inside.
    [Fact]
    public void Questions_are_answered_one_by_one_until_it_is_found()
    {
        var run = ToolRun.In(folder, "?\nwhat\nH1.1 = -6.3 V @ horn pressed\nH1.2 = 0 V @ horn pressed\n-\n\n", "diagnose", "job.yaml", "--view", "before", "--dead", "H1", "--ask");
        Assert.Equal(0, run.Code);
        Assert.Contains("It splits ", run.Output, StringComparison.Ordinal);
        Assert.Contains("H1 open inside", run.Output, StringComparison.Ordinal);
        Assert.Contains("\nFound, as far as readings tell:\n  1. ", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_filled_sheet_is_read_as_readings()
    {
        Assert.Equal(0, ToolRun.In(folder, null, "sheets", "job.yaml", "--short", "-o", "sheet.csv").Code);
        string path = Path.Combine(folder, "sheet.csv");
        string[] lines = File.ReadAllLines(path);
        int row = Array.FindIndex(lines, l => l.Contains(",horn pressed,H1,,", StringComparison.Ordinal)), reading = Array.IndexOf(lines[0].Split(','), "reading");
        string[] cells = lines[row].Split(',');
        cells[reading] = "off";
        lines[row] = string.Join(',', cells);
        File.WriteAllLines(path, lines);
        Assert.Contains("Known: H1 = off @ horn pressed", ToolRun.In(folder, null, "diagnose", "job.yaml", "--readings", "sheet.csv").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Suspects_and_the_next_point_are_marked_in_a_drawing()
    {
        Assert.Equal(0, ToolRun.In(folder, null, "diagnose", "job.yaml", "--dead", "H1", "--reading", "K1 = on @ horn pressed", "-o", "horn.svg").Code);
        string svg = File.ReadAllText(Path.Combine(folder, "horn.svg"));
        Assert.Contains(">suspect<", svg, StringComparison.Ordinal);
        Assert.Matches("w6 \\d+ %", svg);
        Assert.Contains("; next, horn pressed: red on ", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no load \"H2\"; did you mean \"H1\"?", "diagnose", "job.yaml", "--dead", "H2")]
    [InlineData("Loads are named by --dead, --dim, --strong, --on and --works, fuses by --blown, readings by --reading.", "diagnose", "job.yaml", "--dead", "S1")]
    [InlineData("did you mean \"horn pressed\"?", "diagnose", "job.yaml", "--dead", "H1 @ horn presst")]
    [InlineData("has no unit of volts or ohms", "diagnose", "job.yaml", "--dead", "H1", "--reading", "H1.1 = 3.1")]
    [InlineData("three sheets; take one", "sheets", "job.yaml", "--short", "--full")]
    [InlineData("--top is 1 or more", "diagnose", "job.yaml", "--dead", "H1", "--top", "0")]
    [InlineData("There is no load \"H9\"", "sheets", "job.yaml", "--only", "H9")]
    public void A_mistake_is_answered_with_what_is_right(string told, params string[] arguments)
    {
        var run = ToolRun.In(folder, null, arguments);
        Assert.Equal(64, run.Code);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_readings_that_is_not_there_cannot_be_read() =>
        Assert.Equal(2, ToolRun.In(folder, null, "diagnose", "job.yaml", "--dead", "H1", "--readings", "none.txt").Code);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
