using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>A field of the title block.</summary>
/// <param name="Key">Its name in the job file.</param>
/// <param name="Name">Its name on the sheet.</param>
/// <param name="Width">The width it has when nobody needs more.</param>
/// <param name="Mandatory">Whether it stays when it is empty.</param>
internal sealed record TitleField(string Key, string Name, double Width, bool Mandatory = false);

/// <summary>One row of the title block.</summary>
internal static class TitleRow
{
    private const double Height = 28, Margin = 5;

    /// <summary>The fields of a row, side by side, as wide as the widest values want them.</summary>
    public static ImmutableArray<Shape> Of(
        ImmutableArray<TitleField> fields, IReadOnlyDictionary<string, string> values, IReadOnlyDictionary<string, string> widest, double left, double top, double width, Lettering lettering)
    {
        ImmutableArray<TitleField> shown = [.. fields.Where(f => f.Mandatory || Value(widest, f.Key).Length > 0)];
        ImmutableArray<double> widths = Widths(shown, widest, width, lettering);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = left;
        for (int i = 0; i < shown.Length; i++)
        {
            if (i > 0)
                shapes.Add(Shape.Line(new(StrokeRank.Thin, ColourRole.Ink), x, top, x, top + Height));
            double room = widths[i] - (2 * Margin);
            string value = Value(values, shown[i].Key);
            shapes.Add(TextShape.Of(shown[i].Name, lettering.Small, x + Margin, top + 9.8, width: room));
            if (value.Length > 0)
                shapes.Add(TextShape.Of(value, Fits(value, room, lettering.Body, lettering.Small), x + Margin, top + 23.6, width: room));
            x += widths[i];
        }

        return shapes.ToImmutable();
    }

    /// <summary>The width at which each field has its value at full size.</summary>
    public static double Needed(ImmutableArray<TitleField> fields, IReadOnlyDictionary<string, string> values, double width, Lettering lettering) =>
        fields.Where(f => f.Mandatory || Value(values, f.Key).Length > 0).Sum(f => Need(f, values, width, lettering));

    /// <summary>The value of a field, cleaned; empty if there is none.</summary>
    public static string Value(IReadOnlyDictionary<string, string> values, string key) => values.TryGetValue(key, out string? value) ? value.Trim() : "";

    /// <summary>The first style in which a text fits; the last if none does.</summary>
    public static TextStyle Fits(string text, double room, params TextStyle[] styles) =>
        styles.FirstOrDefault(s => TextMeasure.Fits(text, s, room)) ?? styles[^1];

    // Fields that are not shown leave their room to the others in proportion; then those that have room to spare give it to those in need.
    private static ImmutableArray<double> Widths(ImmutableArray<TitleField> shown, IReadOnlyDictionary<string, string> values, double width, Lettering lettering)
    {
        double usual = shown.Sum(f => f.Width);
        double[] widths = [.. shown.Select(f => f.Width * width / usual)];
        double[] needs = [.. shown.Select(f => Need(f, values, width, lettering))];
        double wanted = needs.Zip(widths, (n, w) => Math.Max(0, n - w)).Sum(), spare = needs.Zip(widths, (n, w) => Math.Max(0, w - n)).Sum();
        double moved = Math.Min(wanted, spare);
        if (moved > 0)
        {
            for (int i = 0; i < widths.Length; i++)
                widths[i] += widths[i] < needs[i] ? (needs[i] - widths[i]) * moved / wanted : -(widths[i] - needs[i]) * moved / spare;
        }

        return [.. widths];
    }

    private static double Need(TitleField field, IReadOnlyDictionary<string, string> values, double width, Lettering lettering) =>
        Math.Max(TextMeasure.Width(field.Name, lettering.Small), Math.Min(width, TextMeasure.Width(TextMeasure.Shorten(Value(values, field.Key), lettering.Body, width), lettering.Body))) + (2 * Margin) + 0.1;
}
