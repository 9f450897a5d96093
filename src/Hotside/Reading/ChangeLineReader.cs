using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Brings the three ways of writing a change (line, quoted line, map) into one form.</summary>
internal static class ChangeLineReader
{
    public static readonly string[] Verbs = ["take out", "fit", "replace", "reverse", "remount", "run", "move", "renew", "cut", "do"];

    // What people say for these.
    private static readonly Dictionary<string, string> Others = new(StringComparer.OrdinalIgnoreCase)
    {
        ["remove"] = "take out", ["delete"] = "take out", ["drop"] = "take out", ["add"] = "fit", ["install"] = "fit", ["mount"] = "fit", ["change"] = "replace",
        ["exchange"] = "replace", ["swap"] = "reverse", ["turn"] = "reverse", ["connect"] = "run", ["wire"] = "run", ["reconnect"] = "move", ["rewire"] = "renew",
    };

    // What may stand beside the verb in map form.
    private static readonly string[] Keys = ["part", "wire", "ends", "map", "case", "insert", "as", "reversed", "sentence", "because"];

    public static ChangeLine? Read(YamlNode node, ReadingContext context) => node switch
    {
        YamlText text => OfText(text, context),
        YamlMap { Entries: [{ } only] } map when !Verbs.Contains(only.Key.Value) => OfEntry(only, map.Span, context),
        YamlMap map => OfMap(map, context),
        _ => Unknown(node.Span, "a list within a list within a list", context),
    };

    // "take out w3", or a whole line in quotes: "fit K1: relay, …".
    private static ChangeLine? OfText(YamlText text, ReadingContext context)
    {
        int colon = text.Value.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? Head(text, context) : With(text with { Value = text.Value[..colon] }, text with
        {
            Value = text.Value[(colon + 2)..],
            Offset = text.Offset < 0 ? -1 : text.Offset + colon + 2,
        }, text.Span, context);
    }

    private static ChangeLine? OfEntry(YamlEntry entry, SourceSpan span, ReadingContext context) => entry.Value switch
    {
        YamlText value => With(entry.Key, value, span, context),
        _ => Unknown(entry.Value.Span, entry.Key.Value, context),
    };

    private static ChangeLine? With(YamlText head, YamlText rest, SourceSpan span, ReadingContext context) =>
        // A colon within a reason divides nothing.
        head.Value.Contains(", because ", StringComparison.Ordinal) ? Head(head with { Value = $"{head.Value}: {rest.Value}" }, context) is { } whole ? whole with { Span = span } : null
        : Head(head, context, isSaid: true) is not { } line ? null
        // The commas of a sentence divide nothing, and its reason is part of it.
        : line with { Items = line.Verb == "do" ? [] : LineItems.Split(rest, context.Problems), Rest = rest.Value, Span = span };

    // The verb, its ids, and what may stand behind them without a colon: "reversed", a reason.
    private static ChangeLine? Head(YamlText text, ReadingContext context, bool isSaid = false)
    {
        string? verb = Verbs.FirstOrDefault(v => text.Value == v || text.Value.StartsWith(v + " ", StringComparison.Ordinal));
        if (verb is null) return Unknown(text.Span, text.Value, context, isSaid);
        var items = LineItems.Split(text, verb.Length, context.Problems);
        bool reversed = verb == "replace" && items is [.., { IsReason: false } last] && last.Text.EndsWith(" reversed", StringComparison.Ordinal);
        if (reversed) items = items.SetItem(items.Length - 1, items[^1] with { Text = items[^1].Text[..^" reversed".Length].TrimEnd() });
        return new(verb, text.Part(0, verb.Length), [.. items.Where(i => !i.IsReason)], [.. items.Where(i => i.IsReason)], text.Span) { Reversed = reversed };
    }

    private static ChangeLine? OfMap(YamlMap map, ReadingContext context)
    {
        if (map.Entries.FirstOrDefault(e => Verbs.Contains(e.Key.Value)) is not { } entry)
            return Unknown(map.Span, map.Entries.IsEmpty ? "" : map.Entries[0].Key.Value, context);
        if (map.Entries.FirstOrDefault(e => e != entry && !Keys.Contains(e.Key.Value)) is { } wrong)
        {
            context.Report(ReadingProblems.UnknownKey.At(wrong.Key.Span, wrong.Key.Value) with { Hint = Names.Meant(wrong.Key.Value, Keys) });
            context.Unreadable.UnionWith(MapForm.Texts(map, entry.Key.Value).Select(t => t.Value));
            return null;
        }
        var ids = MapForm.Texts(map, entry.Key.Value).Select(t => new LineItem(t.Value, t.Span)).ToImmutableArray();
        var items = ImmutableArray.CreateBuilder<LineItem>();
        if (map.Find("part")?.Value is YamlMap part) items.AddRange(MapForm.PartItems(part, context));
        if (map.Find("wire")?.Value is YamlMap wire) items.AddRange(MapForm.WireItems(wire, context));
        foreach (var (from, to) in MapForm.Pairs(map, "ends")) items.Add(new($"{from.Value} to {to.Value}", from.Span));
        foreach (var (old, now) in MapForm.Pairs(map, "map")) items.Add(new($"{old.Value} = {now.Value}", old.Span));
        foreach (var text in MapForm.Texts(map, "case")) items.Add(new(text.Value == "insulated" ? "case insulated" : "case on " + text.Value, text.Span));
        foreach (var text in MapForm.Texts(map, "because")) items.Add(new(text.Value, text.Span) { IsReason = true });
        bool reversed = MapForm.Texts(map, "reversed").Any(t => t.Value is "true" or "yes");
        string rest = MapForm.Texts(map, "sentence").FirstOrDefault()?.Value ?? string.Join(", ", items.Select(i => i.Text));
        if (entry.Key.Value == "cut" && MapForm.Texts(map, "insert").ToArray() is [var first, var second] && MapForm.Texts(map, "as").FirstOrDefault() is { } name)
            items.Insert(0, new($"{first.Value} and {second.Value} as {name.Value}", first.Span));
        return new(entry.Key.Value, entry.Key.Span, ids, items.ToImmutable(), map.Span) { Reversed = reversed, Rest = rest };
    }

    private static ChangeLine? Unknown(SourceSpan span, string text, ReadingContext context, bool isSaid = false)
    {
        string[] words = text.Split(' ');
        // Who swaps a part for something replaces it.
        string? near = words[0] is "swap" or "Swap" && isSaid ? "replace" : Others.GetValueOrDefault(words[0]) ?? Circuits.NearestName.Of(words[0], Verbs) ?? Circuits.NearestName.Of(string.Join(' ', words.Take(2)), Verbs);
        context.Report(ReadingProblems.UnknownVerb.At(span, text) with { Hint = near is null ? "a change begins with: " + string.Join(", ", Verbs) : $"did you mean \"{near}\"?" });
        return null;
    }
}
