using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Drawings.Marks;
using Hotside.Layouts;
using Hotside.Symbols;
using Change = Hotside.Alterations.ConductorState;

namespace Hotside.Drawings.Plans;

/// <summary>
/// Plans both circuits over each other. The layout is told so and keeps apart what no single view shows together; an old part and a replacement of another
/// size stand side by side.
/// </summary>
internal static class OverlayPlan
{
    public static DrawingPlan Of(DrawingPlan plan)
    {
        var planner = new PartPlanner(plan.Alteration, plan.Study, plan.Lettering, plan.Words, plan.FeedRail, plan.Style);
        ImmutableArray<PlannedPart> parts = [.. plan.Parts.Select(p => p with { Overlay = View(p, planner) })];
        var byBox = parts.ToDictionary(p => p.Box, StringComparer.Ordinal);
        var shown = plan.Lines.Zip(plan.Input.Wires).Where(p => !IsTold(p.First, p.Second, byBox, plan)).ToArray();
        ImmutableArray<PlannedLine> lines = [.. shown.Select(p => p.First with { Overlay = View(p.First, p.Second, byBox, plan.Alteration) })];
        return plan with
        {
            Parts = parts,
            Lines = lines,
            Input = new([.. plan.Input.Boxes.Select(b => Box(b, byBox))], [.. shown.Zip(lines, (s, line) => Wire(s.Second, line, plan))]) { IsOverlaid = true, TellsPins = true, HasSigns = plan.Input.HasSigns },
        };
    }

    // Round a splice old and new lines lie close: there its reference is enough, the list has its name.
    private static PartView? View(PlannedPart part, PartPlanner planner) =>
        part.Role is PlannedRole.Splice or PlannedRole.Stud && (part.After ?? part.Before) is { } node ? planner.Referenced(node)
        : part.Role == PlannedRole.Rail ? part.After ?? part.Before
        : part is { Before: { } old, After: { } fresh } ? planner.Overlaid(old, fresh) : part.After ?? part.Before;

    private static LayoutBox Box(LayoutBox box, Dictionary<string, PlannedPart> parts)
    {
        var apart = box with { ReplacedIn = null };
        if (!parts.TryGetValue(box.Id, out var part) || part.Overlay is not { } view || !BoxPlanner.Share(part)) return apart;
        double width = Math.Max(view.Text.Width, view.TextLeft.Width) / Symbol.Module;
        return apart with { TextWidths = new(width, width), TextHeight = view.Text.Height / Symbol.Module };
    }

    private static LayoutWire Wire(LayoutWire wire, PlannedLine line, DrawingPlan plan)
    {
        var label = WireLabel.Of(line.Overlay!.Label, line.Overlay.Number, LabelSide.Along, plan.Lettering);
        return wire with { LabelWidth = label.Width / Symbol.Module, LabelHeight = label.Width == 0 ? 0 : label.Height / Symbol.Module, LabelFoot = WireLabel.Foot(line.Overlay.Number, plan.Lettering) / Symbol.Module, EndWidths = (LinePlanner.NamingWidth([line.Overlay], NamedEnd.From, plan.Lettering), LinePlanner.NamingWidth([line.Overlay], NamedEnd.To, plan.Lettering)) };
    }

    private static LineView View(PlannedLine line, LayoutWire wire, Dictionary<string, PlannedPart> parts, Alteration alteration) => line switch
    {
        { Before: { } old, After: { } fresh } => fresh with { Label = old.Label == fresh.Label ? fresh.Label : $"{old.Label} → {fresh.Label}" },
        { After: { } fresh } => fresh,
        _ => line.Before! with { State = Goes(line, wire, parts, alteration) ? LineStyle.TakenOut : LineStyle.WhereItLay },
    };

    // What stays is drawn once, though the pin of a new symbol stands elsewhere.
    private static bool IsTold(PlannedLine line, LayoutWire wire, Dictionary<string, PlannedPart> parts, DrawingPlan plan) =>
        line.After is null
        && (line.Conductor is { } id ? plan.Alteration.StateOfConductor(id) is Change.LeftAsIs or Change.Renewed : plan.Lines.Any(l => l.Line == line.Line + LinePlanner.Again))
        && new[] { wire.From.Box, wire.To.Box }.All(b => !parts.TryGetValue(b, out var part) || BoxPlanner.Share(part));

    // What is not there afterwards goes; the rest of what only the before circuit shows there lies elsewhere afterwards.
    private static bool Goes(PlannedLine line, LayoutWire wire, Dictionary<string, PlannedPart> parts, Alteration alteration) =>
        line.Conductor is { } id
            ? alteration.StateOfConductor(id) is Change.TakenOut
            : new[] { wire.From.Box, wire.To.Box }.Any(b => parts.TryGetValue(b, out var part) && part.After is null);
}
