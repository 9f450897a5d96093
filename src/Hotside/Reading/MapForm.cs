using System.Collections.Immutable;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Turns the map form of parts and wires into the items of the line form, so that one grammar reads both.</summary>
internal static class MapForm
{
    private static readonly string[] PartKeys = ["kind", "name", "ratings", "joins", "case", "in", "at", "map", "options", "free", "because"];
    private static readonly string[] WireKeys = ["from", "to", "size", "colour", "color", "length", "resistance", "temperature", "joint", "name", "flags", "insulation", "loom", "at", "because"];

    public static ImmutableArray<LineItem> PartItems(YamlMap map, ReadingContext context)
    {
        Check(map, PartKeys, context);
        var items = ImmutableArray.CreateBuilder<LineItem>();
        void Add(string key, Func<string, string> text, bool quoted = false, bool reason = false)
        {
            foreach (var value in Texts(map, key)) items.Add(new(text(value.Value), value.Span) { IsQuoted = quoted, IsReason = reason });
        }
        Add("kind", t => t);
        Add("name", t => t, quoted: true);
        Add("ratings", t => t);
        Add("options", t => t);
        foreach (var (key, value) in Pairs(map, "joins")) items.Add(new($"{key.Value} on {value.Value}", key.Span));
        Add("case", t => t == "insulated" ? "case insulated" : "case on " + t);
        Add("free", t => t + " free");
        foreach (var (key, value) in Pairs(map, "map")) items.Add(new($"{key.Value} = {value.Value}", key.Span));
        Add("in", t => "in " + t);
        Add("at", t => "at " + t);
        Add("because", t => t, reason: true);
        return items.ToImmutable();
    }

    public static ImmutableArray<LineItem> WireItems(YamlMap map, ReadingContext context, bool ends = true)
    {
        Check(map, WireKeys, context);
        var items = ImmutableArray.CreateBuilder<LineItem>();
        if (ends && map.Find("from")?.Value is YamlText from && map.Find("to")?.Value is YamlText to) items.Add(new($"{from.Value} to {to.Value}", from.Span));
        YamlText? size = Texts(map, "size").FirstOrDefault(), colour = Texts(map, "colour").Concat(Texts(map, "color")).FirstOrDefault();
        if (size is not null || colour is not null) items.Add(new($"{size?.Value} {colour?.Value}".Trim(), (size ?? colour)!.Span));
        foreach (string key in new[] { "length", "resistance", "temperature", "flags" })
            foreach (var value in Texts(map, key)) items.Add(new(value.Value, value.Span));
        foreach (var value in Texts(map, "name")) items.Add(new(value.Value, value.Span) { IsQuoted = true });
        foreach (string key in new[] { "insulation", "loom", "at", "joint" })
            foreach (var value in Texts(map, key)) items.Add(new($"{key} {value.Value}", value.Span));
        foreach (var value in Texts(map, "because")) items.Add(new(value.Value, value.Span) { IsReason = true });
        return items.ToImmutable();
    }

    /// <summary>The texts under a key, given alone or as a list.</summary>
    public static IEnumerable<YamlText> Texts(YamlMap map, string key) => map.Find(key)?.Value switch
    {
        YamlText { Value.Length: > 0 } text => [text],
        YamlList list => list.Items.OfType<YamlText>(),
        _ => [],
    };

    /// <summary>The pairs of a map under a key.</summary>
    public static IEnumerable<(YamlText Key, YamlText Value)> Pairs(YamlMap map, string key) =>
        map.Find(key)?.Value is YamlMap pairs ? pairs.Entries.Where(e => e.Value is YamlText).Select(e => (e.Key, (YamlText)e.Value)) : [];

    private static void Check(YamlMap map, string[] keys, ReadingContext context)
    {
        foreach (var entry in map.Entries.Where(e => !keys.Contains(e.Key.Value)))
            context.Report(ReadingProblems.UnknownKey.At(entry.Key.Span, entry.Key.Value) with { Hint = Names.Meant(entry.Key.Value, keys) });
    }
}
