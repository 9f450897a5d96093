using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>Where a label stands against its conductor.</summary>
internal enum LabelSide
{
    /// <summary>Left of a vertical run: the label first, the triangle next to the wire.</summary>
    Left,

    /// <summary>Right of a vertical run: the triangle next to the wire, then the label.</summary>
    Right,

    /// <summary>Above or below a horizontal run: triangle, then label.</summary>
    Along,
}

/// <summary>The label of a conductor, size and colour, with the triangle of its change: measured before it is placed.</summary>
internal static class WireLabel
{
    /// <summary>Distance from a vertical wire's axis to the piece.</summary>
    public const double BesideWire = 7;

    /// <summary>Distance from a horizontal wire's axis to the piece.</summary>
    public const double AboveWire = 6;

    private const double RoomForFeet = 1.2;

    /// <summary>From the baseline down to the lower edge of a label.</summary>
    public static double Foot(ChangeNumber? number, Lettering lettering) =>
        // The feet of letters reach into the room that is kept clear below, and past it.
        number is null ? Math.Max(0, lettering.Small.Descent - RoomForFeet) : (24 * lettering.Factor) - Triangle.Baseline(lettering);

    /// <summary>The label; either text or number may be missing.</summary>
    public static Piece Of(string text, ChangeNumber? number, LabelSide side, Lettering lettering, double maxWidth = 120)
    {
        double gap = 4 * lettering.Factor;
        TextStyle style = lettering.Small;
        Piece? triangle = number is null ? null : Triangle.Of(number, lettering);
        double height = triangle?.Height ?? style.CapHeight + Foot(number, lettering);
        double baseline = triangle is null ? style.CapHeight : Triangle.Baseline(lettering);
        TextShape label = TextShape.Of(text, style, 0, baseline, width: maxWidth * lettering.Factor);
        double textWidth = label.Text.Length == 0 ? 0 : label.Width;
        if (triangle is null)
            return new(textWidth, height, textWidth == 0 ? [] : [label]);
        if (textWidth == 0)
            return triangle;
        bool labelFirst = side == LabelSide.Left;
        ImmutableArray<Shape> shapes =
        [
            .. triangle.At(labelFirst ? textWidth + gap : 0, 0),
            label.Shifted(labelFirst ? 0 : triangle.Width + gap, 0),
        ];
        return new(textWidth + gap + triangle.Width, height, shapes);
    }
}
