using System.Collections.Immutable;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Plans;

/// <summary>Turns planned parts into the boxes of the layout. A part that is replaced by one of the same size keeps its box.</summary>
internal static class BoxPlanner
{
    /// <summary>Ends the name of the box in which a replacement of another size stands.</summary>
    public const string Replacement = " (new)";

    /// <summary>The name of the planned part that a box of the layout belongs to.</summary>
    public static string OwnerOf(string box) => box.EndsWith(Replacement, StringComparison.Ordinal) ? box[..^Replacement.Length] : box;

    public static IEnumerable<LayoutBox> Boxes(IReadOnlyList<PlannedPart> parts) => parts.SelectMany(Boxes);

    /// <summary>Whether both views can share one box.</summary>
    public static bool Share(PlannedPart part) =>
        part.Before is null || part.After is null || (part.Before.Symbol.Width == part.After.Symbol.Width && part.Before.Symbol.Height == part.After.Symbol.Height);

    private static IEnumerable<LayoutBox> Boxes(PlannedPart part)
    {
        if (part.Role is PlannedRole.FeedRail or PlannedRole.ReturnRail) yield break;
        if (Share(part)) yield return Box(part, part.Box, part.Before, part.After);
        else
        {
            yield return Box(part, part.Box, part.Before, null);
            yield return Box(part, part.Box + Replacement, null, part.After) with { ReplacedIn = part.Box };
        }
    }

    private static LayoutBox Box(PlannedPart part, string id, PartView? before, PartView? after)
    {
        var seen = (before is null ? 0 : SeenIn.Before) | (after is null ? 0 : SeenIn.After);
        var any = (after ?? before)!;
        double module = Symbol.Module;
        bool metal = part.Role == PlannedRole.Symbol && PlannedRoles.IsMetal(any.Part);
        return new(id, seen, any.Symbol.Width, any.Symbol.Height, metal ? MetalPins(any.Symbol) : Pins(part.Role, before, after))
        {
            Shape = any.Part.Kind.Id,
            TextWidths = new(TextWidth(before), TextWidth(after)),
            TextHeight = new[] { before, after }.OfType<PartView>().Max(v => v.Text.Height) / module,
            IsJoint = part.Role is PlannedRole.Splice or PlannedRole.Stud,
            IsRail = part.Role == PlannedRole.Rail,
            MayTurnOver = MayTurnOver(any),
            MayMirror = part.Role == PlannedRole.Symbol && new[] { before, after }.OfType<PartView>().All(v => v.Mirror is not null),
            Ways = part.Role == PlannedRole.Symbol ? Ways(before, after) : [],
            WaysShown = part.Role == PlannedRole.Symbol && Ways(before, after) is { IsEmpty: false } && before is not null && after is not null ? (Ways(before, null), Ways(after, null)) : ([], []),
            IsFreeEnd = part.Box.StartsWith(LinePlanner.FreeBox, StringComparison.Ordinal),
            IsBody = metal,
            IsFeedEnd = any.Part.Kind.TakesAnyTerminal && any.Symbol.Pins[0].Side == SymbolSide.Bottom,
            IsReturnEnd = any.Part.Kind.TakesAnyTerminal && any.Symbol.Pins[0].Side == SymbolSide.Top,
            Paths = [.. metal ? [new LayoutPath(CircuitEnds.Above, CircuitEnds.Below, InnerWays.Metal)] : part.Role == PlannedRole.Symbol ? InnerWays.Of(before, after) : []],
            Poles = [.. part.Role == PlannedRole.Symbol ? InnerWays.Poles(before, after) : []],
        };
    }

    private static double TextWidth(PartView? view) => view is null ? 0 : Math.Max(view.Text.Width, view.TextLeft.Width) / Symbol.Module;

    // A symbol with just one pin above and one below may stand on its head, unless what is up tells polarity or direction.
    private static bool MayTurnOver(PartView view) =>
        view.Symbol.Pins is [{ Side: SymbolSide.Top }, { Side: SymbolSide.Bottom }] && view.Part.Kind.Elements.All(e => e is { IsSource: false, Directs: false });

    private static ImmutableArray<LayoutPin> Pins(PlannedRole role, PartView? before, PartView? after)
    {
        if (role != PlannedRole.Symbol) return [new(CircuitEnds.Point, Side.Centre, 0, 0)];
        return [.. new[] { before, after }.OfType<PartView>().SelectMany(v => v.Symbol.Pins)
            .DistinctBy(p => (p.X, p.Y)).Select(p => new LayoutPin(p.Terminal == CircuitEnds.Point ? CircuitEnds.Point : CircuitEnds.PinName(p), SideOf(p.Side), p.X, p.Y))];
    }

    // An old and a new connector have their ways in the same columns.
    private static ImmutableArray<int> Ways(PartView? before, PartView? after)
    {
        PartView[] views = [.. new[] { before, after }.OfType<PartView>()];
        return views.All(v => v.Symbol.Name == "connector" && v.Symbol.Columns.Length > 1) ? [.. views.SelectMany(v => v.Symbol.Columns).Distinct().Order()] : [];
    }

    private static ImmutableArray<LayoutPin> MetalPins(Symbol symbol) =>
        [new(CircuitEnds.Above, Side.Top, symbol.Width / 2, 0), new(CircuitEnds.Below, Side.Bottom, symbol.Width / 2, symbol.Height)];

    private static Side SideOf(SymbolSide side) => side switch
    {
        SymbolSide.Top => Side.Top,
        SymbolSide.Bottom => Side.Bottom,
        SymbolSide.Left => Side.Left,
        SymbolSide.Right => Side.Right,
        _ => Side.Top,
    };
}
