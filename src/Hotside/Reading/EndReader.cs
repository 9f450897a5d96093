using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads ends and finds the terminals they mean.</summary>
internal static class EndReader
{
    /// <summary>Reads <c>A to B</c>, the first item of a wire.</summary>
    public static (End From, End To)? Pair(LineItem item, ReadingContext context)
    {
        string[] ends = item.Text.Split(" to ");
        if (ends.Length == 2)
            return (Read(ends[0], item.Part(0, ends[0].Length), context), Read(ends[1], item.Part(ends[0].Length + " to ".Length, ends[1].Length), context)) is ({ } from, { } to) ? (from, to) : null;
        context.Report(ReadingProblems.BadWire.At(item.Span, item.Text) with { Hint = "an end is part.terminal, a part with one terminal, or chassis: \"G1.neg to chassis\"" });
        return null;
    }

    /// <summary>Reads an end as written; what it names is not looked up.</summary>
    public static End? Read(string text, SourceSpan span, ReadingContext context)
    {
        text = text.Trim();
        string[] halves = text.Split('.');
        bool good = halves.Length switch
        {
            1 => ItemId.IsWellFormed(text),
            2 => ItemId.IsWellFormed(halves[0]) && Names.IsTerminal(halves[1]),
            _ => false,
        };
        if (good) return End.Parse(text);
        // "S1.1 14 RD" was meant as two items.
        bool lacksComma = text.IndexOf(' ', StringComparison.Ordinal) is > 0 and var space && text[..space].Contains('.', StringComparison.Ordinal);
        context.Report(ReadingProblems.BadEnd.At(span, text) with
        {
            Hint = (Dotted(text, context) ?? DottedEnd.Advice(text)) is { } dotted ? dotted : lacksComma ? $"a comma is missing behind {text[..text.IndexOf(' ', StringComparison.Ordinal)]}" : "an end is part.terminal, a part with one terminal, chassis, or free for a spare",
        });
        return null;
    }

    private static string? Dotted(string text, ReadingContext context) => DottedEnd.Advice(text, id => context.Parts.GetValueOrDefault(id)?.Kind);

    /// <summary>The terminal that an end means in the before circuit; <see langword="null"/> and a report when there is none.</summary>
    public static End? Resolve(End end, SourceSpan span, ReadingContext context)
    {
        if (end.Part is not { } id) return end;
        if (!context.Parts.TryGetValue(id, out var part))
        {
            if (!context.Unreadable.Contains(id))
                context.Report(ReadingProblems.UnknownPart.At(span, id) with { Hint = Dotted(id, context) ?? Names.Meant(id, context.Parts.Keys) ?? "add it to the parts, or name one that is there" });
            return null;
        }
        if (part.Kind.TerminalMeant(end.Terminal) is { } terminal)
        {
            if (context.Marks.Note(part, terminal, end.Terminal) is { } first) context.Report(EndNames.WrittenOtherwise.At(span, end.ToString(), $"{id}.{first}") with { Hint = EndNames.OneMark(id, first) });
            return End.At(id, terminal);
        }
        context.Report((end.Terminal.Length == 0 ? ReadingProblems.TerminalMissing.At(span, id) : ReadingProblems.UnknownTerminal.At(span, id, end.Terminal)) with
        {
            Hint = TerminalAdvice.Of(part.Kind, end.Terminal, context.Kinds),
        });
        return null;
    }
}
