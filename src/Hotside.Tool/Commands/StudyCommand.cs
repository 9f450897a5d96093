using System.CommandLine;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside study JOB</c>: on which side each load is switched, before and after.</summary>
internal static class StudyCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var json = new Option<bool>("--json") { Description = "All that was found, as JSON of the contract hotside-study/1." };
        var setting = new Option<string?>("--setting") { Description = "A named setting of the job: which loads are on in it." };
        var words = WordsOption.Make();
        var sizing = new SizeOptions();
        var command = new Command("study", """
            Says for each load on which side it is switched, by what, and in which positions it is on; before and after.

            Example:
              hotside study gallery/horn/job.yaml --setting "horn pressed"
            """) { job, json, setting, words };
        sizing.AddTo(command);
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } read) return ExitCode.InputUnreadable;
            var output = parsed.InvocationConfiguration.Output;
            bool altered = !ReferenceEquals(read.Study.Before, read.Study.After);
            if (sizing.Print(parsed, read, parsed.GetValue(setting), error) is { } printed) return printed;
            if (parsed.GetValue(json)) output.Write(read.ToJson());
            else if (parsed.GetValue(setting) is { } name)
            {
                try
                {
                    if (altered) Print(output, "Before, " + read.Alteration.Before.System, read.Study.Before.Setting(name));
                    Print(output, (altered ? "After, " : "") + read.Alteration.After.System, read.Study.After.Setting(name));
                }
                catch (ArgumentException e)
                {
                    error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                    return ExitCode.WrongUsage;
                }
            }
            else
            {
                var whose = WordsOption.Of(parsed.GetValue(words));
                if (altered) Print(output, "Before, " + read.Alteration.Before.System, read.Study.Before, whose);
                Print(output, (altered ? "After, " : "") + read.Alteration.After.System, read.Study.After, whose);
            }
            return read.Findings.Any(d => d.Severity >= Severity.Error) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }

    private static void Print(TextWriter output, string head, CircuitStudy study, Words words)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        output.WriteLine(head);
        int width = loads.Select(l => l.Name.Length).DefaultIfEmpty(0).Max();
        foreach (var load in loads) output.WriteLine($"  {load.Name.PadRight(width)}  {load.Summary(words)}");
    }

    private static void Print(TextWriter output, string head, SettingStudy study)
    {
        output.WriteLine($"{head}, {study.Setting.Name}");
        if (study.IsShort) output.WriteLine("  short circuit: feed and return are one point");
        output.WriteLine($"  on         {Some(study.On)}");
        if (study.InSeries.Length > 0) output.WriteLine($"  in series  {Some(study.InSeries)}");
        string[] moved = [.. study.Relays.Select(r => $"{r.Part} {r.Position}")];
        if (moved.Length > 0) output.WriteLine($"  relays     {Some(moved)}");
        if (study.IsUnsettled) output.WriteLine("  a relay does not come to rest, or several race: other loads may be on");
    }

    private static string Some(IReadOnlyCollection<string> names) => names.Count == 0 ? "nothing" : string.Join(", ", names);
}
