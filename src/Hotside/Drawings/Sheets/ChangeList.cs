using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>The change list: number in its colour, sample of its line, text; columns filled downwards, long texts wrapped, nothing over anything else.</summary>
internal static class ChangeList
{
    private const double Sample = 22, Gap = 6, Between = 24;

    /// <summary>The list in a width; its height says what it needs before it is placed. Nothing without lines.</summary>
    /// <param name="head">What stands above it, in bold.</param>
    /// <param name="lines">Its lines, in the order of work.</param>
    /// <param name="width">Width in units.</param>
    /// <param name="lettering">Lettering.</param>
    public static Piece Of(string head, ImmutableArray<ListLine> lines, double width, Lettering lettering)
    {
        if (lines.IsEmpty)
            return Piece.Empty;
        double numbers = TextMeasure.Widest(lines.Select(l => l.Number.Text), lettering.SmallBold);
        double before = numbers + Gap + Sample + Gap;
        double widest = before + TextMeasure.Widest(lines.Select(l => l.Text), lettering.Small) + 0.1;
        Piece top = ColumnFlow.Heading(head, width, lettering);
        ImmutableArray<Shape> shapes = [];
        double height = 0;
        int columns = ColumnFlow.Columns(widest, Between, width, before + (150 * lettering.Factor));
        ColumnFlow flow = ColumnFlow.Of(lines.Length, columns, Between, width, w => [.. lines.Select(l => Row(l, numbers, before, w, lettering))]);
        shapes = flow.Piece.At(0, top.Height);
        height = top.Height + flow.Piece.Height;
        return new(width, height, [.. top.Shapes, .. shapes]);
    }

    private static Piece Row(ListLine line, double numbers, double before, double width, Lettering lettering)
    {
        TextStyle style = lettering.Small;
        double baseline = 11 * lettering.Factor, first = 15 * lettering.Factor;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of(line.Number.Text, lettering.SmallBold, numbers, baseline, Anchor.End, line.Number.Colour));
        shapes.AddRange(LegendEntry.Line(line.Line, Sample).At(numbers + Gap, baseline - (style.CapHeight / 2) - 2));
        ImmutableArray<string> texts = TextLines.Break(line.Text, style, width - before, 4);
        for (int i = 0; i < texts.Length; i++)
        {
            string? whole = i == 3 && texts[i].EndsWith('…') ? line.Text : null;
            shapes.Add(TextShape.Of(texts[i], style, before, baseline + (i * style.Pitch)) with { Whole = whole });
        }

        return new(width, first + (Math.Max(0, texts.Length - 1) * style.Pitch), shapes.ToImmutable());
    }
}
