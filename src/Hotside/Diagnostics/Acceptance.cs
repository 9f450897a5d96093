using System.Collections.Immutable;

namespace Hotside.Diagnostics;

/// <summary>What a job says of a finding that is right and is to stay: its code, the things concerned, and why.</summary>
/// <param name="Code">The code.</param>
/// <param name="Items">Ids of parts and conductors that the finding must be about; empty: whatever it is about.</param>
/// <param name="Reason">Why it is accepted; not empty.</param>
/// <param name="Span">Where the job says so; <see langword="null"/> where there is no file.</param>
internal sealed record Acceptance(string Code, ImmutableArray<string> Items, string Reason, SourceSpan? Span)
{
    public static readonly DiagnosticKind Idle = new("HS3390", Severity.Note, "Accepted, but not found",
        "{0} is accepted here, and nothing of that sort is found");

    /// <summary>What is written before the colon: <c>HS3302 F2 w9</c>.</summary>
    public string Key => string.Join(' ', [Code, .. Items]);

    /// <summary>Whether it is about a finding: the same code, and all its items among those of the finding.</summary>
    public bool Covers(Diagnostic finding) => finding.Code == Code && Items.All(finding.Items.Contains);

    /// <summary>Findings with the reasons of those that are accepted, and a note for each acceptance that accepts nothing.</summary>
    public static IEnumerable<Diagnostic> Apply(IReadOnlyCollection<Diagnostic> findings, ImmutableArray<Acceptance> accepted) =>
        findings.Select(f => accepted.FirstOrDefault(a => a.Covers(f)) is { } by ? f with { Accepted = by.Reason } : f)
            .Concat(accepted.Where(a => !findings.Any(a.Covers)).Select(a => Idle.At(a.Span, a.Key) with { Items = a.Items, Hint = "take the line out" }));
}
