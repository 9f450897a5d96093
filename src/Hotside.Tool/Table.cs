using System.Globalization;

namespace Hotside.Tool;

/// <summary>Prints a table in plain text, columns aligned by spaces.</summary>
internal static class Table
{
    public static void Print(TextWriter output, string[] head, string[][] rows)
    {
        string[][] lines = [head, .. rows];
        int[] widths = [.. head.Select((_, i) => lines.Max(l => l[i].Length))];
        foreach (string[] line in lines) output.WriteLine("  " + string.Join("  ", line.Select((c, i) => c.PadRight(widths[i]))).TrimEnd());
    }

    /// <summary>A figure with three digits that count.</summary>
    public static string Figure(double value) =>
        value.ToString(Math.Abs(value) >= 100 ? "0" : Math.Abs(value) >= 10 ? "0.#" : "0.##", CultureInfo.InvariantCulture);
}
