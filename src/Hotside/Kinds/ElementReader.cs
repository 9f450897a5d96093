using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads an element: <c>main: contact, B to M, items, when plunger pulled</c>.</summary>
internal static class ElementReader
{
    private const string Against = "against ";

    private static readonly string[] Items =
        ["one way", "either polarity", "against case", "internal", "not a control", .. ElementTraitWords.All.Select(t => t.Word)];

    public static ImmutableArray<Element> ReadAll(IReadOnlyList<(YamlText Key, YamlText Value)> lines, PartKind kind, List<Diagnostic> problems) =>
        [.. lines.Select(l => Read(l.Key, l.Value, kind, problems)).OfType<Element>()];

    /// <summary>Reports conditions that name no actuator or position; apart, since coils make actuators of their own.</summary>
    public static void CheckConditions(IReadOnlyList<(YamlText Key, YamlText Value)> lines, PartKind kind, List<Diagnostic> problems)
    {
        foreach (var (key, line) in lines)
        {
            if (kind.ElementNamed(key.Value) is not { When: { } when }) continue;
            int at = line.Value.IndexOf("when ", StringComparison.Ordinal);
            var span = line.Part(at, line.Value.Length - at);
            if (line.Value.IndexOf(',', at) is >= 0 and var comma)
            {
                string swallowed = line.Value[(comma + 1)..].Trim();
                problems.Add(KindProblems.WhenNotLast.At(line.Part(line.Value.IndexOf(swallowed, comma, StringComparison.Ordinal), swallowed.Length), swallowed) with { Hint = "put \"when\" last" });
                continue;
            }
            foreach (var test in when.Tests)
            {
                if (kind.Actuators.FirstOrDefault(a => a.Name == test.Actuator) is not { } actuator)
                    problems.Add(KindProblems.UnknownActuator.At(span, test.Actuator) with { Hint = Names.Meant(test.Actuator, kind.Actuators.Select(a => a.Name)) });
                else
                    foreach (string position in test.Positions.Where(p => !actuator.Positions.Contains(p)))
                        problems.Add(KindProblems.UnknownPosition.At(span, position, actuator.Name) with { Hint = Names.Meant(position, actuator.Positions) });
            }
        }
    }

    private static Element? Read(YamlText name, YamlText line, PartKind kind, List<Diagnostic> problems)
    {
        int when = line.Value.IndexOf(", when ", StringComparison.Ordinal);
        var items = LineItems.Split(when < 0 ? line : line with { Value = line.Value[..when] }, problems);
        string[] ends = items.Length > 1 ? items[1].Text.Split(" to ") : [];
        if (items.IsEmpty || ends.Length != 2)
        {
            problems.Add(KindProblems.BadElement.At(line.Span, line.Value));
            return null;
        }
        if (!Enum.TryParse(items[0].Text, ignoreCase: true, out ElementType type) || items[0].Text.Any(char.IsDigit))
        {
            problems.Add(KindProblems.UnknownType.At(items[0].Span, items[0].Text) with { Hint = Names.Meant(items[0].Text, Enum.GetNames<ElementType>().Select(n => n.ToLowerInvariant())) });
            return null;
        }
        string? against = items.Skip(2).Select(i => i.Text).FirstOrDefault(t => t.StartsWith(Against, StringComparison.Ordinal) && !Items.Contains(t))?[Against.Length..];
        foreach (var item in items.Skip(2).Where(i => !Items.Contains(i.Text) && i.Text != Against + against))
            problems.Add(KindProblems.UnknownItem.At(item.Span, item.Text, "an element") with { Hint = Names.Meant(item.Text, Items) });
        foreach (string end in ends.Concat(against is null ? [] : [against]).Where(e => !IsEnd(e, kind)))
            problems.Add(KindProblems.UnknownEnd.At(items[1].Span, name.Value, end) with { Hint = Names.Meant(end, kind.Terminals.Select(t => t.Name).Concat(kind.InnerNodes).Append("case")) });
        bool Has(string item) => items.Skip(2).Any(i => i.Text == item);
        return new(name.Value, type, ends[0], ends[1])
        {
            IsOneWay = Has("one way"),
            TakesEitherPolarity = Has("either polarity"),
            IsAgainstCase = Has("against case"),
            Against = against,
            IsInternal = Has("internal"),
            IsNoControl = Has("not a control"),
            Traits = ElementTraitWords.All.Where(t => Has(t.Word)).Aggregate(ElementTraits.None, (all, t) => all | t.Trait),
            When = when < 0 ? null : Condition(line.Value[(when + ", when ".Length)..]),
        };
    }

    private static bool IsEnd(string end, PartKind kind) =>
        kind.TakesAnyTerminal || kind.InnerNodes.Contains(end) || kind.Terminals.Any(t => t.Name == end) || (end == "case" && kind.HasCaseTerminal);

    // "actuator position {or position} {and …}". The actuator's name ends where the text of its first position begins;
    // names of several words are those of coils and actuators ("voltage coil released"), so the last word is the position.
    private static ElementCondition Condition(string text) => new([.. text.Split(" and ").Select(test =>
    {
        string[] alternatives = test.Split(" or ");
        int space = alternatives[0].LastIndexOf(' ');
        return space < 0 ? new PositionTest(alternatives[0], [""]) : new(alternatives[0][..space].Trim(), [alternatives[0][(space + 1)..], .. alternatives.Skip(1).Select(a => a.Trim())]);
    })]);
}
