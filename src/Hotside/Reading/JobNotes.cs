using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>What a job file says beside its circuits and changes.</summary>
internal sealed record JobNotes
{
    /// <summary>The findings that it accepts.</summary>
    public ImmutableArray<Acceptance> Accepted { get; init; } = [];

    /// <summary>What of the alteration is done.</summary>
    public string? Done { get; init; }

    /// <summary>Rules of the order of work that it has of its own.</summary>
    public YamlNode? Rules { get; init; }

    /// <summary>When and by whom was written what was fitted otherwise.</summary>
    public ImmutableArray<KeyValuePair<string, string>> FittedBy { get; init; } = [];

    /// <summary>Readings taken on the vehicle.</summary>
    public ImmutableArray<WrittenReading> Readings { get; init; } = [];
}
