using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>
/// Relays: contact at the left, coil at the right, in one enclosure. However the coil is fed, the box and the places of the contact's two
/// terminals and of the coil's lower end are the same, so that a relay of another pattern stands in the old one's place.
/// </summary>
internal static class RelaySymbols
{
    private const int ContactAxis = 3;
    private const int Height = 8;
    private const double Middle = 4;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        ("relay", (t, o) => Draw("relay", t, o, latching: false)),
        ("relay-change-over", (t, o) => Draw("relay-change-over", t, o, latching: false)),
        ("relay-latching", (t, o) => Draw("relay-latching", t, o, latching: true)),
        ("relay-coil-to-case", (t, o) => Draw("relay-coil-to-case", t, o, latching: false)),
        ("relay-break", (t, o) => Draw("relay-break", t, o, latching: false)),
        ("relay-diode", (t, o) => Draw("relay-diode", t, o, latching: false, (s, x, hot) => DiodeSymbols.Body(s, x, Middle, hot == "85" ? 0.6 : -0.6))),
        ("relay-resistor", (t, o) => Draw("relay-resistor", t, o, latching: false, (s, x, _) => ResistorSymbols.Body(s, x, Middle))),
        ("relay-two-coils", TwoCoils),
    ];

    private static Symbol? Draw(string name, TerminalSet terminals, SymbolOptions options, bool latching, Action<SymbolSketch, double, string>? beside = null)
    {
        SymbolTerminal? contactIn = terminals.Take("30", "BAT", "B", "COM"), contactOut = terminals.Take("87", "MOT", "M", "H", "NO");
        SymbolTerminal? rest = terminals.Take("87a", "NC");
        bool opens = contactOut is null && rest is not null;
        if (opens)
            (contactOut, rest) = (rest, null);
        (SymbolTerminal? coilUp, SymbolTerminal? coilDown, bool fedInside) = Coil(name, terminals, options);
        SymbolTerminal? bypass = rest is null ? terminals.TakeNext() : null;
        if (contactIn is null || contactOut is null || (coilUp is null && coilDown is null))
            return null;
        int second = ContactAxis + SecondAxis(contactOut, rest ?? bypass, options);
        int coil = Math.Max(ContactAxis + Math.Max(LeastSpread(contactIn, contactOut, coilUp, coilDown, options), options.Spread), (rest ?? bypass) is null ? 0 : (2 * second) - ContactAxis);
        int width = coil + ContactAxis + (beside is null ? 0 : 1), axis = ContactAxis;
        bool turned = options.CoilAtLeft && beside is null && (rest ?? bypass) is null;
        if (turned)
            (axis, coil) = (coil, ContactAxis);
        var s = new SymbolSketch(width, Height, options.Lettering);
        s.Enclosure(0, 0, width, Height);
        if (opens)
            Contact.Break(s, axis, Middle, 4, 4);
        else if (rest is null)
            Contact.Make(s, axis, Middle, 4, 4);
        else
            ChangeOver(s, rest, second);
        double blade = opens ? axis + 0.25 : rest is null ? axis - 0.5 : axis + 1.1;
        Link(s, turned ? coil + 1.6 : blade, turned ? blade : coil - 1.6, latching);
        if (beside is not null)
            Across(s, coil, beside, coilUp?.Name ?? "");
        if (bypass is not null)
            Bypass(s, bypass, second);
        Winding(s, coil, Middle);
        Leads(s, axis, coil, fedInside, coilDown is null);
        s.Stud(contactIn, axis, 0, SymbolSide.Top, turned && Wide(contactIn, options));
        s.Stud(contactOut, axis, Height, SymbolSide.Bottom, turned && Wide(contactOut, options));
        s.Stud(coilUp, coil, 0, SymbolSide.Top, !turned && Wide(coilUp, options));
        s.Stud(coilDown, coil, Height, SymbolSide.Bottom, !turned && Wide(coilDown, options));
        return s.Done(name);
    }

    // What lies across a coil, against its kick.
    private static void Across(SymbolSketch s, int coil, Action<SymbolSketch, double, string> beside, string upper)
    {
        double x = coil + 2.7;
        s.Path(Pen.Medium, (coil, 2), (x, 2));
        s.Path(Pen.Medium, (coil, 6), (x, 6));
        beside(s, x, upper);
        s.Dot(coil, 2);
        s.Dot(coil, 6);
    }

    // Set and reset, each with a coil of its own and one return.
    private static Symbol? TwoCoils(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? contactIn = terminals.Take("30", "COM"), contactOut = terminals.Take("87", "NO");
        SymbolTerminal? set = terminals.Take("S", "86a"), reset = terminals.Take("R", "86b"), common = terminals.Take("C", "85");
        if (contactIn is null || contactOut is null || set is null || reset is null || common is null)
            return null;
        const int first = 9, second = 14;
        var s = new SymbolSketch(second + 3, Height, options.Lettering);
        s.Enclosure(0, 0, second + 3, Height);
        Contact.Make(s, ContactAxis, Middle, 4, 4);
        Link(s, ContactAxis - 0.5, first - 1.6, latching: true);
        s.Line(Pen.Link, first + 1.6, Middle, second - 1.6, Middle);
        foreach (int x in (int[])[first, second])
        {
            Winding(s, x, Middle);
            s.Line(Pen.Medium, x, 0, x, Middle - 1);
        }

        s.Line(Pen.Medium, second, Middle + 1, second, Height);
        s.Path(Pen.Medium, (first, Middle + 1), (first, 6), (second, 6));
        s.Dot(second, 6);
        s.Stud(contactIn, ContactAxis, 0, SymbolSide.Top);
        s.Stud(contactOut, ContactAxis, Height, SymbolSide.Bottom);
        s.Stud(set, first, 0, SymbolSide.Top, room: 4);
        s.Stud(reset, second, 0, SymbolSide.Top);
        s.Stud(common, second, Height, SymbolSide.Bottom);
        return s.Done("relay-two-coils");
    }

    /// <summary>A winding: a box with one slanted stroke.</summary>
    public static void Winding(SymbolSketch s, double x, double y)
    {
        s.Rectangle(x - 1.6, y - 1, 3.2, 2);
        s.Line(Pen.Thin, x - 0.7, y + 1, x + 0.7, y - 1);
    }

    // Both ends free; or one, fed inside from the contact's upper terminal; or one, with the case as its other end.
    private static (SymbolTerminal? Up, SymbolTerminal? Down, bool FedInside) Coil(string name, TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? start = terminals.Take("86", "A1"), end = terminals.Take("85", "A2");
        SymbolTerminal? single = terminals.Take("50", "S", "C");
        SymbolTerminal? body = terminals.Take("case", "31");
        bool toCase = body is not null || name == "relay-coil-to-case";
        if (start is not null && end is not null && options.HotTerminal is { } hot && end.Is(hot))
            (start, end) = (end, start);
        if (toCase)
            return (start ?? end ?? single, body, false);
        return start is not null ? (start, end ?? single, false) : (null, end ?? single, true);
    }

    private static void Leads(SymbolSketch s, int axis, int coil, bool fedInside, bool toCase)
    {
        if (fedInside)
        {
            s.Path(Pen.Medium, (axis, 1.8), (coil, 1.8), (coil, Middle - 1));
            s.Dot(axis, 1.8);
        }
        else
            s.Line(Pen.Medium, coil, 0, coil, Middle - 1);
        s.Line(Pen.Medium, coil, Middle + 1, coil, toCase ? 6.6 : Height);
        if (toCase)
            s.CaseGround(coil, 6.6);
    }

    private static void Link(SymbolSketch s, double from, double to, bool latching)
    {
        if (!latching)
        {
            s.Line(Pen.Link, from, Middle, to, Middle);
            return;
        }

        // The notch of a detent: the contact stays where it is put.
        double notch = from + ((to - from) * 0.6);
        s.Line(Pen.Link, from, Middle, notch - 0.5, Middle);
        s.Path(Pen.Thin, (notch - 0.5, Middle), (notch, Middle + 0.7), (notch + 0.5, Middle));
        s.Line(Pen.Link, notch + 0.5, Middle, to, Middle);
    }

    // The throw at rest is the right one; pulled in, the blade hangs straight down on 87, which keeps its place.
    private static void ChangeOver(SymbolSketch s, SymbolTerminal rest, int second)
    {
        s.Line(Pen.Medium, ContactAxis, 0, ContactAxis, Middle - 1);
        s.Line(Pen.Medium, ContactAxis, Middle + 1.2, ContactAxis, Height);
        s.Path(Pen.Medium, (second, Height), (second, Middle + 1.2), (ContactAxis + 1.8, Middle + 1.2));
        s.Line(Pen.Heavy, ContactAxis, Middle - 1, ContactAxis + 2, Middle + 1.38);
        s.Stud(rest, second, Height, SymbolSide.Bottom);
    }

    private static void Bypass(SymbolSketch s, SymbolTerminal bypass, int second)
    {
        s.Path(Pen.Medium, (ContactAxis, 2.4), (second, 2.4));
        s.Dot(ContactAxis, 2.4);
        Contact.Make(s, second, Middle, 1.6, 4);
        s.Stud(bypass, second, Height, SymbolSide.Bottom);
    }

    // A second contact or throw stands far enough to the right for the marks of both.
    private static int SecondAxis(SymbolTerminal contactOut, SymbolTerminal? other, SymbolOptions options) => other is null
        ? 0
        : Math.Max(3, (int)Math.Ceiling(Math.Max(Symbol.MarkWidth(contactOut, options), Symbol.MarkWidth(other, options)) + 0.9));

    // The marks of contact and coil face each other where the coil's do not fit at its right.
    private static int LeastSpread(SymbolTerminal contactIn, SymbolTerminal contactOut, SymbolTerminal? coilUp, SymbolTerminal? coilDown, SymbolOptions options)
    {
        double contact = Math.Max(Symbol.MarkWidth(contactIn, options), Symbol.MarkWidth(contactOut, options));
        double coil = new[] { coilUp, coilDown }.Max(t => Wide(t, options) ? Symbol.MarkWidth(t!, options) : 0);
        return Math.Max((int)(6 * options.Lettering.Factor), (int)Math.Ceiling(contact + coil + 1.6));
    }

    private static bool Wide(SymbolTerminal? terminal, SymbolOptions options) => terminal is not null && Symbol.MarkWidth(terminal, options) > ContactAxis - 0.8;
}
