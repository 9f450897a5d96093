using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Orders.Harms;

/// <summary>
/// The settings in which a half-altered vehicle is judged: rest, every switch moved alone, and with the key on, the smallest combination of each load, the job's own. None has
/// everything on: with fewer loads the battery sags less, so what feeds the least is worst for volts and, in a short, for current.
/// </summary>
internal static class HarmSettings
{
    private const string Run = "run";

    /// <summary>The settings of both circuits, each once; senders stand at their least, where gauges get most.</summary>
    public static ImmutableArray<Setting> Of(Study study)
    {
        List<(string? Name, ImmutableArray<SetPosition> Positions, ImmutableArray<SetValue> Values)> wanted = [("at rest", [], [])];
        foreach (var side in new[] { study.Before, study.After })
        {
            wanted.AddRange(side.Circuit.Settings.Select(s => (OwnName(s, side.Circuit), WithoutRunning(s.Positions, side.Circuit), s.Values)));
            wanted.AddRange(Moved(side.Circuit).Select(p => ((string?)null, p, ImmutableArray<SetValue>.Empty)));
            wanted.AddRange(Combinations(side).Select(p => ((string?)null, WithoutRunning(p, side.Circuit), ImmutableArray<SetValue>.Empty)));
        }
        var least = LeastSenders(study.Before.Circuit).Concat(LeastSenders(study.After.Circuit)).DistinctBy(v => v.Part).ToArray();
        var all = ImmutableArray.CreateBuilder<Setting>();
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (var (name, positions, values) in wanted)
        {
            ImmutableArray<SetPosition> ordered = [.. positions.OrderBy(p => p.Part, StringComparer.Ordinal).ThenBy(p => p.Actuator, StringComparer.Ordinal)];
            string key = string.Join(',', ordered.Select(p => $"{p.Part} {p.Actuator} {p.Position}").Concat(values.Select(v => $"{v.Part} {v.Quantity}")));
            if (!known.Add(key)) continue;
            ImmutableArray<SetValue> given = [.. values, .. least.Where(l => values.All(v => v.Part != l.Part))];
            all.Add(new(name ?? Text(positions, study), positions, given));
        }
        return all.ToImmutable();
    }

    private static string Text(ImmutableArray<SetPosition> positions, Study study) =>
        positions.IsEmpty ? "at rest" : string.Join(", ", positions.Select(p => (study.After.Circuit.Variables.Any(v => v.Part == p.Part && v.Actuator.Name == p.Actuator) ? study.After : study.Before).Circuit.TextOf(p)));

    private static string? OwnName(Setting setting, Circuit circuit) => WithoutRunning(setting.Positions, circuit).Length == setting.Positions.Length ? setting.Name : null;

    // Engines stand while wires are moved.
    private static ImmutableArray<SetPosition> WithoutRunning(ImmutableArray<SetPosition> positions, Circuit circuit)
    {
        var running = circuit.Sources.Where(s => s.Element.IsMachine).SelectMany(s => s.Element.When!.Tests.Select(t => circuit.VariableOf(s.Part, t.Actuator))).ToHashSet();
        return [.. positions.Where(p => !running.Any(v => v.Part == p.Part && v.Actuator.Name == p.Actuator))];
    }

    private static IEnumerable<ImmutableArray<SetPosition>> Moved(Circuit circuit)
    {
        var keys = circuit.Variables.Where(v => v.Actuator.Drive == ActuatorDrive.Key && v.Actuator.Positions.Contains(Run)).Select(v => new SetPosition(v.Part, v.Actuator.Name, Run)).ToArray();
        foreach (var variable in circuit.Variables.Where(v => v.Actuator is { Cycles: false, IsNoControl: false } && v.Actuator.Drive != ActuatorDrive.Driven))
        foreach (string position in variable.Actuator.Positions.Skip(1))
        {
            SetPosition put = new(variable.Part, variable.Actuator.Name, position);
            if (WithoutRunning([put], circuit).IsEmpty) continue;
            yield return [put];
            ImmutableArray<SetPosition> on = [.. keys.Where(k => k.Part != put.Part || k.Actuator != put.Actuator), put];
            if (on.Length > 1) yield return on;
        }
    }

    private static IEnumerable<ImmutableArray<SetPosition>> Combinations(CircuitStudy study)
    {
        foreach (var load in study.Loads)
        {
            var controls = load.Strings.Select(s => s.When).Prepend(load.Control);
            foreach (var control in controls)
                if (control.Any.MinBy(c => c.All.Length) is { } least)
                    yield return [.. least.All.Select(s => new SetPosition(s.Variable.Part, s.Variable.Actuator.Name, s.Positions[0]))];
        }
    }

    private static IEnumerable<SetValue> LeastSenders(Circuit circuit)
    {
        foreach (var part in circuit.Parts)
        foreach (var element in part.Kind.Elements.Where(e => e.Type == ElementType.Sender))
            if (part.Rated(element.Name, Unit.Ohm) is { } ohms)
                yield return new(part.Id, new(ohms, Unit.Ohm));
    }
}
