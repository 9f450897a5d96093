using System.Collections.Immutable;
using System.Text;
using Hotside.Circuits;

namespace Hotside.Outputs;

/// <summary>Writes a wire list as a table.</summary>
internal static class WireTable
{
    private static readonly string[] Head = ["no.", "wire", "from", "to", "size", "colour", "length", "loom", "change"];

    /// <summary>The head line of a wire list as comma-separated values, of the pack's too.</summary>
    public static ImmutableArray<string> CsvHead { get; } = [.. Head.Select(h => h == "length" ? "length in m" : h)];

    public static string Write(string title, string supply, ImmutableArray<WireRow> rows)
    {
        var text = new StringBuilder();
        text.Append(title).Append('\n').Append(supply).Append("\n\n");
        text.Append(TextColumns.Of("", [Head, .. rows.Select(r => Cells(r, " m"))], 0, 6));
        return text.Append("\nIds and terminals as in the job file; colours after IEC 60757. The workshop manual and local rules take precedence.\n").ToString();
    }

    public static string WriteCsv(ImmutableArray<WireRow> rows) => CsvText.Of([CsvHead, .. rows.Select(r => Cells(r, ""))]);

    private static string[] Cells(WireRow row, string unit) =>
    [
        row.Numbers, row.Id, row.From, row.To, row.Size, row.Colour, row.LengthInMetres is { } metres ? Numbers.Plain(metres, 3) + unit : "", row.Loom, row.Change,
    ];
}
