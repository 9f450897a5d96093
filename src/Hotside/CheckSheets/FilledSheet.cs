using System.Text;

namespace Hotside.CheckSheets;

/// <summary>A check sheet that somebody filled in, as comma-separated values: its rows are readings for a diagnosis.</summary>
public static class FilledSheet
{
    private static readonly string[] Needed = ["setting", "red on", "black on", "expected", "reading"];

    /// <summary>The readings of the rows that are filled in, as a diagnosis takes them.</summary>
    /// <param name="csv">The sheet as <c>CheckSheet.ToCsv</c> wrote it, its column "reading" filled; a comma or a semicolon parts the cells.</param>
    /// <exception cref="ArgumentException">A column is missing; the message names it.</exception>
    public static IReadOnlyList<string> Readings(string csv)
    {
        ArgumentNullException.ThrowIfNull(csv);
        var rows = Cells(csv).Where(r => r.Length > 1).ToArray();
        if (rows.Length == 0) return [];
        string[] head = [.. rows[0].Select(c => c.Trim().ToLowerInvariant())];
        if (Array.Find(Needed, n => !head.Contains(n)) is { } missing) throw new ArgumentException($"The sheet has no column \"{missing}\"; its columns are {string.Join(", ", head)}.", nameof(csv));
        string Cell(string[] row, string column) => Array.IndexOf(head, column) is var at && at < row.Length ? row[at].Trim() : "";
        // Volts across the lamp of the first power are no reading of the circuit as it is.
        return [.. rows.Skip(1).Where(r => Cell(r, "reading").Length > 0 && !Cell(r, "red on").Contains(" lamp between ", StringComparison.Ordinal)).Select(r => Line(Cell(r, "red on"), Cell(r, "black on"), Cell(r, "expected"), Cell(r, "reading"), Cell(r, "setting")))];
    }

    private static string Line(string red, string black, string expected, string reading, string setting)
    {
        // "F2.2, F2 pulled" is a point and what is done to a fuse.
        string[] point = red.Split(", ", 2);
        string pulled = point.Length > 1 ? ", " + point[1] : "";
        string unit = !char.IsAsciiDigit(reading[^1]) ? "" : expected.EndsWith('V') ? " V" : expected.EndsWith("kΩ", StringComparison.Ordinal) ? " kohm" : expected.EndsWith('Ω') || expected == "open" ? " ohm" : "";
        string to = black.Length == 0 || black.EndsWith("chassis", StringComparison.Ordinal) || black.StartsWith("clean chassis", StringComparison.Ordinal) ? "" : " to " + black;
        string at = setting.Length == 0 ? "" : " @ " + setting;
        return $"{point[0]}{to} = {reading}{unit}{pulled}{at}";
    }

    private static IEnumerable<string[]> Cells(string csv)
    {
        char between = csv.AsSpan(0, csv.IndexOfAny(['\r', '\n']) is >= 0 and var end ? end : csv.Length).Contains(';') ? ';' : ',';
        List<string> row = [];
        StringBuilder cell = new();
        bool isQuoted = false;
        for (int i = 0; i < csv.Length; i++)
        {
            char c = csv[i];
            if (isQuoted && c == '"' && i + 1 < csv.Length && csv[i + 1] == '"') cell.Append(csv[i++]);
            else if (c == '"') isQuoted = !isQuoted;
            else if (!isQuoted && (c == between || c == '\n'))
            {
                row.Add(cell.ToString());
                cell.Clear();
                if (c != '\n') continue;
                yield return [.. row];
                row.Clear();
            }
            else if (c != '\r' || isQuoted) cell.Append(c);
        }
        if (cell.Length > 0 || row.Count > 0) yield return [.. row, cell.ToString()];
    }
}
