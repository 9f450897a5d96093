using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>A joint of three arms, with the views that show three.</summary>
internal sealed record PlacedDot(int X, int Y, SeenIn Seen);
