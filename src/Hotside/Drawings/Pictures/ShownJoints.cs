using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Pictures;

/// <summary>What of joints the pictures of a sheet show that a legend must explain; known when all has its place.</summary>
/// <param name="HaveBar">Whether one is drawn as a bar.</param>
/// <param name="HaveOld">Whether wires met somewhere that meet there no longer, in an overlay.</param>
internal sealed record ShownJoints(bool HaveBar, bool HaveOld)
{
    // Four lines never meet in one place; three may or may not.
    private const int ForBar = 3;

    /// <summary>What is shown of a layout.</summary>
    public static ShownJoints Of(DrawingPlan plan, Layout layout, IReadOnlyCollection<SeenIn> views) => new(
        views.Any(v => plan.Parts.Any(p => p.In(v) is not null && !BarsOf(p, plan, layout, v).IsEmpty)),
        views.Contains(SeenIn.Both) && new OverlayLines(plan, layout) is var lines && layout.Dots.Any(d => (d.Seen & SeenIn.Both) != 0 && lines.IsJoint(d) && lines.WasJoint(d)));

    /// <summary>What may be shown, for room to be kept.</summary>
    public static ShownJoints Possible(DrawingPlan plan, IReadOnlyCollection<SeenIn> views) => new(
        views.Any(v => plan.Parts.Any(p => IsJoint(p) && p.In(v) is not null && plan.Input.Wires.Zip(plan.Lines).Count(w => w.Second.In(v) is not null && EndsAt(w.First, p)) >= ForBar)),
        views.Contains(SeenIn.Both) && plan.Lines.Any(l => l is { After: null, Overlay: not null }));

    /// <summary>What a joint looks like where its wires meet in several places: runs of points.</summary>
    public static ImmutableArray<ImmutableArray<(int X, int Y)>> BarsOf(PlannedPart part, DrawingPlan plan, Layout layout, SeenIn view) => !IsJoint(part) ? [] : JointBars.Of(
        [.. plan.Input.Wires.Zip(plan.Lines, layout.Wires).Where(w => EndsAt(w.First, part) && w.Second.In(view) is { State: not LineStyle.WhereItLay }).Select(w => w.Third.Points)]);

    private static bool IsJoint(PlannedPart part) => part.Role is PlannedRole.Splice or PlannedRole.Stud;

    private static bool EndsAt(LayoutWire wire, PlannedPart part) => wire.From.Box == part.Box || wire.To.Box == part.Box;
}
