using System.CommandLine;
using Hotside.Studies;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside study JOB</c>: on which side each load is switched, before and after.</summary>
internal static class StudyCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var json = new Option<bool>("--json") { Description = "All that was found, as JSON of the contract hotside-study/1; with --sizes or --faults these, as hotside-sizes/1 and hotside-faults/1." };
        var setting = new Option<string?>("--setting")
        {
            Description = "A setting that the job names, or \"all off\", \"everything on\", \"cranking\", \"charging\", \"H1 alone\": volts, amperes and watts in it.",
        };
        var sequence = new Option<string?>("--sequence") { Description = "A sequence that the job names: what each of its steps has on." };
        var budget = new Option<bool>("--budget") { Description = "What the loads need by day and night and what generator or alternator give; cranking volts; what drains the battery." };
        var words = WordsOption.Make();
        AsOfOption asOf = new();
        var sizing = new SizeOptions();
        var command = new Command("study", """
            Says for each load on which side it is switched, by what, and in which positions it is on; before and after.
            With a setting it tells volts, amperes and watts of loads, switches and wires in it.

            Example:
              hotside study gallery/horn/job.yaml --setting "horn pressed"
            """) { job, json, setting, sequence, budget, words };
        asOf.AddTo(command);
        sizing.AddTo(command);
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error) is not { } read) return ExitCode.WrongUsage;
            var output = parsed.InvocationConfiguration.Output;
            if (sizing.Print(parsed, read, parsed.GetValue(json), parsed.GetValue(setting), error) is { } printed) return printed;
            var whose = WordsOption.Of(parsed.GetValue(words));
            try
            {
                if (parsed.GetValue(json)) output.Write(read.ToJson());
                else if (parsed.GetValue(setting) is { } name) output.Write(SettingTable.Of(read, name, whose).ToText());
                else if (parsed.GetValue(sequence) is { } steps) output.Write(SettingTable.OfSequence(read, steps, whose).ToText());
                else if (parsed.GetValue(budget)) output.Write(BudgetTable.Of(read, whose).ToText());
                else Sides(output, read, whose);
            }
            catch (ArgumentException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                return ExitCode.WrongUsage;
            }
            return whole.HasErrors ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }

    private static void Sides(TextWriter output, Job job, Words words)
    {
        bool altered = job.Study.IsAltered;
        if (altered) Print(output, "Before, " + job.Alteration.Before.System, job.Study.Before, words);
        Print(output, (altered ? "After, " : "") + job.Alteration.After.System, job.Study.After, words);
        if (job.Study.Before.Loads.Concat(job.Study.After.Loads).Any(l => l.IsApproximate))
            output.WriteLine("(approximate): there are too many states to look at all of them, so some in which the load is on may be missing; sizes count such a load as on at any time, and --setting tells one state for certain");
        var named = job.Study.Before.Settings.Concat(job.Study.After.Settings).Select(s => s.Setting.Name).Distinct();
        var proposed = job.Study.Before.ProposedSettings.Union(job.Study.After.ProposedSettings).Where(n => !named.Contains(n)).ToLookup(n => n.EndsWith(" alone", StringComparison.Ordinal));
        output.WriteLine("Settings to ask for with --setting: " + string.Join(", ", named.Concat(proposed[false]).Select(n => $"\"{n}\"")) + (proposed[true].FirstOrDefault() is { } alone ? $"; and each load by itself, as \"{alone}\"" : ""));
        var sequences = job.Study.Before.Sequences.Concat(job.Study.After.Sequences).Select(s => s.Sequence.Name).Distinct().ToArray();
        if (sequences.Length > 0) output.WriteLine("Sequences to ask for with --sequence: " + string.Join(", ", sequences.Select(n => $"\"{n}\"")));
    }

    private static void Print(TextWriter output, string head, CircuitStudy study, Words words)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        output.WriteLine(head);
        int width = loads.Select(l => l.Name.Length).DefaultIfEmpty(0).Max();
        foreach (var load in loads) output.WriteLine($"  {load.Name.PadRight(width)}  {load.Summary(words)}");
    }
}
