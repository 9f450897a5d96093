namespace Hotside.Layouts;

/// <summary>Spacing in modules (the defaults are those of the hand-drawn sheets).</summary>
/// <param name="Channel">Least height between the bodies of two rows.</param>
/// <param name="BoxToBox">Least distance of a box, its text block included, to the next box.</param>
/// <param name="WireToBox">Least distance of a passing conductor to a box on its right.</param>
/// <param name="Track">Distance of neighbouring trunks and passing conductors.</param>
/// <param name="FillWidth">Width the drawing is stretched to when it is narrower.</param>
/// <param name="FillHeight">Height the drawing is stretched to when it is lower.</param>
internal sealed record LayoutOptions(
    int Channel = 6,
    int BoxToBox = 2,
    int WireToBox = 2,
    int Track = 2,
    int? FillWidth = null,
    int? FillHeight = null);
