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

    /// <summary>The columns in which a pin above and one below stand, if that is all there is; else none.</summary>
    public ImmutableArray<int> Columns =>
        Pins.GroupBy(p => p.X).All(c => c.Count() == 2 && c.Any(p => p.Side == SymbolSide.Top) && c.Any(p => p.Side == SymbolSide.Bottom)) ? [.. Pins.Select(p => p.X).Distinct()] : [];

    /// <summary>The symbol with what stands in its columns moved to others; what reaches over several stays.</summary>
    /// <param name="columns">The columns as they are.</param>
    /// <param name="now">Where each of them goes.</param>
    public Symbol Sorted(ImmutableArray<int> columns, ImmutableArray<int> now)
    {
        int[] inOrder = [.. columns.Order()];
        double pitch = inOrder.Zip(inOrder.Skip(1), (a, b) => b - a).Min() * Module;
        return this with
        {
            Pins = [.. Pins.Select(p => columns.IndexOf(p.X) is >= 0 and var way ? p with { X = now[way] } : p)],
            Shapes = [.. Shapes.Select(s => WayOf(s.Bounds) is >= 0 and var way ? s.Shifted((now[way] - columns[way]) * Module, 0) : s is RectangleShape outline ? Around(outline) : s)],
        };

        // The outline reaches from the first of the ways that there are to the last.
        RectangleShape Around(RectangleShape outline)
        {
            int[] own = [.. Columns];
            double left = outline.Box.Left - (own.Min() * Module), right = outline.Box.Right - (own.Max() * Module);
            int[] places = [.. own.Select(c => now[columns.IndexOf(c)])];
            return outline with { Box = outline.Box with { Left = left + (places.Min() * Module), Right = right + (places.Max() * Module) } };
        }

        // A mark stands right of its lead.
        int WayOf(Box box) => box.Width > pitch ? -1 : columns.IndexOf(inOrder.Where(c => (c - 0.7) * Module <= box.Left).DefaultIfEmpty(-1).Last());
    }

    /// <summary>The shapes with the box's top left corner at a place in units.</summary>
    public ImmutableArray<Shape> At(double x, double y) => [.. Shapes.Select(s => s.Shifted(x, y))];

    /// <summary>Width in modules of a terminal's mark.</summary>
    public static double MarkWidth(SymbolTerminal terminal, SymbolOptions options) =>
        Texts.TextMeasure.Width(terminal.Label, options.Lettering.Small) / Module;

    private static SymbolSide Opposite(SymbolSide side, SymbolSide one, SymbolSide other) => side == one ? other : side == other ? one : side;
}
