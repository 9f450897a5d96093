using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>A rail as one view shows it, or both when they show the same; <paramref name="Box"/> is null for the feed rail.</summary>
internal sealed record PlacedRail(string? Box, SeenIn Seen, int Y, int X1, int X2);
