using System.Collections.Immutable;

namespace Hotside.Layouts;

/// <summary>The line of a conductor from its From end to its To end, straight runs merged, at least two points.</summary>
internal sealed record PlacedWire(string Id, ImmutableArray<(int X, int Y)> Points);
