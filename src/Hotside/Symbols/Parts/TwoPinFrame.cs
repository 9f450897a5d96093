namespace Hotside.Symbols.Parts;

/// <summary>
/// What all parts with two ends share: the feed's end above, the chassis's below, four modules apart. A part whose case is its other end
/// stands on the sign of a grounded case.
/// </summary>
internal static class TwoPinFrame
{
    /// <summary>Draws a part.</summary>
    /// <param name="name">Name of the symbol.</param>
    /// <param name="terminals">Its terminals, of which one or two are taken.</param>
    /// <param name="options">Options; marks beside the leads lengthen these by a module.</param>
    /// <param name="left">Modules left of the axis.</param>
    /// <param name="right">Modules right of the axis.</param>
    /// <param name="body">Draws body and leads from 2 M above the centre to 2 M below; is given the sketch, the centre, and the upper terminal.</param>
    public static Symbol? Draw(
        string name,
        TerminalSet terminals,
        SymbolOptions options,
        int left,
        int right,
        Action<SymbolSketch, double, double, SymbolTerminal> body)
    {
        (SymbolTerminal? upper, SymbolTerminal? lower) = terminals.TakeEnds(options);
        if (upper is null)
            return null;
        if (options.TerminalMarks)
            right = Math.Max(right, RoomFor(options, upper, lower));
        int longer = options.TerminalMarks ? 1 : 0;
        int bottom = 4 + (2 * longer);
        var sketch = new SymbolSketch(left + right, lower is null ? bottom + 1 : bottom, options.Lettering);
        body(sketch, left, 2 + longer, upper);
        sketch.Pin(upper, left, 0, SymbolSide.Top);
        if (lower is null)
            sketch.CaseGround(left, bottom);
        else
            sketch.Pin(lower, left, bottom, SymbolSide.Bottom);
        if (options.TerminalMarks)
            Lengthen(sketch, left, bottom, upper, lower);
        return sketch.Done(name);
    }

    /// <summary>Modules that marks beside a lead need to its right.</summary>
    public static int RoomFor(SymbolOptions options, params SymbolTerminal?[] terminals) =>
        (int)Math.Ceiling(terminals.Max(t => t is null ? 0 : Symbol.MarkWidth(t, options)) + 0.5);

    private static void Lengthen(SymbolSketch sketch, int x, int bottom, SymbolTerminal upper, SymbolTerminal? lower)
    {
        sketch.Line(Shapes.Pen.Medium, x, 0, x, 1);
        sketch.Line(Shapes.Pen.Medium, x, bottom - 1, x, bottom);
        double cap = sketch.Lettering.Small.CapHeight / Symbol.Module;
        sketch.Mark(upper.Label, x + 0.4, 0.3 + cap);
        if (lower is not null)
            sketch.Mark(lower.Label, x + 0.4, bottom - 0.3);
    }
}
