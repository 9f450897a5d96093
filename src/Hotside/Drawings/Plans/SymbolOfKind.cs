using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Plans;

/// <summary>What a kind says of its symbol, whatever part it is and wherever that stands.</summary>
internal static class SymbolOfKind
{
    /// <summary>The terminals that the data names.</summary>
    public static IEnumerable<SymbolTerminal> Terminals(PartKind kind) =>
        kind.Terminals.Select(t => new SymbolTerminal(t.Name, SideOf(t.Side), Mark(t.Name)) { Also = t.Aliases });

    // What ends a pole's mark is a minus, not a hyphen.
    private static string Mark(string terminal) => terminal.EndsWith('-') ? terminal[..^1] + "\u2212" : terminal;

    /// <summary>What is drawn inside.</summary>
    public static SymbolOptions Options(PartKind kind, Lettering lettering) => new()
    {
        Lettering = lettering,
        Contacts = [.. Contacts(kind)],
        Elements = kind.Symbol == "works" ? [.. kind.Elements.Select(e => new SymbolElement(GlyphOf(e, kind), e.From, e.To, Positions(e, kind)))] : [],
        Inside = kind.Symbol is null ? kind.Letter : null,
    };

    private static SymbolSide SideOf(TerminalSide side) => side switch
    {
        TerminalSide.Top => SymbolSide.Top,
        TerminalSide.Bottom => SymbolSide.Bottom,
        TerminalSide.Left => SymbolSide.Left,
        TerminalSide.Right => SymbolSide.Right,
        _ => SymbolSide.Any,
    };

    // A switch's own breaker lies before its contacts, its rheostat behind one of them: the contact is told by the terminals beyond.
    private static IEnumerable<SymbolContact> Contacts(PartKind kind) =>
        from element in kind.Elements
        where element.Type == ElementType.Contact && element.When is not null
        let breaker = kind.Elements.FirstOrDefault(e => e.Type == ElementType.Breaker && e.To == element.From)
        let rheostat = kind.Elements.FirstOrDefault(e => e.Type == ElementType.Sender && e.From == element.To)
        select new SymbolContact(breaker?.From ?? element.From, rheostat?.To ?? element.To, Positions(element, kind)) { ClosedAtRest = IsClosedAtRest(element, kind), BehindBreaker = breaker is not null, BeforeRheostat = rheostat is not null };

    // Where several windings pull, a contact is told by the one that moves it.
    private static string Positions(Element element, PartKind kind)
    {
        if (element.When is not { } when) return "";
        bool driven = kind.Actuators.Count(a => a.Drive == ActuatorDrive.Driven) > 1;
        var words = driven ? when.Tests.Select(t => t.Actuator.Split(' ')[0]) : when.Tests.SelectMany(t => t.Positions);
        return string.Join("·", words.Take(3).Select(p => p.Length > 6 ? p[..5].TrimEnd('a', 'e', 'i', 'o', 'u') + "." : p));
    }

    private static SymbolGlyph GlyphOf(Element element, PartKind kind) => element.Type switch
    {
        ElementType.Lamp => SymbolGlyph.Lamp,
        ElementType.Motor => SymbolGlyph.Motor,
        ElementType.Coil => SymbolGlyph.Winding,
        ElementType.Heater => SymbolGlyph.Heater,
        ElementType.Contact => IsClosedAtRest(element, kind) ? SymbolGlyph.Break : SymbolGlyph.Make,
        ElementType.Link => SymbolGlyph.Link,
        ElementType.Fuse => SymbolGlyph.Fuse,
        ElementType.Shunt or ElementType.Resistor => SymbolGlyph.Resistor,
        ElementType.Sender => SymbolGlyph.Variable,
        ElementType.Diode => SymbolGlyph.Diode,
        ElementType.Gap => SymbolGlyph.Gap,
        ElementType.Capacitor => SymbolGlyph.Capacitor,
        _ => SymbolGlyph.Box,
    };

    private static bool IsClosedAtRest(Element element, PartKind kind) =>
        element.When is null || element.When.Tests.All(t => kind.Actuators.FirstOrDefault(a => a.Name == t.Actuator) is { } actuator && t.Positions.Contains(actuator.Rest));
}
