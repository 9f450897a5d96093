using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Relays;
using Hotside.Studies;

namespace Hotside.Tests.Solving;

/// <summary>
/// The volts of a circuit beside what the study says of it, state by state. The study judges by paths, the solver by volts; they may differ where a coil gets too little
/// though it is fed, or is fed through other loads only, and where relays chatter. Paths know nothing of resistance, so the conductors have none here.
/// </summary>
internal sealed class StudyComparison
{
    // A fed load may hang behind a resistance, but never on next to nothing; only a converter behind too much of it is locked out. What is not fed has what two sources differ by
    // and fuses drop, or current in neither direction.
    private const double Fed = 0.001, NotFed = 0.001, Drops = 0.05, PullIn = 2.0 / 3;

    private readonly Circuit circuit;

    public StudyComparison(string name, Circuit circuit, int mostStates)
    {
        this.circuit = new(circuit.System, circuit.Parts, [.. circuit.Conductors.Select(c => c with { Wire = new() { Role = c.Wire.Role } })], [.. States(circuit, mostStates)]);
        var study = CircuitStudy.Of(this.circuit, TestContext.Current.CancellationToken);
        CircuitSolver solver = new(this.circuit);
        foreach (var judged in study.Settings)
        {
            if (judged.IsShort || judged.IsUnsettled) continue;
            Judge(name, study, judged, solver.Solve(judged.Setting));
        }
    }

    /// <summary>Loads compared, fed and not fed.</summary>
    public (int Fed, int NotFed) Compared { get; private set; }

    /// <summary>States in which relays stand otherwise for a reason that is allowed, by reason.</summary>
    public Dictionary<string, int> Allowed { get; } = [];

    /// <summary>What contradicts.</summary>
    public List<string> Wrong { get; } = [];

    // Evenly over all states, the first and the last among them; what is no control stays at rest, for the study never moves it.
    private static IEnumerable<Setting> States(Circuit circuit, int most)
    {
        var free = circuit.Variables.Where(v => v.Actuator is { Drive: not ActuatorDrive.Driven, Cycles: false, IsNoControl: false }).ToArray();
        double count = free.Aggregate(1.0, (product, v) => product * v.Actuator.Positions.Length);
        int taken = (int)Math.Min(count, most);
        for (int i = 0; i < taken; i++)
        {
            double number = taken == 1 ? 0 : Math.Round(i * (count - 1) / (taken - 1));
            List<SetPosition> positions = [];
            foreach (var variable in free)
            {
                int arity = variable.Actuator.Positions.Length;
                positions.Add(new(variable.Part, variable.Actuator.Name, variable.Actuator.Positions[(int)(number % arity)]));
                number = Math.Floor(number / arity);
            }
            yield return new(FormattableString.Invariant($"state {i}"), [.. positions], []);
        }
    }

    private void Judge(string name, CircuitStudy study, SettingStudy judged, Solution solution)
    {
        string at = $"{name} at {string.Join(", ", judged.Setting.Positions.Select(p => $"{p.Part ?? p.Actuator} {p.Position}"))}";
        if (judged.Relays.Any(r => !solution.Positions.Contains(r)) || solution.Rest != RestKind.Settled)
        {
            if (Reason(judged, solution) is { } reason) Allowed[reason] = Allowed.GetValueOrDefault(reason) + 1;
            else Wrong.Add($"{at}: {string.Join(", ", judged.Relays.Where(r => !solution.Positions.Contains(r)).Select(r => $"{r.Part} {r.Position} by the study"))}, {solution.Rest}");
            return;
        }
        double[] sources = [.. solution.Sources.Select(p => Math.Abs(p.Volts))];
        double between = sources.Max() - sources.Min();
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal))
        {
            if (judged.InSeries.Contains(load.Name)) continue;
            bool isFed = judged.On.Contains(load.Name);
            var point = solution.Element(load.Part.Id, load.Element.Name);
            double amperes = Math.Abs(point.Amperes) / point.RatedAmperes, volts = Math.Abs(point.Volts) / point.RatedVolts;
            Compared = isFed ? (Compared.Fed + 1, Compared.NotFed) : (Compared.Fed, Compared.NotFed + 1);
            if (isFed ? amperes < Fed && !point.IsLockedOut : amperes > NotFed && volts > Drops + (between / point.RatedVolts))
                Wrong.Add(FormattableString.Invariant($"{at}: {load.Name} fed {isFed}, but has {volts:P2} of its rated volts and {amperes:P2} of its current"));
        }
    }

    private string? Reason(SettingStudy judged, Solution solution)
    {
        if (solution.Rest is RestKind.NeverSettles) return "chatters";
        if (solution.Rest is RestKind.Race) return "races by volts";
        foreach (var relay in judged.Relays.Where(r => !solution.Positions.Contains(r)))
        {
            var part = circuit.FindPart(relay.Part!)!;
            var actuator = part.Kind.Actuators.First(a => a.Name == relay.Actuator);
            foreach (string coil in actuator.Pulls.SelectMany(p => p.Coils).Concat(actuator.KeptBy).Distinct())
            {
                var point = solution.Element(part.Id, coil);
                if (judged.InSeries.Contains(point.Name)) return "fed in series";
                if (point.Volts != 0 && Math.Abs(point.Volts) < (actuator.PullsAt ?? PullIn) * point.RatedVolts && (judged.On.Contains(point.Name) || point.Element.IsInternal)) return "below pull-in";
            }
        }
        return null;
    }
}
