using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside order JOB</c>: the order of work.</summary>
internal static class OrderCommand
{
    private static readonly (string, string)[] Endings = [(".txt", "text"), (".csv", "csv"), (".json", "json"), (".yaml", "yaml")];

    public static Command Make()
    {
        var job = JobArgument.Make();
        var output = new Option<string?>("--output", "-o") { Description = "The file to write, .txt, .csv, .json or, the job itself with what is done, .yaml; - or nothing for standard output." };
        var format = new Option<string?>("--format") { Description = "What to write where no file name says it. Default: text." };
        format.AcceptOnlyFromAmong("text", "csv", "json", "yaml");
        var asOf = new Option<string?>("--as-of") { Description = "The order with its first steps ticked: 14, or 14@0fd1edb9 with the mark on its foot; with -o FILE.yaml the job that says so, to be edited and gone on with.", HelpName = "STEP" };
        var words = WordsOption.Make();
        var command = new Command("order", """
            Puts the work into steps to be printed and ticked off: what comes off, goes out, is fitted and lands, in which
            order and why; after each step whether the old battery may go back and the new one may go in, and what would
            come to harm. An aid: the workshop manual, local codes and licensed practice take precedence.
            Exit code 1: the order itself is wrong, or the finished vehicle would come to harm.

            Example:
              hotside order gallery/horn/job.yaml -o horn-order.txt
              hotside order gallery/horn/job.yaml --as-of 8 -o horn-so-far.yaml
            """) { job, output, format, asOf, words };
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            if (Target.Of(parsed.GetValue(output), parsed.GetValue(format), "text", Endings, out string? wrong) is not { } target)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } read) return ExitCode.InputUnreadable;
            if (parsed.GetValue(asOf) is { } step)
            {
                if (AsOfOption.StateOf(read, step, error, until => read.DoneUntil(until!.Value)) is not { } sofar) return ExitCode.WrongUsage;
                read = sofar;
            }
            if (target.Format == "yaml")
            {
                target.Write(read.ToYaml, read.SaveYaml);
                return ExitCode.Done;
            }
            var table = OrderTable.Of(read, WordsOption.Of(parsed.GetValue(words)));
            foreach (var finding in table.Order.Findings.Where(f => read.Findings.All(r => r.Message != f.Message))) error.WriteLine(Colouring.Of(finding.ToString(), finding.Severity, error));
            if (target.Format == "csv") target.Write(table.ToCsv, table.SaveCsv);
            else if (target.Format == "json") target.Write(table.ToJson, table.SaveJson);
            else target.Write(table.ToText, table.SaveText);
            return read.HasErrors || table.Order.Findings.Any(f => f.Severity >= Hotside.Diagnostics.Severity.Error) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }
}
