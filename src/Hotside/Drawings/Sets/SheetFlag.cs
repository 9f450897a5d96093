using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Sets;

/// <summary>A flag of a sheet: where a cut line or a rail goes on.</summary>
/// <param name="Box">Its box in the layout.</param>
/// <param name="Of">The line that is cut, or the rail.</param>
/// <param name="Name">What stands before the zone: the far end of a line, the name of a rail.</param>
/// <param name="Seen">Which circuits show it.</param>
/// <param name="End">The end of a rail or a piece of metal that it stands at; of a cut line there is nothing but the flag.</param>
/// <param name="IsPinAbove">Whether it hangs from what it belongs to, or stands on it.</param>
/// <param name="IsOut">Whether it goes out.</param>
internal sealed record SheetFlag(string Box, string Of, string Name, SeenIn Seen, LayoutEnd? End, bool IsPinAbove, bool IsOut)
{
    /// <summary>For how many zones it has room.</summary>
    public int Zones { get; init; } = 1;

    /// <summary>What stands before the zone in the before circuit, where that has another name for it.</summary>
    public string? NameBefore { get; init; }

    /// <summary>For a cut line, whether the sheet has its first end.</summary>
    public bool KeepsFrom { get; init; }

    /// <summary>Where it goes on: sheets by their place in the set, and the flags there.</summary>
    public ImmutableArray<(int Sheet, string Box)> Partners { get; init; } = [];

    /// <summary>The widest zone that it may have to name.</summary>
    public string WidestZone { get; init; } = "88.M88";

    /// <summary>Whether its zones stand below its name, since others stand close beside it.</summary>
    public bool IsStacked { get; init; }

    /// <summary>What it says, line by line.</summary>
    public ImmutableArray<string> Lines(SeenIn view, IEnumerable<string> zones)
    {
        string name = view == SeenIn.Before ? NameBefore ?? Name : Name, all = string.Join(", ", zones);
        return all.Length == 0 ? [name] : IsStacked ? [name, all] : [$"{name} · {all}"];
    }

    /// <summary>The flag as the views show it.</summary>
    /// <param name="plan">The plan that it is added to.</param>
    /// <param name="lines">What it says in a view.</param>
    public PlannedPart Planned(DrawingPlan plan, Func<SeenIn, ImmutableArray<string>> lines)
    {
        var views = new[] { SeenIn.Before, SeenIn.After }.Select(v => Lines(v, Enumerable.Repeat(WidestZone, Zones))).ToArray();
        ImmutableArray<string> widest = [.. Enumerable.Range(0, views[0].Length).Select(i => views.Select(v => v[i]).MaxBy(t => t.Length)!)];
        var part = plan.Alteration.After.Parts.Concat(plan.Alteration.Before.Parts).First();
        PartView? In(SeenIn view) => (Seen & view) == 0 ? null
            : new(part, FlagSymbol.Of(lines(view), widest, IsPinAbove, IsOut, plan.Lettering), Piece.Empty, Piece.Empty, PartStyle.Kept, false);
        return new(Box, "", In(SeenIn.Before), In(SeenIn.After)) { Role = PlannedRole.Symbol, Overlay = plan.Input.IsOverlaid ? In(SeenIn.Both) : null };
    }

    /// <summary>Its box in the layout.</summary>
    public LayoutBox BoxOf(PlannedPart planned)
    {
        var symbol = (planned.After ?? planned.Before)!.Symbol;
        return new(Box, Seen, symbol.Width, symbol.Height, [new(CircuitEnds.Point, IsPinAbove ? Side.Top : Side.Bottom, symbol.Pins[0].X, symbol.Pins[0].Y)])
        {
            Shape = "flag", IsFeedEnd = !IsOut, IsReturnEnd = IsOut,
        };
    }

    /// <summary>The end of a line on it.</summary>
    public LayoutEnd Pin => LayoutEnd.At(Box, CircuitEnds.Point);
}
