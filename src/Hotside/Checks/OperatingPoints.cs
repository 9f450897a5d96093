using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;
using Hotside.Studies.Figures;

namespace Hotside.Checks;

/// <summary>
/// The settings in which a circuit is solved for all checks, each once: those that the job names, everything off, each load by the first combination that feeds it, everything on;
/// all but the loads' own with engine standing and, where a machine gives current, running. A setting in which feed and return are one point is left out: it is a finding of its own.
/// </summary>
internal sealed class OperatingPoints
{
    // A battery whose volts break down to less than this share feeds a short circuit, not loads (own choice).
    private const double Shorted = 0.4;

    private readonly CircuitStudy study;
    private readonly CircuitSolver solver;
    private readonly Dictionary<string, Solution?> solved = new(StringComparer.Ordinal);
    private readonly Variable? engine;
    private Dictionary<(string Part, string Element), int>? indices;

    /// <summary>The points of a circuit.</summary>
    public OperatingPoints(CircuitStudy study)
    {
        this.study = study;
        solver = new(study.Circuit);
        engine = study.Circuit.Variables.FirstOrDefault(v => v.Part is null && v.Actuator.Name == Trade.Engine && study.Circuit.Sources.Any(s => Trade.IsMachine(s.Element)));
        All = [.. Named(), .. Resting(), .. EachLoad(), .. Everything()];
    }

    /// <summary>All of them; named ones first.</summary>
    public ImmutableArray<OperatingPoint> All { get; }

    /// <summary>Those that last: no starter turns.</summary>
    public IEnumerable<OperatingPoint> Steady => All.Where(p => !p.IsCranking);

    /// <summary>The circuit in another setting; <see langword="null"/> where that is a short circuit.</summary>
    public Solution? Solve(Setting setting)
    {
        string key = string.Join(';', setting.Positions.Select(p => $"{p.Part}.{p.Actuator}={p.Position}").Order(StringComparer.Ordinal))
            + string.Join(';', setting.Values.Select(v => $"{v.Part}:{v.Quantity}"));
        if (solved.TryGetValue(key, out var known)) return known;
        var solution = solver.SolveFromRest(setting);
        bool isShort = solution.Sources.Any(s => s.Element.When is null && s.Amperes < 0 && s.Volts < Shorted * s.RatedVolts);
        return solved[key] = isShort ? null : solution;
    }

    /// <summary>The greatest size of a figure of an element over some points, with its sign; 0 where the circuit has no such element.</summary>
    public double Greatest(string part, string element, Func<ElementPoint, double> figure, Predicate<OperatingPoint> isMeant)
    {
        if (All.IsEmpty || !(indices ??= Indices()).TryGetValue((part, element), out int index)) return 0;
        double greatest = 0;
        foreach (var point in All)
            if (isMeant(point) && figure(point.Solution.Elements[index]) is var here && Math.Abs(here) > Math.Abs(greatest)) greatest = here;
        return greatest;
    }

    /// <summary>The setting in which a load is on by its first combination, all else at rest.</summary>
    public static Setting SettingOf(LoadStudy load) => SettingOf(load.Control.Any[0]);

    /// <summary>The setting that a combination asks for, the first of each of its positions, all else at rest.</summary>
    public static Setting SettingOf(Combination combination) => new("", [.. combination.All.Select(s => new SetPosition(s.Variable.Part, s.Variable.Actuator.Name, s.Positions[0]))], []);

    private Dictionary<(string Part, string Element), int> Indices() => All[0].Solution.Elements.Select((e, i) => (e, i)).ToDictionary(p => (p.e.Part.Id, p.e.Element.Name), p => p.i);

    private static string Words(Combination combination) => string.Join(" and ", combination.All.Select(s => $"{s.Variable} {s.Positions[0]}"));

    private IEnumerable<OperatingPoint> Named() =>
        study.Circuit.Settings.Select(s => PointOf($"in \"{s.Name}\"", s)).OfType<OperatingPoint>().Select(p => p with { IsNamed = true });

    private IEnumerable<OperatingPoint> Resting() => Both("with everything off", new("", [], [])).Select(p => p with { IsAtRest = true });

    private IEnumerable<OperatingPoint> EachLoad() => study.Loads.Where(l => !l.Element.IsInternal && !l.Control.Any.IsEmpty)
        .Select(l => PointOf(l.Control.IsAlways ? "with everything off" : "when " + Words(l.Control.Any[0]), SettingOf(l)) is { } point ? point with { For = l } : null).OfType<OperatingPoint>();

    // The same positions as the setting of that name has in figures and budgets.
    private IEnumerable<OperatingPoint> Everything() =>
        Both("with everything on", new("", [.. new MostDrawn(study, []).Positions.Where(p => engine is null || p.Part is not null || p.Actuator != engine.Actuator.Name)], []));

    private IEnumerable<OperatingPoint> Both(string when, Setting setting)
    {
        if (PointOf(when, setting) is { } standing) yield return standing;
        if (engine is null || setting.Positions.Any(p => p.Part is null && p.Actuator == engine.Actuator.Name)) yield break;
        Setting running = setting with { Positions = [.. setting.Positions, new(null, engine.Actuator.Name, engine.Actuator.Positions[^1])] };
        if (PointOf(when + " and the engine running", running) is { } turning) yield return turning;
    }

    private OperatingPoint? PointOf(string when, Setting setting) => Solve(setting) is not { } solution ? null : new(when, solution)
    {
        IsRunning = engine is not null && setting.Positions.Any(p => p.Part is null && p.Actuator == engine.Actuator.Name && p.Position != engine.Actuator.Rest),
        IsCranking = solution.Elements.Any(e => e.Part.IsStarter(e.Element) && Math.Abs(e.Amperes) > 0.1 * e.RatedAmperes),
    };
}
