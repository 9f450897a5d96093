using System.CommandLine;
using Hotside.Diagnostics;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside check JOB</c>: everything wrong or doubtful.</summary>
internal static class CheckCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var command = new Command("check", """
            Prints everything wrong or doubtful, with file:line:column, what is wrong and what to do.
            Exit code 0: nothing of severity error or stop; 1: there is; 2: the file cannot be read.

            Example:
              hotside check gallery/horn/job.yaml
            """) { job };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            if (JobArgument.Read(parsed.GetRequiredValue(job), output, Severity.Note) is not { } read) return ExitCode.InputUnreadable;
            var counts = Enum.GetValues<Severity>().Reverse()
                .Select(s => (Severity: s, Count: read.Findings.Count(d => d.Severity == s))).Where(c => c.Count > 0)
                .Select(c => $"{c.Count} {c.Severity.ToString().ToLowerInvariant()}{(c.Count == 1 ? "" : "s")}");
            string summary = string.Join(", ", counts);
            output.WriteLine($"{read.Title}: {(summary.Length == 0 ? "nothing found" : summary)}");
            return read.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }
}
