using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Devices told by a sign of their own: clock, radio, socket, solar panel, magneto.</summary>
internal static class DeviceSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
        [("clock", Clock), ("radio", Radio), ("socket", Socket), ("solar-panel", Solar), ("magneto", Magneto)];

    private static Symbol? Clock(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("clock", terminals, options, 2, 2, (s, x, y, _) =>
    {
        Leads(s, x, y, 1.4);
        s.Circle(x, y, 1.4);
        s.Path(Pen.Heavy, (x, y - 1), (x, y), (x + 0.7, y));
    });

    private static Symbol? Radio(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("radio", terminals, options, 2, 3, (s, x, y, _) =>
    {
        Leads(s, x, y, 1.3);
        s.Rectangle(x - 1.7, y - 1.3, 3.4, 2.6);
        s.Line(Pen.Thin, x - 0.9, y + 0.9, x - 0.9, y - 0.5);
        s.Path(Pen.Thin, (x - 1.4, y - 0.9), (x - 0.9, y - 0.1), (x - 0.4, y - 0.9));
        s.Path(Pen.Medium, (x + 0.2, y - 0.3), (x + 0.6, y - 0.3), (x + 1.1, y - 0.8), (x + 1.1, y + 0.8), (x + 0.6, y + 0.3), (x + 0.2, y + 0.3), (x + 0.2, y - 0.3));
    });

    private static Symbol? Socket(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("socket", terminals, options, 2, 2, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 0.3);
        s.Line(Pen.Medium, x, y + 1.3, x, y + 2);
        s.Curve(Pen.Medium, (x - 1.3, y), new CurveStep((x, y + 1.3), 1.3, false), new CurveStep((x + 1.3, y), 1.3, false));
        s.Line(Pen.Medium, x - 1.3, y, x - 1.3, y - 0.7);
        s.Line(Pen.Medium, x + 1.3, y, x + 1.3, y - 0.7);
        s.Dot(x, y, 0.34);
    });

    private static Symbol? Solar(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("solar-panel", terminals, options, 4, 2, (s, x, y, upper) =>
    {
        Leads(s, x, y, 1.5);
        s.Rectangle(x - 1.5, y - 1.5, 3, 3);
        double longPlate = upper.Is("pos") || upper.Is("+") ? -0.3 : 0.3;
        s.Line(Pen.Medium, x, y - 1.5, x, y - 0.3);
        s.Line(Pen.Medium, x, y + 0.3, x, y + 1.5);
        s.Line(Pen.Medium, x - 1, y + longPlate, x + 1, y + longPlate);
        s.Line(Pen.Plate, x - 0.5, y - longPlate, x + 0.5, y - longPlate);
        foreach (double arrow in (double[])[0, 0.9])
        {
            s.Line(Pen.Thin, x - 3.3, y - 1.2 + arrow, x - 2.3, y - 0.7 + arrow);
            s.Filled((x - 1.8, y - 0.45 + arrow), (x - 2.42, y - 0.5 + arrow), (x - 2.2, y - 0.93 + arrow));
        }
    });

    // Its own source, with a coil on its magnet.
    private static Symbol? Magneto(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("magneto", terminals, options, 2, 2, (s, x, y, _) =>
    {
        Leads(s, x, y, 1.5);
        s.Circle(x, y, 1.5);
        s.Letter("G", x, y + 0.2, s.Lettering.BodyBold);
        s.Curve(Pen.Medium, (x - 0.6, y + 0.75), new CurveStep((x, y + 0.75), 0.3, true), new CurveStep((x + 0.6, y + 0.75), 0.3, false));
    });

    private static void Leads(SymbolSketch s, double x, double y, double body)
    {
        s.Line(Pen.Medium, x, y - 2, x, y - body);
        s.Line(Pen.Medium, x, y + body, x, y + 2);
    }
}
