using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside wires JOB</c>: the wire list of both circuits.</summary>
internal static class WiresCommand
{
    private static readonly (string, string)[] Endings = [(".txt", "text"), (".csv", "csv")];

    public static Command Make()
    {
        var job = JobArgument.Make();
        var output = new Option<string?>("--output", "-o") { Description = "The file to write, .txt or .csv; - or nothing for standard output." };
        var format = new Option<string?>("--format") { Description = "The kind of list where no file name says it. Default: text." };
        format.AcceptOnlyFromAmong("text", "csv");
        var words = WordsOption.Make();
        AsOfOption asOf = new();
        var command = new Command("wires", """
            Lists the wires of both circuits: change, id, ends, size, colour, length, loom, and what becomes of each.
            Comma-separated values are those of RFC 4180.

            Example:
              hotside wires gallery/horn/job.yaml -o horn.csv
            """) { job, output, format, words };
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            if (Target.Of(parsed.GetValue(output), parsed.GetValue(format), "text", Endings, out string? wrong) is not { } target)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error) is not { } read) return ExitCode.WrongUsage;
            var list = WireList.Of(read, WordsOption.Of(parsed.GetValue(words)));
            if (target.Format == "csv") target.Write(list.ToCsv, list.SaveCsv);
            else target.Write(list.ToText, list.SaveText);
            return whole.HasErrors ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }
}
