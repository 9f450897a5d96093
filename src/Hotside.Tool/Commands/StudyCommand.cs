using System.CommandLine;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside study JOB</c>: on which side each load is switched, before and after.</summary>
internal static class StudyCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var command = new Command("study", """
            Says for each load on which side it is switched, by what, and in which positions it is on; before and after.

            Example:
              hotside study gallery/horn/job.yaml
            """) { job };
        command.SetAction(parsed =>
        {
            if (JobArgument.Read(parsed.GetRequiredValue(job), parsed.InvocationConfiguration.Error) is not { } read) return ExitCode.InputUnreadable;
            var output = parsed.InvocationConfiguration.Output;
            bool altered = !ReferenceEquals(read.Study.Before, read.Study.After);
            Print(output, altered ? "Before, " + read.Alteration.Before.System : read.Alteration.Before.System.ToString(), read.Study.Before);
            if (altered) Print(output, "After, " + read.Alteration.After.System, read.Study.After);
            return read.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }

    private static void Print(TextWriter output, string head, CircuitStudy study)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        output.WriteLine(head);
        int width = loads.Select(l => l.Name.Length).DefaultIfEmpty(0).Max();
        foreach (var load in loads) output.WriteLine($"  {load.Name.PadRight(width)}  {load.Summary()}");
    }
}
