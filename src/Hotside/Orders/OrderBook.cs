using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Orders;

/// <summary>The phases of the work and the rules of its order, as data; a job may say other rules under the same names.</summary>
/// <param name="Phases">The phases with the acts that belong to each.</param>
/// <param name="Rules">The rules; those that give way least come first.</param>
internal sealed record OrderBook(ImmutableArray<(string Name, ActClass Acts, bool IsHeading)> Phases, ImmutableArray<OrderRule> Rules)
{
    public static readonly DiagnosticKind BadRule = new("HS4200", Severity.Error, "Rule of order not understood", "the rule of order is not understood: {0}");

    private static readonly Lazy<OrderBook> standard = new(ReadStandard);

    /// <summary>Words that a work bears whose sentence has one of their phrases; <c>^</c> before one stands for the beginning.</summary>
    public ImmutableArray<(string Word, ImmutableArray<string> Phrases)> Sayings { get; init; } = [];

    /// <summary>The word that a sentence of a work bears; <see langword="null"/> for none.</summary>
    public string? WordOf(string sentence) => Sayings.FirstOrDefault(s => s.Phrases.Any(p => p[0] == '^'
        ? sentence.StartsWith(p[1..], StringComparison.OrdinalIgnoreCase) : sentence.Contains(p, StringComparison.OrdinalIgnoreCase))).Word;

    /// <summary>The library's own.</summary>
    public static OrderBook Standard => standard.Value;

    /// <summary>The number of the phase that an act belongs to.</summary>
    public int PhaseOf(HandAct act)
    {
        for (int i = 0; i < Phases.Length; i++)
            if (Phases[i].Acts.Has(act))
                return i;
        return Phases.Length - 1;
    }

    /// <summary>The same with the rules of a job: one under a name that is there takes its place, others come last.</summary>
    /// <param name="rules">The list of rules in the job.</param>
    /// <param name="problems">What is wrong with it.</param>
    public OrderBook With(YamlNode rules, List<Diagnostic> problems)
    {
        var all = Rules;
        foreach (var node in rules is YamlList list ? list.Items : [rules])
        {
            if (Rule(node, all, problems) is not { } rule) continue;
            int there = all.Select(r => r.Id).ToList().IndexOf(rule.Id);
            all = there < 0 ? all.Add(rule) : all.SetItem(there, rule);
        }
        return this with { Rules = all };
    }

    private static OrderBook ReadStandard()
    {
        using var reader = new StreamReader(typeof(OrderBook).Assembly.GetManifestResourceStream("orders/order.yaml")!);
        List<Diagnostic> problems = [];
        var map = YamlReader.Read(new("order.yaml", reader.ReadToEnd()), problems);
        var phases = ((YamlList)map!.Find("phases")!.Value).Items.Cast<YamlMap>().Select(p => (p.Entries[0].Key.Value, ActClass.Parse(((YamlText)p.Entries[0].Value).Value), Said(p, "heading") == "phase"));
        var sayings = ((YamlMap)map.Find("says")!.Value).Entries.Select(e => (e.Key.Value, ((YamlText)e.Value).Value.Split('|', StringSplitOptions.TrimEntries).ToImmutableArray()));
        OrderBook book = new OrderBook([.. phases], []) { Sayings = [.. sayings] }.With(map.Find("rules")!.Value, problems);
        return problems.Count == 0 ? book : throw new InvalidOperationException(string.Join('\n', problems));
    }

    // What a job leaves out of a rule that is there stays as it is.
    private static OrderRule? Rule(YamlNode node, ImmutableArray<OrderRule> known, List<Diagnostic> problems)
    {
        if (node is not YamlMap map || Said(map, "id") is not { Length: > 0 } id) return Wrong(node, "it is a map with an id", problems);
        var old = known.FirstOrDefault(r => r.Id == id);
        string[] keys = ["id", "before", "after", "same", "hard", "told", "reason", "source"];
        if (map.Entries.FirstOrDefault(e => !keys.Contains(e.Key.Value)) is { } wrong) return Wrong(wrong.Key, $"it has no \"{wrong.Key.Value}\"", problems);
        if (old is null && keys.Take(4).Append("reason").FirstOrDefault(k => Said(map, k) is null) is { } missing) return Wrong(node, $"{id} lacks \"{missing}\"", problems);
        Common same = old?.Same ?? Common.None;
        if (Said(map, "same") is { } common && !Enum.TryParse(common, ignoreCase: true, out same)) return Wrong(node, $"\"{common}\" is nothing that two acts can have in common", problems);
        if (!Enum.IsDefined(same)) return Wrong(node, $"\"{Said(map, "same")}\" is nothing that two acts can have in common", problems);
        if (new[] { "hard", "told" }.FirstOrDefault(k => Said(map, k) is not (null or "yes" or "no")) is { } flag) return Wrong(node, $"\"{flag}\" is yes or no, not \"{Said(map, flag)}\"", problems);
        return new(
            id, Said(map, "before") is { } before ? ActClass.Parse(before) : old!.Before, Said(map, "after") is { } after ? ActClass.Parse(after) : old!.After, same,
            Flag(map, "hard", old?.IsHard ?? false), Flag(map, "told", old?.IsTold ?? true), Said(map, "reason") ?? old!.Reason, Said(map, "source") ?? old?.Source ?? "the job");
    }

    private static string? Said(YamlMap map, string key) => (map.Find(key)?.Value as YamlText)?.Value;

    private static bool Flag(YamlMap map, string key, bool otherwise) => Said(map, key) is { } said ? said == "yes" : otherwise;

    private static OrderRule? Wrong(YamlNode node, string what, List<Diagnostic> problems)
    {
        problems.Add(BadRule.At(node.Span, what) with { Hint = "write \"- { id: far-end-first, before: on far, after: on near, same: wire, hard: yes, reason: … }\"" });
        return null;
    }
}
