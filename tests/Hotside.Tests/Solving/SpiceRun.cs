using System.Globalization;
using Hotside.Tests.Support;

namespace Hotside.Tests.Solving;

/// <summary>Runs a deck. ngspice may print values that break the deck's own equations, with a sound exit code: a point counts only if its 0 V sources show none and its currents close.</summary>
internal static class SpiceRun
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // One after the other until a point is valid; the last without a start.
    private static readonly (string Options, bool HasStart)[] Tries =
    [
        ("gmin=1e-9 reltol=1e-6 abstol=1e-10 vntol=1e-8 itl1=500", true),
        ("gmin=1e-12 rshunt=1e10 reltol=1e-6 abstol=1e-10 vntol=1e-8 itl1=500", true),
        ("gmin=1e-12 reltol=1e-6 abstol=1e-10 vntol=1e-8 itl1=500", false),
    ];

    /// <summary>The potentials and currents that ngspice finds, and with which of its tries; <see langword="null"/> when none is valid.</summary>
    public static (Dictionary<string, double> Values, int Try)? Find(SpicePoint point)
    {
        for (int i = 0; i < Tries.Length; i++)
        {
            string text = $"operating point\n.options {Tries[i].Options} numdgt=12\n{(Tries[i].HasStart ? point.Start : "")}{point.Deck}.op\n.end\n";
            if (Run(text) is { } values && IsValid(point, values)) return (values, i);
        }
        return null;
    }

    private static bool IsValid(SpicePoint point, Dictionary<string, double> values)
    {
        Dictionary<string, (double Sum, double Size)> nodes = [];
        foreach (var branch in point.Branches)
        {
            double amperes = values[branch.Current];
            if (!(Math.Abs(At(branch.From) - At(branch.Inner)) < 1e-6) || !double.IsFinite(amperes)) return false;
            Gather(branch.From, amperes);
            Gather(branch.To, -amperes);
        }
        return nodes.All(n => n.Key == "0" || Math.Abs(n.Value.Sum) < 1e-6 + (1e-6 * n.Value.Size));

        double At(string node) => node == "0" ? 0 : values[$"v({node})"];

        void Gather(string node, double amperes)
        {
            var (sum, size) = nodes.GetValueOrDefault(node);
            nodes[node] = (sum + amperes, size + Math.Abs(amperes));
        }
    }

    private static Dictionary<string, double>? Run(string deck)
    {
        string folder = Directory.CreateTempSubdirectory("hotside").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "deck.cir"), deck);
            using var process = OutsideProgram.Start(folder, "ngspice", ["-b", "-r", "deck.raw", "deck.cir"], ("SPICE_ASCIIRAWFILE", "1"));
            // Both are read while it runs: a full pipe would stop it.
            Task<string> said = process.StandardOutput.ReadToEndAsync(), complained = process.StandardError.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                process.WaitForExit();
                return null;
            }
            Task.WaitAll(said, complained);
            string raw = Path.Combine(folder, "deck.raw");
            return process.ExitCode == 0 && File.Exists(raw) ? Read(File.ReadAllLines(raw)) : null;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Dictionary<string, double>? Read(string[] lines)
    {
        int variables = Array.FindIndex(lines, l => l.StartsWith("Variables:", StringComparison.Ordinal)), values = Array.FindIndex(lines, l => l.StartsWith("Values:", StringComparison.Ordinal));
        if (variables < 0 || values < 0) return null;
        string[] names = [.. lines[(variables + 1)..values].Select(l => l.Trim().Split('\t', ' ')[1])];
        string[] numbers = [.. lines[(values + 1)..].Where(l => l.Trim().Length > 0).Select(l => l.Trim().Split('\t', ' ')[^1])];
        return numbers.Length < names.Length ? null : names.Zip(numbers).ToDictionary(p => p.First, p => double.Parse(p.Second, CultureInfo.InvariantCulture));
    }
}
