using System.Globalization;
using System.Text;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Tests.Support;

namespace Hotside.Tests.Solving;

/// <summary>
/// Operating points of many circuits in one deck for ngspice, an independent program. The laws are written as formulas of its own, every current goes through a source of 0 V;
/// our potentials are a start that it may leave.
/// </summary>
internal sealed class SpicePoints
{
    private readonly StringBuilder deck = new();
    private readonly List<(string Name, string What, double Ours, double Tolerance)> expected = [];
    private int circuits;

    /// <summary>The figures that are compared.</summary>
    public int Count => expected.Count;

    /// <summary>Adds a circuit as it was solved; what floats is left out.</summary>
    public void Add(string what, Circuit circuit, Solution solution)
    {
        int n = circuits++;
        CircuitModel model = new(circuit);
        int[] state = [.. circuit.Variables.Select((v, i) => v.Actuator.Positions.IndexOf(solution.Positions[i].Position))];
        var laws = model.LawsIn(state, state, solution.Setting.Values);
        Dictionary<int, double> volts = [];
        foreach (var terminal in solution.Terminals)
            if (terminal.Volts is { } known)
                volts[model.Nodes.NodeOf(terminal.End)] = known;
        double system = circuit.System.Volts[0];
        string Node(int node) => node < 0 ? "0" : Invariant($"c{n}n{node}");
        foreach (var (node, value) in volts.Where(v => v.Key >= 0).OrderBy(v => v.Key))
        {
            deck.Append(CultureInfo.InvariantCulture, $".nodeset v({Node(node)})={value:R}\n");
            // A node with nothing else on it would have no equation.
            deck.Append(CultureInfo.InvariantCulture, $"rl{n}x{node} {Node(node)} 0 1e12\n");
            expected.Add(("v(" + Node(node) + ")", $"{what}: {model.Nodes.Ends.First(e => model.Nodes.NodeOf(e) == node)}", value, 0.001 * system));
        }
        for (int e = 0; e < laws.Length; e++)
        {
            var (a, b) = model.Network.Edges[e];
            if (laws[e] is not { } law || a == b || !volts.TryGetValue(a, out double va) || !volts.TryGetValue(b, out double vb)) continue;
            string id = Invariant($"{n}x{e}"), inner = Invariant($"c{n}x{e}");
            deck.Append(CultureInfo.InvariantCulture, $"v{id} {Node(a)} {inner} 0\n.nodeset v({inner})={va:R}\n").Append(Device(id, inner, Node(b), law)).Append('\n');
            double amperes = law.At(va - vb).Amperes;
            expected.Add(($"i(v{id})", $"{what}: edge {e}, {law}", amperes, Math.Max(0.001, 0.002 * Math.Abs(amperes))));
        }
        int count = 0;
        foreach (var regulator in model.Regulators)
        {
            string id = Invariant($"{n}r{count++}"), input = Node(regulator.In), output = Node(regulator.Out), ground = Node(regulator.Against);
            if (new[] { regulator.In, regulator.Out, regulator.Against }.Any(r => r >= 0 && !volts.ContainsKey(r))) continue;
            double sign = regulator.WorksEitherWay && (volts.GetValueOrDefault(regulator.In) < volts.GetValueOrDefault(regulator.Against)) ? -1 : 1;
            string U(string x, string y) => Invariant($"({sign:R}*{Difference(x, y)})");
            string least = Invariant($"({U(input, output)}-{regulator.Drop:R})/{regulator.DropOhms:R}");
            if (!double.IsInfinity(regulator.SetPoint)) least = Invariant($"min({least},({regulator.SetPoint:R}-{U(output, ground)})/{regulator.OutputOhms:R})");
            if (!double.IsInfinity(regulator.Most)) least = Invariant($"min({least},{regulator.Most:R})");
            deck.Append(CultureInfo.InvariantCulture, $"b{id} {input} {output} i={sign:R}*max(0,{least})\n");
        }
    }

    /// <summary>ngspice's options, one set after the other until it finds a point.</summary>
    private static readonly string[] Options =
        ["gmin=1e-12 reltol=1e-6 abstol=1e-10 vntol=1e-8 itl1=500", "gmin=1e-9 reltol=1e-6 abstol=1e-9 vntol=1e-8 itl1=2000", "gmin=1e-12 reltol=1e-5 abstol=1e-7 vntol=1e-7 itl1=5000"];

    /// <summary>What differs by more than it may, and the worst differences of volts (in parts of what is allowed) and amperes; <see langword="null"/> when ngspice finds no point.</summary>
    public (List<string> Wrong, double WorstVolts, double WorstAmperes)? Compare(int sets = 3)
    {
        var found = Options.Take(sets).Select(Run).FirstOrDefault(f => f is not null);
        if (found is null) return null;
        List<string> wrong = [];
        double worstVolts = 0, worstAmperes = 0;
        foreach (var (name, what, ours, tolerance) in expected)
        {
            double theirs = found[name], part = Math.Abs(theirs - ours) / tolerance;
            if (name[0] == 'v') worstVolts = Math.Max(worstVolts, part);
            else worstAmperes = Math.Max(worstAmperes, part);
            if (!(part <= 1)) wrong.Add(Invariant($"{what}: {ours:R}, ngspice {theirs:R}"));
        }
        return (wrong, worstVolts, worstAmperes);
    }

    private static string Device(string id, string a, string b, Law law)
    {
        string u = Difference(a, b), size = $"abs({u})";
        return law switch
        {
            ClampLaw { IsLine: true, Emf: 0 } line => Invariant($"r{id} {a} {b} {1 / line.Siemens:R}"),
            ClampLaw { IsLine: true } line => Invariant($"r{id} {a} {a}e {1 / line.Siemens:R}\nve{id} {a}e {b} {line.Emf:R}"),
            ClampLaw clamp => Invariant($"b{id} {a} {b} i={Clamped(clamp, u)}+{Law.Leak:R}*{u}"),
            LampLaw lamp => Invariant($"b{id} {a} {b} i={u}/max({lamp.ColdOhms:R},{lamp.Volts / lamp.Amperes:R}*pow({u}*{u}/{lamp.Volts * lamp.Volts:R}+1e-12,{(1 - lamp.Exponent) / 2:R}))"),
            FanLaw fan => Invariant($"b{id} {a} {b} i=4*{fan.Amperes:R}*{u}*{size}/pow({Counter(fan):R}+sqrt({Counter(fan) * Counter(fan):R}+{4 * fan.ArmatureOhms * fan.Amperes:R}*{size}),2)+{Law.Leak:R}*{u}"),
            SeriesFanLaw fan => Invariant($"b{id} {a} {b} i=2*{fan.Amperes:R}*{u}/({fan.WindingOhms * fan.Amperes:R}+sqrt({Math.Pow(fan.WindingOhms * fan.Amperes, 2):R}+{4 * (fan.Volts - (fan.WindingOhms * fan.Amperes)):R}*{size}))"),
            _ => throw new NotSupportedException(law.ToString()),
        };
    }

    private static double Counter(FanLaw fan) => fan.Volts - (fan.ArmatureOhms * fan.Amperes);

    private static string Clamped(ClampLaw clamp, string u)
    {
        string line = Invariant($"{clamp.Siemens:R}*({u}-({clamp.Emf:R}))");
        if (!double.IsInfinity(clamp.Most)) line = Invariant($"min({clamp.Most:R},{line})");
        return double.IsInfinity(clamp.Least) ? line : Invariant($"max({clamp.Least:R},{line})");
    }

    private static string Difference(string a, string b) => b == "0" ? $"v({a})" : a == "0" ? $"(-v({b}))" : $"(v({a})-v({b}))";

    private Dictionary<string, double>? Run(string options)
    {
        string folder = Directory.CreateTempSubdirectory("hotside").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "deck.cir"), $"operating points\n.options {options} numdgt=10\n{deck}.op\n.end\n");
            using var process = OutsideProgram.Start(folder, "ngspice", ["-b", "-r", "deck.raw", "deck.cir"], ("SPICE_ASCIIRAWFILE", "1"));
            var said = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode != 0 || said.Result.Contains("singular", StringComparison.OrdinalIgnoreCase)) return null;
            string[] lines = File.ReadAllLines(Path.Combine(folder, "deck.raw"));
            int variables = Array.FindIndex(lines, l => l.StartsWith("Variables:", StringComparison.Ordinal)), values = Array.FindIndex(lines, l => l.StartsWith("Values:", StringComparison.Ordinal));
            string[] names = [.. lines[(variables + 1)..values].Select(l => l.Trim().Split('\t', ' ')[1])];
            string[] numbers = [.. lines[(values + 1)..].Where(l => l.Trim().Length > 0).Select(l => l.Trim().Split('\t', ' ')[^1])];
            return names.Zip(numbers).ToDictionary(p => p.First, p => double.Parse(p.Second, CultureInfo.InvariantCulture));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
