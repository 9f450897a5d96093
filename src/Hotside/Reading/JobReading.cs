using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>What was read of a job file. The alteration is missing when an error left nothing to work with.</summary>
internal sealed record JobReading(
    string Title,
    ImmutableArray<KeyValuePair<string, string>> TitleBlock,
    Alteration? Alteration,
    ImmutableDictionary<string, SourceSpan> Places,
    ImmutableArray<Diagnostic> Diagnostics,
    ImmutableDictionary<string, SourceText> Sources)
{
    /// <summary>Where what is replaced or renewed is said to be as it is after.</summary>
    public ImmutableDictionary<string, SourceSpan> LaterPlaces { get; init; } = ImmutableDictionary<string, SourceSpan>.Empty;

    /// <summary>What of the alteration is done, as written; <see langword="null"/> where nothing is said.</summary>
    public YamlText? Done { get; init; }

    /// <summary>When and by whom was written what was fitted otherwise, as written.</summary>
    public ImmutableArray<KeyValuePair<string, string>> Fitted { get; init; } = [];

    /// <summary>Rules of the order of work that the job has of its own; <see langword="null"/> where it has none.</summary>
    public YamlNode? Rules { get; init; }

    /// <summary>The findings that the job accepts.</summary>
    public ImmutableArray<Acceptance> Accepted { get; init; } = [];

    /// <summary>The readings taken on the vehicle, as they are written.</summary>
    public ImmutableArray<WrittenReading> Readings { get; init; } = [];
}

/// <summary>A reading taken on the vehicle, as it is written; what it says is looked up later.</summary>
/// <param name="Text">The line.</param>
/// <param name="Span">Its place.</param>
/// <param name="IsAfter">Whether the vehicle was altered then: it stands under the alteration.</param>
internal sealed record WrittenReading(string Text, SourceSpan Span, bool IsAfter);
