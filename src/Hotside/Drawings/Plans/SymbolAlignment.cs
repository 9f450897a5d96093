using Hotside.Symbols;

namespace Hotside.Drawings.Plans;

/// <summary>Gives the symbols of an old and a new part one width and their first upper pin one place, so that the wires stay where they are.</summary>
internal static class SymbolAlignment
{
    public static (Symbol Before, Symbol After) Of(Symbol before, Symbol after)
    {
        if (before.Height != after.Height || Axis(before) is not { } old || Axis(after) is not { } now) return (before, after);
        int left = Math.Max(old, now);
        Symbol a = Shifted(before, left - old), b = Shifted(after, left - now);
        int width = Math.Max(a.Width, b.Width);
        return (a with { Width = width }, b with { Width = width });
    }

    private static int? Axis(Symbol symbol) => symbol.Pins.FirstOrDefault(p => p.Side == SymbolSide.Top)?.X;

    private static Symbol Shifted(Symbol symbol, int right) => right == 0 ? symbol : symbol with
    {
        Width = symbol.Width + right,
        Pins = [.. symbol.Pins.Select(p => p with { X = p.X + right })],
        Shapes = symbol.At(right * Symbol.Module, 0),
    };
}
