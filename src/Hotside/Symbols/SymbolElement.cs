namespace Hotside.Symbols;

/// <summary>Something inside a part that is drawn from what is in it.</summary>
/// <param name="Glyph">How it is drawn.</param>
/// <param name="From">Its upper end: a terminal, an inner node or <c>case</c>.</param>
/// <param name="To">Its lower end.</param>
/// <param name="ClosedIn">The positions that close a contact; empty for none.</param>
internal sealed record SymbolElement(SymbolGlyph Glyph, string From, string To, string ClosedIn = "");

/// <summary>How a thing inside a part is drawn.</summary>
internal enum SymbolGlyph
{
    /// <summary>A plain line.</summary>
    Link,

    /// <summary>A lamp.</summary>
    Lamp,

    /// <summary>A motor.</summary>
    Motor,

    /// <summary>A winding.</summary>
    Winding,

    /// <summary>A resistor.</summary>
    Resistor,

    /// <summary>A resistor that something moves.</summary>
    Variable,

    /// <summary>A heating element.</summary>
    Heater,

    /// <summary>A contact open at rest.</summary>
    Make,

    /// <summary>A contact closed at rest.</summary>
    Break,

    /// <summary>A fuse.</summary>
    Fuse,

    /// <summary>A diode, from its upper to its lower end.</summary>
    Diode,

    /// <summary>A capacitor.</summary>
    Capacitor,

    /// <summary>A spark gap.</summary>
    Gap,

    /// <summary>Anything else: a box.</summary>
    Box,
}
