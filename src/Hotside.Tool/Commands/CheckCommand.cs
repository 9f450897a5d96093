using System.CommandLine;
using Hotside.Diagnostics;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside check JOB</c>: everything wrong or doubtful; <c>--explain</c>: what a code means.</summary>
internal static class CheckCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        job.Arity = ArgumentArity.ZeroOrOne;
        var explain = new Option<string?>("--explain")
        {
            Description = "Says what a code means, with an example and what to do; without a code, lists all codes.",
            HelpName = "CODE",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var each = new Option<bool>("--each") { Description = "Prints every finding in full; else of three or more that are alike the first, and where the others are." };
        var command = new Command("check", """
            Prints everything wrong or doubtful, gravest first, with file:line:column, what is wrong and what to do.
            What the file accepts with a reason (section "accept") stands last and does not count for the exit code.
            Exit code 0: nothing of severity error or stop; 1: there is; 2: the file cannot be read.

            Example:
              hotside check gallery/horn/job.yaml
              hotside check --explain HS1104
            """) { job, explain, each };
        command.Validators.Add(result =>
        {
            if (result.GetResult(explain) is null && result.GetResult(job) is not { Tokens.Count: > 0 }) result.AddError("Name the job file to check, or a code to explain.");
        });
        command.SetAction(parsed => parsed.GetResult(explain) is not null
            ? DiagnosticExplainer.Run(parsed.GetValue(explain), parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error)
            : Check(parsed.GetRequiredValue(job), parsed.GetValue(each), parsed.InvocationConfiguration.Output));
        return command;
    }

    // So many alike are told as one.
    private const int LeastAlike = 3;

    private const string Caution = "An aid: the workshop manual, local codes and licensed practice take precedence. Take the cable of the grounded post off first.";

    private static int Check(string path, bool each, TextWriter output)
    {
        if (JobArgument.Load(path, output) is not { } read) return ExitCode.InputUnreadable;
        var findings = read.Job?.Findings ?? read.Diagnostics;
        List<string> counts = [];
        foreach (var severity in Enum.GetValues<Severity>().Reverse())
            Group(read, [.. findings.Where(f => f.Accepted is null && f.Severity == severity)], Heading(severity), severity.ToString().ToLowerInvariant(), each, counts, output);
        Group(read, [.. findings.Where(f => f.Accepted is not null).OrderByDescending(f => f.Severity)], "Accepted by the job, for the reasons given", "", each: true, counts, output);
        if (read.Job is not { } job) return ExitCode.InputUnreadable;
        if (findings.Any(f => f is { Accepted: null, Severity: >= Severity.Warning })) output.WriteLine(Caution);
        output.WriteLine($"{job.Title}: {(counts.Count == 0 ? "nothing found" : string.Join(", ", counts))}");
        return job.HasErrors ? ExitCode.Findings : ExitCode.Done;
    }

    private static void Group(ReadResult read, Diagnostic[] findings, string heading, string word, bool each, List<string> counts, TextWriter output)
    {
        if (findings.Length == 0) return;
        counts.Add(word.Length == 0 ? $"{findings.Length} accepted" : $"{findings.Length} {word}{(findings.Length == 1 ? "" : "s")}");
        output.WriteLine(heading);
        foreach (var alike in findings.GroupBy(f => each || f.Items.IsEmpty ? (object)f : KeyOf(f)).SelectMany(g => g.Count() < LeastAlike ? g.Select(f => new[] { f }) : [g.ToArray()]).OrderBy(g => Array.IndexOf(findings, g[0])))
            output.WriteLine(Colouring.Of(read.Print(alike[0]) + Others(alike), alike[0].Severity, output));
        output.WriteLine();
    }

    // Alike are those of one code that tell the same consequence and the same thing to do, whatever the items, the figures and the settings.
    private static (string, string?, string) KeyOf(Diagnostic finding) =>
        (finding.Code, finding.Hint, finding.Message.LastIndexOf(": ", StringComparison.Ordinal) is >= 0 and var at ? finding.Message[at..] : "");

    private static string Others(Diagnostic[] alike)
    {
        if (alike.Length == 1) return "";
        int[] lines = [.. alike.Skip(1).Select(f => f.Span?.Line ?? 0).Where(l => l > 0).Distinct().Order()];
        string where = lines.Length switch { 0 => "", 1 => $" (line {lines[0]})", _ => $" (lines {string.Join(", ", lines)})" };
        return $"\n     the same of {alike.Length - 1} more{where}: {string.Join(", ", alike.Skip(1).Select(NameOf))}; --each tells each";
    }

    // The filament rather than the lamp, where the message begins with it.
    private static string NameOf(Diagnostic finding)
    {
        string first = finding.Message.Split(' ')[0];
        return first.StartsWith(finding.Items[0] + ".", StringComparison.Ordinal) ? first : finding.Items[0];
    }

    private static string Heading(Severity severity) => severity switch
    {
        Severity.Stop => "Stop: fire, injury or a destroyed part, if it is powered so",
        Severity.Error => "Errors: wrong as it stands",
        Severity.Warning => "Warnings: doubtful, look at it",
        _ => "Notes: worth knowing",
    };
}
