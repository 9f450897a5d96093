using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>What a part line says: the part, how a replacement maps terminals, and why.</summary>
internal sealed record PartLine(PartSpec Spec, ImmutableArray<(string Old, string New)> Map, string? Reason)
{
    /// <summary>The place of each joint, in their order.</summary>
    public required ImmutableArray<SourceSpan> JointSpans { get; init; }

    /// <summary>The place where the mount is said.</summary>
    public required SourceSpan? CaseSpan { get; init; }
}
