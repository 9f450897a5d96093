using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Sets;

/// <summary>What one sheet of a set shows of the whole: a block, the rails it touches, and flags.</summary>
/// <param name="Block">The block.</param>
/// <param name="Flags">The flags.</param>
internal sealed record SheetPart(Block Block, ImmutableArray<SheetFlag> Flags)
{
    /// <summary>Whether connectors are as wide as their flags want them.</summary>
    public bool HasWideWays { get; init; }

    /// <summary>How it is laid out without: then only those ways are wider that have flags side by side there.</summary>
    public Layout? WithoutWideWays { get; init; }

    /// <summary>The plan of the sheet.</summary>
    public DrawingPlan Of(DrawingPlan whole) => HasWideWays ? WideWays.Of(Narrow(whole), Flags, WithoutWideWays) : Narrow(whole);

    /// <summary>Whether any connector is wider for its flags.</summary>
    public bool Widens(DrawingPlan whole) => Flags.Any(f => f.IsStacked) && Narrow(whole) is var narrow && WideWays.Of(narrow, Flags, WithoutWideWays) != narrow;

    private DrawingPlan Narrow(DrawingPlan whole)
    {
        var own = Block.Lines.ToHashSet(StringComparer.Ordinal);
        var cuts = Flags.Where(f => f.End is null).ToDictionary(f => f.Of, StringComparer.Ordinal);
        var lines = ImmutableArray.CreateBuilder<PlannedLine>();
        var wires = ImmutableArray.CreateBuilder<LayoutWire>();
        foreach (var (line, wire) in whole.Lines.Zip(whole.Input.Wires))
        {
            bool isCut = cuts.TryGetValue(line.Line, out var flag);
            if (!isCut && !own.Contains(line.Line)) continue;
            lines.Add(line);
            wires.Add(!isCut ? wire : flag!.KeepsFrom ? wire with { To = flag.Pin } : wire with { From = flag.Pin });
        }
        foreach (var flag in Flags.Where(f => f.End is not null))
        {
            var view = new LineView("", null, LineStyle.Kept, flag.Name);
            lines.Add(new(flag.Box, null, (flag.Seen & SeenIn.Before) != 0 ? view : null, (flag.Seen & SeenIn.After) != 0 ? view : null) { Overlay = whole.Input.IsOverlaid ? view : null });
            wires.Add(new(flag.Box, flag.Box, flag.End!.Value, flag.Pin, flag.Seen) { Short = true });
        }
        var needed = wires.SelectMany(w => new[] { w.From, w.To }).Where(e => e.Kind == EndKind.Pin).Select(e => BoxPlanner.OwnerOf(e.Box)).Concat(Block.Parts).ToHashSet(StringComparer.Ordinal);
        var kinds = wires.SelectMany(w => new[] { w.From.Kind, w.To.Kind }).ToHashSet();
        PlannedPart[] flags = [.. Flags.Select(f => f.Planned(whole, view => f.Lines(view, [])))];
        var seenHere = whole.Parts.ToDictionary(p => p.Box, SeenHere, StringComparer.Ordinal);
        return whole with
        {
            Parts = [.. whole.Parts.Select(Shown).Where(p => needed.Contains(p.Box) || (p.Role == PlannedRole.FeedRail && kinds.Contains(EndKind.Feed)) || (p.Role == PlannedRole.ReturnRail && kinds.Contains(EndKind.Chassis))), .. flags],
            Lines = lines.ToImmutable(),
            Input = whole.Input with { Boxes = [.. whole.Input.Boxes.Where(b => needed.Contains(BoxPlanner.OwnerOf(b.Id))).Select(b => b with { Seen = b.Seen & seenHere.GetValueOrDefault(BoxPlanner.OwnerOf(b.Id), SeenIn.Both) }), .. Flags.Zip(flags, (f, p) => f.BoxOf(p))], Wires = wires.ToImmutable() },
            FeedRail = kinds.Contains(EndKind.Feed) ? whole.FeedRail : null,
        };

        // Metal that other sheets show, too, is shown here by the views in which something stands on it.
        SeenIn SeenHere(PlannedPart part) => part.Role == PlannedRole.Symbol && Block.IsShared(part) && wires.Where(w => IsOn(w, part.Box)).Aggregate((SeenIn)0, (all, w) => all | w.Seen) is not 0 and var seen ? seen : SeenIn.Both;

        PlannedPart Shown(PlannedPart part) => seenHere[part.Box] is var seen && seen == SeenIn.Both ? part : part with { Before = (seen & SeenIn.Before) == 0 ? null : part.Before, After = (seen & SeenIn.After) == 0 ? null : part.After };
    }

    private static bool IsOn(LayoutWire wire, string part) => BoxPlanner.OwnerOf(wire.From.Box) == part || BoxPlanner.OwnerOf(wire.To.Box) == part;

    /// <summary>The same plan, its flags saying where they go on.</summary>
    public DrawingPlan Named(DrawingPlan plan, Func<SheetFlag, SeenIn, IEnumerable<string>> zones) => plan with
    {
        Parts = [.. plan.Parts.Select(p => Flags.FirstOrDefault(f => f.Box == p.Box) is { } flag ? flag.Planned(plan, v => flag.Lines(v, zones(flag, v))) : p)],
    };
}
