using System.Diagnostics;
using System.Text;

namespace Hotside.Tests.Support;

/// <summary>What came of one run of the tool in a process of its own.</summary>
internal sealed record ToolRun(int Code, byte[] Bytes, string Error)
{
    public static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Hotside.Tool.dll");

    public string Output => Encoding.UTF8.GetString(Bytes);

    public static ToolRun In(string folder, string? input, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", ["exec", Program, .. arguments])
        {
            WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        if (input is not null) process.StandardInput.Write(input);
        process.StandardInput.Close();
        using var output = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        return new(process.ExitCode, output.ToArray(), error.Result);
    }
}
