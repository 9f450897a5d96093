using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside order JOB</c>: the order of work.</summary>
internal static class OrderCommand
{
    public static Command Make()
    {
        var job = JobArgument.Make();
        var command = new Command("order", "Puts the work into steps.") { job };
        command.SetAction(parsed =>
        {
            if (JobArgument.Read(parsed.GetRequiredValue(job), parsed.InvocationConfiguration.Error) is not { } read) return ExitCode.InputUnreadable;
            parsed.InvocationConfiguration.Output.Write(OrderTable.Of(read).ToText());
            return ExitCode.Done;
        });
        return command;
    }
}
