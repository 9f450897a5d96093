using System.Text;

namespace Hotside.Outputs;

/// <summary>Lines of cells as plain text: columns stand under each other, two spaces apart, nothing at the end of a line.</summary>
internal static class TextColumns
{
    /// <summary>The lines, each ended by a line feed.</summary>
    /// <param name="indent">What stands before each line.</param>
    /// <param name="lines">The cells, the head line first; all lines have as many.</param>
    /// <param name="numbers">The columns that stand under each other at their decimal point, or at their end.</param>
    public static string Of(string indent, IReadOnlyList<string[]> lines, params int[] numbers)
    {
        string[][] cells = [.. lines.Select(l => (string[])l.Clone())];
        foreach (int column in numbers)
        {
            // What has fewer decimals is followed by blanks; the head stands at the end.
            int decimals = cells.Skip(1).Max(l => (int?)DecimalsOf(l[column])) ?? 0;
            foreach (string[] line in cells.Skip(1))
                if (line[column].Length > 0) line[column] += new string(' ', decimals - DecimalsOf(line[column]));
        }
        StringBuilder text = new();
        int[] widths = [.. Enumerable.Range(0, cells[0].Length).Select(c => cells.Max(l => l[c].Length))];
        foreach (string[] line in cells)
            text.Append((indent + string.Join("  ", line.Select((c, i) => numbers.Contains(i) ? c.PadLeft(widths[i]) : c.PadRight(widths[i])))).TrimEnd()).Append('\n');
        return text.ToString();
    }

    // The point counts too.
    private static int DecimalsOf(string number)
    {
        int digits = number.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-' or '\u2212').Count(), point = number.IndexOf('.', StringComparison.Ordinal);
        return number.Length > digits || point < 0 ? 0 : number.Length - point;
    }
}
