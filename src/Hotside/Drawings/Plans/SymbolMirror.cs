using Hotside.Symbols;

namespace Hotside.Drawings.Plans;

/// <summary>Draws the symbols that may as well stand with left and right exchanged: relays with the coil at the left, and what has no direction of its own.</summary>
internal static class SymbolMirror
{
    private static readonly string[] Relays = ["relay", "relay-coil-to-case", "relay-break"];

    private static readonly string[] Alike = ["generator", "generator-field-inside", "flasher", "regulator", "reducer", "alternator", "ignition-coil", "box"];

    /// <summary>The mirrored form of a part's symbol; <see langword="null"/> where it has none.</summary>
    /// <param name="symbol">The symbol as it stands.</param>
    /// <param name="part">Of what it was drawn.</param>
    public static Symbol? Of(Symbol symbol, SymbolOfPart part)
    {
        if (Alike.Contains(symbol.Name)) return symbol.Mirrored();
        if (!Relays.Contains(symbol.Name)) return null;
        var mirror = (part with { CoilAtLeft = true }).Draw();
        return symbol.Pins.All(p => mirror.Pins.Any(m => m.Terminal == p.Terminal && m.X == symbol.Width - p.X && m.Y == p.Y)) ? mirror : null;
    }

    /// <summary>The mirrored form once the symbol has been given a wider box: its pins at the mirrored places of that.</summary>
    public static Symbol? Aligned(Symbol? mirror, Symbol symbol)
    {
        if (mirror is null || symbol.Pins.IsEmpty) return null;
        int right = symbol.Width - symbol.Pins[0].X - mirror.Pin(symbol.Pins[0].Terminal).X;
        return mirror with
        {
            Width = symbol.Width,
            Pins = [.. mirror.Pins.Select(p => p with { X = p.X + right })],
            Shapes = mirror.At(right * Symbol.Module, 0),
        };
    }
}
