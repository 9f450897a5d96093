using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>What stands at the foot of every sheet: vehicle, which sheet of how many, number, revision, date and state, and that it is an aid.</summary>
/// <param name="Vehicle">What the job is called.</param>
/// <param name="Facts">Number, revision, date, state, as far as they are known.</param>
/// <param name="Caution">What takes precedence.</param>
internal sealed record PageFoot(string Vehicle, string Facts, string Caution)
{
    /// <summary>The room it takes.</summary>
    public double HeightOf(double width, PackLettering lettering) => 10 + ((IsOneLine(width, lettering) ? 2 : 3) * lettering.Fine.Pitch);

    private bool IsOneLine(double width, PackLettering lettering) => TextMeasure.Width(Caution, lettering.Fine) + 16 + TextMeasure.Width(Facts, lettering.Fine) <= width;

    /// <summary>The foot of a sheet.</summary>
    public Piece Of(int sheet, int sheets, double width, PackLettering lettering)
    {
        TextStyle style = lettering.Fine, bold = lettering.FineBold;
        double first = 6 + style.CapHeight, second = first + style.Pitch, third = IsOneLine(width, lettering) ? second : second + style.Pitch;
        var number = TextShape.Of($"Sheet {Numbers.Whole(sheet)} of {Numbers.Whole(sheets)}", bold, width, first, Anchor.End);
        ImmutableArray<Shape> shapes =
        [
            Shape.Line(new(StrokeRank.Medium, ColourRole.Ink), 0, 0, width, 0),
            TextShape.Of(Vehicle, bold, 0, first, width: width - number.Width - 16),
            number,
            TextShape.Of(Facts, style, 0, second, width: third > second ? width : width - TextMeasure.Width(Caution, style) - 16),
            TextShape.Of(Caution, style, width, third, Anchor.End, width: width),
        ];
        return new(width, HeightOf(width, lettering), [.. shapes.Where(s => s is not TextShape { Text.Length: 0 })]);
    }
}
