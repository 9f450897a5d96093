using System.CommandLine;
using Hotside.Diagnostics;
using Hotside.Proposals;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside convert JOB --to "12 V negative"</c>: proposes the alteration as a job file.</summary>
internal static class ConvertCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var to = new Option<string?>("--to") { Description = "The supply to come, such as \"12 V negative\".", HelpName = "SUPPLY" };
        var only = new Option<string[]>("--only") { Description = "A single job at the present supply: horn, lamps-led, fuses, or a part's id; may be repeated.", HelpName = "JOB|PART" };
        var option = new Option<string[]>("--option") { Description = "A choice, such as relay=always; the proposal lists them all. May be repeated.", HelpName = "NAME=VALUE" };
        var from = new Option<string>("--from") { Description = "Which circuit is altered: before, or after the file's own alteration.", DefaultValueFactory = _ => "before" };
        from.AcceptOnlyFromAmong("before", "after");
        var output = new Option<string?>("--output", "-o") { Description = "The job file to write; - or nothing for standard output." };
        var command = new Command("convert", """
            Proposes how a vehicle is altered to another supply: what becomes of each part and why, as an ordinary job
            file to be edited by hand. The circuit's own lines stay as they are, comments too; an alteration that the
            file has is left out. What no rule may guess is asked in comments, with what was taken meanwhile.
            Exit code 0: nothing is asked; 1: questions are open; 2: the file cannot be read.

            An aid: the workshop manual, local codes and licensed practice take precedence.

            Example:
              hotside convert gallery/horn/job.yaml --to "12 V negative" -o horn-12v.yaml
              hotside convert gallery/van/job.yaml --to "12 V negative" --option relay=always
              hotside convert gallery/van/job.yaml --only horn
            """) { job, to, only, option, from, output };
        command.Validators.Add(result =>
        {
            foreach (string choice in result.GetValue(option) ?? [])
                if (choice.IndexOf('=', StringComparison.Ordinal) <= 0) result.AddError($"\"{choice}\" is no choice; write it as in relay=always.");
        });
        command.SetAction(parsed => Convert(parsed.GetRequiredValue(job), parsed.GetValue(output), new()
        {
            To = parsed.GetValue(to),
            Only = [.. parsed.GetValue(only) ?? []],
            Options = [.. (parsed.GetValue(option) ?? []).Select(o => o.Split('=', 2)).Select(o => (o[0], o[1]))],
            From = parsed.GetValue(from) == "after" ? ProposalBase.After : ProposalBase.Before,
        }, parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error));
        return command;
    }

    private static int Convert(string path, string? target, ProposalRequest request, TextWriter output, TextWriter error)
    {
        if (JobArgument.Load(path, error) is not { } read) return ExitCode.InputUnreadable;
        if (read.Job is not { } job)
        {
            foreach (var problem in read.Diagnostics.Where(d => d.Severity >= Severity.Warning)) error.WriteLine(Colouring.Of(read.Print(problem), problem.Severity, error));
            return ExitCode.InputUnreadable;
        }
        Proposal proposal;
        try
        {
            proposal = job.Proposal(request);
        }
        catch (ArgumentException e)
        {
            error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
            return ExitCode.WrongUsage;
        }
        foreach (var note in proposal.Notes) error.WriteLine(Colouring.Of(read.Print(note), note.Severity, error));
        if (target is null or "-") output.Write(proposal.ToYaml());
        else proposal.SaveYaml(target);
        return proposal.Questions.IsEmpty ? ExitCode.Done : ExitCode.Findings;
    }
}
