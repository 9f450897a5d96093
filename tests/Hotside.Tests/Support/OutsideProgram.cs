using System.Diagnostics;

namespace Hotside.Tests.Support;

/// <summary>Runs a program that is not ours, as a second opinion. Where it is missing the test is skipped; a build machine counts skipped tests as failed.</summary>
internal static class OutsideProgram
{
    /// <summary>What the program writes to standard output; the test fails when it ends with an error.</summary>
    public static string Run(string program, params string[] arguments) => Finish(Start(Environment.CurrentDirectory, Needed(program), arguments));

    /// <summary>Starts a program in a folder, with more environment if need be.</summary>
    public static Process Start(string folder, string program, string[] arguments, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // A build server that outlives the test would hold its files.
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        foreach (var (name, value) in environment) start.Environment[name] = value;
        return Process.Start(start)!;
    }

    /// <summary>What a started program writes to standard output until it ends.</summary>
    public static string Finish(Process started)
    {
        using var process = started;
        var error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{process.StartInfo.FileName} {string.Join(' ', process.StartInfo.ArgumentList)} ends with {process.ExitCode}: {output}{error.Result}");
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
