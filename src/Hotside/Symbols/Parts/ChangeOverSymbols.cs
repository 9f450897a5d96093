using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Change-over switches: common above, hooks below; the marks of the two throws stand outside their leads.</summary>
internal static class ChangeOverSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        ("change-over", (t, o) => Draw("change-over", Actuator.Toggle, false, t, o)),
        ("change-over-pedal", (t, o) => Draw("change-over-pedal", Actuator.Pedal, false, t, o)),
        ("rotary", RotarySymbol.Draw),
        ("change-over-centre-off", (t, o) => Draw("change-over-centre-off", Actuator.Toggle, true, t, o)),
    ];

    private static Symbol? Draw(string name, Actuator actuator, bool centreOff, TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? common = (options.HotTerminal is { } hot ? terminals.Take(hot) : null) ?? terminals.TakeAt(SymbolSide.Top) ?? terminals.TakeNext();
        SymbolTerminal? left = terminals.TakeNext(), right = terminals.TakeNext();
        if (common is null || left is null || right is null)
            return null;
        double room = Math.Max(Symbol.MarkWidth(left, options), Symbol.MarkWidth(right, options)) + 0.4;
        int side = Math.Max(4, 2 + (int)Math.Ceiling(room));
        var s = new SymbolSketch(2 * side, 5, options.Lettering);
        double x = side, y = 2;
        s.Line(Pen.Medium, x, 0, x, y - 0.9);
        s.Path(Pen.Medium, (x - 1.2, y + 0.9), (x - 2, y + 0.9), (x - 2, 5));
        s.Path(Pen.Medium, (x + 1.2, y + 0.9), (x + 2, y + 0.9), (x + 2, 5));
        if (centreOff)
            s.Line(Pen.Heavy, x, y - 0.9, x, y + 1);
        else
            s.Line(Pen.Heavy, x, y - 0.9, x + 1.34, y + 1.06);
        // The foot's plate keeps clear of the left throw.
        double hand = actuator == Actuator.Pedal ? x - 3.3 : x - 2.8;
        s.Line(Pen.Link, hand, y, centreOff ? x : x + 0.6, y);
        Contact.Actuate(s, actuator, hand, y);
        s.Mark(left.Label, x - 2.4, 4.6, Anchor.End, side - 2.4);
        s.Mark(right.Label, x + 2.4, 4.6, Anchor.Start, side - 2.4);
        s.Pin(common, side, 0, SymbolSide.Top);
        s.Pin(left, side - 2, 5, SymbolSide.Bottom);
        s.Pin(right, side + 2, 5, SymbolSide.Bottom);
        return s.Done(name);
    }
}
