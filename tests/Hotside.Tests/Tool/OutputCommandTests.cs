using System.Text;
using Hotside.Tests.Support;

namespace Hotside.Tests.Tool;

/// <summary>The commands that write files, each in a process of its own.</summary>
public sealed class OutputCommandTests : IDisposable
{
    // A lamp, its switch and its fuse; quick to draw, and nothing is wrong with it.
    private const string Small = """
        hotside: 1
        title: Lamp
        system: 6 V, positive ground, sizes in AWG
        parts:
          G1: battery, 6 V
          F1: fuse, 5 A
          S1: switch, Lamp switch
          E1: lamp, 6 V, 21 W
        wires:
          w1: G1.neg to F1.1, 14 BK
          w6: F1.2 to S1.1, 14 BK
          w2: S1.2 to E1.1, 14 BK
          w3: E1.2 to chassis, 14 BK
          w4: G1.pos to chassis, 2 BK
        alteration:
          title: A smaller one
          changes:
            - replace E1: lamp, 6 V, 5 W

        """;

    // Two feeds straight on the return: a short, which is a finding of severity stop or error.
    private static readonly string Shorted = Small.Replace("w4: G1.pos to chassis, 2 BK", "w4: G1.pos to chassis, 2 BK\n  w5: G1.neg to chassis, 2 BK", StringComparison.Ordinal);

    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public OutputCommandTests() => File.WriteAllText(Path.Combine(folder, "lamp.yaml"), Small);

    [Theory]
    [InlineData("lamp.svg", "<svg ")]
    [InlineData("lamp.PNG", "\u0089PNG")]
    [InlineData("lamp.pdf", "%PDF-")]
    public void The_files_ending_says_what_is_written(string name, string begins)
    {
        Assert.Equal(0, Run("draw", "lamp.yaml", "-o", name, "--resolution", "60").Code);
        Assert.Equal(begins, Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(folder, name))[..begins.Length]));
        Assert.Equal([name, "lamp.yaml"], Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("order.txt", "Lamp: order of work")]
    [InlineData("order.csv", "step,phase,place")]
    [InlineData("order.json", "{")]
    public void An_order_is_written_as_its_files_ending_says(string name, string begins)
    {
        var run = Run("order", "lamp.yaml", "-o", name);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.StartsWith(begins, File.ReadAllText(Path.Combine(folder, name)), StringComparison.Ordinal);
    }

    [Fact]
    public void As_of_a_step_is_drawn_only_while_the_order_is_the_one_that_was_printed()
    {
        Assert.Equal(0, Run("wires", "lamp.yaml", "--as-of", "3").Code);
        var other = Run("draw", "lamp.yaml", "-o", "lamp.svg", "--as-of", "3@00000000");
        Assert.Equal(64, other.Code);
        Assert.Contains("the order has changed since it was printed", other.Error, StringComparison.Ordinal);
        Assert.Contains("There is no such step", Run("wires", "lamp.yaml", "--as-of", "99").Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "lamp.svg")));
    }

    [Fact]
    public void As_of_a_step_without_a_battery_nothing_is_diagnosed_until_one_is_named()
    {
        foreach (string command in new[] { "sheets", "diagnose" })
        {
            var without = Run(command, "lamp.yaml", "--as-of", "4");
            Assert.Equal(64, without.Code);
            Assert.Contains("the battery is out as it stands", without.Error, StringComparison.Ordinal);
            Assert.Equal(0, Run(command, "lamp.yaml", "--as-of", "4", "--battery", "old").Code);
        }
        Assert.Contains("--battery goes with --as-of", Run("wires", "lamp.yaml", "--battery", "old").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_with_its_first_steps_done_is_written_as_a_job_that_says_so()
    {
        Assert.Equal(0, Run("order", "lamp.yaml", "--as-of", "6", "-o", "half.yaml").Code);
        Assert.Contains("  done: 1\n", File.ReadAllText(Path.Combine(folder, "half.yaml")), StringComparison.Ordinal);
        Assert.Equal(0, Run("wires", "half.yaml", "--as-of", "now").Code);
        Assert.Equal(64, Run("order", "lamp.yaml", "--as-of", "99", "-o", "more.yaml").Code);
    }

    [Theory]
    [InlineData("svg", "<svg ")]
    [InlineData("png", "\u0089PNG")]
    [InlineData("pdf", "%PDF-")]
    public void A_job_from_standard_input_goes_to_standard_output_in_the_format_asked_for(string format, string begins)
    {
        var run = ToolRun.In(folder, Small, "draw", "-", "-o", "-", "--format", format, "--resolution", "60");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Equal(begins, Encoding.Latin1.GetString(run.Bytes[..begins.Length]));
    }

    [Fact]
    public void Standard_output_and_file_have_the_same_bytes()
    {
        Run("draw", "lamp.yaml", "-o", "lamp.svg");
        Assert.Equal(File.ReadAllBytes(Path.Combine(folder, "lamp.svg")), Run("draw", "lamp.yaml", "-o", "-").Bytes);
    }

    [Fact]
    public void Several_views_are_the_pages_of_a_pdf()
    {
        Assert.Equal(0, Run("draw", "lamp.yaml", "-o", "lamp.pdf", "--view", "before", "after", "--view", "pair", "overlay").Code);
        Assert.Matches(@"Pages:\s+4\n", OutsideProgram.Run("pdfinfo", Path.Combine(folder, "lamp.pdf")));
    }

    [Theory]
    [InlineData(".svg, .png and .pdf", "draw", "lamp.yaml", "-o", "lamp.docx")]
    [InlineData(".txt and .csv", "wires", "lamp.yaml", "-o", "lamp.xls")]
    [InlineData("--format says png", "draw", "lamp.yaml", "-o", "lamp.svg", "--format", "png")]
    [InlineData("several go into a .pdf", "draw", "lamp.yaml", "-o", "lamp.svg", "--view", "before", "after")]
    [InlineData("10 to 4800", "draw", "lamp.yaml", "-o", "lamp.png", "--resolution", "5")]
    [InlineData("'bash'", "completions", "basch")]
    public void What_cannot_be_meant_is_wrong_usage_and_says_what_there_is(string said, params string[] words)
    {
        var run = Run(words);
        Assert.Equal(64, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Equal(["lamp.yaml"], Directory.GetFiles(folder).Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public void What_does_not_fit_on_one_paper_goes_on_several_files_or_pages()
    {
        string job = Repository.Path("gallery", "headlamps", "job.yaml");
        Assert.Equal(0, Run("draw", job, "-o", "lamps.svg", "--page", "A4", "--view", "after").Code);
        string[] files = [.. Directory.GetFiles(folder, "*.svg").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
        Assert.Equal(Enumerable.Range(1, files.Length).Select(n => $"lamps-{n}.svg"), files);
        Assert.True(files.Length > 1);
        Assert.Contains($">1 / {files.Length}<", File.ReadAllText(Path.Combine(folder, "lamps-1.svg")), StringComparison.Ordinal);
        Assert.Equal(0, Run("draw", job, "-o", "lamps.pdf", "--page", "A4", "--view", "after").Code);
        Assert.Matches($@"Pages:\s+{files.Length}\n", OutsideProgram.Run("pdfinfo", Path.Combine(folder, "lamps.pdf")));
        var run = Run("draw", job, "-o", "-", "--page", "A4", "--view", "after");
        Assert.Equal(64, run.Code);
        Assert.Contains($"{files.Length} sheets of A4", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Paper_and_letters_are_chosen_by_their_names_in_any_case()
    {
        Assert.Equal(0, Run("draw", "lamp.yaml", "-o", "lamp.svg", "--page", "letter").Code);
        Assert.StartsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"hs\" fill=\"none\" width=\"279.4mm\" height=\"215.9mm\"", File.ReadAllText(Path.Combine(folder, "lamp.svg")), StringComparison.Ordinal);
        Assert.Equal(0, Run("draw", "lamp.yaml", "-o", "lamp.svg", "--page", "fit", "--text", "large").Code);
        Assert.Equal(64, Run("draw", "lamp.yaml", "-o", "lamp.svg", "--page", "A9").Code);
        Assert.Equal(64, Run("draw", "lamp.yaml", "-o", "lamp.svg", "--text", "huge").Code);
    }

    [Fact]
    public void A_figure_is_drawn_of_loads_that_there_are()
    {
        Assert.Equal(0, Run("draw", "lamp.yaml", "-o", "lamp.svg", "--figure", "E1", "--figure", "E1").Code);
        var run = Run("draw", "lamp.yaml", "-o", "other.svg", "--figure", "E2");
        Assert.Equal((64, "hotside: There is no load \"E2\"; did you mean \"E1\"?\n"), (run.Code, run.Error.ReplaceLineEndings("\n")));
        Assert.False(File.Exists(Path.Combine(folder, "other.svg")));
    }

    [Theory]
    [InlineData("draw", "lamp.svg")]
    [InlineData("wires", "lamp.csv")]
    public void Each_exit_code_has_its_meaning(string command, string file)
    {
        Assert.Equal(0, Run(command, "lamp.yaml", "-o", file).Code);
        File.WriteAllText(Path.Combine(folder, "short.yaml"), Shorted);
        Assert.Equal(1, Run(command, "short.yaml", "-o", "short" + Path.GetExtension(file)).Code);
        Assert.True(File.Exists(Path.Combine(folder, "short" + Path.GetExtension(file))), "what can be drawn is still drawn");
        Assert.Equal(2, Run(command, "missing.yaml", "-o", file).Code);
        Assert.Equal(3, Run(command, "lamp.yaml", "-o", Path.Combine("nowhere", file)).Code);
        Assert.Equal(64, Run(command, "lamp.yaml", "-o", "lamp.wav").Code);
    }

    [Fact]
    public void The_wire_list_goes_where_it_is_sent()
    {
        Assert.StartsWith("Lamp\n6 V, positive ground\n", Run("wires", "lamp.yaml").Output.Replace("before and after: ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.StartsWith("no.,wire,from,to,", ToolRun.In(folder, Small, "wires", "-", "--format", "csv").Output, StringComparison.Ordinal);
        Run("wires", "lamp.yaml", "-o", "lamp.csv", "--words", "uk");
        Assert.Equal(Run("wires", "lamp.yaml", "--format", "csv").Output, File.ReadAllText(Path.Combine(folder, "lamp.csv")));
    }

    // The script is run by the shell it is made for, with the variables that the shell sets when the tabulator is pressed.
    [Fact]
    public void Bash_completes_with_the_printed_script()
    {
        File.WriteAllText(Path.Combine(folder, "complete.bash"), Run("completions", "bash").Output);
        string Complete(string line) => OutsideProgram.Run("bash", "-c", $$"""
            hotside() { dotnet exec '{{ToolRun.Program}}' "$@"; }
            . '{{folder}}/complete.bash'
            COMP_LINE='{{line}}'; COMP_POINT=${#COMP_LINE}; read -r -a COMP_WORDS <<< "$COMP_LINE"; COMP_CWORD=$(( ${#COMP_WORDS[@]} - 1 ))
            _hotside; printf '%s\n' "${COMPREPLY[@]}"
            """);
        Assert.Equal("draw\n", Complete("hotside dr"));
        Assert.Contains("--resolution\n", Complete("hotside draw lamp.yaml --res"), StringComparison.Ordinal);
        Assert.Equal("paper\n", Complete("hotside draw lamp.yaml --theme pa"));
        Assert.Equal("\n", Complete("hotside draw lam"));
    }

    [Theory]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("pwsh")]
    public void Every_shells_script_asks_the_program_itself(string shell) =>
        Assert.Contains("hotside \"[suggest:", Run("completions", shell).Output, StringComparison.Ordinal);

    // script(1) lends the program a terminal.
    [Fact]
    public void Diagnostics_are_coloured_on_a_terminal_only_and_not_with_NO_COLOR()
    {
        File.WriteAllText(Path.Combine(folder, "bad.yaml"), Small.Replace("lamp, 6 V, 21 W", "lmap, 6 V", StringComparison.Ordinal));
        string check = $"dotnet exec '{ToolRun.Program}' check '{folder}/bad.yaml'";
        string OnTerminal(string set) => OutsideProgram.Run("script", "-qc", $"env TERM=xterm {set} {check}", "/dev/null");
        Assert.Contains("\u001b[1;31merror\u001b[0m HS1112", OnTerminal("NO_COLOR="), StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[1;31m", OnTerminal("NO_COLOR=1"), StringComparison.Ordinal);
        var plain = Run("check", "bad.yaml");
        Assert.DoesNotContain('\u001b', plain.Output + plain.Error);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private ToolRun Run(params string[] arguments) => ToolRun.In(folder, null, arguments);
}
