using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Plans;

/// <summary>
/// Hangs leads on chassis signs of their own, once for all ways to save room: a lead with all that hangs below its part beside it, and the cases that share a body,
/// whose signs name it. The body's own straps stay lines.
/// </summary>
internal static class SignPlan
{
    // Between two lines so far apart a sign finds room.
    private const int SignPitch = 4;

    public static DrawingPlan Of(DrawingPlan plan)
    {
        // The return rail of an isolated system is a bar.
        if (plan.Parts.Any(p => p.Role == PlannedRole.ReturnRail)) return plan;
        var hung = Layout.OwnSignsOf(plan.Input);
        if (TightFor(plan, hung) is { IsEmpty: false } tight)
        {
            plan = tight.Aggregate(plan, (p, box) => SpreadWays.Of(p, box, SignPitch));
            hung = Layout.OwnSignsOf(plan.Input);
        }
        var planned = plan.Lines.Zip(plan.Input.Wires, (line, wire) => hung.Contains(wire.Id) ? Hung(line, wire, plan) : (line, wire)).ToArray();
        return plan with { Lines = [.. planned.Select(p => p.line)], Input = plan.Input with { HasSigns = true, Wires = [.. planned.Select(p => p.wire)] } };
    }

    // Connectors with one upper pin whose lead to the chassis finds no room for a sign.
    private static ImmutableArray<LayoutBox> TightFor(DrawingPlan plan, IReadOnlySet<string> hung) =>
    [
        .. from box in plan.Input.Boxes
           let upper = box.Pins.Where(p => p.Side == Side.Top).Select(p => LayoutEnd.At(box.Id, p.Name)).ToHashSet()
           let leads = plan.Input.Wires.Where(w => (w.To.Kind == EndKind.Chassis && upper.Contains(w.From)) || (w.From.Kind == EndKind.Chassis && upper.Contains(w.To))).ToArray()
           where leads.Length == 1 && !hung.Contains(leads[0].Id) && SpreadWays.PitchOf(box) < SignPitch && SpreadWays.IsWhole(box, plan)
           select box,
    ];

    private static (PlannedLine line, LayoutWire wire) Hung(PlannedLine line, LayoutWire wire, DrawingPlan plan)
    {
        wire = wire with { HasOwnSign = true };
        if (line.Conductor is not null) return (line, wire);
        // A sign that is not the chassis says what it is; then the lead needs no word.
        string body = wire.To.Box, word = body.Length > 0 ? body : (line.After ?? line.Before)!.Label;
        var label = WireLabel.Of(word, null, LabelSide.Along, plan.Lettering);
        LineView? Named(LineView? view) => view is null ? null : view with { Label = word, NamesSign = body.Length > 0 };
        return (line with { Before = Named(line.Before), After = Named(line.After) }, wire with
        {
            To = LayoutEnd.Chassis,
            LabelWidth = label.Width / Symbol.Module,
            LabelHeight = label.Width == 0 ? 0 : label.Height / Symbol.Module,
            SignOf = body,
        });
    }
}
