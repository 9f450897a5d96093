using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside new NAME</c>: a commented job file to start from.</summary>
internal static class NewCommand
{
    public static Command Make()
    {
        var name = new Argument<string>("NAME") { Description = "The file to write; .yaml is added where it is missing." };
        var command = new Command("new", """
            Writes a commented job file to start from; an existing file is never overwritten.

            Example:
              hotside new my-van
            """) { name };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(name);
            if (!path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) && !path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)) path += ".yaml";
            if (File.Exists(path))
            {
                parsed.InvocationConfiguration.Error.WriteLine($"hotside: {path} exists already; choose another name or move it away.");
                return ExitCode.OutputUnwritable;
            }
            File.WriteAllText(path, Template.Text);
            parsed.InvocationConfiguration.Output.WriteLine($"{path} written. Edit it, then: hotside check {path}");
            return ExitCode.Done;
        });
        return command;
    }
}
