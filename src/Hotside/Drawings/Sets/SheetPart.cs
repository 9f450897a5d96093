using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Sets;

/// <summary>What one sheet of a set shows of the whole: a block, the rails it touches, and flags.</summary>
/// <param name="Block">The block.</param>
/// <param name="Flags">The flags.</param>
/// <param name="Zones">For how many zones a flag has room.</param>
internal sealed record SheetPart(Block Block, ImmutableArray<SheetFlag> Flags, int Zones)
{
    /// <summary>The plan of the sheet.</summary>
    public DrawingPlan Of(DrawingPlan whole)
    {
        var own = Block.Lines.ToHashSet(StringComparer.Ordinal);
        var cuts = Flags.Where(f => !f.IsRail).ToDictionary(f => f.Of, StringComparer.Ordinal);
        var lines = ImmutableArray.CreateBuilder<PlannedLine>();
        var wires = ImmutableArray.CreateBuilder<LayoutWire>();
        foreach (var (line, wire) in whole.Lines.Zip(whole.Input.Wires))
        {
            bool isCut = cuts.TryGetValue(line.Line, out var flag);
            if (!isCut && !own.Contains(line.Line)) continue;
            lines.Add(line);
            wires.Add(!isCut ? wire : flag!.KeepsFrom ? wire with { To = flag.End } : wire with { From = flag.End });
        }
        foreach (var flag in Flags.Where(f => f.IsRail))
        {
            var view = new LineView("", null, LineStyle.Kept, flag.Name);
            lines.Add(new(flag.Box, null, (flag.Seen & SeenIn.Before) != 0 ? view : null, (flag.Seen & SeenIn.After) != 0 ? view : null) { Overlay = whole.Input.IsOverlaid ? view : null });
            wires.Add(new(flag.Box, flag.Box, RailEnd(flag.Of, whole), flag.End, flag.Seen) { Short = true });
        }
        var needed = wires.SelectMany(w => new[] { w.From, w.To }).Where(e => e.Kind == EndKind.Pin).Select(e => Block.OwnerOf(e.Box)).Concat(Block.Parts).ToHashSet(StringComparer.Ordinal);
        var kinds = wires.SelectMany(w => new[] { w.From.Kind, w.To.Kind }).ToHashSet();
        PlannedPart[] flags = [.. Flags.Select(f => f.Planned(whole, Zones, _ => f.Text([])))];
        return whole with
        {
            Parts = [.. whole.Parts.Where(p => needed.Contains(p.Box) || (p.Role == PlannedRole.FeedRail && kinds.Contains(EndKind.Feed)) || (p.Role == PlannedRole.ReturnRail && kinds.Contains(EndKind.Chassis))), .. flags],
            Lines = lines.ToImmutable(),
            Input = whole.Input with { Boxes = [.. whole.Input.Boxes.Where(b => needed.Contains(Block.OwnerOf(b.Id))), .. Flags.Zip(flags, (f, p) => f.BoxOf(p))], Wires = wires.ToImmutable() },
            FeedRail = kinds.Contains(EndKind.Feed) ? whole.FeedRail : null,
        };
    }

    /// <summary>The same plan, its flags saying where they go on.</summary>
    public DrawingPlan Named(DrawingPlan plan, Func<SheetFlag, SeenIn, string> text) => plan with
    {
        Parts = [.. plan.Parts.Select(p => Flags.FirstOrDefault(f => f.Box == p.Box) is { } flag ? flag.Planned(plan, Zones, v => text(flag, v)) : p)],
    };

    private static LayoutEnd RailEnd(string rail, DrawingPlan whole) => whole.Parts.First(p => p.Box == rail).Role switch
    {
        PlannedRole.FeedRail => LayoutEnd.Feed,
        PlannedRole.ReturnRail => LayoutEnd.Chassis,
        _ => LayoutEnd.At(rail, CircuitEnds.Point),
    };
}
