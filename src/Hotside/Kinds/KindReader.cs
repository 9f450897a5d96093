using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads a part kind from data.</summary>
internal sealed class KindReader
{
    private static readonly string[] Keys =
        [
        "like", "letter", "noun", "british noun", "summary", "source", "symbol", "terminals", "inner", "ways", "elements", "actuators", "ratings", "defaults", "options", "case",
        "voltage", "polarity", "current",
    ];

    private readonly YamlMap map;
    private readonly List<Diagnostic> problems;

    private KindReader(YamlMap map, List<Diagnostic> problems)
    {
        this.map = map;
        this.problems = problems;
    }

    /// <summary>The kind under a name; what is wrong with it goes to <paramref name="problems"/>, and the rest is still read.</summary>
    public static PartKind? Read(YamlText id, YamlMap map, Catalogue known, List<Diagnostic> problems)
    {
        if (!ItemId.IsWellFormed(id.Value))
        {
            problems.Add(KindProblems.BadName.At(id.Span, id.Value));
            return null;
        }
        return new KindReader(map, problems).Kind(id.Value, known);
    }

    private PartKind Kind(string id, Catalogue known)
    {
        foreach (var entry in map.Entries.Where(e => !Keys.Contains(e.Key.Value)))
            problems.Add(KindProblems.UnknownKey.At(entry.Key.Span, entry.Key.Value) with { Hint = Names.Meant(entry.Key.Value, Keys) });
        var kind = Like(known) is { } like ? like with { Id = id, Noun = new PartKind(id).Noun, BritishNoun = null } : new PartKind(id);
        kind = kind with
        {
            Letter = Word("letter") ?? kind.Letter,
            Noun = Word("noun") ?? kind.Noun,
            BritishNoun = Word("british noun") ?? kind.BritishNoun,
            Summary = Word("summary") ?? kind.Summary,
            Source = Word("source") ?? kind.Source,
            Symbol = Word("symbol") ?? kind.Symbol,
            Case = CaseOf(kind.Case),
            Voltage = OneOf("voltage", [.. Sensitivity.VoltageWords]) ?? kind.Voltage,
            Polarity = OneOf("polarity", [.. Sensitivity.PolarityWords]) ?? kind.Polarity,
            Current = OneOf("current", [.. Sensitivity.CurrentWords]) ?? kind.Current,
            Ways = Ways() ?? kind.Ways,
            InnerNodes = InnerNodes() ?? kind.InnerNodes,
            Options = Options() ?? kind.Options,
        };
        if (Word("terminals") == "any") kind = kind with { TakesAnyTerminal = true };
        else if (Section("terminals") is { } terminals) kind = kind with { Terminals = [.. terminals.Select(t => TerminalReader.Read(t.Key, t.Value, problems)).OfType<KindTerminal>()] };
        if (Section("actuators") is { } actuators) kind = kind with { Actuators = [.. actuators.Select(a => ActuatorReader.Read(a.Key, a.Value, problems)).OfType<Actuator>()] };
        if (Section("elements") is { } elements) kind = kind with { Elements = ElementReader.ReadAll(elements, kind, problems) };
        kind = kind with { Actuators = [.. kind.Actuators, .. ActuatorReader.Implied(kind)] };
        ElementReader.CheckConditions(Section("elements") ?? [], kind, problems);
        ActuatorReader.CheckCoils(Section("actuators") ?? [], kind, problems);
        if (Section("ratings") is { } ratings) kind = kind with { Ratings = [.. ratings.Select(r => RatingReader.Read(r.Key, r.Value, kind, problems)).OfType<RatingRule>()] };
        return DefaultReader.With(kind, Section("defaults") ?? [], problems);
    }

    private PartKind? Like(Catalogue known)
    {
        if (map.Find("like")?.Value is not YamlText like) return null;
        if (known.Find(like.Value) is { } found) return found;
        problems.Add(KindProblems.UnknownLike.At(like.Span, like.Value) with { Hint = known.Nearest(like.Value) is { } near ? $"did you mean \"{near}\"?" : null });
        return null;
    }

    private string? Word(string key) => map.Find(key)?.Value is YamlText { Value.Length: > 0 } text ? text.Value : null;

    private string? OneOf(string key, string[] words)
    {
        if (map.Find(key)?.Value is not YamlText text) return null;
        if (words.Contains(text.Value)) return text.Value;
        problems.Add(KindProblems.BadWord.At(text.Span, text.Value, key) with { Hint = "one of: " + string.Join(", ", words) });
        return null;
    }

    private CaseKind CaseOf(CaseKind otherwise) => OneOf("case", ["none", "grounded", "optional", "isolated"]) switch
    {
        "none" => CaseKind.None,
        "grounded" => CaseKind.Grounded,
        "optional" => CaseKind.Optional,
        "isolated" => CaseKind.Isolated,
        _ => otherwise,
    };

    private (int Least, int Most)? Ways()
    {
        if (map.Find("ways")?.Value is not YamlText text) return null;
        string[] ends = text.Value.Split(" to ");
        if (ends.Length == 2 && Numbers.TryRead(ends[0], out double least) && Numbers.TryRead(ends[1], out double most) && least is >= 1 and <= 999 && most >= least && most <= 999)
            return ((int)least, (int)most);
        problems.Add(KindProblems.BadWays.At(text.Span, text.Value));
        return null;
    }

    private ImmutableArray<string>? InnerNodes() => map.Find("inner")?.Value switch
    {
        YamlList list => [.. list.Items.OfType<YamlText>().Where(Named).Select(t => t.Value)],
        YamlText text => [.. LineItems.Split(text, problems).Select(i => i.Text)],
        _ => null,
    };

    private bool Named(YamlText text)
    {
        if (Names.IsTerminal(text.Value)) return true;
        problems.Add(KindProblems.BadName.At(text.Span, text.Value));
        return false;
    }

    private ImmutableDictionary<string, string>? Options() =>
        Section("options")?.ToImmutableDictionary(o => o.Key.Value, o => o.Value.Value, StringComparer.Ordinal);

    // A section is a map of texts; anything else is reported once.
    private IReadOnlyList<(YamlText Key, YamlText Value)>? Section(string key)
    {
        switch (map.Find(key)?.Value)
        {
            case null:
            case YamlText { Value.Length: 0 }:
                return null;
            case YamlMap section:
                foreach (var entry in section.Entries.Where(e => e.Value is not YamlText))
                    Report(KindProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "one line of text"));
                return [.. section.Entries.Where(e => e.Value is YamlText).Select(e => (e.Key, (YamlText)e.Value))];
            case var other:
                Report(KindProblems.WrongShape.At(other.Span, key, "a map, a line for each"));
                return null;
        }
    }

    private void Report(Diagnostic problem)
    {
        if (!problems.Contains(problem)) problems.Add(problem);
    }
}
