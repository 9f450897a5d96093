using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>A battery of cells. The hot pole is on top, whichever it is: plates and signs follow it.</summary>
internal static class BatterySymbol
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("battery", Draw)];

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
