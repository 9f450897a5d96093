using System.CommandLine;
using System.CommandLine.Parsing;
using Hotside.Diagnostics;

namespace Hotside.Tool.Commands;

/// <summary>The job file that most commands begin with, and what they do when it cannot be read.</summary>
internal static class JobArgument
{
    public static Argument<string> Make()
    {
        var argument = new Argument<string>("JOB") { Description = "The job file, such as gallery/horn/job.yaml; - reads standard input." };
        // A misspelt option would otherwise be taken for the file.
        argument.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: ['-', '-', ..] word }] && result.Parent is CommandResult { Command: var command })
                result.AddError($"\"{word}\" is no option of {command.Name}; its options are {string.Join(", ", command.Options.Select(o => o.Name))}.");
        });
        return argument;
    }

    /// <summary>Reads the file; prints what is wrong with it, but for notes and what it accepts. <see langword="null"/> when nothing can be made of it.</summary>
    public static Job? Read(string path, TextWriter error) => Read(path, _ => true, error);

    /// <summary>Reads the file for one item's sake: what is wrong elsewhere is counted only.</summary>
    public static Job? ReadAbout(string item, string path, TextWriter error) => Read(path, d => d.Items.Contains(item), error);

    private static Job? Read(string path, Func<Diagnostic, bool> concerns, TextWriter error)
    {
        if (Load(path, error) is not { } result) return null;
        var found = (result.Job?.Findings ?? result.Diagnostics).Where(d => d is { Severity: >= Severity.Warning, Accepted: null }).ToArray();
        var shown = result.Job is null ? found : [.. found.Where(concerns)];
        foreach (var diagnostic in shown) error.WriteLine(Colouring.Of(result.Print(diagnostic), diagnostic.Severity, error));
        if (found.Length - shown.Length is > 0 and var more) error.WriteLine($"{more} other finding{(more == 1 ? "" : "s")}: hotside check {path}");
        return result.Job;
    }

    /// <summary>Reads the file; <see langword="null"/>, and a line that says why, when it cannot be read at all.</summary>
    public static ReadResult? Load(string path, TextWriter error)
    {
        try
        {
            return path == "-" ? Job.Read(Console.In.ReadToEnd()) : Job.ReadFile(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"hotside: {path} cannot be read: {e.Message}");
            return null;
        }
    }
}
