using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads settings against the parts of both circuits: an item about a part that one circuit lacks is silent there.</summary>
internal sealed class SettingReader(ReadingContext context, SettableItems before, SettableItems after)
{
    /// <summary>The settings of a section for the before circuit and for the after circuit.</summary>
    public (ImmutableArray<Setting> Before, ImmutableArray<Setting> After) Read(YamlMap section)
    {
        var first = ImmutableArray.CreateBuilder<Setting>();
        var second = ImmutableArray.CreateBuilder<Setting>();
        foreach (var entry in section.Entries)
        {
            var inBefore = new Collector(entry.Key.Value);
            var inAfter = new Collector(entry.Key.Value);
            foreach (var item in Items(entry.Value)) Take(item, inBefore, inAfter);
            if (entry.Value is YamlList) context.Report(ReadingProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "one line of text, or a map"));
            if ((inBefore.PutTwice() ?? inAfter.PutTwice()) is { } twice) context.Report(ReadingProblems.PositionTwice.At(entry.Value.Span, twice) with { Hint = "say one of them" });
            first.Add(inBefore.Setting());
            second.Add(inAfter.Setting());
        }
        return (first.ToImmutable(), second.ToImmutable());
    }

    private IEnumerable<LineItem> Items(YamlNode node) => node switch
    {
        YamlText text => LineItems.Split(text, context.Problems),
        YamlMap map => map.Entries.Where(e => e.Value is YamlText).Select(e => new LineItem($"{e.Key.Value} {((YamlText)e.Value).Value}", e.Key.Span)),
        _ => [],
    };

    private void Take(LineItem item, Collector inBefore, Collector inAfter)
    {
        string[] words = item.Words;
        if (words.Length < 2)
        {
            Unknown(item, words.FirstOrDefault() ?? "");
            return;
        }
        bool known = false, taken = false;
        Diagnostic? problem = null;
        foreach (var ((parts, wires), collector) in new[] { (before, inBefore), (after, inAfter) })
        {
            if (CircumstanceReader.Read(item, parts) is { } value)
            {
                if (!value.IsThere(parts, wires)) continue;
                known = true;
                var odd = CircumstanceReader.Problem(value, item, parts, wires) ?? collector.Add(value, item, value.Implied(parts));
                problem ??= odd;
                taken |= odd is null;
                continue;
            }
            // A condition comes first: the engine that runs and the block that is a part may bear one name.
            var shared = Shared(parts, words);
            var part = shared is null ? parts.FirstOrDefault(p => p.Id == words[0]) : null;
            if (part is null && shared is null) continue;
            known = true;
            var wrong = part is null ? null : Fix(part, words, item, collector);
            if (shared is not null) collector.Positions.Add(shared);
            problem ??= wrong;
            taken |= wrong is null;
        }
        // One circuit may lack a position that the other has; only what neither has is wrong.
        if (!known && CircumstanceReader.Read(item, [.. before.Parts, .. after.Parts]) is { Part: Element.Engine or SetValue.Charge } nowhere)
            context.Report(CircumstanceReader.Problem(nowhere, item, [.. before.Parts, .. after.Parts], [])!);
        else if (!known) Unknown(item, words[0]);
        else if (!taken) context.Report(problem!);
    }

    private static Diagnostic? Fix(Part part, string[] words, LineItem item, Collector collector)
    {
        string rest = string.Join(' ', words.Skip(1));
        if (QuantityReader.Read(rest, out _) is { } value)
        {
            if (part.Kind.Elements.All(e => e.Type is not (ElementType.Sender or ElementType.Resistor)) || value.Unit != Unit.Ohm)
                return ReadingProblems.NoSender.At(item.Span, part.Id, QuantityText.Symbol(value.Unit));
            collector.Values.Add(new(part.Id, value));
            return null;
        }
        string position = words[^1], actuator = string.Join(' ', words[1..^1]);
        var having = part.Kind.Actuators.Where(a => a.Positions.Contains(position) && (actuator.Length == 0 || a.Name == actuator)).ToArray();
        if (having.Length > 1)
            return ReadingProblems.AmbiguousPosition.At(item.Span, part.Id, position) with { Hint = "say which: " + string.Join(", ", having.Select(a => $"\"{part.Id} {a.Name} {position}\"")) };
        if (having.Length == 0)
            return ReadingProblems.UnknownPosition.At(item.Span, part.Id, rest) with { Hint = Positions(part, rest) };
        collector.Positions.Add(new(having[0].IsShared ? null : part.Id, having[0].Name, position));
        return null;
    }

    private static string Positions(Part part, string asked)
    {
        string[] all = [.. part.Kind.Actuators.SelectMany(a => part.Kind.Actuators.Length > 1 ? a.Positions.Select(p => a.Name + " " + p) : a.Positions)];
        return all.Length == 0 ? $"{part.Kind.WithArticle()} does not move, and no part here has a condition of that name" : Names.Meant(asked, all) ?? "";
    }

    private static SetPosition? Shared(IReadOnlyCollection<Part> parts, string[] words)
    {
        string name = string.Join(' ', words[..^1]);
        var actuator = parts.SelectMany(p => p.Kind.Actuators).FirstOrDefault(a => a.IsShared && a.Name == name && a.Positions.Contains(words[^1]));
        return actuator is null ? null : new(null, name, words[^1]);
    }

    private void Unknown(LineItem item, string name)
    {
        if (context.Unreadable.Contains(name)) return;
        var known = before.Parts.Concat(after.Parts).Where(p => !p.Kind.Actuators.IsEmpty).Select(p => p.Id)
            .Concat(before.Parts.Concat(after.Parts).SelectMany(p => p.Kind.Actuators).Where(a => a.IsShared).Select(a => a.Name))
            // A temperature may be a wire's.
            .Concat(QuantityReader.Read(string.Join(' ', item.Words.Skip(1)), out _) is { Unit: Unit.Celsius } ? before.Conductors.Concat(after.Conductors).Select(c => c.Id) : []).Distinct();
        context.Report(ReadingProblems.UnknownSetting.At(item.Span, item.Text) with { Hint = Names.Meant(name, known) ?? "write a part and a position, such as \"S1 pressed\"" });
    }

    /// <summary>One setting while its items are read.</summary>
    private sealed class Collector(string name)
    {
        public List<SetPosition> Positions { get; } = [];

        public List<SetValue> Values { get; } = [];

        /// <summary>Adds a value, and the condition that goes with it where the setting does not say it.</summary>
        /// <returns>What is wrong with that.</returns>
        public Diagnostic? Add(SetValue value, LineItem item, SetPosition? implied)
        {
            if (Values.Any(v => v.Part == value.Part && v.Quantity.Unit == value.Quantity.Unit)) return ReadingProblems.GivenTwice.At(item.Span, value.Part) with { Hint = "give it once" };
            Values.Add(value);
            if (implied is not null && !Positions.Contains(implied)) Positions.Add(implied);
            return null;
        }

        /// <summary>What stands in two positions at once.</summary>
        public string? PutTwice() => Positions.GroupBy(p => (p.Part, p.Actuator)).Where(g => g.Select(p => p.Position).Distinct().Skip(1).Any())
            .Select(g => g.Key.Part ?? g.Key.Actuator).FirstOrDefault();

        public Setting Setting() => new(name, [.. Positions.Distinct()], [.. Values]);
    }
}

/// <summary>What settings of a circuit may name.</summary>
internal sealed record SettableItems(IReadOnlyCollection<Part> Parts, ImmutableArray<Conductor> Conductors)
{
    public static SettableItems Of(Circuit circuit) => new(circuit.Parts, circuit.Conductors);
}
