using System.Collections.Immutable;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>A box with pins on its sides, their marks inside, and room for something in its middle; at least 4 by 4 modules.</summary>
internal static class BoxFrame
{
    // Between two wires a label and the triangle of its change find room.
    private const int RoomForLabel = 8;

    /// <summary>Draws the box.</summary>
    /// <param name="name">Name of the symbol.</param>
    /// <param name="terminals">All terminals, each on the side it wishes; one without a wish goes below.</param>
    /// <param name="options">Options.</param>
    /// <param name="width">Width of what stands in the middle, in modules.</param>
    /// <param name="height">Its height.</param>
    /// <param name="middle">Draws it; is given the sketch and the centre.</param>
    public static Symbol Draw(
        string name, IReadOnlyList<SymbolTerminal> terminals, SymbolOptions options, double width, double height, Action<SymbolSketch, double, double>? middle)
    {
        ImmutableArray<SymbolTerminal> top = At(terminals, SymbolSide.Top), left = At(terminals, SymbolSide.Left), right = At(terminals, SymbolSide.Right);
        ImmutableArray<SymbolTerminal> bottom = [.. terminals.Where(t => t.Side is SymbolSide.Bottom or SymbolSide.Any)];
        double cap = options.Lettering.Small.CapHeight / Symbol.Module, band = cap + 0.75;
        double leftMarks = Marks(left, options), rightMarks = Marks(right, options);
        int room = (int)Math.Ceiling(Math.Max(Widest(top, options), Widest(bottom, options)) + 0.9), step = Math.Max(2, room);
        int[] over = Columns(top, step), under = Columns(bottom, step);
        int span = Math.Max(over.LastOrDefault(), under.LastOrDefault()), rows = Math.Max(left.Length, right.Length);
        int rowStep = 2 + (int)Math.Floor(cap);
        int boxWidth = Math.Max(4, Math.Max((int)Math.Ceiling(leftMarks + rightMarks + width + 0.8), span + (2 * room)));
        int boxHeight = Math.Max(4, Math.Max((int)Math.Ceiling((top.IsEmpty ? 0.5 : band) + height + (bottom.IsEmpty ? 0.5 : band)), rows == 0 ? 0 : 5 + ((rows - 1) * rowStep)));

        var s = new SymbolSketch(boxWidth, boxHeight, options.Lettering);
        s.Rectangle(0, 0, boxWidth, boxHeight, 0.2);
        double high = top.IsEmpty ? 0 : band, low = bottom.IsEmpty ? 0 : band;
        middle?.Invoke(s, leftMarks + ((boxWidth - leftMarks - rightMarks) / 2), high + ((boxHeight - high - low) / 2));
        // Where fewer pins are above than below they stand over the first: what leads on from a feed runs straight through.
        int first = (boxWidth - span) / 2;
        Row(s, top, first, over, 0, SymbolSide.Top);
        Row(s, bottom, first, under, boxHeight, SymbolSide.Bottom);
        Column(s, left, 0, rowStep, SymbolSide.Left);
        Column(s, right, boxWidth, rowStep, SymbolSide.Right);
        return s.Done(name);
    }

    // Labels stand left of the first wire, right of the last, and between those in the middle.
    private static int[] Columns(ImmutableArray<SymbolTerminal> terminals, int step)
    {
        var columns = new int[terminals.Length];
        for (int i = 1; i < columns.Length; i++)
        {
            bool isAmid = terminals[i - 1].HasLabel && terminals[i].HasLabel && terminals.Take(i - 1).Any(t => t.HasLabel);
            columns[i] = columns[i - 1] + (isAmid ? Math.Max(step, RoomForLabel) : step);
        }
        return columns;
    }

    private static void Row(SymbolSketch s, ImmutableArray<SymbolTerminal> terminals, int first, int[] columns, int y, SymbolSide side)
    {
        for (int i = 0; i < terminals.Length; i++)
            s.Stud(terminals[i], first + columns[i], y, side);
    }

    private static void Column(SymbolSketch s, ImmutableArray<SymbolTerminal> terminals, int x, int step, SymbolSide side)
    {
        for (int i = 0; i < terminals.Length; i++)
            s.Stud(terminals[i], x, 3 + (i * step), side);
    }

    private static ImmutableArray<SymbolTerminal> At(IReadOnlyList<SymbolTerminal> terminals, SymbolSide side) => [.. terminals.Where(t => t.Side == side)];

    private static double Marks(ImmutableArray<SymbolTerminal> terminals, SymbolOptions options) => terminals.IsEmpty ? 0 : Widest(terminals, options) + 0.8;

    private static double Widest(ImmutableArray<SymbolTerminal> terminals, SymbolOptions options) =>
        TextMeasure.Widest(terminals.Select(t => t.Label), options.Lettering.Small) / Symbol.Module;
}
