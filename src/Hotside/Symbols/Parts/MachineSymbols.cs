using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>What turns or sounds: motor, generator, horn.</summary>
internal static class MachineSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("motor", Motor), ("motor-series", Series), ("horn", Horn), ("generator", (t, o) => Generator("generator", t, o)), ("generator-field-inside", (t, o) => Generator("generator-field-inside", t, o))];

    private static Symbol? Motor(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("motor", terminals, options, 2, 2, (s, x, y, _) => Armature(s, x, y));

    // The field: three arcs in the upper lead.
    private static Symbol? Series(TerminalSet terminals, SymbolOptions options)
    {
        (SymbolTerminal? upper, SymbolTerminal? lower) = terminals.TakeEnds(options);
        if (upper is null)
            return null;
        var s = new SymbolSketch(2 + Math.Max(2, TwoPinFrame.RoomFor(options, upper, lower)), lower is null ? 9 : 8, options.Lettering);
        s.Curve(Pen.Medium, (2, 0), [new CurveStep((2, 0.9)), .. Enumerable.Range(1, 3).Select(i => new CurveStep((2, 0.9 + (0.8 * i)), 0.4, false)), new CurveStep((2, 4))]);
        Armature(s, 2, 5);
        s.Line(Pen.Medium, 2, 7, 2, 8);
        Mark(s, upper, 2, 0, SymbolSide.Top);
        if (lower is null)
            s.CaseGround(2, 8);
        else
            Mark(s, lower, 2, 8, SymbolSide.Bottom);
        return s.Done("motor-series");
    }

    /// <summary>A motor's circle, with leads to 2 M above and below its centre.</summary>
    public static void Armature(SymbolSketch s, double x, double y)
    {
        Rotor(s, x, y);
        s.Letter("M", x, y + (s.Lettering.BodyBold.CapHeight / 2 / Symbol.Module), s.Lettering.BodyBold);
    }

    private static Symbol? Horn(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("horn", terminals, options, 1, 3, (s, x, y, _) =>
    {
        s.Line(Pen.Medium, x, y - 2, x, y - 1.3);
        s.Line(Pen.Medium, x, y + 1.3, x, y + 2);
        s.Rectangle(x - 0.9, y - 1.3, 1.8, 2.6);
        s.Path(Pen.Medium, (x + 0.9, y - 0.6), (x + 2.4, y - 1.7), (x + 2.4, y + 1.7), (x + 0.9, y + 0.6));
    });

    // As far from the armature as the regulator's terminals lie apart, so that both wires run straight.
    private const int FieldBeside = 4;

    /// <summary>A direct-current generator; its field leaves beside the armature, and is joined to it or inside to the case.</summary>
    private static Symbol? Generator(string name, TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? armature = terminals.Take("A", "D+", "ARM", "61") ?? terminals.TakeAt(SymbolSide.Top);
        SymbolTerminal? field = terminals.Take("F", "DF", "FLD");
        SymbolTerminal? lower = terminals.Take("case", "31", "D-", "-") ?? terminals.TakeNext();
        if (armature is null)
            return null;
        int beside = field is null ? 0 : Math.Max(1, TwoPinFrame.RoomFor(options, field)), x = field is null ? 2 : beside + FieldBeside;
        var s = new SymbolSketch(x + Math.Max(2, TwoPinFrame.RoomFor(options, armature, lower)), lower is null ? 7 : 6, options.Lettering);
        Rotor(s, x, 3, 3);
        s.Letter("G", x, 3.25, s.Lettering.BodyBold);
        s.Line(Pen.Thin, x - 0.6, 3.65, x + 0.6, 3.65);
        s.Line(Pen.Thin with { Dash = new Dash(3, 1.5) }, x - 0.6, 3.95, x + 0.6, 3.95);
        Mark(s, armature, x, 0, SymbolSide.Top);
        if (field is not null)
        {
            s.Pin(field, beside, 0, SymbolSide.Top);
            s.Mark(field.Label, beside - 0.4, 0.3 + (s.Lettering.Small.CapHeight / Symbol.Module), Anchor.End);
            Field(s, beside, x, toCase: name != "generator");
        }

        if (lower is null)
            s.CaseGround(x, 6);
        else
            Mark(s, lower, x, 6, SymbolSide.Bottom);
        return s.Done(name);
    }

    // Three arcs: from the terminal across to the armature's lead, or down and across to the case's.
    private static void Field(SymbolSketch s, double x, double axis, bool toCase)
    {
        double end = toCase ? 5.2 : 0.8, first = toCase ? 2.1 : x + 1.1;
        s.Curve(Pen.Medium, (x, 0), toCase
            ? [new CurveStep((x, first)), .. Enumerable.Range(1, 3).Select(i => new CurveStep((x, first + (0.6 * i)), 0.3, true)), new CurveStep((x, end)), new CurveStep((axis, end))]
            : [new CurveStep((x, end)), new CurveStep((first, end)), .. Enumerable.Range(1, 3).Select(i => new CurveStep((first + (0.6 * i), end), 0.3, true)), new CurveStep((axis, end))]);
        s.Dot(axis, end, 0.24);
    }

    private static void Rotor(SymbolSketch s, double x, double y, double reach = 2)
    {
        s.Line(Pen.Medium, x, y - reach, x, y - 1.5);
        s.Line(Pen.Medium, x, y + 1.5, x, y + reach);
        s.Circle(x, y, 1.5);
    }

    private static void Mark(SymbolSketch s, SymbolTerminal terminal, int x, int y, SymbolSide side, double beside = 0.4)
    {
        s.Pin(terminal, x, y, side);
        double baseline = side == SymbolSide.Top ? 0.3 + (s.Lettering.Small.CapHeight / Symbol.Module) : y - 0.3;
        s.Mark(terminal.Label, x + beside, baseline);
    }
}
