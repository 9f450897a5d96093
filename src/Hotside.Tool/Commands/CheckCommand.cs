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
            Prints everything wrong or doubtful, with file:line:column, what is wrong and what to do.
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
        if (JobArgument.Read(path, output, Severity.Note) is not { } read) return ExitCode.InputUnreadable;
        var counts = Enum.GetValues<Severity>().Reverse()
            .Select(s => (Severity: s, Count: read.Findings.Count(d => d.Severity == s))).Where(c => c.Count > 0)
            .Select(c => $"{c.Count} {c.Severity.ToString().ToLowerInvariant()}{(c.Count == 1 ? "" : "s")}");
        string summary = string.Join(", ", counts);
        output.WriteLine($"{read.Title}: {(summary.Length == 0 ? "nothing found" : summary)}");
        return read.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
    }
}
