using System.Diagnostics;
using System.Globalization;
using Hotside.Tests.Solving;

namespace Hotside.Benchmarks;

/// <summary>ngspice as a peer: how long it takes for a deck.</summary>
internal static class Spice
{
    // Its own tolerances, far wider than ours: with narrower ones it steps for minutes.
    private const string Options = ".options gmin=1e-9 reltol=1e-3 abstol=1e-6 vntol=1e-6 itl1=500 numdgt=10\n";

    public static bool IsThere { get; } =
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "ngspice")));

    /// <summary>Milliseconds of its analysis, from its own clock over many of them, and of a whole process with one; the best of three.</summary>
    public static (double Analysis, double Process) Times(SpicePoint point, int size)
    {
        int count = Math.Max(2, 10_000 / size);
        string head = "operating point\n" + Options + point.Deck;
        double analysis = double.PositiveInfinity, process = double.PositiveInfinity;
        for (int i = 0; i < 3; i++)
        {
            process = Math.Min(process, Run(head + ".op\n.end\n").Milliseconds);
            analysis = Math.Min(analysis, AnalysisTime(Run(FormattableString.Invariant($"{head}.control\nrepeat {count}\nop\nend\nrusage time\nquit 0\n.endc\n.end\n")).Said) / count);
        }
        return (analysis, process);
    }

    private static double AnalysisTime(string said)
    {
        const string Told = "Total analysis time (seconds) = ";
        int at = said.LastIndexOf(Told, StringComparison.Ordinal) + Told.Length;
        return 1000 * double.Parse(said[at..].Split('\n')[0], CultureInfo.InvariantCulture);
    }

    private static (double Milliseconds, string Said) Run(string deck)
    {
        string folder = Directory.CreateTempSubdirectory("hotside").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "deck.cir"), deck);
            long start = Stopwatch.GetTimestamp();
            using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", "-r", "deck.raw", "deck.cir"]) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            string said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, said + errors.Result);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
