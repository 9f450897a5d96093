using System.Collections.Immutable;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads the fields of the title block; their names are those of ISO 7200 (from memory).</summary>
internal static class TitleBlockReader
{
    public static readonly string[] Fields =
    [
        "legal owner", "identification number", "date of issue", "revision", "sheet", "language", "title", "supplementary title", "approval person", "creator",
        "document type", "responsible department", "technical reference", "document status", "classification", "paper size",
    ];

    public static ImmutableArray<KeyValuePair<string, string>> Read(YamlNode? node, ReadingContext context)
    {
        if (node is null or YamlText { Value.Length: 0 }) return [];
        if (node is not YamlMap map)
        {
            context.Report(ReadingProblems.WrongShape.At(node.Span, "title block", "a map, a line for each field"));
            return [];
        }
        foreach (var entry in map.Entries.Where(e => !Fields.Contains(e.Key.Value)))
            context.Report(ReadingProblems.UnknownField.At(entry.Key.Span, entry.Key.Value) with { Hint = Names.Meant(entry.Key.Value, Fields) });
        foreach (var entry in map.Entries.Where(e => e.Value is not YamlText))
            context.Report(ReadingProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "a text"));
        return [.. map.Entries.Where(e => e.Value is YamlText).Select(e => KeyValuePair.Create(e.Key.Value, ((YamlText)e.Value).Value))];
    }
}
