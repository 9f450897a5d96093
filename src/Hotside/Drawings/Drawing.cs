using System.Collections.Immutable;
using Hotside.Drawings;

namespace Hotside;

/// <summary>A finished picture, to be written by one of the outputs. Immutable; safe to share between threads.</summary>
public sealed class Drawing
{
    internal Drawing(Scene scene, View view, Theme theme) => (Scene, View, Theme) = (scene, view, theme);

    /// <summary>Which circuit it shows; <see cref="View.After"/> for a picture that is no circuit.</summary>
    public View View { get; }

    /// <summary>Its width on paper in millimetres.</summary>
    public double WidthInMillimetres => Scene.Width / 4;

    /// <summary>Its height on paper in millimetres.</summary>
    public double HeightInMillimetres => Scene.Height / 4;

    /// <summary>
    /// Where every part and conductor is on the sheet, in the order of painting, to find what a reader points at: the last one that holds the point. A part has
    /// a box around symbol and text; a conductor has one for each straight run and one for its label.
    /// </summary>
    public ImmutableArray<DrawnBox> Boxes => [.. DrawnBoxes.Of(Scene)];

    /// <summary>Its colours.</summary>
    internal Theme Theme { get; }

    internal Scene Scene { get; }
}
