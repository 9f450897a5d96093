using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>A distributor: points with their condenser, and the rotor's gap.</summary>
internal static class DistributorSymbol
{
    private const int Condenser = 2, Points = 5, Rotor = 8, Width = 11, Height = 8;

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("distributor", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? points = terminals.Take("1"), high = terminals.Take("4"), body = terminals.Take("31", "case"), plugs = terminals.Take("4a");
        if (points is null || high is null)
            return null;
        var s = new SymbolSketch(Width, Height, options.Lettering);
        s.Enclosure(0, 0, Width, Height);
        Contact.Break(s, Points, 4, 4, body is null ? 2.6 : 4);
        Plates(s);
        s.Dot(Points, 1.8);
        s.Dot(Points, 6.2);
        if (body is null)
            s.CaseGround(Points, 6.6);
        Gap(s, plugs is null);
        s.Stud(points, Points, 0, SymbolSide.Top, room: 2.2);
        s.Stud(high, Rotor, 0, SymbolSide.Top);
        s.Stud(body, Points, Height, SymbolSide.Bottom, room: 2.2);
        s.Stud(plugs, Rotor, Height, SymbolSide.Bottom);
        return s.Done("distributor");
    }

    private static void Plates(SymbolSketch s)
    {
        s.Path(Pen.Medium, (Points, 1.8), (Condenser, 1.8), (Condenser, 3.7));
        s.Path(Pen.Medium, (Condenser, 4.3), (Condenser, 6.2), (Points, 6.2));
        s.Line(Pen.Heavy, Condenser - 1, 3.7, Condenser + 1, 3.7);
        s.Line(Pen.Heavy, Condenser - 1, 4.3, Condenser + 1, 4.3);
    }

    private static void Gap(SymbolSketch s, bool toCase)
    {
        s.Line(Pen.Medium, Rotor, 0, Rotor, 3.2);
        s.Filled((Rotor, 3.75), (Rotor - 0.45, 2.95), (Rotor + 0.45, 2.95));
        s.Filled((Rotor, 4.25), (Rotor - 0.45, 5.05), (Rotor + 0.45, 5.05));
        if (toCase)
            s.Path(Pen.Medium, (Rotor, 4.8), (Rotor, 6.2), (Points, 6.2));
        else
            s.Line(Pen.Medium, Rotor, 4.8, Rotor, Height);
    }
}
