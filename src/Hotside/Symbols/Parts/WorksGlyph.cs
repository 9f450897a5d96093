using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Draws a thing inside a part, with leads to 2 M above and below its centre.</summary>
internal static class WorksGlyph
{
    public static void Draw(SymbolSketch s, SymbolGlyph glyph, double x, double y)
    {
        switch (glyph)
        {
            case SymbolGlyph.Lamp:
                Leads(s, x, y, 1);
                LampSymbols.Filament(s, x, y, 1);
                break;
            case SymbolGlyph.Motor:
                MachineSymbols.Armature(s, x, y);
                break;
            case SymbolGlyph.Winding:
                Leads(s, x, y, 1);
                RelaySymbols.Winding(s, x, y);
                break;
            case SymbolGlyph.Resistor:
                ResistorSymbols.Body(s, x, y);
                break;
            case SymbolGlyph.Variable:
                ResistorSymbols.Variable(s, x, y);
                break;
            case SymbolGlyph.Heater:
                ResistorSymbols.Element(s, x, y);
                break;
            case SymbolGlyph.Make:
                Contact.Make(s, x, y);
                break;
            case SymbolGlyph.Break:
                Contact.Break(s, x, y);
                break;
            case SymbolGlyph.Fuse:
                FuseSymbols.Body(s, x, y);
                break;
            case SymbolGlyph.Diode:
                DiodeSymbols.Body(s, x, y, 0.6);
                break;
            case SymbolGlyph.Capacitor:
                ResistorSymbols.Plates(s, x, y);
                break;
            case SymbolGlyph.Gap:
                WireSymbols.Darts(s, x, y);
                break;
            case SymbolGlyph.Box:
                Leads(s, x, y, 1);
                s.Rectangle(x - 1, y - 1, 2, 2);
                break;
            case SymbolGlyph.Link:
                s.Line(Pen.Medium, x, y - 2, x, y + 2);
                break;
        }
    }

    private static void Leads(SymbolSketch s, double x, double y, double body)
    {
        s.Line(Pen.Medium, x, y - 2, x, y - body);
        s.Line(Pen.Medium, x, y + body, x, y + 2);
    }
}
