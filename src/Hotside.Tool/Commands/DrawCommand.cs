using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside draw JOB -o FILE</c>: the schematic.</summary>
internal static class DrawCommand
{
    private static readonly (string, string)[] Endings = [(".svg", "svg"), (".png", "png"), (".pdf", "pdf")];

    public static Command Make()
    {
        var job = JobArgument.Make();
        var output = new Option<string?>("--output", "-o") { Description = "The file to write, .svg, .png or .pdf; - for standard output. Default: the job file's name with .svg." };
        var format = new Option<string?>("--format") { Description = "The kind of picture where no file name says it. Default: svg." };
        format.AcceptOnlyFromAmong("svg", "png", "pdf");
        var view = Choice.Several("--view", "Which circuit is shown; several for a .pdf, which has a page for each.", View.Pair);
        var resolution = new Option<double>("--resolution") { Description = "Dots per inch of a .png, 10 to 4800.", DefaultValueFactory = _ => 300 };
        PictureOptions picture = new();
        AsOfOption asOf = new();
        var command = new Command("draw", """
            Draws the schematic: before, after, both side by side, or both over each other, with the changes marked and listed.
            The file's ending says what is written: .svg, .png or .pdf.

            Example:
              hotside draw gallery/horn/job.yaml -o horn.svg --view pair
              hotside draw gallery/horn/job.yaml -o horn.pdf --view before after
              hotside draw gallery/van/job.yaml -o horn.svg --figure H1
              hotside draw gallery/horn/job.yaml -o amperes.svg --with currents --setting "horn pressed"
            """) { job, output, format, view, resolution };
        foreach (var option in picture.All) command.Add(option);
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(job);
            var error = parsed.InvocationConfiguration.Error;
            var views = parsed.GetRequiredValue(view);
            var target = TargetOf(path, parsed.GetValue(output), parsed.GetValue(format), out string? wrong);
            if (views.Length > 1 && target is { Format: not "pdf" }) wrong = $"a .{target.Format} shows one view; several go into a .pdf, a page each.";
            if (parsed.GetValue(resolution) is not (>= 10 and <= 4800)) wrong = "a resolution is 10 to 4800 dots per inch.";
            wrong ??= picture.Wrong(parsed);
            if (wrong is not null)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(path, error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error) is not { } read) return ExitCode.WrongUsage;
            if (picture.Of(parsed, error) is not { } options) return ExitCode.InputUnreadable;
            try
            {
                // Standard output takes one picture, of whatever size.
                bool isOne = target is { Path: null, Format: not "pdf" } && options.Page == Page.Smallest;
                Drawing[] drawings = [.. views.SelectMany(v => isOne ? [read.Draw(v, options)] : read.DrawSheets(v, options))];
                if (drawings.Length > 1 && target is { Path: null, Format: not "pdf" })
                {
                    error.WriteLine($"hotside: the drawing takes {drawings.Length} sheets of {options.Page}, and standard output one; name a file, or take --format pdf.");
                    return ExitCode.WrongUsage;
                }
                Write(target!, drawings, parsed.GetValue(resolution));
            }
            catch (ArgumentException e) when (e is not ArgumentOutOfRangeException)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                return ExitCode.WrongUsage;
            }
            if (!whole.HasErrors) return ExitCode.Done;
            error.WriteLine("hotside: drawn all the same, as the file has it; the errors above are to be mended first.");
            return ExitCode.Findings;
        });
        return command;
    }

    // Without -o the drawing lies beside the job file; what comes from standard input goes to standard output.
    private static Target? TargetOf(string job, string? output, string? format, out string? wrong) =>
        Target.Of(output ?? (job == "-" ? "-" : Path.ChangeExtension(job, "." + (format ?? "svg"))), format, "svg", Endings, out wrong);

    private static void Write(Target target, Drawing[] drawings, double resolution)
    {
        if (target.Format == "pdf")
        {
            target.Write(drawings.ToPdf, drawings.SavePdf);
            return;
        }
        for (int i = 0; i < drawings.Length; i++)
        {
            var (drawing, sheet) = (drawings[i], drawings.Length > 1 ? target.Numbered(i + 1) : target);
            if (target.Format == "png") sheet.Write(() => drawing.ToPng(resolution), path => drawing.SavePng(path, resolution));
            else sheet.Write(drawing.ToSvg, drawing.SaveSvg);
        }
    }
}
