using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Sets;

/// <summary>The table that says who switches what, and on which side: each load with its badge before and after, what protects it, and where it is drawn.</summary>
internal static class SwitchTable
{
    private const double Between = 12, Badges = 30, Below = 5;
    private const int MostLines = 4;

    /// <summary>The table in a width; nothing without rows.</summary>
    public static Piece Of(ImmutableArray<SwitchRow> rows, Func<string, string> where, double width, Lettering lettering, Vocabulary words)
    {
        if (rows.IsEmpty) return Piece.Empty;
        bool isAltered = rows.Any(r => r.Before is not null);
        string[] heads = isAltered ? ["load", "before", "after", "fuses after", "sheet"] : ["load", "switched", "fuses", "sheet"];
        string[][] cells = [.. rows.Select(r => isAltered
            ? new[] { LoadOf(r), TextOf(r.Before, words), TextOf(r.After, words), FusesOf(r.After ?? r.Before), where(r.Load) }
            : [LoadOf(r), TextOf(r.After, words), FusesOf(r.After), where(r.Load)])];
        double[] widths = Widths([heads, .. cells], width, lettering);
        Piece title = ColumnHead(lettering);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(title.Shapes);
        double y = title.Height;
        y += AddRow(shapes, heads, [], widths, y, lettering, ColourRole.Quiet);
        Pen rule = new(StrokeRank.Thin, ColourRole.Ink);
        shapes.Add(Shape.Line(rule, 0, y, width, y));
        foreach (var (row, texts) in rows.Zip(cells))
            y += AddRow(shapes, texts, isAltered ? [null, row.Before, row.After, null, null] : [null, row.After, null, null], widths, y + 2, lettering, ColourRole.Ink);
        shapes.Add(Shape.Line(rule, 0, y + 2, width, y + 2));
        return new(width, y + 3, shapes.ToImmutable());
    }

    private static Piece ColumnHead(Lettering lettering)
    {
        TextStyle style = lettering.SmallBold;
        return new(0, style.Pitch + 4, [TextShape.Of("Who switches what, and on which side", style, 0, style.Pitch - 2)]);
    }

    private static string LoadOf(SwitchRow row) => row.Name.Length > 0 ? $"{row.Load}, {row.Name}" : row.Load;

    private static string TextOf(SwitchVerdict? verdict, Vocabulary words) => verdict is null ? "not there" : verdict.By.Length > 0 ? verdict.By : SideText.Of(verdict.Side, words);

    private static string FusesOf(SwitchVerdict? verdict) => verdict is null || verdict.ProtectedBy.IsEmpty ? "none" : string.Join(", ", verdict.ProtectedBy);

    // What each column wants, the wide ones less where that is too much.
    private static double[] Widths(string[][] cells, double width, Lettering lettering)
    {
        int columns = cells[0].Length;
        double[] wanted = [.. Enumerable.Range(0, columns).Select(c => TextMeasure.Widest(cells.Select(r => r[c]), lettering.Small) + 1 + (HasBadge(c, columns) ? Badges * lettering.Factor : 0))];
        double room = width - (Between * (columns - 1)), most = wanted.Max();
        while (wanted.Sum(w => Math.Min(w, most)) > room) most -= 4;
        double spare = (room - wanted.Sum(w => Math.Min(w, most))) / columns;
        return [.. wanted.Select(w => Math.Min(w, most) + Math.Min(spare, 40))];
    }

    private static bool HasBadge(int column, int columns) => column > 0 && column < columns - 2;

    private static double AddRow(ImmutableArray<Shape>.Builder shapes, string[] texts, SwitchVerdict?[] verdicts, double[] widths, double top, Lettering lettering, ColourRole colour)
    {
        TextStyle style = lettering.Small;
        double x = 0, most = 1;
        for (int c = 0; c < texts.Length; c++)
        {
            double left = HasBadge(c, texts.Length) ? Badges * lettering.Factor : 0;
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
