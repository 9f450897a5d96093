namespace Hotside.Symbols.Shapes;

/// <summary>Where a shape goes: mirrored left to right or turned upside down about the axes first, then shifted.</summary>
/// <param name="X">Shift to the right.</param>
/// <param name="Y">Shift down.</param>
/// <param name="Mirrored">Left becomes right.</param>
/// <param name="TurnedOver">Top becomes bottom.</param>
internal readonly record struct Placing(double X, double Y, bool Mirrored = false, bool TurnedOver = false)
{
    /// <summary>Where a point goes.</summary>
    public Point Of(Point point) => new((Mirrored ? -point.X : point.X) + X, (TurnedOver ? -point.Y : point.Y) + Y);

    /// <summary>Whether a clockwise arc becomes an anticlockwise one.</summary>
    public bool TurnsArcs => Mirrored != TurnedOver;
}
