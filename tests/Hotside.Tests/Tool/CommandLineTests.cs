using System.Diagnostics;

namespace Hotside.Tests.Tool;

/// <summary>The command line as a newcomer meets it, in a process of its own.</summary>
public sealed class CommandLineTests : IDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Hotside.Tool.dll");
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    [Fact]
    public void The_file_that_new_writes_is_checked_and_drawn_without_a_finding()
    {
        Assert.Equal(0, Run("new", "van").Code);
        var check = Run("check", "van.yaml");
        Assert.Equal((0, "Horn circuit: nothing found\n"), (check.Code, check.Output));
        Assert.Equal(0, Run("draw", "van.yaml", "-o", "van.svg").Code);
        Assert.StartsWith("<svg", File.ReadAllText(Path.Combine(folder, "van.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void An_existing_file_is_not_overwritten_by_new()
    {
        Run("new", "van");
        var again = Run("new", "van");
        Assert.Equal(3, again.Code);
        Assert.Contains("van.yaml exists already", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_mistake_is_told_in_one_run_with_its_place_and_nothing_is_written()
    {
        Write("bad.yaml", "hotside: 1\ntitle: Bad\nsystem: 6 V, positive ground, sizes in AWG\nparts:\n  G1: battery, 6 V\n  H1: hron, 6 V\n  E1: lamp, 6 V\nwires:\n  w1: G1.plus to E1.3, 14 BK\n  w1: G1.neg to chassis, 14 BK\n");
        var result = Run("draw", "bad.yaml", "-o", "bad.svg");
        Assert.Equal(2, result.Code);
        Assert.Contains("bad.yaml:6:7: error HS1112: there is no kind of part \"hron\"", result.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean \"horn\"?", result.Error, StringComparison.Ordinal);
        Assert.Contains("bad.yaml:10:3: error HS1006", result.Error, StringComparison.Ordinal);
        Assert.Contains("E1 has no terminal \"3\"", result.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "bad.svg")));
    }

    [Fact]
    public void A_file_that_is_not_there_is_said_in_a_line()
    {
        var result = Run("check", "missing.yaml");
        Assert.Equal(2, result.Code);
        Assert.Contains("missing.yaml cannot be read", result.Error + result.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_that_are_alike_are_told_once_with_where_the_others_are()
    {
        string lamps = string.Concat(Enumerable.Range(1, 5).Select(n => $"  E{n}: lamp, 6 V, 5 W, 1 on S1.2, 2 on chassis\n"));
        Write("lamps.yaml", "hotside: 1\ntitle: Lamps\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 90 Ah\n  F1: fuse, 5 A, 1 on G1.pos\n  S1: switch\n" + lamps + "wires:\n  w1: G1.neg to chassis, 2 BK, 1 m\n  w2: F1.2 to S1.1, 16 RD, 1 m\n");
        string one = Run("check", "lamps.yaml").Output, each = Run("check", "lamps.yaml", "--each").Output;
        Assert.Single(one.Split('\n'), l => l.Contains("stop HS3309", StringComparison.Ordinal));
        Assert.Contains("     the same of 4 more (lines 9, 10, 11, 12): E2, E3, E4, E5; --each tells each\n", one, StringComparison.Ordinal);
        Assert.Equal(5, each.Split('\n').Count(l => l.Contains("stop HS3309", StringComparison.Ordinal)));
        Assert.Contains("5 stops", one, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_stand_in_groups_gravest_first_and_what_is_accepted_counts_for_nothing()
    {
        const string job = "hotside: 1\ntitle: Lamp\nsystem: 6 V, positive ground, sizes in AWG\nparts:\n  G1: battery, 6 V, 90 Ah\n  E1: lamp, 6 V, 5 W, 2 on chassis\nwires:\n  w1: G1.neg to E1.1, 16 RD, 1 m\n  w2: G1.pos to chassis, 14 BK, 1 m\n";
        Write("lamp.yaml", job);
        var found = Run("check", "lamp.yaml");
        Assert.Equal(1, found.Code);
        Assert.StartsWith("Stop: fire, injury or a destroyed part, if it is powered so\nlamp.yaml:8:3: stop HS3301: ", found.Output, StringComparison.Ordinal);
        Assert.Contains("\nWarnings: doubtful, look at it\nlamp.yaml:6:3: warning HS3317: ", found.Output, StringComparison.Ordinal);
        Assert.EndsWith("Take the cable of the grounded post off first.\nLamp: 1 stop, 1 warning\n", found.Output, StringComparison.Ordinal);
        Write("lamp.yaml", job + "accept:\n  HS3301 w1: a lesson on a bench\n  HS3317: a lesson on a bench\n");
        var accepted = Run("check", "lamp.yaml");
        Assert.Equal(0, accepted.Code);
        Assert.StartsWith("Accepted by the job, for the reasons given\nlamp.yaml:8:3: accepted stop HS3301: ", accepted.Output, StringComparison.Ordinal);
        Assert.Contains("\n     accepted: a lesson on a bench\n", accepted.Output, StringComparison.Ordinal);
        Assert.EndsWith("\n\nLamp: 2 accepted\n", accepted.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_of_the_checks_is_explained_with_its_source()
    {
        string output = Run("check", "--explain", "HS3301").Output;
        Assert.Contains("  after: 33 CFR 183.455(a)", output, StringComparison.Ordinal);
        Assert.Contains("  do:    Fit a fuse", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("draw", "--veiw", "x")]
    [InlineData("drwa")]
    [InlineData("kinds", "hron")]
    public void A_slip_on_the_command_line_is_answered_with_the_nearest_right_word(params string[] words)
    {
        var result = Run(words);
        Assert.Equal(64, result.Code);
        Assert.Contains(words[0] == "drwa" ? "draw" : words[0] == "kinds" ? "horn" : "--view", result.Error + result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failed_run_leaves_what_was_there()
    {
        Run("new", "van");
        Directory.CreateDirectory(Path.Combine(folder, "van.svg"));
        var result = Run("draw", "van.yaml", "-o", "van.svg");
        Assert.Equal(3, result.Code);
        Assert.True(Directory.Exists(Path.Combine(folder, "van.svg")));
        Assert.Equal(["van.svg", "van.yaml"], Directory.GetFileSystemEntries(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("new")]
    [InlineData("check")]
    [InlineData("draw")]
    [InlineData("study")]
    [InlineData("explain")]
    [InlineData("kinds")]
    public void Every_command_shows_an_example(string command) => Assert.Contains("Example:", Run(command, "--help").Output, StringComparison.Ordinal);

    [Fact]
    public void Explaining_one_load_counts_what_is_wrong_elsewhere()
    {
        File.WriteAllText(Path.Combine(folder, "two.yaml"), """
            hotside: 1
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah, neg on chassis
              F1: fuse, 10 A, 1 on G1.pos
              E1: lamp, 12 V, 21 W, 1 on F1.2, 2 on chassis
              E2: lamp, 12 V, 21 W, 1 on F1.2
            wires: {}
            """);
        var about = Run("explain", "two.yaml", "E1");
        Assert.DoesNotContain("E2", about.Error, StringComparison.Ordinal);
        Assert.EndsWith("1 other finding: hotside check two.yaml\n", about.Error, StringComparison.Ordinal);
        Assert.Contains("HS3005: E2", Run("explain", "two.yaml", "E2").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_output_takes_the_drawing()
    {
        Run("new", "van");
        Assert.StartsWith("<svg", Run("draw", "van.yaml", "-o", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Kinds_are_listed_by_class_told_in_full_and_drawn()
    {
        string list = Run("kinds").Output;
        Assert.True(list.IndexOf("G  Batteries", StringComparison.Ordinal) < list.IndexOf("K  Relays", StringComparison.Ordinal));
        Assert.Contains("\n  horn-relay ", list, StringComparison.Ordinal);
        string relay = Run("kinds", "relay").Output;
        foreach (string line in new[] { "  terminal  86      coil start (also A1)", "  rating    coil ohm, of coil; commonly 85 ohm at 12 V, from ", "  source    terminal marks of plug-in relays: ISO 7588", "  position  coil: released / pulled", "  polarity  indifferent: either way round" })
            Assert.Contains(line, relay, StringComparison.Ordinal);
        Assert.Equal(0, Run("kinds", "horn relay", "-o", "one.svg").Code);
        Assert.Equal(0, Run("kinds", "--sheet", "-o", "all.svg").Code);
        Assert.Contains("Symbol chart", File.ReadAllText(Path.Combine(folder, "all.svg")), StringComparison.Ordinal);
        Assert.StartsWith("<svg", File.ReadAllText(Path.Combine(folder, "one.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--sheet", "--sheet needs -o FILE.svg")]
    [InlineData("--sheet relay -o x.svg", "leave out the one, or --sheet")]
    [InlineData("-o x.svg", "name a kind to draw, or give --sheet")]
    [InlineData("relay -o x.png", "must end in .svg")]
    public void A_drawing_of_kinds_that_is_asked_for_by_halves_is_refused(string words, string answer)
    {
        var result = Run(["kinds", .. words.Split(' ')]);
        Assert.Equal(64, result.Code);
        Assert.Contains(answer, result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_is_explained_with_an_example_and_what_to_do()
    {
        var result = Run("check", "--explain", "HS1104");
        Assert.Equal(0, result.Code);
        Assert.Equal("""
            HS1104 error: Unknown terminal
              says:  … has no terminal "…"
              means: The part has no terminal of that name; its kind says which it has.
              do:    Use one of the terminals in the hint; "hotside kinds KIND" shows what each is for.
              example:
                wires:
                  w6: H1.3 to chassis, 14 BK

            """.ReplaceLineEndings("\n"), result.Output.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Without_a_code_all_codes_are_listed()
    {
        string output = Run("check", "--explain").Output;
        Assert.All(Hotside.Diagnostics.DiagnosticKind.All, k => Assert.Contains(k.Code, output, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("check", "--explain", "HS0000")]
    [InlineData("check")]
    public void A_check_of_nothing_is_wrong_usage(params string[] words) => Assert.Equal(64, Run(words).Code);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Write(string file, string text) => File.WriteAllText(Path.Combine(folder, file), text);

    private (int Code, string Output, string Error) Run(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", ["exec", Program, .. arguments]) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
