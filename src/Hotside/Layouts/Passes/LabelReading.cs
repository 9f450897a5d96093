using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// How surely a label is read as that of its own line: a reader takes it for the nearest line's, one between two horizontals for that below, and of two labels side by side at lines that meet
/// neither. Of the places where a label may stand the first is taken that leaves least doubt.
/// </summary>
/// <param name="room">What stands there already.</param>
internal sealed class LabelReading(TakenRoom room)
{
    // How far a strange line lies from a label in doubt: above or below one beside a vertical run, below one that stands below its own; and two labels on different sides.
    private const double FromHorizontal = 2, Below = 2, ApartBeside = 1.8, ApartAbove = 2, WellApart = 3, Right = 0.9;

    // From no doubt to wherever it finds room.
    private static readonly Doubt[] Doubts =
    [
        new(0.9, 0.9, 0.7, IsFar: true, IsApart: true, Under.Nowhere),
        new(0.9, 0.9, 0.7, IsFar: false, IsApart: true, Under.Nowhere),
        new(0.9, 0.9, 0.3, IsFar: false, IsApart: true, Under.Nowhere),
        new(0.9, 0.9, 0.7, IsFar: false, IsApart: true, Under.Free),
        new(0.6, 0.3, 0.3, IsFar: false, IsApart: false, Under.Free),
        new(0.9, 0.9, 0.3, IsFar: false, IsApart: false, Under.Any),
        new(0.3, 0.3, 0.3, IsFar: false, IsApart: false, Under.Any),
        new(0, 0, 0, IsFar: false, IsApart: false, Under.Any),
    ];

    private readonly List<(PlacedLabel Label, SeenIn Seen)> placed = [];

    private enum Under { Nowhere, Free, Any }

    /// <summary>The first of the places that leaves least doubt; <see langword="null"/> where none is free.</summary>
    /// <param name="places">The places, those that look best first.</param>
    /// <param name="number">The conductor's number.</param>
    /// <param name="wire">The conductor.</param>
    public PlacedLabel? Clearest(IEnumerable<PlacedLabel> places, int number, LayoutWire wire)
    {
        if (places.FirstOrDefault(l => Is(l, Doubts[0], number, wire)) is { } clear) return clear;
        PlacedLabel[] free = [.. places.Where(l => Is(l, Doubts[^1], number, wire))];
        return Doubts.Skip(1).Select(d => free.FirstOrDefault(l => Is(l, d, number, wire))).FirstOrDefault(l => l is not null);
    }

    /// <summary>Whether a label may be taken for that of another line, and more room would help: it stands right at one, below its own above one, or beside another's.</summary>
    public bool IsDoubtful(PlacedLabel label, int number, LayoutWire wire) => !wire.NamesSign && (IsAmong(label, wire, ApartBeside) ||
        (label.OnVertical ? room.HasLine(label.X, label.Y - Right, label.Width, label.Height + (2 * Right), wire.Seen, number)
            : label.Side == Side.Bottom && room.HasLine(label.X, label.Y, label.Width, label.Height + Below, wire.Seen, number)));

    /// <summary>From now on a label stands here.</summary>
    public void Take(PlacedLabel label, SeenIn seen) => placed.Add((label, seen));

    private bool Is(PlacedLabel label, Doubt doubt, int number, LayoutWire wire)
    {
        bool isBelow = label.Side == Side.Bottom && !wire.NamesSign;
        if (isBelow && doubt.Below == Under.Nowhere) return false;
        // With some air at the ends that do not stand at its own line.
        double beside = label.OnVertical ? doubt.Beside : doubt.Along;
        double left = label.Side == Side.Right ? 0 : beside, right = label.Side == Side.Left ? 0 : beside;
        double top = label.Side == Side.Bottom ? 0 : doubt.Above, bottom = label.Side == Side.Top ? 0 : doubt.Above;
        return room.IsFree(label.X - left, label.Y - top, label.Width + left + right, label.Height + top + bottom, wire.Seen)
            && !(doubt.IsFar && label.OnVertical && room.HasLine(label.X, label.Y - FromHorizontal, label.Width, label.Height + (2 * FromHorizontal), wire.Seen, number))
            && !(isBelow && doubt.Below == Under.Free && room.HasLine(label.X, label.Y, label.Width, label.Height + Below, wire.Seen, number))
            && !(doubt.IsApart && !wire.NamesSign && IsAmong(label, wire, doubt.IsFar ? WellApart : ApartBeside));
    }

    private bool IsAmong(PlacedLabel label, LayoutWire wire, double beside) => placed.Exists(p => (p.Seen & wire.Seen) != 0 && p.Label.Side != label.Side && !IsApart(p.Label, label, beside));

    private static bool IsApart(PlacedLabel a, PlacedLabel b, double beside) =>
        a.X >= b.X + b.Width + beside || b.X >= a.X + a.Width + beside || a.Y >= b.Y + b.Height + ApartAbove || b.Y >= a.Y + a.Height + ApartAbove;

    /// <param name="Beside">Air at the far end of a label beside a vertical run.</param>
    /// <param name="Along">Air at both ends of one above or below a horizontal run.</param>
    /// <param name="Above">Air above and below.</param>
    /// <param name="IsFar">Whether strange horizontals keep away from a label beside a vertical run.</param>
    /// <param name="IsApart">Whether labels on different sides keep apart.</param>
    /// <param name="Below">Where it may stand below its line.</param>
    private readonly record struct Doubt(double Beside, double Along, double Above, bool IsFar, bool IsApart, Under Below);
}
