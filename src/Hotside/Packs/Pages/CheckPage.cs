using Hotside.CheckSheets;
using Hotside.Circuits;
using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>The check sheets: readings to take with the battery out, and at first power and after.</summary>
internal static class CheckPage
{
    public const string DeadKey = "check-dead", LiveKey = "check-live";

    /// <summary>The rows that are measured with the battery out.</summary>
    public static Section? Dead(PackSource source) =>
        Of(source, DeadKey, "Check sheet, battery out", r => r.Stage <= CheckStage.DeadLoads, "THE BATTERY IS OUT. Electronics unplugged, meter leads zeroed.");

    /// <summary>The rows of first power and after.</summary>
    public static Section? Live(PackSource source) =>
        Of(source, LiveKey, "Check sheet, power on", r => r.Stage > CheckStage.DeadLoads, "Begin only when every row of the sheet with the battery out is ticked. Stop at the first row that is wrong.");

    private static Section? Of(PackSource source, string key, string title, Func<CheckRow, bool> isShown, string banner)
    {
        var sheet = source.CheckSheet;
        CheckRow[] rows = [.. sheet.Rows.Where(isShown)];
        if (rows.Length == 0) return null;
        var (width, lettering) = (source.WideWidth, source.Lettering);
        List<FlowPart> parts =
        [
            new([Prose.Boxed(banner, key == DeadKey ? sheet.Cautions : [], width, lettering)]) { After = 4, KeepsNext = true },
            Blanks.Of(["Meter", "Leads joined read", key == LiveKey ? "Battery now, V" : "Date", "Tested by"], 4, width, lettering) with { KeepsNext = true },
            Table.Of(
            [
                new("No.") { IsRight = true, IsBold = true }, new("Red on") { IsBold = true, Share = 0.2 }, new("Black on") { Share = 0.1 }, new("Expected") { IsRight = true }, .. rows.Any(r => r.OfBattery.Length > 0) ? [new Column("Of battery") { IsRight = true }] : Array.Empty<Column>(),
                new("Band") { Least = 64 }, Column.Blank("Reading", 19), Column.Tick("Right"), new("If not") { Share = 1, Weight = 2, Least = 120 },
            ], Rows(rows), width, lettering),
        ];
        if (key == LiveKey || source.CheckSheet.Rows.All(isShown))
            if (!sheet.Notes.IsEmpty) parts.Add(Prose.Points(sheet.Notes, lettering.Fine, width));
        return new(key, title, [.. parts]) { IsLying = source.IsWideLying, Note = "A filled sheet is a file of readings for the command diagnose." };
    }

    private static string HeadOf(CheckRow row) => row.Stage == CheckStage.AtRest ? CheckSheetTable.HeadOf(row.Stage) : $"{CheckSheetTable.HeadOf(row.Stage)} · {row.Setting}";

    private static IEnumerable<TableRow> Rows(CheckRow[] rows)
    {
        bool hasBattery = rows.Any(r => r.OfBattery.Length > 0);
        string? group = null;
        for (int i = 0; i < rows.Length; i++)
        {
            var row = rows[i];
            string head = HeadOf(row);
            if (head != group)
            {
                yield return TableRow.Heading(head);
                foreach (string caution in rows.Skip(i).TakeWhile(r => HeadOf(r) == head).Select(r => r.Caution).Where(c => c.Length > 0).Distinct().ToArray() is var all ? all.Where(c => !all.Any(o => o != c && o.StartsWith(c, StringComparison.Ordinal))) : []) yield return TableRow.Caution(caution);
            }
            group = head;
            yield return TableRow.Of([Numbers.Whole(row.Number), row.RedOn, row.BlackOn, row.Expected, .. hasBattery ? [new Cell(row.OfBattery)] : Array.Empty<Cell>(), row.Band, Cell.Empty, Cell.Tick, new Cell("") { Note = row.IfNot }]) with { Least = 24 };
        }
    }
}
