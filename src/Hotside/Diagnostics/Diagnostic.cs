using System.Collections.Immutable;

namespace Hotside.Diagnostics;

/// <summary>Something wrong or doubtful: what, where, and what to do.</summary>
/// <param name="Kind">What sort of finding it is.</param>
/// <param name="Message">What is wrong, in the user's words.</param>
public sealed record Diagnostic(DiagnosticKind Kind, string Message)
{
    /// <summary>Where in a file; <see langword="null"/> where there is no file.</summary>
    public SourceSpan? Span { get; init; }

    /// <summary>The ids of the parts and conductors concerned, the culprit first; may be empty.</summary>
    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>What to do, preferably the nearest right name; <see langword="null"/> when the message says it.</summary>
    public string? Hint { get; init; }

    /// <summary>Why the job accepts it, in the words of its file; <see langword="null"/> when it does not. What is accepted stays on the list and counts for no exit code.</summary>
    public string? Accepted { get; init; }

    /// <summary>The word of its line that is at fault, where it is one; the line's reader finds it.</summary>
    internal string? Word { get; init; }

    /// <summary>The kind's code.</summary>
    public string Code => Kind.Code;

    /// <summary>How bad it is.</summary>
    public Severity Severity => Kind.Severity;

    /// <summary>One line, and one more for the hint: <c>van.yaml:9:7: error HS1104: H1 has no terminal "3"</c>.</summary>
    public override string ToString()
    {
        string place = Span is null ? "" : Span + ": ";
        string line = $"{place}{(Accepted is null ? "" : "accepted ")}{Severity.ToString().ToLowerInvariant()} {Code}: {Message}";
        return Accepted is not null ? line + "\n     accepted: " + Accepted : Hint is null ? line : line + "\n     hint: " + Hint;
    }
}
