using System.CommandLine;
using Hotside.Diagnostics;
using Hotside.Drawings;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside draw JOB -o FILE</c>: the schematic.</summary>
internal static class DrawCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var output = new Option<string?>("--output", "-o") { Description = "The SVG file to write; - for standard output. Default: the job file's name with .svg." };
        var view = new Option<View>("--view") { Description = "Which circuit is shown.", DefaultValueFactory = _ => View.Pair };
        var theme = new Option<string>("--theme") { Description = "Colours: for print, or for a dark page.", DefaultValueFactory = _ => "paper" };
        theme.AcceptOnlyFromAmong("paper", "dark");
        var command = new Command("draw", """
            Draws the schematic as SVG: before, after, or both side by side with the changes marked and listed.

            Example:
              hotside draw gallery/horn/job.yaml -o horn.svg --view pair
            """) { job, output, view, theme };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(job);
            var error = parsed.InvocationConfiguration.Error;
            string target = parsed.GetValue(output) ?? Path.ChangeExtension(path, ".svg");
            if (target != "-" && !target.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
            {
                error.WriteLine($"hotside: \"{target}\" must end in .svg; other kinds of output do not exist yet.");
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(path, error) is not { } read) return ExitCode.InputUnreadable;
            var options = new DrawingOptions { Theme = parsed.GetValue(theme) == "dark" ? Theme.Dark : Theme.Paper };
            var drawing = read.Draw(parsed.GetValue(view), options);
            if (target == "-") parsed.InvocationConfiguration.Output.Write(drawing.ToSvg());
            else drawing.SaveSvg(target);
            return read.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }
}
