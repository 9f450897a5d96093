using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Symbols;

/// <summary>A part as it is drawn: a box on the module grid with pins on its edge. The box's top left corner is the origin of the shapes.</summary>
/// <param name="Name">Name of the symbol.</param>
/// <param name="Width">Width of the box in modules.</param>
/// <param name="Height">Height of the box in modules.</param>
/// <param name="Pins">One for each terminal, on whole modules.</param>
/// <param name="Shapes">What is drawn, in units, all inside the box.</param>
internal sealed record Symbol(string Name, int Width, int Height, ImmutableArray<SymbolPin> Pins, ImmutableArray<Shape> Shapes)
{
    /// <summary>Units in a module: 2.5 mm.</summary>
    public const int Module = 10;

    /// <summary>The pin of a terminal.</summary>
    public SymbolPin Pin(string terminal) => Pins.First(p => p.Terminal == terminal);

    /// <summary>The symbol with left and right exchanged.</summary>
    public Symbol Mirrored() => this with
    {
        Pins = [.. Pins.Select(p => p with { X = Width - p.X, Side = Opposite(p.Side, SymbolSide.Left, SymbolSide.Right) })],
        Shapes = [.. Shapes.Select(s => s.At(new(Width * Module, 0, Mirrored: true)))],
    };

    /// <summary>The symbol with top and bottom exchanged.</summary>
    public Symbol TurnedOver() => this with
    {
        Pins = [.. Pins.Select(p => p with { Y = Height - p.Y, Side = Opposite(p.Side, SymbolSide.Top, SymbolSide.Bottom) })],
        Shapes = [.. Shapes.Select(s => s.At(new(0, Height * Module, TurnedOver: true)))],
    };

    /// <summary>The shapes with the box's top left corner at a place in units.</summary>
    public ImmutableArray<Shape> At(double x, double y) => [.. Shapes.Select(s => s.Shifted(x, y))];

    /// <summary>Width in modules of a terminal's mark.</summary>
    public static double MarkWidth(SymbolTerminal terminal, SymbolOptions options) =>
        Texts.TextMeasure.Width(terminal.Label, options.Lettering.Small) / Module;

    private static SymbolSide Opposite(SymbolSide side, SymbolSide one, SymbolSide other) => side == one ? other : side == other ? one : side;
}
