using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Resistor, sender (a resistance that something else moves) and capacitor.</summary>
internal static class ResistorSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
        [("resistor", Resistor), ("sender", Sender), ("shunt", Shunt), ("capacitor", Capacitor), ("heater", Heater)];

    private static Symbol? Resistor(TerminalSet terminals, SymbolOptions options) =>
        TwoPinFrame.Draw("resistor", terminals, options, 1, 1, (s, x, y, _) => Body(s, x, y));

    private static Symbol? Sender(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("sender", terminals, options, 2, 2, (s, x, y, _) => Variable(s, x, y));

    private static Symbol? Heater(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("heater", terminals, options, 1, 1, (s, x, y, _) => Element(s, x, y));

    /// <summary>A resistance that something moves.</summary>
    public static void Variable(SymbolSketch s, double x, double y)
    {
        Body(s, x, y);
        s.Line(Pen.Medium, x - 1.2, y + 1.1, x + 1, y - 0.9);
        s.Filled((x + 1.4, y - 1.26), (x + 0.68, y - 1.08), (x + 1.08, y - 0.64));
    }

    /// <summary>A heating element: a body with rungs.</summary>
    public static void Element(SymbolSketch s, double x, double y)
    {
        Body(s, x, y);
        foreach (double rung in (double[])[-0.65, 0, 0.65])
            s.Line(Pen.Thin, x - 0.5, y + rung, x + 0.5, y + rung);
    }

    /// <summary>Two plates.</summary>
    public static void Plates(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 0.3);
        s.Line(Pen.Medium, x, y + 0.3, x, y + 2);
        s.Line(Pen.Heavy, x - 1, y - 0.3, x + 1, y - 0.3);
        s.Line(Pen.Heavy, x - 1, y + 0.3, x + 1, y + 0.3);
    }

    /// <summary>A resistance, with leads to 2 M above and below its centre.</summary>
    public static void Body(SymbolSketch s, double x, double y)
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1.3);
        s.Line(Pen.Medium, x, y + 1.3, x, y + 2);
        s.Rectangle(x - 0.5, y - 1.3, 1, 2.6);
    }

    private static Symbol? Shunt(TerminalSet terminals, SymbolOptions options)
    {
        (SymbolTerminal? upper, SymbolTerminal? lower) = terminals.TakeEnds(options);
        SymbolTerminal? first = terminals.TakeNext(), second = terminals.TakeNext();
        if (upper is null || lower is null)
            return null;
        var s = new SymbolSketch(3, 4, options.Lettering);
        Body(s, 1, 2);
        s.Pin(upper, 1, 0, SymbolSide.Top);
        s.Pin(lower, 1, 4, SymbolSide.Bottom);
        if (first is not null)
            Sense(s, first, 1);
        if (second is not null)
            Sense(s, second, 3);
        return s.Done("shunt");
    }

    private static Symbol? Capacitor(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("capacitor", terminals, options, 2, 2, (s, x, y, _) => Plates(s, x, y));

    private static void Sense(SymbolSketch s, SymbolTerminal terminal, int y)
    {
        s.Line(Pen.Medium, 1.5, y, 3, y);
        s.Pin(terminal, 3, y, SymbolSide.Right);
    }
}
