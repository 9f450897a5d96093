using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads an actuator: <c>key: locked / acc / run / start, by key, returns from start to run</c>.</summary>
internal static class ActuatorReader
{
    /// <summary>Begins the part of rated volts at which a driven actuator moves, and below which it falls back.</summary>
    public const string PullsAt = "pulls at ", DropsAt = "drops at ";

    private static readonly string[] Items = ["by hand", "by foot", "by key", "automatic", "shared", "returns", "cycles", "not a control", "stays"];

    public static Actuator? Read(YamlText name, YamlText line, List<Diagnostic> problems)
    {
        var items = LineItems.Split(line, problems);
        string[] positions = items.IsEmpty ? [] : items[0].Text.Split(" / ", StringSplitOptions.TrimEntries);
        if (positions.Length < 2 || positions.Any(p => p.Length == 0 || p.Contains(' ', StringComparison.Ordinal)) || positions.Distinct().Count() < positions.Length)
        {
            problems.Add(KindProblems.BadActuator.At(line.Span, line.Value) with { Hint = "two or more positions of one word each, such as \"off / on, by hand\"" });
            return null;
        }
        var actuator = new Actuator(name.Value, [.. positions], ActuatorDrive.Hand);
        foreach (var item in items.Skip(1)) actuator = With(actuator, item, problems);
        return actuator;
    }

    /// <summary>The actuators that coils make by themselves: a winding that no actuator is driven by moves one of its own name.</summary>
    public static IEnumerable<Actuator> Implied(PartKind kind)
    {
        var tested = kind.Elements.Where(e => e.When is not null).SelectMany(e => e.When!.Tests).Select(t => t.Actuator).ToHashSet(StringComparer.Ordinal);
        return from coil in kind.Elements
               where coil.Type == ElementType.Coil && tested.Contains(coil.Name) && kind.Actuators.All(a => a.Name != coil.Name)
               select new Actuator(coil.Name, ["released", "pulled"], ActuatorDrive.Driven) { Pulls = [new("pulled", [coil.Name])] };
    }

    /// <summary>Reports windings that a driven actuator names and the kind does not have.</summary>
    public static void CheckCoils(IReadOnlyList<(YamlText Key, YamlText Value)> lines, PartKind kind, List<Diagnostic> problems)
    {
        foreach (var (key, line) in lines)
        {
            if (kind.Actuators.FirstOrDefault(a => a.Name == key.Value) is not { } actuator) continue;
            foreach (string coil in actuator.Pulls.SelectMany(p => p.Coils).Concat(actuator.KeptBy).Distinct().Where(c => kind.ElementNamed(c) is not { Type: ElementType.Coil }))
                problems.Add(KindProblems.UnknownElement.At(line.Span, coil) with
                {
                    Hint = Names.Meant(coil, kind.Elements.Where(e => e.Type == ElementType.Coil).Select(e => e.Name)),
                });
        }
    }

    private static Actuator With(Actuator actuator, LineItem item, List<Diagnostic> problems)
    {
        switch (item.Text)
        {
            case "by hand": return actuator with { Drive = ActuatorDrive.Hand };
            case "by foot": return actuator with { Drive = ActuatorDrive.Foot };
            case "by key": return actuator with { Drive = ActuatorDrive.Key };
            case "automatic": return actuator with { Drive = ActuatorDrive.Automatic };
            case "shared": return actuator with { Drive = ActuatorDrive.Automatic, IsShared = true };
            case "returns": return actuator with { Returns = true };
            case "cycles": return actuator with { Cycles = true };
            case "not a control": return actuator with { IsNoControl = true };
            case "stays": return actuator with { Stays = true };
        }
        if (item.Text.StartsWith("kept by ", StringComparison.Ordinal)) return actuator with { KeptBy = Coils(item.Text["kept by ".Length..]) };
        if (item.Text.StartsWith("returns from ", StringComparison.Ordinal) && item.Text["returns from ".Length..].Split(" to ") is [var from, var to])
        {
            foreach (string position in new[] { from, to }.Where(p => !actuator.Positions.Contains(p))) Unknown(position);
            return actuator with { Returns = true, ReturnsFrom = from, ReturnsTo = to };
        }
        if (Share(item.Text, PullsAt) is { } pulls) return actuator with { PullsAt = pulls };
        if (Share(item.Text, DropsAt) is { } drops) return actuator with { DropsAt = drops };
        int by = item.Text.IndexOf(" by ", StringComparison.Ordinal);
        if (by > 0)
        {
            string position = item.Text[..by];
            if (!actuator.Positions.Contains(position)) Unknown(position);
            return actuator with { Drive = ActuatorDrive.Driven, Pulls = actuator.Pulls.Add(new(position, Coils(item.Text[(by + 4)..]))) };
        }
        problems.Add(KindProblems.UnknownItem.At(item.Span, item.Text, "an actuator") with { Hint = Names.Meant(item.Text, Items) });
        return actuator;

        void Unknown(string position) =>
            problems.Add(KindProblems.UnknownPosition.At(item.Span, position, actuator.Name) with { Hint = Names.Meant(position, actuator.Positions) });
    }

    // A part of rated volts; a cut-out moves above them.
    private static double? Share(string text, string start) =>
        text.StartsWith(start, StringComparison.Ordinal) && Numbers.TryRead(text.AsSpan(start.Length), out double share) && share is > 0 and < 2 ? share : null;

    private static ImmutableArray<string> Coils(string text) => [.. text.Split(" and ", StringSplitOptions.TrimEntries)];
}
