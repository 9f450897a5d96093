using System.CommandLine;
using Hotside.Drawings;

namespace Hotside.Tool.Commands;

/// <summary>How a drawing looks, as the command line says it.</summary>
internal sealed class PictureOptions
{
    private readonly Option<string[]> figure = new("--figure")
    {
        Description = "The loads to draw, each with what feeds and controls it and nothing else, such as H1 or E3.tail; may be repeated.", DefaultValueFactory = _ => [],
    };

    private readonly Option<Page> page = Choice.Of("--page",
        "The paper; fit is as large as the drawing, bare has no frame and no lists. What does not fit on one goes on several: pages of a .pdf, files van-1.svg, van-2.svg. Default: the smallest of A4 to A2, else several A3.", Page.Smallest);

    private readonly Option<TextSize> text = Choice.Of("--text", "How large the letters are: large is read at arm's length.", TextSize.Normal);

    private readonly Option<string> theme = new("--theme") { Description = "Colours: for print, for a dark page, for a copier, for bad light.", DefaultValueFactory = _ => "paper" };

    private readonly Option<ShownFigures> with = Choice.Of("--with", "Figures at the wires in the place of sizes and colours, of the setting named with --setting.", ShownFigures.None);

    private readonly Option<string?> setting = new("--setting") { Description = "The setting of these figures: one that the job names, or one such as \"everything on\", \"cranking\", \"H1 alone\"." };

    private readonly Option<string> words = WordsOption.Make();

    private readonly Option<string?> like = new("--like")
    {
        Description = "Another job file, such as this one before it was edited: what need not move stands where it stands in its drawing.", HelpName = "JOB",
    };

    public PictureOptions() => theme.AcceptOnlyFromAmong([.. Theme.Names]);

    /// <summary>In the order in which the help lists them.</summary>
    public IEnumerable<Option> All => [figure, page, text, theme, with, setting, words, like];

    /// <summary>What does not go together; <see langword="null"/> when all does.</summary>
    public string? Wrong(ParseResult parsed) =>
        parsed.GetValue(with) != ShownFigures.None != parsed.GetValue(setting) is null ? null
        : parsed.GetValue(setting) is null ? "--with shows the figures of a setting; name it with --setting." : "--setting goes with --with: currents, drops or voltages.";

    /// <summary>The options of a drawing; <see langword="null"/>, and a line that says why, when the job that it is to resemble cannot be drawn.</summary>
    public DrawingOptions? Of(ParseResult parsed, TextWriter error)
    {
        Job? alike = null;
        if (parsed.GetValue(like) is { } other)
        {
            if (JobArgument.Load(other, error) is not { } old) return null;
            if ((alike = old.Job) is null)
            {
                error.WriteLine($"hotside: {other} makes no drawing that this one could resemble: hotside check {other}");
                return null;
            }
        }
        return new()
        {
            Like = alike,
            Figure = [.. parsed.GetRequiredValue(figure)],
            Page = parsed.GetRequiredValue(page),
            Text = parsed.GetRequiredValue(text),
            Show = parsed.GetValue(with),
            Setting = parsed.GetValue(setting),
            Theme = Theme.Named(parsed.GetValue(theme)!),
            Words = WordsOption.Of(parsed.GetValue(words)),
        };
    }
}
