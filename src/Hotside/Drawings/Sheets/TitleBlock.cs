using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>
/// The title block after ISO 7200 (from memory), 180 × 21 mm. An empty mandatory field stays, empty; an empty optional one vanishes and its
/// neighbours close up. A value too long for its field gets a wider field if a neighbour can spare the room, then smaller letters, then an ellipsis.
/// </summary>
internal static class TitleBlock
{
    /// <summary>Width in units.</summary>
    public const double Width = 720;

    /// <summary>Height in units.</summary>
    public const double Height = 84;

    private const string Supplement = "supplementary title";

    private const double Row = 28, TitleWidth = 390, Margin = 5;

    // Letters are wider where a reader's program lacks the font.
    private const double Substitute = 1.12;

    private static readonly ImmutableArray<TitleField> Upper =
    [
        new("legal owner", "Legal owner", 150, true),
        new("responsible department", "Responsible dept.", 122),
        new("technical reference", "Technical reference", 118),
        new("creator", "Creator", 90, true),
        new("approval person", "Approval person", 106, true),
        new("document type", "Document type", 134, true),
    ];

    private static readonly ImmutableArray<TitleField> Middle =
        [new("identification number", "Identification number", 196, true), new("document status", "Document status", 134)];

    private static readonly ImmutableArray<TitleField> Lower =
    [
        new("revision", "Rev.", 38),
        new("date of issue", "Date of issue", 94, true),
        new("language", "Language", 64),
        new("paper size", "Paper size", 64),
        new("sheet", "Sheet", 70, true),
    ];

    /// <summary>The names of all fields, as the dictionary has them.</summary>
    public static ImmutableArray<string> FieldNames { get; } =
        [.. Upper.Concat(Middle).Concat(Lower).Select(f => f.Key), "title", Supplement];

    /// <summary>The block. A field not in the dictionary is empty; one that the block does not know is not shown.</summary>
    /// <param name="fields">The fields.</param>
    /// <param name="others">Those of the other sheets of a set: in all of them each field has the same place.</param>
    public static Piece Of(IReadOnlyDictionary<string, string> fields, IEnumerable<IReadOnlyDictionary<string, string>>? others = null)
    {
        // The block is 21 mm high, whatever the size of the other lettering.
        Lettering lettering = Lettering.Normal;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        IReadOnlyDictionary<string, string>[] all = [fields, .. others ?? []];
        var widest = FieldNames.ToDictionary(n => n, n => all.Select(f => TitleRow.Value(f, n)).MaxBy(v => TextMeasure.Width(v, lettering.Body))!);
        double titleWidth = all.Max(f => WidthOfTitle(new Dictionary<string, string>(widest) { [Supplement] = TitleRow.Value(f, Supplement) }, lettering));
        Pen thin = new(StrokeRank.Thin, ColourRole.Ink);
        shapes.Add(new RectangleShape(new(0, 0, Width, Height), 0, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.Paper));
        shapes.Add(Shape.Line(thin, 0, Row, Width, Row));
        shapes.Add(Shape.Line(thin, titleWidth, Row, titleWidth, Height));
        shapes.Add(Shape.Line(thin, titleWidth, 2 * Row, Width, 2 * Row));
        shapes.AddRange(TitleRow.Of(Upper, fields, widest, 0, 0, Width, lettering));
        shapes.AddRange(TitleRow.Of(Middle, fields, widest, titleWidth, Row, Width - titleWidth, lettering));
        shapes.AddRange(TitleRow.Of(Lower, fields, widest, titleWidth, 2 * Row, Width - titleWidth, lettering));
        shapes.AddRange(Title(fields, titleWidth - (2 * Margin), lettering));
        return new(Width, Height, shapes.ToImmutable());
    }

    /// <summary>Whether the supplementary title stands there in letters of full size, also where a reader's program has wider ones.</summary>
    public static bool HoldsSupplement(IReadOnlyDictionary<string, string> fields) =>
        (WantedBySupplement(fields, Lettering.Normal) - (2 * Margin)) * Substitute <= WidthOfTitle(fields, Lettering.Normal) - (2 * Margin);

    // A supplementary title that is too long takes what the fields beside it can spare.
    private static double WidthOfTitle(IReadOnlyDictionary<string, string> fields, Lettering lettering)
    {
        double wanted = WantedBySupplement(fields, lettering);
        double others = new[] { Middle, Lower }.Max(row => TitleRow.Needed(row, fields, Width, lettering));
        return wanted > TitleWidth && wanted <= Width - others ? Math.Min(wanted * Substitute, Width - others) : TitleWidth;
    }

    private static double WantedBySupplement(IReadOnlyDictionary<string, string> fields, Lettering lettering) =>
        TextMeasure.Width(TitleRow.Value(fields, Supplement), lettering.Body) + (2 * Margin) + 0.1;

    private static ImmutableArray<Shape> Title(IReadOnlyDictionary<string, string> fields, double room, Lettering lettering)
    {
        string title = TitleRow.Value(fields, "title"), supplementary = TitleRow.Value(fields, Supplement);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of(supplementary.Length > 0 ? "Title, supplementary title" : "Title", lettering.Small, 5, Row + 9.8, colour: ColourRole.Ink));
        TextStyle style = TitleRow.Fits(title, room, lettering.Title, lettering.BodyBold, lettering.SmallBold);
        ImmutableArray<string> lines = TextLines.Break(title, style, room, style == lettering.SmallBold ? 2 : 1);
        double first = Row + (lines.Length > 1 ? 24 : supplementary.Length > 0 ? 31 : 38);
        for (int i = 0; i < lines.Length; i++)
            shapes.Add(TextShape.Of(lines[i], style, 5, first + (12 * i)) with { Whole = lines[i].EndsWith('…') ? title : null });
        if (supplementary.Length > 0)
            shapes.Add(TextShape.Of(supplementary, TitleRow.Fits(supplementary, room, lettering.Body, lettering.Small), 5, Row + 49, width: room));
        return shapes.ToImmutable();
    }
}
