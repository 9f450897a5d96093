using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Reading;

/// <summary>What a part line says: the part, how a replacement maps terminals, and why.</summary>
internal sealed record PartLine(PartSpec Spec, ImmutableArray<(string Old, string New)> Map, string? Reason);
