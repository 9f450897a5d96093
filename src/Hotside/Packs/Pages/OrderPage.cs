using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Outputs;
using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>The work order: steps to tick, cautions before the step that they concern, and beside each step which battery may be connected after it.</summary>
internal static class OrderPage
{
    public const string Key = "work-order";

    public static Section? Of(PackSource source)
    {
        if (!source.IsAltered) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        var order = source.Job.OrderWork(source.Options.Words);
        List<FlowPart> parts = [new([Prose.Boxed("Battery", OrderSheet.Proof(order), width, lettering)]) { After = 6, KeepsNext = true }];
        if (source.Stops is { IsEmpty: false } stops) parts.Insert(0, new([Prose.Boxed(OrderSheet.DoNotBegin(stops.Length), stops.Select(s => $"{s.Code}: {s.Message}"), width, lettering)]) { After = 6 });
        foreach (var finding in order.Findings) parts.Add(new([Prose.Boxed(finding.Code, [finding.Message], width, lettering)]) { After = 6 });
        // What is done is history: who goes on begins on a fresh sheet.
        int done = order.DoneUntil;
        if (done > 0) parts.Add(Steps(order.Steps[..done], width, lettering));
        if (done > 0 && done < order.Steps.Length) parts.Add(Prose.Heading($"Stopped after step {Numbers.Whole(done)}: go on here", width, lettering) with { BeginsPage = true });
        if (done < order.Steps.Length) parts.Add(Steps(order.Steps[done..], width, lettering));
        parts.Add(Prose.Paragraph("A box is ticked when all its lines are done. \"May\": this battery would harm nothing if it were connected as the vehicle stands after the step; worked out from the job file, engine standing, at rest, with each switch moved and with each load alone.", lettering.Fine, width));
        parts.Add(Prose.Heading("Stopped here", width, lettering));
        parts.Add(Blanks.Of(["After step", "Date and time", "Initials", "After step", "Date and time", "Initials"], 3, width, lettering));
        return new(Key, "Work order", [.. parts]) { Note = $"{Numbers.Whole(order.Steps.Length)} steps, order {order.Mark}. One action a line." };
    }

    private static FlowPart Steps(ImmutableArray<WorkStep> steps, double width, PackLettering lettering)
    {
        List<TableRow> rows = [];
        string? group = null, warned = null, harmed = null;
        foreach (var step in steps)
        {
            string head = OrderSheet.Heading(step), harms = Harms(step);
            if (head != group) rows.Add(TableRow.Heading(head));
            group = head;
            // What was said before the step above still holds.
            if (step.Caution is { } caution && caution != warned) rows.Add(TableRow.Caution(caution));
            rows.Add(TableRow.Of(step.IsDone ? "done" : Cell.Tick, Numbers.Whole(step.Number), string.Join(", ", step.Labels), Acts(step), harms.Length > 0 && harms == harmed ? "as before" : harms, May(step.SafeWithOld), May(step.SafeWithNew), Cell.Empty) with { Least = 24 });
            (warned, harmed) = (step.Caution, harms);
        }
        return Table.Of(
            [Column.Tick(), new("Step") { IsRight = true, IsBold = true }, new("No.") { Share = 0.01, Least = 36 }, new("What is done") { Share = 3, Weight = 3 }, new("Harmed if a battery were on") { Share = 1, Least = 110 }, new("Old may") { Least = 28 }, new("New may") { Least = 28 }, Column.Blank("Time, initials", 20)],
            rows, width, lettering);
    }

    private static Cell Acts(WorkStep step) => new(string.Join('\n', step.Acts.Select(a => a.Text).Concat(step.Remarks))) { Note = step.Reasons.IsEmpty ? "" : "because " + string.Join("; ", step.Reasons) };

    private static string Harms(WorkStep step)
    {
        string[] all = [.. step.Harms.Where(h => h.Severity >= Severity.Error).Select(h => $"{(h.Battery == Battery.Old ? "old" : "new")}: {h.Text}").Distinct()];
        return all.Length == 0 ? "" : all[0] + (all.Length > 1 ? $"; {Numbers.Whole(all.Length - 1)} more" : "");
    }

    private static Cell May(bool? isSafe) => isSafe switch { true => "yes", false => new Cell("NO") { IsBold = true }, _ => "–" };
}
