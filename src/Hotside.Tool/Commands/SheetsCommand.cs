using System.CommandLine;
using Hotside.CheckSheets;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside sheets JOB</c>: readings to take on the vehicle.</summary>
internal static class SheetsCommand
{
    private static readonly (string, string)[] Endings = [(".txt", "text"), (".csv", "csv"), (".json", "json")];

    public static Command Make()
    {
        var job = JobArgument.Make();
        var brief = new Option<bool>("--short") { Description = "The few rows that show nineteen of twenty faults; the default." };
        var full = new Option<bool>("--full") { Description = "All rows that show anything more." };
        var intake = new Option<bool>("--intake") { Description = "Before anything is moved: the four readings of each load that tell on which side it is switched." };
        var only = new Option<string?>("--only") { Description = "A load, a fuse or another part, such as H1: the sheet of its fuse way alone." };
        var view = new Option<View?>("--view") { Description = "Of which circuit: before or after. Default: after, for an intake sheet before." };
        var output = new Option<string?>("--output", "-o") { Description = "The file to write, .txt, .csv or .json; - or nothing for standard output." };
        var format = new Option<string?>("--format") { Description = "The kind of sheet where no file name says it. Default: text." };
        format.AcceptOnlyFromAmong("text", "csv", "json");
        var words = WordsOption.Make();
        AsOfOption asOf = new();
        var command = new Command("sheets", """
            Prints a check sheet: readings to take with the battery out, at first power, at rest and in each setting,
            with what is expected, the band, room for the reading, and what a deviation means. A .csv whose column
            "reading" is filled in is a file of readings for diagnose.

            Example:
              hotside sheets gallery/horn/job.yaml
              hotside sheets gallery/van/job.yaml --full --only H1 -o horn.csv
              hotside sheets gallery/horn/job.yaml --intake
            """) { job, brief, full, intake, only, view, output, format, words };
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            bool[] extents = [parsed.GetValue(brief), parsed.GetValue(full), parsed.GetValue(intake)];
            string? wrong = extents.Count(e => e) > 1 ? "--short, --full and --intake are three sheets; take one." : null;
            if (wrong is not null || Target.Of(parsed.GetValue(output), parsed.GetValue(format), "text", Endings, out wrong) is not { } target)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error, needsPower: true) is not { } read) return ExitCode.WrongUsage;
            var extent = parsed.GetValue(intake) ? SheetExtent.Intake : parsed.GetValue(full) ? SheetExtent.Full : SheetExtent.Short;
            try
            {
                var sheet = read.CheckSheet(extent, parsed.GetValue(view) ?? (extent == SheetExtent.Intake ? View.Before : View.After), parsed.GetValue(only), WordsOption.Of(parsed.GetValue(words)));
                var (text, save) = target.Format switch
                {
                    "csv" => ((Func<string>)sheet.ToCsv, (Action<string>)sheet.SaveCsv),
                    "json" => (sheet.ToJson, sheet.SaveJson),
                    _ => (sheet.ToText, sheet.SaveText),
                };
                target.Write(text, save);
                return ExitCode.Done;
            }
            catch (ArgumentException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                return ExitCode.WrongUsage;
            }
        });
        return command;
    }
}
