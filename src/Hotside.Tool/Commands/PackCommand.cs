using System.CommandLine;
using Hotside.Drawings;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside pack JOB -o FOLDER</c>: everything that is printed for the work.</summary>
internal static class PackCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var output = new Option<string?>("--output", "-o") { Description = "The folder to write into; made if it is not there. Default: the job file's name with -pack." };
        var page = new Option<string>("--page") { Description = "The paper of its written sheets.", DefaultValueFactory = _ => "A4" };
        page.AcceptOnlyFromAmong("A4", "Letter");
        var schematics = new Option<Page?>("--schematics") { Description = "The paper of the schematics. Default: the smaller of A4 and A3 (Letter and Tabloid) that holds both views, else several of the larger." };
        var text = new Option<string>("--text") { Description = "Size of the letters; large is for reading at arm's length.", DefaultValueFactory = _ => "normal" };
        text.AcceptOnlyFromAmong("normal", "large");
        var theme = new Option<string>("--theme") { Description = "The colours; mono is black on white, for a printer and a copier without colours.", DefaultValueFactory = _ => "mono" };
        theme.AcceptOnlyFromAmong([.. Theme.Names]);
        var only = new Option<string[]>("--only") { Description = $"Some pages only: {string.Join(", ", WorkPack.AllPages)}.", DefaultValueFactory = _ => [], AllowMultipleArgumentsPerToken = true };
        only.AcceptOnlyFromAmong([.. WorkPack.AllPages]);
        var words = WordsOption.Make();
        var command = new Command("pack", """
            Makes the work pack: cover, cautions, schematics, decisions, changes, loads, materials, wires, labels, fuse chart, the owner's
            page and what is signed, as work-pack.pdf with bookmarks, and its pieces: each sheet as .svg, the lists as .csv, all of it as .json.
            Print it at 100 %. The workshop manual, local codes and licensed practice take precedence.

            Example:
              hotside pack gallery/horn/job.yaml -o horn-pack
            """) { job, output, page, schematics, text, words, theme, only };
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            string file = parsed.GetRequiredValue(job);
            string folder = parsed.GetValue(output) ?? (file == "-" ? "work-pack" : Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file) + "-pack"));
            if (JobArgument.Read(file, error) is not { } read) return ExitCode.InputUnreadable;
            try
            {
                var pack = read.Pack(new()
                {
                    GoOn = "To go on, type: hotside diagnose JOB --dead NAME, with a name of the first column. It tells the likeliest faults and the reading that tells most.",
                    Page = parsed.GetValue(page) == "Letter" ? Page.Letter : Page.A4, Schematics = parsed.GetValue(schematics), Text = parsed.GetValue(text) == "large" ? TextSize.Large : TextSize.Normal,
                    Words = WordsOption.Of(parsed.GetValue(words)), Theme = Theme.Named(parsed.GetRequiredValue(theme)), Only = [.. parsed.GetRequiredValue(only)],
                });
                pack.SavePieces(folder);
                pack.SavePdf(Path.Combine(folder, WorkPack.PdfName));
            }
            catch (ArgumentException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                return ExitCode.WrongUsage;
            }
            return read.HasErrors ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }
}
