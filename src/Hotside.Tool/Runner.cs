using System.CommandLine;
using System.CommandLine.Invocation;

namespace Hotside.Tool;

/// <summary>Runs the command line: usage errors and failed outputs become a line and an exit code, never a stack trace.</summary>
internal static class Runner
{
    public static int Run(RootCommand root, string[] args, TextWriter output, TextWriter error)
    {
        var parsed = root.Parse(args);
        var invocation = new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = output, Error = error };
        if (parsed.Action is ParseErrorAction usage)
        {
            usage.ShowHelp = false;
            parsed.Invoke(invocation);
            string command = parsed.CommandResult.Command == root ? "" : parsed.CommandResult.Command.Name + " ";
            error.WriteLine($"See: hotside {command}--help");
            return ExitCode.WrongUsage;
        }
        try
        {
            return parsed.Invoke(invocation);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine("hotside: " + e.Message);
            return ExitCode.OutputUnwritable;
        }
    }
}
