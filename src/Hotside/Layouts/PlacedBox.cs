namespace Hotside.Layouts;

/// <summary>Where a box stands: top left corner in modules, and its text block's top left corner.</summary>
internal sealed record PlacedBox(
    string Id, int X, int Y, bool Turned, bool Mirrored, bool TextOnLeft, double TextX, double TextY)
{
    /// <summary>The place of one of the box's pins; turning and mirroring exchange opposite sides.</summary>
    public (int X, int Y) PinPlace(LayoutBox box, LayoutPin pin) =>
        (X + (Mirrored ? box.Width - pin.X : pin.X), Y + (Turned ? box.Height - pin.Y : pin.Y));

    /// <summary>The side on which a pin stands in the drawing.</summary>
    public Side PinSide(LayoutPin pin)
    {
        Side side = Turned ? pin.Side.TurnedOver() : pin.Side;
        return Mirrored ? side.Mirrored() : side;
    }
}
