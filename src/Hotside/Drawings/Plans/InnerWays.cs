using Hotside.Circuits;
using Hotside.Layouts;

namespace Hotside.Drawings.Plans;

/// <summary>How the current goes through a part, as far as it tells what is hot and what is return: contacts closed, loads on, sources giving.</summary>
internal static class InnerWays
{
    /// <summary>Across a piece of metal: as good as one point (own choice: measured on the gallery and the bench).</summary>
    public const double Metal = 40;

    // Where a conductor has 4. A load's is far below it: what many lamps return on one wire must not stand above what feeds one of them (own choice: measured on the gallery and the bench).
    private const double InLine = 10, Resisting = 1, Load = 0.25, Open = 0.02;

    /// <summary>The ways inside what either view shows.</summary>
    public static IEnumerable<LayoutPath> Of(PartView? before, PartView? after) =>
        new[] { before, after }.OfType<PartView>().Where(v => !v.Part.Kind.TakesAnyTerminal)
            .SelectMany(v => v.Part.Kind.Elements.Where(e => !e.IsSource).Select(e => new LayoutPath(NameOf(v, e.From), NameOf(v, e.To), Through(e)))).Distinct();

    /// <summary>The poles of the sources that either view shows. A battery's hot pole stands up, whichever it is.</summary>
    public static IEnumerable<LayoutPole> Poles(PartView? before, PartView? after) =>
        new[] { before, after }.OfType<PartView>().SelectMany(v => v.Part.Kind.Elements.Where(e => e.IsSource)
            .SelectMany(e => new[] { e.From, e.To }).Distinct().Select(t => v.Symbol.Pins.FirstOrDefault(p => p.Terminal == t)).OfType<Symbols.SymbolPin>()
            .Where(p => p.Side is Symbols.SymbolSide.Top or Symbols.SymbolSide.Bottom).Select(p => new LayoutPole(CircuitEnds.PinName(p), p.Side == Symbols.SymbolSide.Top))).Distinct();

    private static double Through(Element element) => element.Type switch
    {
        ElementType.Gap or ElementType.Capacitor => Open,
        _ when element.IsLink => InLine,
        _ when element.IsInLine => Resisting,
        _ => Load,
    };

    // A place inside is one of the part's; of old and new part it is the same only where the name is.
    private static string NameOf(PartView view, string point) => view.Symbol.Pins.FirstOrDefault(p => p.Terminal == point) is { } pin ? CircuitEnds.PinName(pin) : "in " + point;
}
