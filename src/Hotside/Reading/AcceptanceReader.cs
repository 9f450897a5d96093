using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads which findings a job accepts: the code and ids before the colon, the reason behind it.</summary>
internal static class AcceptanceReader
{
    public static readonly DiagnosticKind UnknownCode = new("HS1149", Severity.Error, "Code not accepted", "\"{0}\" is no finding that can be accepted");

    public static readonly DiagnosticKind UnknownItem = new("HS1150", Severity.Error, "Accepted of nothing", "there is no part or wire \"{0}\" of which to accept a finding");

    public static readonly DiagnosticKind NoReason = new("HS1151", Severity.Error, "No reason", "{0} is accepted without a reason");

    public static readonly DiagnosticKind StopOfAll = new("HS1153", Severity.Error, "Stop accepted of everything", "{0} is a stop, and is accepted without saying of what");

    /// <summary>The acceptances of a section, in its order.</summary>
    /// <param name="entries">The lines.</param>
    /// <param name="isItem">Whether there is a part or conductor of an id, before or after.</param>
    /// <param name="context">What the readers share.</param>
    public static ImmutableArray<Acceptance> Read(IEnumerable<YamlEntry> entries, Predicate<string> isItem, ReadingContext context)
    {
        var accepted = ImmutableArray.CreateBuilder<Acceptance>();
        foreach (var entry in entries)
        {
            string[] words = entry.Key.Value.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
            string code = words.Length > 0 ? words[0].ToUpperInvariant() : "";
            var kind = DiagnosticKind.Find(code);
            if (kind is not { Area: not DiagnosticArea.Reading })
                context.Report(UnknownCode.At(entry.Key.Span, words.FirstOrDefault() ?? "") with { Hint = "begin with the code of a finding about the circuit and the ids concerned: \"HS3302 F2: why it may stay\"" });
            // A stop burns or hurts: a later one of the same code must not pass unseen.
            else if (kind.Severity == Severity.Stop && words.Length == 1)
                context.Report(StopOfAll.At(entry.Key.Span, code) with { Hint = $"name the parts or wires that were looked at: \"{code} F2: why it may stay\"" });
            else if (words.Skip(1).FirstOrDefault(w => !isItem(w) && !context.Unreadable.Contains(w)) is { } stranger)
                context.Report(UnknownItem.At(entry.Key.Span, stranger) with { Hint = Names.Meant(stranger, context.Places.Keys) });
            else if (entry.Value is not YamlText { Value.Length: > 0 } reason)
                context.Report(NoReason.At(entry.Key.Span, entry.Key.Value) with { Hint = $"write why behind the colon: \"{entry.Key.Value}: the maker had it so, and the owner wants it\"" });
            else accepted.Add(new(code, [.. words.Skip(1)], reason.Value, entry.Key.Span));
        }
        return accepted.ToImmutable();
    }
}
