using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Charts;

/// <summary>The symbol of a kind with the name of every terminal beside its pin.</summary>
internal static class KindFigure
{
    private const double M = Symbol.Module, Stub = 1.2 * M;

    // Enough to see that a block has ways, few enough to read them.
    private const int Ways = 3;

    /// <summary>The figure, its top left corner at the origin.</summary>
    public static Piece Of(PartKind kind, Lettering lettering)
    {
        if (kind.HoldsParts) return new(60, 40, PartLook.Apply([new RectangleShape(new(0, 0, 60, 40), 4, Pen.Enclosure, ColourRole.Panel)], PartStyle.Kept));
        if (kind.TakesAnyTerminal) kind = kind with { Terminals = [new KindTerminal("any", TerminalSide.Top)] };
        if (kind.Ways is { } ways) kind = kind.WithWays(Math.Clamp(Ways, ways.Least, ways.Most));
        var terminals = SymbolOfKind.Terminals(kind).ToArray();
        var symbol = SymbolBook.Of(kind.Symbol, terminals, SymbolOfKind.Options(kind, lettering) with { TerminalMarks = true });
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(symbol.Shapes);
        string[] printed = [.. symbol.Shapes.OfType<TextShape>().Select(t => t.Text)];
        foreach (var pin in symbol.Pins.Where(p => !printed.Contains(terminals.First(t => t.Name == p.Terminal).Label)))
            shapes.AddRange(Named(pin, symbol, lettering));
        Box box = Box.Around(shapes.Select(s => s.Bounds));
        double left = Math.Min(0, box.Left), top = Math.Min(0, box.Top);
        return new(Math.Max(box.Right, symbol.Width * M) - left, Math.Max(box.Bottom, symbol.Height * M) - top, [.. PartLook.Apply(shapes, PartStyle.Kept).Select(s => s.Shifted(-left, -top))]);
    }

    // A wire's beginning at the pin, with the name beside it.
    private static IEnumerable<Shape> Named(SymbolPin pin, Symbol symbol, Lettering lettering)
    {
        double x = pin.X * M, y = pin.Y * M, cap = lettering.Small.CapHeight;
        bool up = pin.Side == SymbolSide.Top || (pin.Side == SymbolSide.Any && pin.Y == 0);
        switch (pin.Side)
        {
            case SymbolSide.Left:
                yield return Shape.Line(Pen.Medium, x - Stub, y, x, y);
                yield return TextShape.Of(pin.Terminal, lettering.Small, x - 2, y - 3, Anchor.End);
                break;
            case SymbolSide.Right:
                yield return Shape.Line(Pen.Medium, x, y, x + Stub, y);
                yield return TextShape.Of(pin.Terminal, lettering.Small, x + 2, y - 3);
                break;
            default:
                yield return Shape.Line(Pen.Medium, x, y, x, up ? y - Stub : y + Stub);
                yield return TextShape.Of(pin.Terminal, lettering.Small, x + 4, up ? y - 4 : y + 4 + cap);
                break;
        }
    }
}
