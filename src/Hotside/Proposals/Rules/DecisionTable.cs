using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Proposals.Rules;

/// <summary>The table of decisions and options: data of the library.</summary>
/// <param name="Rules">The rules in their order.</param>
/// <param name="Options">The options in their order.</param>
/// <param name="Kinds">Ids of kinds by what a step looks for.</param>
internal sealed record DecisionTable(ImmutableArray<DecisionRule> Rules, ImmutableArray<OptionRule> Options, IReadOnlyDictionary<string, ImmutableArray<string>> Kinds)
{
    private static readonly Lazy<DecisionTable> standard = new(Read);

    /// <summary>The table that comes with the library.</summary>
    public static DecisionTable Standard => standard.Value;

    /// <summary>A rule by its id.</summary>
    public DecisionRule this[string id] => Rules.First(r => r.Id == id);

    private static DecisionTable Read()
    {
        using var reader = new StreamReader(typeof(DecisionTable).Assembly.GetManifestResourceStream("proposals/decide.yaml")!);
        List<Diagnostic> problems = [];
        var map = YamlReader.Read(new("decide.yaml", reader.ReadToEnd()), problems);
        if (map is null || problems.Count > 0) throw new InvalidOperationException(string.Join('\n', problems));
        return new([.. Entries(map, "rules").Select(e => Rule(e.Id, e.Map))],
            [.. Entries(map, "options").Select(e => new OptionRule(e.Id, List(e.Map, "choices"), Text(e.Map, "meaning") ?? ""))],
            ((YamlMap)map.Find("kinds")!.Value).Entries.ToDictionary(e => e.Key.Value, e => List((YamlMap)map.Find("kinds")!.Value, e.Key.Value), StringComparer.Ordinal));
    }

    private static IEnumerable<(string Id, YamlMap Map)> Entries(YamlMap map, string section) =>
        ((YamlMap)map.Find(section)!.Value).Entries.Select(e => (e.Key.Value, (YamlMap)e.Value));

    private static DecisionRule Rule(string id, YamlMap map)
    {
        string test = Text(map, "test") ?? throw new InvalidOperationException($"The rule {id} has no test.");
        const string volts = "volts above ";
        bool isVolts = test.StartsWith(volts, StringComparison.Ordinal);
        double above = 0;
        if (!(isVolts && Numbers.TryRead(test.AsSpan(volts.Length), out above)) && test is not ("turns" or "always"))
            throw new InvalidOperationException($"The test \"{test}\" of the rule {id} is none.");
        return new(id, Enum.Parse<DecisionKind>(Text(map, "decision")!.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true))
        {
            Voltage = Text(map, "voltage"), Polarity = Text(map, "polarity"), Current = Text(map, "current"), On = List(map, "on"), Kinds = List(map, "kinds"),
            VoltsAbove = isVolts ? above : null, IfTurns = test == "turns", Option = Text(map, "option"), Needs = Text(map, "needs"), Reason = Text(map, "reason")!,
            Work = Text(map, "work"), Caution = Text(map, "caution"), Question = Text(map, "ask"), Source = Text(map, "source")!,
        };
    }

    private static string? Text(YamlMap map, string key) => map.Find(key)?.Value is YamlText text ? text.Value : null;

    private static ImmutableArray<string> List(YamlMap map, string key) => Text(map, key) is { } text ? [.. text.Split(',', StringSplitOptions.TrimEntries)] : [];
}
