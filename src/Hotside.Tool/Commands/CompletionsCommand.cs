using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside completions SHELL</c>: a script that completes commands and options in a shell.</summary>
internal static class CompletionsCommand
{
    private static readonly (string Shell, string Script)[] Scripts =
        [("bash", CompletionScript.Bash), ("zsh", CompletionScript.Zsh), ("fish", CompletionScript.Fish), ("pwsh", CompletionScript.PowerShell)];

    public static Command Make()
    {
        var shell = new Argument<string>("SHELL") { Description = "The shell that reads the script." };
        shell.AcceptOnlyFromAmong([.. Scripts.Select(s => s.Shell)]);
        var command = new Command("completions", """
            Prints a script with which a shell completes commands, options and choices.

            Example:
              eval "$(hotside completions bash)"
            """) { shell };
        command.SetAction(parsed =>
        {
            parsed.InvocationConfiguration.Output.Write(Scripts.Single(s => s.Shell == parsed.GetRequiredValue(shell)).Script.ReplaceLineEndings("\n"));
            return ExitCode.Done;
        });
        return command;
    }
}
