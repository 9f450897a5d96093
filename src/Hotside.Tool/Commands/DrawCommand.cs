using System.CommandLine;
using Hotside.Drawings;

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
        var view = new Option<View[]>("--view")
        {
            Description = "Which circuit is shown; several for a .pdf, which has a page for each.", DefaultValueFactory = _ => [View.Pair], AllowMultipleArgumentsPerToken = true,
        };
        var figure = new Option<string[]>("--figure")
        {
            Description = "The loads to draw, each with what feeds and controls it and nothing else, such as H1 or E3.tail; may be repeated.", DefaultValueFactory = _ => [],
        };
        var page = new Option<Page>("--page") { Description = "The paper; fit is as large as the drawing. What does not fit on one goes on several: pages of a .pdf, files van-1.svg, van-2.svg. Default: the smallest of A4 to A0.", DefaultValueFactory = _ => Page.Smallest };
        var text = new Option<TextSize>("--text") { Description = "How large the letters are: large is read at arm's length.", DefaultValueFactory = _ => TextSize.Normal };
        var theme = new Option<string>("--theme") { Description = "Colours: for print, for a dark page, for a copier, for bad light.", DefaultValueFactory = _ => "paper" };
        theme.AcceptOnlyFromAmong([.. Theme.Names]);
        var resolution = new Option<double>("--resolution") { Description = "Dots per inch of a .png, 10 to 4800.", DefaultValueFactory = _ => 300 };
        var with = new Option<ShownFigures>("--with") { Description = "Figures at the wires in the place of sizes and colours, of the setting named with --setting.", DefaultValueFactory = _ => ShownFigures.None };
        var setting = new Option<string?>("--setting") { Description = "The setting of these figures: one that the job names, or one such as \"everything on\", \"cranking\", \"H1 alone\"." };
        var words = new Option<string>("--words") { Description = "Ground (us) or earth (uk).", DefaultValueFactory = _ => "us" };
        words.AcceptOnlyFromAmong("us", "uk");
        AsOfOption asOf = new();
        var command = new Command("draw", """
            Draws the schematic: before, after, both side by side, or both over each other, with the changes marked and listed.
            The file's ending says what is written: .svg, .png or .pdf.

            Example:
              hotside draw gallery/horn/job.yaml -o horn.svg --view pair
              hotside draw gallery/horn/job.yaml -o horn.pdf --view before after
              hotside draw gallery/van/job.yaml -o horn.svg --figure H1
              hotside draw gallery/horn/job.yaml -o amperes.svg --with currents --setting "horn pressed"
            """) { job, output, format, view, figure, page, text, theme, with, setting, resolution, words };
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(job);
            var error = parsed.InvocationConfiguration.Error;
            var views = parsed.GetRequiredValue(view);
            var target = TargetOf(path, parsed.GetValue(output), parsed.GetValue(format), out string? wrong);
            if (views.Length > 1 && target is { Format: not "pdf" }) wrong = $"a .{target.Format} shows one view; several go into a .pdf, a page each.";
            if (parsed.GetValue(resolution) is not (>= 10 and <= 4800)) wrong = "a resolution is 10 to 4800 dots per inch.";
            if (parsed.GetValue(with) != ShownFigures.None == parsed.GetValue(setting) is null)
                wrong = parsed.GetValue(setting) is null ? "--with shows the figures of a setting; name it with --setting." : "--setting goes with --with: currents, drops or voltages.";
            if (wrong is not null)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(path, error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error) is not { } read) return ExitCode.WrongUsage;
            var options = new DrawingOptions
            {
                Figure = [.. parsed.GetRequiredValue(figure)],
                Page = parsed.GetRequiredValue(page),
                Text = parsed.GetRequiredValue(text),
                Show = parsed.GetValue(with),
                Setting = parsed.GetValue(setting),
                Theme = Theme.Named(parsed.GetValue(theme)!),
                Words = parsed.GetValue(words) == "uk" ? Words.British : Words.American,
            };
            try
            {
                Drawing[] drawings = [.. views.SelectMany(v => read.DrawSheets(v, options))];
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
            return whole.HasErrors ? ExitCode.Findings : ExitCode.Done;
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
