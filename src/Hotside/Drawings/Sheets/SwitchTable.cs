using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>The table that says who switches what, and on which side: each load with its badge before and after, what protects it, and where it is drawn.</summary>
internal static class SwitchTable
{
    private const double Between = 12, BetweenColumns = 36, Badges = 30, Below = 5;
    private const int MostLines = 4;

    // Farther apart the eye loses the row.
    private const double MostSpare = 80;

    /// <summary>The table in as many columns of even length as find room beside each other; nothing without rows.</summary>
    /// <param name="rows">Its rows.</param>
    /// <param name="where">What says where a load is drawn.</param>
    /// <param name="width">Its width in units.</param>
    /// <param name="lettering">Lettering.</param>
    /// <param name="words">Whose words.</param>
    /// <param name="place">What the column of these places is called.</param>
    /// <param name="air">What its rows stand apart, at normal lettering, beyond what they must.</param>
    public static Piece Of(ImmutableArray<SwitchRow> rows, Func<string, string> where, double width, Lettering lettering, Vocabulary words, string place, double air = 0)
    {
        if (rows.IsEmpty) return Piece.Empty;
        string[][] cells = Cells(rows, where, words, place);
        double natural = Wanted(cells, lettering).Sum() + (Between * (cells[0].Length - 1));
        int columns = Math.Clamp((int)((width + BetweenColumns) / (natural + BetweenColumns)), 1, rows.Length), each = (rows.Length + columns - 1) / columns;
        double own = (width - (BetweenColumns * (columns - 1))) / columns;
        Piece title = ColumnHead(lettering);
        Piece[] parts = [.. Enumerable.Range(0, (rows.Length + each - 1) / each).Select(c => Column([cells[0], .. cells.Skip(1 + (c * each)).Take(each)], [.. rows.Skip(c * each).Take(each)], own, air * lettering.Factor, lettering))];
        return new(width, title.Height + parts.Max(p => p.Height), [.. title.Shapes, .. parts.SelectMany((p, c) => p.At(c * (own + BetweenColumns), title.Height))]);
    }

    // The heads, then a line for each row.
    private static string[][] Cells(ImmutableArray<SwitchRow> rows, Func<string, string> where, Vocabulary words, string place)
    {
        bool isAltered = rows.Any(r => r.Before is not null);
        return
        [
            isAltered ? ["load", "switched before", "switched after", "fuses after", place] : ["load", "switched", "fuses", place],
            .. rows.Select(r => isAltered
                ? new[] { LoadOf(r), TextOf(r, true, words), TextOf(r, false, words), FusesOf(r.After ?? r.Before), where(r.Load) }
                : [LoadOf(r), TextOf(r, false, words), FusesOf(r.After), where(r.Load)]),
        ];
    }

    private static Piece Column(string[][] cells, ImmutableArray<SwitchRow> rows, double width, double air, Lettering lettering)
    {
        double[] widths = Widths(cells, width, lettering);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double y = AddRow(shapes, cells[0], [], widths, 0, lettering, ColourRole.Quiet);
        Pen rule = new(StrokeRank.Thin, ColourRole.Ink);
        shapes.Add(Shape.Line(rule, 0, y, width, y));
        foreach (var (row, texts) in rows.Zip(cells.Skip(1)))
            y += AddRow(shapes, texts, texts.Length > 4 ? [null, row.Before, row.After, null, null] : [null, row.After, null, null], widths, y + 2 + (air / 2), lettering, ColourRole.Ink) + air;
        shapes.Add(Shape.Line(rule, 0, y + 2, width, y + 2));
        return new(width, y + 3, shapes.ToImmutable());
    }

    private static Piece ColumnHead(Lettering lettering)
    {
        TextStyle style = lettering.SmallBold;
        return new(0, style.Pitch + 4, [TextShape.Of("Who switches what, and on which side", style, 0, style.Pitch - 2)]);
    }

    private static string LoadOf(SwitchRow row) => row.Name.Length > 0 ? $"{row.Load}, {row.Name}" : row.Load;

    private static string TextOf(SwitchRow row, bool isBefore, Vocabulary words) => (isBefore ? row.Before : row.After) is not { } verdict ? row.Absence(isBefore) : verdict.By.Length > 0 ? verdict.By : SideText.Of(verdict.Side, words);

    private static string FusesOf(SwitchVerdict? verdict) => verdict is null || verdict.ProtectedBy.IsEmpty ? "none" : string.Join(", ", verdict.ProtectedBy);

    // What each column wants, the wide ones less where that is too much.
    private static double[] Widths(string[][] cells, double width, Lettering lettering)
    {
        int columns = cells[0].Length;
        double[] wanted = Wanted(cells, lettering);
        double room = width - (Between * (columns - 1)), most = wanted.Max();
        while (wanted.Sum(w => Math.Min(w, most)) > room) most -= 4;
        double spare = (room - wanted.Sum(w => Math.Min(w, most))) / columns;
        return [.. wanted.Select(w => Math.Min(w, most) + Math.Min(spare, MostSpare))];
    }

    private static double[] Wanted(string[][] cells, Lettering lettering) =>
        [.. Enumerable.Range(0, cells[0].Length).Select(c => Math.Max(TextMeasure.Width(cells[0][c], lettering.Small), TextMeasure.Widest(cells.Skip(1).Select(r => r[c]), lettering.Small) + (HasBadge(c, cells[0].Length) ? Badges * lettering.Factor : 0)) + 1)];

    private static bool HasBadge(int column, int columns) => column > 0 && column < columns - 2;

    private static double AddRow(ImmutableArray<Shape>.Builder shapes, string[] texts, SwitchVerdict?[] verdicts, double[] widths, double top, Lettering lettering, ColourRole colour)
    {
        TextStyle style = lettering.Small;
        double x = 0, most = 1;
        for (int c = 0; c < texts.Length; c++)
        {
            // A head stands above the badges.
            double left = verdicts.Length > 0 && HasBadge(c, texts.Length) ? Badges * lettering.Factor : 0;
            if (verdicts.Length > 0 && verdicts[c] is { } verdict) shapes.AddRange(Badge.Mini(verdict.Side).At(x, top + (style.Pitch / 2) - 5));
            var lines = TextLines.Break(texts[c], style, widths[c] - left, MostLines);
            for (int i = 0; i < lines.Length; i++)
                shapes.Add(TextShape.Of(lines[i], style, x + left, top + (style.Pitch * (i + 1)) - 2.5, colour: colour) with { Whole = lines[i].EndsWith('…') ? texts[c] : null });
            most = Math.Max(most, lines.Length);
            x += widths[c] + Between;
        }
        return (most * style.Pitch) + Below;
    }
}
