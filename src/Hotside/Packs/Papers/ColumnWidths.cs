using System.Collections.Immutable;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>Shares the width of a table among its columns: each as wide as its widest cell where that fits, else between its longest word and that.</summary>
internal static class ColumnWidths
{
    // A longer word is broken rather than that it takes the room of all others (own choice, as all figures here).
    private const double MostOfWidth = 0.34;

    /// <summary>The widths, in order; together the width of the table.</summary>
    public static ImmutableArray<double> Of(ImmutableArray<Column> columns, ImmutableArray<TableRow> rows, double width, double padding, PackLettering lettering)
    {
        double[] natural = new double[columns.Length], least = new double[columns.Length];
        TableRow[] whole = [.. rows.Where(r => r.Cells.Length == columns.Length)];
        for (int i = 0; i < columns.Length; i++)
        {
            var cells = whole.Select(r => r.Cells[i]).ToArray();
            double Width(Cell cell, string text) => (cell.Mark.Width > 0 ? cell.Mark.Width + (text.Length > 0 ? 6 : 0) : 0) + TextMeasure.Width(text, StyleOf(columns[i], cell, lettering));
            double head = LongestWord(columns[i].Head, lettering.FineBold), most = width * MostOfWidth;
            double word = cells.Select(c => Width(c, Words(c.Text).MaxBy(w => TextMeasure.Width(w, lettering.Cell)) ?? "")).DefaultIfEmpty(0).Max();
            least[i] = Math.Max(columns[i].Least * lettering.Factor, Math.Max(head, Math.Min(word, most)) + (2 * padding) + 0.5);
            natural[i] = Math.Max(least[i], cells.SelectMany(c => c.Text.Split('\n').Select(t => Width(c, t)).Append(TextMeasure.Width(c.Note, lettering.Fine))).DefaultIfEmpty(0).Max() + (2 * padding) + 0.5);
        }
        return Shared(columns, natural, [.. columns.Select((c, i) => c.Share > 0 ? Usual(whole.Select(r => Math.Max(TextMeasure.Width(r.Cells[i].Note, lettering.Fine), r.Cells[i].Text.Split('\n').Max(t => TextMeasure.Width(t, StyleOf(c, r.Cells[i], lettering)))) + (2 * padding) + 0.5), least[i]) : natural[i])], least, width);
    }

    // What most cells of a column of sentences are content with: one long one must not take the room of all others.
    private static double Usual(IEnumerable<double> widths, double least)
    {
        double[] sorted = [.. widths.Order()];
        return sorted.Length == 0 ? least : Math.Max(least, sorted[Math.Min(sorted.Length - 1, sorted.Length * 9 / 10)]);
    }

    /// <summary>The style of a cell.</summary>
    public static TextStyle StyleOf(Column column, Cell cell, PackLettering lettering) => column.IsBold || cell.IsBold ? lettering.CellBold : lettering.Cell;

    private static ImmutableArray<double> Shared(ImmutableArray<Column> columns, double[] natural, double[] usual, double[] least, double width)
    {
        double wanted = natural.Sum(), needed = least.Sum();
        if (needed > width) return Cut(least, width);
        if (wanted > width)
        {
            // Facts keep their line while sentences have half of what they would like; then all give way.
            double facts = columns.Select((c, i) => c.Share > 0 ? 0 : natural[i]).Sum(), sentences = columns.Select((c, i) => c.Share > 0 ? Math.Max(least[i], usual[i] / 2) : 0).Sum();
            return facts + sentences <= width ? Levelled(columns, [.. columns.Select((c, i) => c.Share > 0 ? least[i] : natural[i])], [.. columns.Select((c, i) => c.Share > 0 ? Math.Max(least[i], usual[i]) : natural[i])], width) : Levelled(columns, least, usual, width);
        }
        double eager = columns.Sum(c => c.Share), spare = width - wanted;
        return [.. natural.Zip(columns, (n, c) => n + (eager > 0 ? spare * c.Share / eager : spare / columns.Length))];
    }

    // Short texts have what they would like; long ones share what is left.
    private static ImmutableArray<double> Levelled(ImmutableArray<Column> columns, double[] least, double[] most, double width)
    {
        double low = 0, high = width;
        double At(int i, double level) => Math.Clamp(level * columns[i].Weight, least[i], Math.Max(least[i], most[i]));
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            if (Enumerable.Range(0, least.Length).Sum(c => At(c, middle)) <= width) low = middle;
            else high = middle;
        }
        double[] widths = [.. least.Select((_, i) => At(i, low))];
        // What is not asked for goes to the longest.
        widths[Array.IndexOf(most, most.Max())] += width - widths.Sum();
        return [.. widths];
    }

    // Words that long are broken: the widest columns give way, down to one width.
    private static ImmutableArray<double> Cut(double[] least, double width)
    {
        double[] sorted = [.. least.Order()];
        double left = width;
        for (int i = 0; i < sorted.Length; i++)
        {
            double level = left / (sorted.Length - i);
            if (sorted[i] > level) return [.. least.Select(l => Math.Min(l, level))];
            left -= sorted[i];
        }
        return [.. least];
    }

    private static double LongestWord(string text, TextStyle style) => Words(text).Select(w => TextMeasure.Width(w, style)).DefaultIfEmpty(0).Max();

    // A number and its unit are one word, as a line is broken.
    private static IEnumerable<string> Words(string text)
    {
        string[] words = text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < words.Length; i++)
            yield return i + 1 < words.Length && char.IsAsciiDigit(words[i][^1]) && words[i + 1].Length <= 3 ? words[i] + " " + words[i + 1] : words[i];
    }
}
