using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>Where a box stands: top left corner in modules, and its text block's top left corner.</summary>
internal sealed record PlacedBox(string Id, int X, int Y, bool Turned, bool TextOnLeft, double TextX, double TextY)
{
    /// <summary>How it faces.</summary>
    public Facing Facing { get; init; } = Facing.AsGiven;

    /// <summary>From where to where the text block reaches in a view: a narrower one stands next to the symbol.</summary>
    public (double Left, double Right) TextIn(SeenIn view, LayoutBox box)
    {
        double free = TextOnLeft ? box.TextWidth - box.TextWidths.In(view) : -FreeOnRight(view, box);
        return (TextX + free, TextX + free + box.TextWidths.In(view));
    }

    /// <summary>How much of the box a connector with fewer ways leaves free on the right in a view: its text stands there.</summary>
    public int FreeOnRight(SeenIn view, LayoutBox box)
    {
        var shown = view switch { SeenIn.Before => box.WaysShown.Before, SeenIn.After => box.WaysShown.After, _ => [] };
        return TextOnLeft || shown.IsEmpty ? 0 : box.WaysShown.Before.Concat(box.WaysShown.After).Max(w => Facing.ColumnOf(w, box)) - shown.Max(w => Facing.ColumnOf(w, box));
    }

    /// <summary>The place of one of the box's pins; turning over exchanges top and bottom, mirroring left and right.</summary>
    public (int X, int Y) PinPlace(LayoutBox box, LayoutPin pin) => (X + Facing.ColumnOf(pin.X, box), Y + (Turned ? box.Height - pin.Y : pin.Y));
}
