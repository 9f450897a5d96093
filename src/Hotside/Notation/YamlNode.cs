using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>A node of the job file with its place.</summary>
internal abstract record YamlNode(SourceSpan Span);

/// <summary>A text; nothing is ever taken as a number, a date or a truth value.</summary>
/// <param name="Value">The text.</param>
/// <param name="Span">Its place, quotes included.</param>
/// <param name="Offset">How far the text's first character lies behind the place's start; −1 where characters and columns do not run in step.</param>
internal sealed record YamlText(string Value, SourceSpan Span, int Offset) : YamlNode(Span)
{
    /// <summary>Whether it was written in quotes.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>The place of some of its characters.</summary>
    public SourceSpan Part(int start, int length) => Offset < 0 ? Span
        : new(Span.File, Span.Line, Span.Column + Offset + start, Span.Line, Span.Column + Offset + start + Math.Max(1, length));
}

/// <summary>Keys with their values, in the order of the file.</summary>
internal sealed record YamlMap(ImmutableArray<YamlEntry> Entries, SourceSpan Span) : YamlNode(Span)
{
    public YamlEntry? Find(string key) => Entries.FirstOrDefault(e => e.Key.Value == key);
}

internal sealed record YamlEntry(YamlText Key, YamlNode Value);

internal sealed record YamlList(ImmutableArray<YamlNode> Items, SourceSpan Span) : YamlNode(Span);
