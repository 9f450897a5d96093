using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Pictures;

/// <summary>What of joints the pictures of a sheet show that a legend must explain; known when all has its place.</summary>
/// <param name="HaveBar">Whether one is drawn as a bar.</param>
/// <param name="HaveOld">Whether wires met somewhere that meet there no longer, in an overlay.</param>
/// <param name="HaveSlant">Whether some lines slant where they part.</param>
/// <param name="HaveSquare">Whether others part squarely, close to the pin that they share.</param>
/// <param name="HaveLead">Whether a lead of a part is so long, without a word of its kind at it, that it looks like a wire.</param>
internal sealed record ShownJoints(bool HaveBar, bool HaveOld, bool HaveSlant, bool HaveSquare, bool HaveLead)
{
    // In modules.
    private const int LikeWire = 6;

    // Four lines never meet in one place; three may or may not.
    private const int ForBar = 3;

    /// <summary>What is shown of a layout.</summary>
    public static ShownJoints Of(DrawingPlan plan, Layout layout, IReadOnlyCollection<SeenIn> views)
    {
        ShownLines[] shown = [.. views.Select(v => new ShownLines(plan, layout, v))];
        return new(
            shown.Any(s => plan.Parts.Any(p => !s.BarsOf(p).IsEmpty)),
            views.Contains(SeenIn.Both) && new OverlayLines(plan, layout) is var lines && layout.Dots.Any(d => (d.Seen & SeenIn.Both) != 0 && lines.IsJoint(d) && lines.WasJoint(d)),
            shown.Any(s => !s.Slants.All.IsEmpty),
            shown.Any(s => s.Slants.HaveSquare),
            plan.Figures is null && views.Zip(shown).Any(s => s.Second.All.Any(l => IsBareLead(l.Wire, l.Line.In(s.First)!) && LineSteps.Of(l.Placed.Points).Count() >= LikeWire)));
    }

    /// <summary>What may be shown, for room to be kept.</summary>
    public static ShownJoints Possible(DrawingPlan plan, IReadOnlyCollection<SeenIn> views)
    {
        bool anyShared = plan.Input.Wires.SelectMany(w => new[] { w.From, w.To }).Where(e => e.Kind == EndKind.Pin).CountBy(e => e).Any(e => e.Value > 1);
        return new(
            views.Any(v => plan.Parts.Any(p => ShownLines.IsJoint(p) && p.In(v) is not null && plan.Input.Wires.Zip(plan.Lines).Count(w => w.Second.In(v) is not null && ShownLines.EndsAt(w.First, p)) >= ForBar)),
            views.Contains(SeenIn.Both) && plan.Lines.Any(l => l is { After: null, Overlay: not null }),
            anyShared,
            anyShared,
            plan.Figures is null && views.Any(v => plan.Input.Wires.Zip(plan.Lines).Any(l => l.Second.In(v) is { } line && IsBareLead(l.First, line))));
    }

    private static bool IsBareLead(LayoutWire wire, LineView line) => wire.Short && (line.Label.Length == 0 || line.NamesSign);
}
