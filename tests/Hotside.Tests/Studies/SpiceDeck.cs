using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Hotside.Circuits;

namespace Hotside.Tests.Studies;

/// <summary>
/// Many small circuits in one deck for ngspice, an independent program: each is one state of a circuit with one consumer at its rated resistance and all others open.
/// </summary>
internal sealed class SpiceDeck
{
    private readonly StringBuilder deck = new("consumers under test\n.options rshunt=1e10 numdgt=10 itl1=500\n.model d1 d(is=1e-9 n=1 rs=1)\n");
    private readonly List<(string Before, string After, double Ohms)> measured = [];

    /// <summary>Adds a circuit; its current is the next of those measured.</summary>
    public void Add(BruteForce truth, BruteForce.Net net, BruteForce.Piece load)
    {
        int n = measured.Count, count = 0;
        string Node(int point) => truth.PointOf(point) == truth.Return ? "0" : string.Create(CultureInfo.InvariantCulture, $"c{n}p{truth.PointOf(point)}");
        string Id(string letter) => string.Create(CultureInfo.InvariantCulture, $"{letter}{n}x{count++}");
        string Inner() => string.Create(CultureInfo.InvariantCulture, $"c{n}m{count++}");
        void Line(string letter, string from, string to, string value) => deck.Append(Id(letter)).Append(' ').Append(from).Append(' ').Append(to).Append(' ').Append(value).Append('\n');
        static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
        foreach (var p in truth.Pieces.Where(p => net.Conducts(p)))
        {
            string a = Node(p.A), b = Node(p.B);
            if (a == b) continue;
            if (p.Element.IsSource)
            {
                bool plusFirst = !p.Element.TakesEitherPolarity || !truth.IsPositive;
                string inner = Inner();
                Line("V", plusFirst ? inner : b, plusFirst ? b : inner, Number(p.Part.Ratings.First(r => r.Name == "V").Quantity.Value));
                Line("R", inner, a, "0.005");
            }
            else if (p == load) measured.Add(Consumer(p, a, b));
            else if (p.Element.Type is ElementType.Diode or ElementType.Dropper) Line("D", a, b, "d1");
            else if (p.Element.IsLink) Line("R", a, b, "0.001");
            else if (p.Element.IsInLine) Line("R", a, b, Number(BruteForce.Net.Ohms(p)));
        }
        if (measured.Count == n) measured.Add(("0", "0", 1));

        (string, string, double) Consumer(BruteForce.Piece p, string a, string b)
        {
            string before = a;
            if (p.Element.IsOneWay) Line("D", a, before = Inner(), "d1");
            Line("R", before, b, Number(BruteForce.Net.Ohms(p)));
            return (before, b, BruteForce.Net.Ohms(p));
        }
    }

    /// <summary>The current of each consumer under test in amperes, all from one run; <see langword="null"/> when there is no ngspice.</summary>
    public double[]? Currents()
    {
        string folder = Directory.CreateTempSubdirectory("hotside").FullName;
        try
        {
            string input = Path.Combine(folder, "deck.cir"), output = Path.Combine(folder, "deck.raw");
            File.WriteAllText(input, deck + ".op\n.end\n");
            ProcessStartInfo start = new("ngspice", ["-b", "-r", output, input]) { RedirectStandardOutput = true, RedirectStandardError = true };
            start.Environment["SPICE_ASCIIRAWFILE"] = "1";
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            string said = process.StandardOutput.ReadToEnd() + errors.Result;
            process.WaitForExit();
            if (process.ExitCode != 0 || !File.Exists(output)) throw new InvalidOperationException("ngspice failed:\n" + said[..Math.Min(said.Length, 2_000)]);
            var volts = Read(File.ReadAllLines(output));
            return [.. measured.Select(m => (volts[m.Before] - volts[m.After]) / m.Ohms)];
        }
        catch (Win32Exception)
        {
            return null;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Dictionary<string, double> Read(string[] lines)
    {
        Dictionary<string, double> volts = new(StringComparer.Ordinal) { ["0"] = 0 };
        int variables = Array.FindIndex(lines, l => l.StartsWith("Variables:", StringComparison.Ordinal)), values = Array.FindIndex(lines, l => l.StartsWith("Values:", StringComparison.Ordinal));
        string[] names = [.. lines[(variables + 1)..values].Select(l => l.Trim().Split('\t', ' ')[1])];
        string[] numbers = [.. lines[(values + 1)..].Where(l => l.Trim().Length > 0).Select(l => l.Trim().Split('\t', ' ')[^1])];
        for (int i = 0; i < names.Length; i++)
            if (names[i].StartsWith("v(", StringComparison.Ordinal))
                volts[names[i][2..^1]] = double.Parse(numbers[i], CultureInfo.InvariantCulture);
            else volts[names[i]] = double.Parse(numbers[i], CultureInfo.InvariantCulture);
        return volts;
    }
}
