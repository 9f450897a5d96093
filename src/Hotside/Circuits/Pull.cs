using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>Into which position some windings bring a driven actuator.</summary>
/// <param name="Position">The position.</param>
/// <param name="Coils">The names of the coil elements, any one of which does it; at least one.</param>
public sealed record Pull(string Position, ImmutableArray<string> Coils);
