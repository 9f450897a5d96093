namespace Hotside.Layouts;

/// <summary>The box of a conductor's label.</summary>
/// <param name="OnVertical">Stands beside a vertical run, else beside a horizontal one.</param>
/// <param name="Side">The side of the line on which the label stands.</param>
internal sealed record PlacedLabel(string Wire, double X, double Y, double Width, double Height, bool OnVertical, Side Side);
