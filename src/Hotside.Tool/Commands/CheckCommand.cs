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
        var command = new Command("check", """
            Prints everything wrong or doubtful, gravest first, with file:line:column, what is wrong and what to do.
            What the file accepts with a reason (section "accept") stands last and does not count for the exit code.
            Exit code 0: nothing of severity error or stop; 1: there is; 2: the file cannot be read.

            Example:
              hotside check gallery/horn/job.yaml
              hotside check --explain HS1104
            """) { job, explain };
        command.Validators.Add(result =>
        {
            if (result.GetResult(explain) is null && result.GetResult(job) is not { Tokens.Count: > 0 }) result.AddError("Name the job file to check, or a code to explain.");
        });
        command.SetAction(parsed => parsed.GetResult(explain) is not null
            ? DiagnosticExplainer.Run(parsed.GetValue(explain), parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error)
            : Check(parsed.GetRequiredValue(job), parsed.InvocationConfiguration.Output));
        return command;
    }

    private static int Check(string path, TextWriter output)
    {
        if (JobArgument.Load(path, output) is not { } read) return ExitCode.InputUnreadable;
        var findings = read.Job?.Findings ?? read.Diagnostics;
        List<string> counts = [];
        foreach (var severity in Enum.GetValues<Severity>().Reverse())
            Group(read, [.. findings.Where(f => f.Accepted is null && f.Severity == severity)], Heading(severity), severity.ToString().ToLowerInvariant(), counts, output);
        Group(read, [.. findings.Where(f => f.Accepted is not null).OrderByDescending(f => f.Severity)], "Accepted by the job, for the reasons given", "", counts, output);
        if (read.Job is not { } job) return ExitCode.InputUnreadable;
        output.WriteLine($"{job.Title}: {(counts.Count == 0 ? "nothing found" : string.Join(", ", counts))}");
        return job.HasErrors ? ExitCode.Findings : ExitCode.Done;
    }

    private static void Group(ReadResult read, Diagnostic[] findings, string heading, string word, List<string> counts, TextWriter output)
    {
        if (findings.Length == 0) return;
        counts.Add(word.Length == 0 ? $"{findings.Length} accepted" : $"{findings.Length} {word}{(findings.Length == 1 ? "" : "s")}");
        output.WriteLine(heading);
        foreach (var finding in findings) output.WriteLine(Colouring.Of(read.Print(finding), finding.Severity, output));
        output.WriteLine();
    }

    private static string Heading(Severity severity) => severity switch
    {
        Severity.Stop => "Stop: fire, injury or a destroyed part, if it is powered so",
        Severity.Error => "Errors: wrong as it stands",
        Severity.Warning => "Warnings: doubtful, look at it",
        _ => "Notes: worth knowing",
    };
}
