using System.Collections.Immutable;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Pages;

/// <summary>Labels for both ends of every wire, at the size at which they are cut out: a strip of 90 × 7 mm an end, its text twice so that it reads from either side once wrapped.</summary>
internal static class LabelPage
{
    public const string Key = "labels";

    /// <summary>A strip in units of 0.25 mm.</summary>
    public const double StripWidth = 360, StripHeight = 28;

    // Capitals of 2.5 mm, whatever the size of the other letters, since a wire is as thick as it is.
    private static readonly TextStyle Letters = new("pack-label", 10, true, 14), Tab = new("pack-tab", 7.2, false, 12);

    private const double TabWidth = 84, Padding = 6;

    public static Section? Of(PackSource source)
    {
        var labels = WireLabel.All(source.Wires);
        if (labels.IsEmpty) return null;
        var rows = labels.Chunk(2).Select(pair => new Piece(source.Width, StripHeight, [.. Strip(pair[0]).At(0, 0), .. Strip(pair[1]).At(StripWidth, 0)]));
        return new(Key, "Labels", [new([.. rows]) { Head = Head(source) }]) { IsApart = true, Note = "Two for each wire, number and far end; cut along the dashes." };
    }

    private static Piece Head(PackSource source)
    {
        var ruler = Marks.Ruler(5, Tab);
        var text = Prose.Lines("Print at 100 %, never \"fit to page\": this ruler is then 50 mm long, and the letters of a label are 2.5 mm high. The small text says on which end a strip goes; cut it off. "
            + "Put label or sleeve on before the second terminal.", source.Lettering.Fine, source.Width - ruler.Width - 40, 0);
        double height = Math.Max(ruler.Height, text.Height) + 12;
        return new(source.Width, height, [.. ruler.At(10, 0), .. text.At(ruler.Width + 40, 0), Cut(0, height, source.Width, height)]);
    }

    private static Piece Strip(WireLabel label)
    {
        double room = StripWidth - TabWidth, baseline = (StripHeight + Letters.CapHeight) / 2, half = room / 2;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(TextShape.Of("at " + label.At, Tab, Padding, (StripHeight + Tab.CapHeight) / 2, width: TabWidth - Padding - 2));
        bool isTwice = TextMeasure.Fits(label.Text, Letters, half - (2 * Padding));
        for (int i = 0; i < (isTwice ? 2 : 1); i++) shapes.Add(TextShape.Of(label.Text, Letters, TabWidth + Padding + (i * half), baseline, width: isTwice ? half : room - (2 * Padding)));
        shapes.Add(Shape.Line(new(StrokeRank.Thin, ColourRole.Ink), TabWidth, 4, TabWidth, StripHeight - 4));
        shapes.Add(Cut(0, StripHeight, StripWidth, StripHeight));
        shapes.Add(Cut(StripWidth, 0, StripWidth, StripHeight));
        return new(StripWidth, StripHeight, shapes.ToImmutable());
    }

    private static PolylineShape Cut(double x1, double y1, double x2, double y2) => Shape.Line(new(StrokeRank.Thin, ColourRole.Ink, new Dash(5, 4).Fitted(Math.Max(x2 - x1, y2 - y1))), x1, y1, x2, y2);
}
