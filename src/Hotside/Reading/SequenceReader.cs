using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads sequences: settings by their names, with <c>then</c> between them, or as a list.</summary>
internal static class SequenceReader
{
    private const string Between = " then ";

    /// <summary>The sequences of a section for the before circuit and for the after circuit; what one of them lacks a step of is not there.</summary>
    public static (ImmutableArray<Sequence> Before, ImmutableArray<Sequence> After) Read(
        IEnumerable<YamlEntry> entries, ImmutableArray<Setting> before, ImmutableArray<Setting> after, ReadingContext context)
    {
        var first = ImmutableArray.CreateBuilder<Sequence>();
        var second = ImmutableArray.CreateBuilder<Sequence>();
        foreach (var entry in entries)
        {
            var steps = Steps(entry.Value).ToArray();
            if (steps.Length == 0) context.Report(ReadingProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "names of settings with \"then\" between them, or a list of them"));
            string[] known = [.. before.Concat(after).Select(s => s.Name).Append(Sequence.AllOff).Distinct(StringComparer.Ordinal)];
            foreach (var (step, span) in steps.Where(s => !known.Contains(s.Name)))
                context.Report(ReadingProblems.UnknownStep.At(span, step) with { Hint = Names.Meant(step, known) });
            if (steps.Length == 0 || steps.Any(s => !known.Contains(s.Name))) continue;
            if (Sequence.Of(entry.Key.Value, steps.Select(s => s.Name), before, out _) is { } was) first.Add(was);
            if (Sequence.Of(entry.Key.Value, steps.Select(s => s.Name), after, out _) is { } now) second.Add(now);
        }
        return (first.ToImmutable(), second.ToImmutable());
    }

    private static IEnumerable<(string Name, Diagnostics.SourceSpan Span)> Steps(YamlNode node) => node switch
    {
        YamlText { Value.Length: > 0 } text => text.Value.Split(Between, StringSplitOptions.TrimEntries).Select(s => (s, text.Span)),
        YamlList list => list.Items.OfType<YamlText>().Select(t => (t.Value, t.Span)),
        _ => [],
    };
}
