using System.Collections.Concurrent;
using System.Globalization;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Solving;

/// <summary>
/// Volts and amperes against ngspice, an independent program, from laws that are written down anew: volts within 0.1 % of the system's, currents within 0.2 % or 1 mA.
/// ngspice finds no valid point of a few stiff circuits: at most one in fifty may be left out, and is counted.
/// </summary>
public class SpicePointTests
{
    [Fact]
    public void Every_setting_of_the_gallery_has_the_volts_and_amperes_that_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        List<Case> cases = [];
        foreach (string name in GalleryJobs.Names)
        {
            var alteration = GalleryJobs.Read(name).Alteration;
            foreach (var (side, circuit) in new[] { ("before", alteration.Before), ("after", alteration.After) })
            {
                CircuitSolver solver = new(circuit);
                foreach (var setting in circuit.Settings.Prepend(new("at rest", [], [])))
                {
                    var found = solver.Solve(setting);
                    cases.AddRange(found.Others.Prepend(found).Select(s => new Case($"{name} {side} {setting.Name}", circuit, s)));
                }
            }
        }
        Judge(cases);
    }

    [Fact]
    public void Three_hundred_generated_circuits_have_the_volts_and_amperes_that_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        List<Case> cases = [];
        for (int seed = 1; seed <= 300; seed++)
        {
            var circuit = GeneratedWiring.Of(seed);
            var found = new CircuitSolver(circuit).Solve(GeneratedWiring.SettingOf(seed, circuit));
            cases.AddRange(found.Others.Prepend(found).Take(2).Select(s => new Case(FormattableString.Invariant($"seed {seed}"), circuit, s)));
        }
        Judge(cases);
    }

    [Fact]
    public void Heat_a_flat_battery_a_slow_alternator_and_bad_joints_act_as_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        List<Case> cases = [];
        for (int seed = 301; seed <= 350; seed++)
        {
            var circuit = GeneratedWiring.Of(seed);
            var around = GeneratedWiring.SurroundingsOf(seed, circuit);
            cases.Add(new(FormattableString.Invariant($"seed {seed}"), circuit, new CircuitSolver(circuit, around).Solve(GeneratedWiring.SettingOf(seed, circuit))) { Around = around });
        }
        Judge(cases);
    }

    [Fact]
    public void What_a_job_says_of_temperatures_charge_speed_and_joints_acts_as_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        var job = Job.Read(File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Solving", "circumstances.yaml"))).OrThrow();
        List<Case> cases = [];
        foreach (var circuit in new[] { job.Alteration.Before, job.Alteration.After })
        {
            CircuitSolver solver = new(circuit);
            cases.AddRange(circuit.Settings.Select(s => new Case(s.Name, circuit, solver.Solve(s))));
        }
        Judge(cases);
    }

    [Fact]
    public void The_first_moment_of_a_setting_is_as_ngspice_finds()
    {
        OutsideProgram.Needed("ngspice");
        List<Case> cases = [];
        for (int seed = 351; seed <= 380; seed++)
        {
            var circuit = GeneratedWiring.Of(seed);
            cases.Add(new(FormattableString.Invariant($"seed {seed}"), circuit, new CircuitSolver(circuit).SolveInrush(GeneratedWiring.SettingOf(seed, circuit))) { IsAtOnce = true });
        }
        Judge(cases);
    }

    private sealed record Case(string What, Circuit Circuit, Solution Solution)
    {
        public Surroundings Around { get; init; } = new();

        public bool IsAtOnce { get; init; }
    }

    private sealed record Outcome(string What, int Tries, int Figures, int Uncompared, double Volts, string VoltsAt, double Amperes, string AmperesAt, string[] Wrong);

    private static void Judge(List<Case> cases)
    {
        Assert.Empty(cases.Where(c => !c.Solution.IsExact).Select(c => c.What));
        ConcurrentDictionary<int, Outcome> outcomes = [];
        Parallel.For(0, cases.Count, new() { MaxDegreeOfParallelism = 2 }, i => outcomes[i] = Compare(cases[i]));
        Outcome[] all = [.. outcomes.OrderBy(o => o.Key).Select(o => o.Value)], valid = [.. all.Where(o => o.Tries > 0)];
        string[] left = [.. all.Where(o => o.Tries == 0).Select(o => o.What)];
        var (volts, amperes) = (valid.MaxBy(o => o.Volts)!, valid.MaxBy(o => o.Amperes)!);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{all.Length} points, {valid.Sum(o => o.Figures)} figures; {valid.Count(o => o.Tries == 2)} at ngspice's second try, {valid.Count(o => o.Tries == 3)} at the third; left out {left.Length}: {string.Join(", ", left)}. Worst: {volts.Volts:E1} of the system's volts, {volts.What} {volts.VoltsAt}; {amperes.Amperes:E1} of what is allowed in amperes, {amperes.What} {amperes.AmperesAt}. {all.Sum(o => o.Uncompared)} currents of islands not compared."));
        string[] wrong = [.. valid.SelectMany(o => o.Wrong)];
        Assert.True(wrong.Length == 0, $"{wrong.Length} differ\n" + string.Join('\n', wrong.Take(15)));
        Assert.True(left.Length <= all.Length / 50, "ngspice finds no point of " + string.Join(", ", left));
    }

    private static Outcome Compare(Case one)
    {
        SpicePoint point = new(one.Circuit, one.Solution, one.Around, one.IsAtOnce);
        if (SpiceRun.Find(point) is not var (values, tries)) return new(one.What, 0, 0, point.Uncompared, 0, "", 0, "", []);
        var differences = point.Figures.Select(f => (Figure: f, Theirs: f.Name.Length == 0 ? 0 : values[f.Name])).Select(d => (d.Figure, d.Theirs, Share: Math.Abs(d.Theirs - d.Figure.Ours) / d.Figure.Tolerance)).ToArray();
        var volts = differences.Where(d => d.Figure.IsVoltage).DefaultIfEmpty(differences[0]).MaxBy(d => d.Share);
        var amperes = differences.Where(d => !d.Figure.IsVoltage).DefaultIfEmpty(differences[0]).MaxBy(d => d.Share);
        return new(one.What, tries + 1, differences.Length, point.Uncompared, 0.001 * volts.Share, volts.Figure.What, amperes.Share, amperes.Figure.What,
            [.. differences.Where(d => !(d.Share <= 1)).Select(d => FormattableString.Invariant($"{one.What}: {d.Figure.What} {d.Figure.Ours:R}, ngspice {d.Theirs:R}"))]);
    }
}
