using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>The change list: number in its colour, sample of its line, text; columns filled downwards, long texts wrapped, nothing over anything else.</summary>
internal static class ChangeList
{
    private const double Sample = 22, Outline = 14, Gap = 6, Between = 24;

    private const double Readable = 150, Comfortable = 320;
    private const int MostColumns = 8;

    // What is to be done is never cut short, unless a line is a page of its own.
    private const int MostLines = 12;

    /// <summary>The list in a width; its height says what it needs before it is placed. Nothing without lines.</summary>
    /// <param name="head">What stands above it, in bold.</param>
    /// <param name="lines">Its lines, in the order of work.</param>
    /// <param name="width">Width in units.</param>
    /// <param name="lettering">Lettering.</param>
    /// <param name="air">What its lines stand apart, at normal lettering, beyond what they must.</param>
    /// <param name="mostColumns">How many columns it may have.</param>
    public static Piece Of(string head, ImmutableArray<ListLine> lines, double width, Lettering lettering, double air = 0, int mostColumns = MostColumns)
    {
        if (lines.IsEmpty)
            return Piece.Empty;
        double numbers = TextMeasure.Widest(lines.Select(l => l.Number.Text), lettering.SmallBold);
        double before = numbers + Gap + (lines.Any(l => l.Line is not null) ? Sample + Gap : 0);
        double widest = before + lines.Max(l => TextMeasure.Width(l.Text, lettering.Small) + (l.Place.Length == 0 ? 0 : BeforePlace(lettering.Small) + TextMeasure.Width(l.Place, lettering.Small))) + 0.1;
        Piece top = ColumnFlow.Heading(head, width, lettering);
        // One long line must not take a column from all the others: of the numbers of columns that leave room to read, the first that makes the list lowest.
        int columns = ColumnFlow.Columns(widest, Between, width, before + (Readable * lettering.Factor));
        int wide = ColumnFlow.Columns(before + (Comfortable * lettering.Factor), Between, width, width), narrow = ColumnFlow.Columns(before + (Readable * lettering.Factor), Between, width, width);
        int most = Math.Max(columns, Math.Min(narrow, Math.Clamp(wide, 3, MostColumns)));
        Piece rows = Enumerable.Range(1, Math.Min(most, mostColumns)).Select(n => ColumnFlow.Of(lines.Length, n, Between, width, w => [.. lines.Select(l => Row(l, numbers, before, w, air, lettering))]).Piece)
            .MinBy(p => Math.Round(p.Height, 3))!;
        // Half of the air below each line stands above the first.
        double below = air / 2 * lettering.Factor;
        return new(width, top.Height + rows.Height, [.. top.Shapes, .. rows.At(0, top.Height + below)]);
    }

    private static Piece Row(ListLine line, double numbers, double before, double width, double air, Lettering lettering)
    {
        TextStyle style = lettering.Small;
        double baseline = 11 * lettering.Factor, first = (15 + air) * lettering.Factor;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of(line.Number.Text, lettering.SmallBold, numbers, baseline, Anchor.End, line.Number.Colour));
        if (line.Part is { } part) shapes.AddRange(LegendEntry.Outline(part, Outline, style.CapHeight).At(numbers + Gap + ((Sample - Outline) / 2), baseline - style.CapHeight));
        else if (line.Line is { } drawn) shapes.AddRange(LegendEntry.Line(drawn, Sample).At(numbers + Gap, baseline - (style.CapHeight / 2) - 2));
        ImmutableArray<string> texts = TextLines.Break(line.Text, style, width - before, MostLines);
        for (int i = 0; i < texts.Length; i++)
        {
            string? whole = i == MostLines - 1 && texts[i].EndsWith('…') ? line.Text : null;
            shapes.Add(TextShape.Of(texts[i], style, before, baseline + (i * style.Pitch)) with { Whole = whole });
        }

        int used = texts.Length + AddPlace(shapes, line, texts, before, width, baseline, style);
        return new(width, first + (Math.Max(0, used - 1) * style.Pitch), shapes.ToImmutable());
    }

    // At the right edge, where the eye runs down it, in the last line of the text or below: how many lines that takes more.
    private static int AddPlace(ImmutableArray<Shape>.Builder shapes, ListLine line, ImmutableArray<string> texts, double before, double width, double baseline, TextStyle style)
    {
        if (line.Place.Length == 0) return 0;
        bool isBeside = !texts.IsEmpty && TextMeasure.Width(texts[^1], style) + BeforePlace(style) + TextMeasure.Width(line.Place, style) <= width - before;
        var places = TextLines.Break(line.Place, style, width - before);
        int first = isBeside ? texts.Length - 1 : texts.Length;
        shapes.AddRange(places.Select((place, i) => TextShape.Of(place, style, width, baseline + ((first + i) * style.Pitch), Anchor.End, ColourRole.Quiet)));
        return isBeside ? 0 : places.Length;
    }

    // More than between words.
    private static double BeforePlace(TextStyle style) => 1.5 * TextMeasure.Width("n", style);
}
