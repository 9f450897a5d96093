using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Lamps: a circle with a cross; two of them in one envelope.</summary>
internal static class LampSymbols
{
    private static readonly double Diagonal = Math.Sqrt(0.5);

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("lamp", Lamp), ("lamp-two-filaments", TwoFilaments)];

    private static Symbol? Lamp(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("lamp", terminals, options, 2, 2, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1);
        s.Line(Pen.Medium, x, y + 1, x, y + 2);
        Filament(s, x, y, 1);
    });

    private static Symbol? TwoFilaments(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? common = terminals.Take("31", "case", "common") ?? terminals.TakeAt(SymbolSide.Bottom);
        SymbolTerminal? left = terminals.TakeNext(), right = terminals.TakeNext();
        if (left is null || right is null)
            return null;
        // The marks stand outside the leads, above the envelope, so that 56a and 56b are read where their wires end.
        int side = 2 + (int)Math.Ceiling(Math.Max(Symbol.MarkWidth(left, options), Symbol.MarkWidth(right, options)) + 0.35 - 1);
        side = Math.Max(3, side);
        var s = new SymbolSketch(2 * side, common is null ? 6 : 5, options.Lettering);
        double y = 3;
        s.Rectangle(side - 2.5, y - 1.6, 5, 3.2, 1.6);
        foreach (double x in (double[])[side - 1, side + 1])
        {
            s.Line(Pen.Medium, x, 0, x, y - 1.15);
            Filament(s, x, y - 0.3, 0.85);
            s.Line(Pen.Medium, x, y + 0.55, x, y + 1);
        }

        s.Line(Pen.Medium, side - 1, y + 1, side + 1, y + 1);
        s.Line(Pen.Medium, side, y + 1, side, y + 2);
        double baseline = 0.3 + (options.Lettering.Small.CapHeight / Symbol.Module);
        s.Mark(left.Label, side - 1.35, baseline, Anchor.End, side - 1.35);
        s.Mark(right.Label, side + 1.35, baseline, Anchor.Start, side - 1.35);
        s.Pin(left, side - 1, 0, SymbolSide.Top);
        s.Pin(right, side + 1, 0, SymbolSide.Top);
        if (common is null)
            s.CaseGround(side, 5);
        else
            s.Pin(common, side, 5, SymbolSide.Bottom);
        return s.Done("lamp-two-filaments");
    }

    /// <summary>A circle with a diagonal cross.</summary>
    public static void Filament(SymbolSketch s, double x, double y, double radius)
    {
        double d = radius * Diagonal;
        s.Circle(x, y, radius);
        s.Line(Pen.Medium, x - d, y - d, x + d, y + d);
        s.Line(Pen.Medium, x - d, y + d, x + d, y - d);
    }
}
