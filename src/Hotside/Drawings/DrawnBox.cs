namespace Hotside;

/// <summary>A place on a sheet where a part or a conductor is drawn; millimetres from the sheet's top left corner, y down.</summary>
/// <param name="Id">The part's or conductor's id, as the job file has it.</param>
/// <param name="View">Whose picture it is in: <see cref="View.Before"/>, <see cref="View.After"/> (also where nothing is altered) or <see cref="View.Overlay"/>.</param>
/// <param name="Left">Distance from the left edge of the sheet.</param>
/// <param name="Top">Distance from the upper edge of the sheet.</param>
/// <param name="Width">Width, above 0; a conductor's run is as wide as its line.</param>
/// <param name="Height">Height, above 0.</param>
public sealed record DrawnBox(string Id, View View, double Left, double Top, double Width, double Height)
{
    /// <summary>Whether it holds a point of the sheet.</summary>
    /// <param name="x">Millimetres from the left edge.</param>
    /// <param name="y">Millimetres from the upper edge.</param>
    /// <param name="slack">How far beside the box, in millimetres, still counts; a finger wants more than a mouse.</param>
    public bool Holds(double x, double y, double slack = 0) =>
        x >= Left - slack && x <= Left + Width + slack && y >= Top - slack && y <= Top + Height + slack;
}
