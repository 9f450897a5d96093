namespace Hotside.Layouts;

/// <summary>A pin of a box; <paramref name="X"/> and <paramref name="Y"/> in modules from the box's top left corner.</summary>
internal sealed record LayoutPin(string Name, Side Side, int X, int Y);
