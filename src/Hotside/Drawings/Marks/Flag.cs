using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>Which way the tip of a flag points.</summary>
internal enum FlagTip
{
    /// <summary>To the right.</summary>
    Right,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>Down.</summary>
    Down,

    /// <summary>Up.</summary>
    Up,
}

/// <summary>A cross-reference: where a wire goes on. Its tip points away from the wire if it goes out, at the wire if it comes in.</summary>
/// <param name="Piece">The flag.</param>
/// <param name="Tip">The point of its tip, in the piece.</param>
/// <param name="Back">The middle of the opposite side, in the piece.</param>
internal sealed record Flag(Piece Piece, Point Tip, Point Back)
{
    /// <summary>A flag with a text.</summary>
    public static Flag Of(string text, FlagTip tip, Lettering lettering, double maxWidth = 200)
    {
        TextStyle style = lettering.SmallBold;
        string drawn = TextMeasure.Shorten(text, style, maxWidth * lettering.Factor);
        double f = lettering.Factor, width = Math.Max(16 * f, TextMeasure.Width(drawn, style) + (10 * f)), height = 18 * f, point = 7 * f;
        Pen pen = new(StrokeRank.Thin, ColourRole.Ink);
        bool sideways = tip is FlagTip.Right or FlagTip.Left;
        double w = sideways ? width + point : width, h = sideways ? height : height + point;
        Point[] outline = tip switch
        {
            FlagTip.Right => [(0, 0), (width, 0), (w, height / 2), (width, height), (0, height)],
            FlagTip.Left => [(point, 0), (w, 0), (w, height), (point, height), (0, height / 2)],
            FlagTip.Down => [(0, 0), (width, 0), (width, height), (width / 2, h), (0, height)],
            _ => [(0, point), (width / 2, 0), (width, point), (width, h), (0, h)],
        };
        double x = (width / 2) + (tip == FlagTip.Left ? point : 0), y = (height / 2) + (style.CapHeight / 2) + (tip == FlagTip.Up ? point : 0);
        Piece piece = new(w, h, [Shape.Polygon(pen, ColourRole.Paper, outline), TextShape.Of(drawn, style, x, y, Anchor.Middle) with { Whole = drawn == text ? null : text }]);
        return tip switch
        {
            FlagTip.Right => new(piece, (w, height / 2), (0, height / 2)),
            FlagTip.Left => new(piece, (0, height / 2), (w, height / 2)),
            FlagTip.Down => new(piece, (width / 2, h), (width / 2, 0)),
            _ => new(piece, (width / 2, 0), (width / 2, h)),
        };
    }
}
