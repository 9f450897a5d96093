using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside explain JOB [LOAD]</c>: in plain words what happens to a load, before and after.</summary>
internal static class ExplainCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var load = new Argument<string?>("LOAD") { Description = "The load, such as H1 or E3.tail; left out, the loads are listed.", Arity = ArgumentArity.ZeroOrOne };
        var words = WordsOption.Make();
        AsOfOption asOf = new();
        var command = new Command("explain", """
            Says in plain words what feeds a load, what happens when it is operated, on which side it is switched and
            how to tell with a meter, what its switches carry, and what the alteration changes. Without a load it
            lists them.

            Example:
              hotside explain gallery/horn/job.yaml H1
            """) { job, load, words };
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            var error = parsed.InvocationConfiguration.Error;
            if (JobArgument.ReadAbout((parsed.GetValue(load) ?? "").Split('.')[0], parsed.GetRequiredValue(job), error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error) is not { } read) return ExitCode.WrongUsage;
            var output = parsed.InvocationConfiguration.Output;
            var whose = WordsOption.Of(parsed.GetValue(words));
            if (parsed.GetValue(load) is not { } asked)
            {
                var loads = read.Study.Before.Loads.Concat(read.Study.After.Loads).Where(l => !l.Element.IsInternal).DistinctBy(l => l.Name).ToArray();
                int width = loads.Select(l => l.Name.Length).DefaultIfEmpty(0).Max();
                foreach (var each in loads) output.WriteLine($"{each.Name.PadRight(width)}  {each.Part.Title}");
                return ExitCode.Done;
            }
            try
            {
                output.Write(read.Explain(asked, whose).ToString());
                return ExitCode.Done;
            }
            catch (ArgumentException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                return ExitCode.WrongUsage;
            }
        });
        return command;
    }
}
