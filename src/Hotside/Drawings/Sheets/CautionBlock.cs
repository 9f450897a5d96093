using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>Lines of caution with a bar beside them, in columns if they need it, each broken but never shortened.</summary>
internal static class CautionBlock
{
    private const double Indent = 10, Between = 24;

    /// <summary>The cautions in a width; nothing without lines.</summary>
    public static Piece Of(string head, ImmutableArray<string> lines, double width, Lettering lettering)
    {
        if (lines.IsEmpty)
            return Piece.Empty;
        Piece top = ColumnFlow.Heading(head, width - Indent, lettering);
        double widest = TextMeasure.Widest(lines, lettering.Small) + Indent + 0.1;
        int columns = ColumnFlow.Columns(widest, Between, width - Indent, 260 * lettering.Factor);
        ColumnFlow flow = ColumnFlow.Of(lines.Length, columns, Between, width - Indent, w => [.. lines.Select(l => Row(l, w, lettering))]);
        double height = top.Height + flow.Piece.Height;
        return new(width, height,
        [
            Shape.Line(new(StrokeRank.Change, ColourRole.Ink), 2, 2, 2, height),
            .. top.At(Indent, 0),
            .. flow.Piece.At(Indent, top.Height),
        ]);
    }

    private static Piece Row(string text, double width, Lettering lettering)
    {
        TextStyle style = lettering.Small;
        ImmutableArray<string> lines = TextLines.Break(text, style, width - Indent, 40);
        double baseline = 10 * lettering.Factor;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of("•", style, 0, baseline));
        for (int i = 0; i < lines.Length; i++)
            shapes.Add(TextShape.Of(lines[i], style, Indent, baseline + (i * style.Pitch)));
        return new(width, (Math.Max(1, lines.Length) * style.Pitch) + (2 * lettering.Factor), shapes.ToImmutable());
    }
}
