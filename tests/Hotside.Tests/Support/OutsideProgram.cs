using System.Diagnostics;

namespace Hotside.Tests.Support;

/// <summary>Runs a program that is not ours, as a second opinion. Where it is missing the test is skipped; a build machine counts skipped tests as failed.</summary>
internal static class OutsideProgram
{
    /// <summary>What the program writes to standard output; the test fails when it ends with an error.</summary>
    public static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(Needed(program), arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} ends with {process.ExitCode}: {error.Result}");
        return output;
    }

    /// <summary>The program's name, where it is there; the test is skipped where not.</summary>
    public static string Needed(string program)
    {
        Assert.SkipUnless(IsThere(program), program + " is not installed");
        return program;
    }

    /// <summary>Whether a folder of the path has it.</summary>
    public static bool IsThere(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));
}
