using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary>The options of <c>hotside study</c> that print sizes, the work behind one, and faults.</summary>
internal sealed class SizeOptions
{
    private readonly Option<bool> sizes = new("--sizes") { Description = "What each wire carries, may carry and needs, which fuse guards it, what its circuit loses." };
    private readonly Option<string?> work = new("--show-work") { Description = "The work behind a wire's size, as by hand: formula, values, source, result.", HelpName = "WIRE" };
    private readonly Option<string?> faults = new("--faults") { Description = "What happens when a wire is open, badly joined or shorted to the chassis; \"all\" for a table of all wires.", HelpName = "WIRE" };

    public void AddTo(Command command)
    {
        command.Add(sizes);
        command.Add(work);
        command.Add(faults);
    }

    /// <summary>Prints what was asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="job">The job.</param>
    /// <param name="isJson">Whether as JSON.</param>
    /// <param name="setting">A named setting for faults; <see langword="null"/>: of each wire that in which it carries most.</param>
    /// <param name="error">Where a wrong name is told.</param>
    /// <returns>The exit code; <see langword="null"/> where nothing was asked for.</returns>
    public int? Print(ParseResult parsed, Job job, bool isJson, string? setting, TextWriter error)
    {
        bool asksSizes = parsed.GetValue(sizes);
        string? wire = parsed.GetValue(work), fault = parsed.GetValue(faults);
        if (!asksSizes && wire is null && fault is null) return null;
        var output = parsed.InvocationConfiguration.Output;
        try
        {
            if (asksSizes) output.Write(SizeTable.Of(job) is var table && isJson ? table.ToJson() : table.ToText());
            if (wire is not null) output.Write(job.ShowWork(wire));
            if (fault is not null) output.Write(FaultTable.Of(job, fault, setting) is var table && isJson ? table.ToJson() : table.ToText());
        }
        catch (ArgumentException e)
        {
            error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
            return ExitCode.WrongUsage;
        }
        return job.HasErrors ? ExitCode.Findings : ExitCode.Done;
    }
}
