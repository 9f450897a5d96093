using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>A battery of cells. The hot pole is on top, whichever it is: plates and signs follow it.</summary>
internal static class BatterySymbol
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("battery", Draw), ("battery-tapped", Tapped)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options) =>
        TwoPinFrame.Draw("battery", terminals, options, 3, 2, (s, x, y, upper) =>
        {
            bool plusOnTop = upper.Is("pos") || upper.Is("+") || upper.Is("plus") || upper.Is("B+");
            s.Line(Pen.Medium, x, y - 2, x, y - 0.9);
            s.Line(Pen.Medium, x, y + 0.9, x, y + 2);
            for (int i = 0; i < 4; i++)
                Plate(s, x, y - 0.9 + (0.6 * i), longPlate: i % 2 == 0 == plusOnTop);
            Sign(s, x - 2.4, y - 1.3, plusOnTop);
            Sign(s, x - 2.4, y + 1.3, !plusOnTop);
        });

    // Two groups of plates; the lead from the middle leaves to the right.
    private static Symbol? Tapped(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? middle = terminals.Take("mid") ?? terminals.TakeAt(SymbolSide.Right);
        (SymbolTerminal? upper, SymbolTerminal? lower) = terminals.TakeEnds(options);
        if (upper is null || lower is null || middle is null)
            return null;
        bool plusOnTop = upper.Is("pos") || upper.Is("+") || upper.Is("plus");
        var s = new SymbolSketch(5 + Math.Max(2, TwoPinFrame.RoomFor(options, upper, middle, lower)), 10, options.Lettering);
        s.Line(Pen.Medium, 3, 0, 3, 2.1);
        s.Line(Pen.Medium, 3, 3.9, 3, 6.1);
        s.Line(Pen.Medium, 3, 7.9, 3, 10);
        foreach (double y in (double[])[2.1, 6.1])
        {
            for (int i = 0; i < 4; i++)
                Plate(s, 3, y + (0.6 * i), longPlate: i % 2 == 0 == plusOnTop);
        }

        s.Line(Pen.Medium, 3, 5, s.Width, 5);
        s.Dot(3, 5);
        Sign(s, 0.6, 1.7, plusOnTop);
        Sign(s, 0.6, 8.3, !plusOnTop);
        double cap = s.Lettering.Small.CapHeight / Symbol.Module;
        s.Mark(upper.Label, 3.4, 0.4 + cap);
        s.Mark(middle.Label, 5, 4.65);
        s.Mark(lower.Label, 3.4, 9.6);
        s.Pin(upper, 3, 0, SymbolSide.Top);
        s.Pin(middle, s.Width, 5, SymbolSide.Right);
        s.Pin(lower, 3, 10, SymbolSide.Bottom);
        return s.Done("battery-tapped");
    }

    private static void Plate(SymbolSketch s, double x, double y, bool longPlate)
    {
        double half = longPlate ? 1.5 : 0.8;
        s.Line(longPlate ? Pen.Medium : Pen.Plate, x - half, y, x + half, y);
    }

    private static void Sign(SymbolSketch s, double x, double y, bool plus)
    {
        s.Line(Pen.Heavy, x - 0.5, y, x + 0.5, y);
        if (plus)
            s.Line(Pen.Heavy, x, y - 0.5, x, y + 0.5);
    }
}
