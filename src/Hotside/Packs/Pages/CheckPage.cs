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
        Of(source, DeadKey, "Check sheet, battery out", r => r.Stage <= CheckStage.DeadLoads, "THE BATTERY IS OUT. Meter leads zeroed.");

    /// <summary>The rows of first power and after.</summary>
    public static Section? Live(PackSource source) =>
        Of(source, LiveKey, "Check sheet, power on", r => r.Stage > CheckStage.DeadLoads, "Begin only when every row of the sheet with the battery out is ticked. Stop at the first row that is wrong.", "\"Of battery\": that part of what the battery's posts show in the same setting. \"look\": right is as bright or as loud as it ever was.");

    private static Section? Of(PackSource source, string key, string title, Func<CheckRow, bool> isShown, string banner, string legend = "")
    {
        var sheet = source.CheckSheet;
        CheckRow[] rows = [.. sheet.Rows.Where(isShown)];
        if (rows.Length == 0) return null;
        var (width, lettering) = (source.WideWidth, source.Lettering);
        List<FlowPart> parts =
        [
            new([Prose.Boxed(banner, key == DeadKey ? sheet.Cautions : [legend], width, lettering)]) { After = 4, KeepsNext = true },
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

    // First power is measured across one lamp, whatever is switched on; elsewhere leads move and switches stay.
    private static string HeadOf(CheckRow row) => CheckSheetTable.HeadOf(row.Stage) + row.Stage switch
    {
        CheckStage.AtRest => "",
        CheckStage.PowerUp => $": volts, either sign, across {row.RedOn}",
        _ => " · " + SettingOf(row),
    };

    private static string SettingOf(CheckRow row) => row.Stands.Length == 0 ? row.Setting : $"{row.Setting}: {row.Stands}";

    // What another caution says with more words is not said twice.
    private static IEnumerable<string> CautionsOf(IEnumerable<CheckRow> rows)
    {
        string[] all = [.. rows.Select(r => r.Caution).Where(c => c.Length > 0).Distinct()];
        return all.Where(c => !Array.Exists(all, o => o != c && o.StartsWith(c, StringComparison.Ordinal)));
    }

    private static string Expected(CheckRow row) => row.Stage == CheckStage.PowerUp ? row.Expected.Replace(PowerUpRows.EitherSign, "", StringComparison.Ordinal) : row.Expected;

    private static IEnumerable<TableRow> Rows(CheckRow[] rows)
    {
        bool hasBattery = rows.Any(r => r.OfBattery.Length > 0);
        string? group = null;
        string caution = "";
        for (int i = 0; i < rows.Length; i++)
        {
            var row = rows[i];
            string head = HeadOf(row);
            if (head != group)
            {
                yield return TableRow.Heading(head);
                if (row.Stage > CheckStage.DeadLoads)
                    foreach (string told in CautionsOf(rows.Skip(i).TakeWhile(r => HeadOf(r) == head))) yield return TableRow.Caution(told);
            }
            // Which fuses are in changes from row to row.
            if (row.Stage <= CheckStage.DeadLoads && row.Caution.Length > 0 && (row.Caution != caution || head != group)) yield return TableRow.Caution(row.Caution);
            (group, caution) = (head, row.Caution);
            yield return TableRow.Of([Numbers.Whole(row.Number), row.Stage == CheckStage.PowerUp ? SettingOf(row) : row.Where, row.BlackOn, Expected(row), .. hasBattery ? [new Cell(row.OfBattery)] : Array.Empty<Cell>(), row.Band, Cell.Empty, Cell.Tick, new Cell("") { Note = row.IfNot }]) with { Least = 24 };
        }
    }
}
