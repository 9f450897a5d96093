using System.CommandLine;
using Hotside.Diagnostics;
using Hotside.Faults;

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
    /// <param name="setting">A named setting for faults; <see langword="null"/>: of each wire that in which it carries most.</param>
    /// <param name="error">Where a wrong name is told.</param>
    /// <returns>The exit code; <see langword="null"/> where nothing was asked for.</returns>
    public int? Print(ParseResult parsed, Job job, string? setting, TextWriter error)
    {
        bool asksSizes = parsed.GetValue(sizes);
        string? wire = parsed.GetValue(work), fault = parsed.GetValue(faults);
        if (!asksSizes && wire is null && fault is null) return null;
        var output = parsed.InvocationConfiguration.Output;
        try
        {
            if (asksSizes) SizeTable.Print(output, job.Sizes);
            if (wire is not null) output.Write(job.ShowWork(wire));
            if (fault is not null) Faults(output, job, fault, setting);
        }
        catch (ArgumentException e)
        {
            error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
            return ExitCode.WrongUsage;
        }
        return job.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
    }

    private static void Faults(TextWriter output, Job job, string wire, string? setting)
    {
        bool isAltered = !ReferenceEquals(job.Sizes.Before, job.Sizes.After), isAll = wire == "all";
        bool found = false;
        foreach (var (head, side, settings) in new[] { ("Before, ", job.Sizes.Before, job.Study.Before), ("After, ", job.Sizes.After, job.Study.After) })
        {
            if ((head == "Before, " && !isAltered) || (!isAll && side.Circuit.FindConductor(wire) is null && (head == "Before, " || found))) continue;
            var named = setting is null ? null : settings.Setting(setting).Setting;
            var faults = !isAll ? CircuitFaults.OfConductor(side, wire, named) : named is null ? CircuitFaults.OfEach(side) : CircuitFaults.Of(side, named);
            FaultTable.Print(output, (isAltered ? head : "") + side.Circuit.System, side.Circuit, faults);
            found = true;
        }
        output.WriteLine("Computed, not to be tried. A short of a battery burns and may make it burst; the workshop manual, local codes and licensed practice take precedence.");
    }
}
