using System.Text;
using System.Text.Json;
using Hotside.CheckSheets;
using Hotside.Circuits;
using Hotside.Outputs;

namespace Hotside;

/// <summary>A check sheet as text, as comma-separated values and as JSON.</summary>
public static class CheckSheetTable
{
    private const string Schema = "hotside-check-sheet/1";

    private static readonly string[] Head = ["no.", "stage", "setting", "red on", "black on", "expected", "of battery", "band", "reading", "ok", "if not"];

    /// <summary>The sheet in plain text: cautions and heads, rows by stage with room for the reading, notes; lines end with a line feed.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is <see langword="null"/>.</exception>
    public static string ToText(this CheckSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        StringBuilder text = new();
        text.Append(sheet.Title).Append("\n\n");
        foreach (string caution in sheet.Cautions) text.Append("CAUTION: ").Append(caution).Append('\n');
        text.Append('\n');
        foreach (string head in sheet.Heads) text.Append(head).Append('\n');
        foreach (var stage in sheet.Rows.GroupBy(r => r.Stage))
        {
            text.Append('\n').Append(HeadOf(stage.Key)).Append('\n');
            foreach (var setting in stage.GroupBy(r => (r.Setting, r.Caution)))
            {
                string stands = setting.First().Stands;
                text.Append("  ").Append(setting.Key.Setting).Append(stands.Length == 0 ? "" : ": " + stands).Append('\n');
                if (setting.Key.Caution.Length > 0) text.Append("  CAUTION: ").Append(setting.Key.Caution).Append('\n');
                string[][] cells = [["no.", "red on", "black on", "expected", "of battery", "band", "reading", ""], .. setting.Select(Cells)];
                string[] lines = TextColumns.Of("  ", cells, 0).TrimEnd('\n').Split('\n');
                text.Append(lines[0]).Append('\n');
                foreach (var (row, line) in setting.Zip(lines.Skip(1)))
                {
                    text.Append(line).Append('\n');
                    if (row.IfNot.Length > 0) text.Append(sheet.Extent == SheetExtent.Intake ? "       means: " : "       if not: ").Append(row.IfNot).Append('\n');
                }
            }
        }
        if (!sheet.Notes.IsEmpty) text.Append('\n');
        foreach (string note in sheet.Notes) text.Append("- ").Append(note).Append('\n');
        return text.ToString();
    }

    /// <summary>The rows as comma-separated values after RFC 4180: a head line, then a line a row; the column "reading" is to be filled in, and the file then is one of readings for a diagnosis.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is <see langword="null"/>.</exception>
    public static string ToCsv(this CheckSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return CsvText.Of([Head, .. sheet.Rows.Select(r => new[] { Numbers.Whole(r.Number), HeadOf(r.Stage), r.Setting, r.RedOn, r.BlackOn, r.Expected, r.OfBattery, r.Band, "", "", r.IfNot })]);
    }

    /// <summary>The sheet as JSON of the contract <c>hotside-check-sheet/1</c>.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is <see langword="null"/>.</exception>
    public static string ToJson(this CheckSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return JsonText.Of(Schema, json => Write(json, sheet));
    }

    /// <summary>Writes the text to a file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SaveText(this CheckSheet sheet, string path)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SafeFile.Write(path, sheet.ToText);
    }

    /// <summary>Writes the comma-separated values to a file in UTF-8, as <see cref="SaveText"/> does.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SaveCsv(this CheckSheet sheet, string path)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SafeFile.Write(path, sheet.ToCsv);
    }

    /// <summary>Writes the JSON to a file in UTF-8, as <see cref="SaveText"/> does.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SaveJson(this CheckSheet sheet, string path)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SafeFile.Write(path, sheet.ToJson);
    }

    /// <summary>What stands above the rows of a stage.</summary>
    /// <param name="stage">The stage.</param>
    public static string HeadOf(CheckStage stage) => stage switch
    {
        CheckStage.DeadGrounds => "Battery OUT: grounds",
        CheckStage.DeadShorts => "Battery OUT: shorts by fuse way",
        CheckStage.DeadLoads => "Battery OUT: through the loads",
        CheckStage.PowerUp => "First power by steps",
        CheckStage.AtRest => "Power on: all at rest",
        CheckStage.Live => "Power on",
        CheckStage.Cranking => "Cranking",
        CheckStage.Charging => "Engine running",
        _ => "Hot: once more",
    };

    private static string[] Cells(CheckRow row) => [Numbers.Whole(row.Number), row.Where, row.BlackOn, row.Expected, row.OfBattery, row.Band, "________", "[ ]"];

    private static void Write(Utf8JsonWriter json, CheckSheet sheet)
    {
        json.WriteString("title", sheet.Title);
        json.Texts("cautions", sheet.Cautions);
        json.Texts("heads", sheet.Heads);
        json.List("rows", sheet.Rows, row =>
        {
            json.WriteNumber("number", row.Number);
            json.WriteString("stage", row.Stage.ToString());
            foreach (var (name, value) in new[] { ("setting", row.Setting), ("stands", row.Stands), ("red", row.RedOn), ("black", row.BlackOn), ("expected", row.Expected), ("ofBattery", row.OfBattery), ("band", row.Band), ("ifNot", row.IfNot), ("caution", row.Caution) })
                json.Text(name, value);
        });
        json.Texts("notes", sheet.Notes);
    }
}
