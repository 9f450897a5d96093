using Hotside.Drawings;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Drawings;

public sealed class ThemeTests
{
    public static TheoryData<string> All => [.. Theme.Names];

    [Fact]
    public void The_formula_gives_the_known_values()
    {
        // WCAG 2: black on white is 21 : 1; #767676 on white is the lightest grey that passes 4.5 : 1 (4.54; widely quoted, from memory).
        Assert.Equal(21, Contrast(Colour.Hex("#000000"), Colour.Hex("#ffffff")), 1e-9);
        Assert.Equal(4.54, Contrast(Colour.Hex("#767676"), Colour.Hex("#ffffff")), 0.005);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Texts_have_the_contrast_that_WCAG_asks_for(string name)
    {
        Theme theme = Theme.Named(name);
        foreach (ColourRole role in (ColourRole[])[ColourRole.Ink, ColourRole.Quiet, ColourRole.Out, ColourRole.New, ColourRole.Moved])
        {
            Assert.True(Contrast(theme.Of(role), theme.Ground) >= 4.5, $"{role} on the sheet");
            Assert.True(Contrast(theme.Of(role), theme.Panel) >= 4.5, $"{role} on the panel");
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Lines_have_the_contrast_that_WCAG_asks_for(string name)
    {
        Theme theme = Theme.Named(name);
        Assert.All((ColourRole[])[ColourRole.Wire, ColourRole.Ink, ColourRole.Out, ColourRole.New, ColourRole.Moved], r => Assert.True(Contrast(theme.Of(r), theme.Ground) >= 3));
    }

    [Fact]
    public void High_contrast_is_what_WCAG_calls_enhanced()
    {
        // WCAG 2.2, 1.4.6 (level AAA): 7 : 1.
        foreach (ColourRole role in (ColourRole[])[ColourRole.Ink, ColourRole.Quiet, ColourRole.Wire, ColourRole.Out, ColourRole.New, ColourRole.Moved])
            Assert.True(Contrast(Theme.HighContrast.Of(role), Theme.HighContrast.Ground) >= 7, role.ToString());
    }

    [Fact]
    public void A_theme_that_is_not_there_is_answered_with_the_nearest_or_those_that_are()
    {
        Assert.StartsWith("There is no theme \"drak\"; did you mean \"dark\"?", Assert.Throws<ArgumentException>(() => Theme.Named("drak")).Message, StringComparison.Ordinal);
        Assert.StartsWith("There is no theme \"blue\"; there are paper, dark, mono, high-contrast.", Assert.Throws<ArgumentException>(() => Theme.Named("blue")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void In_grey_each_state_of_a_conductor_still_has_a_look_of_its_own()
    {
        // What is left when the colour is taken away: how many strokes of which width, dashed how, in dark or paper.
        IEnumerable<string> looks = Enum.GetValues<LineStyle>().Select(state => string.Join(" + ", ConductorLine.Of([(0, 0), (280, 0)], state)
            .Select(s => $"{s.Pen!.Rank} {(s.Pen.Dash.IsSolid ? "solid" : Math.Round(s.Pen.Dash.On))} {(s.Pen.Colour == ColourRole.Paper ? "core" : "line")}")));
        Assert.Equal(Enum.GetValues<LineStyle>().Length, looks.Distinct().Count());
    }

    // Dashes would leave crumbs of a winding.
    [Fact]
    public void A_part_that_is_taken_out_is_dashed_but_for_rings_and_bows()
    {
        Shape[] shapes =
        [
            Shape.Line(new(StrokeRank.Medium, ColourRole.PartInk), 0, 0, 40, 0),
            CurveShape.Open(new(StrokeRank.Medium, ColourRole.PartInk), (0, 0), [.. Enumerable.Range(1, 5).Select(i => new CurveStep((0, 8 * i), 4))]),
            new CircleShape((0, 0), 3, new(StrokeRank.Medium, ColourRole.PartInk), ColourRole.None),
        ];
        Assert.Equal([false, true, true], shapes.Select(s => PartLook.Apply([s], PartStyle.TakenOut)[0].Pen!.Dash.IsSolid));
    }

    [Fact]
    public void In_grey_each_state_of_a_part_that_does_not_stay_differs_from_one_that_does()
    {
        Shape[] symbol = [Shape.Line(Pen.Medium, 0, 0, 0, 30)];
        string Look(PartStyle state) => PartLook.Apply(symbol, state)[0].Pen! is var pen ? $"{pen.Rank} {pen.Dash.IsSolid}" : "";
        Assert.NotEqual(Look(PartStyle.TakenOut), Look(PartStyle.ToBeReplaced));
        Assert.NotEqual(PartLook.ColourOf(PartStyle.Kept), PartLook.ColourOf(PartStyle.ToBeReplaced));
        Assert.Equal(3, new[] { PartStyle.Kept, PartStyle.TakenOut, PartStyle.New }.Select(Look).Distinct().Count());
    }

    [Theory]
    [InlineData("#12345")]
    [InlineData("red")]
    [InlineData("#1234567")]
    [InlineData("#12345g")]
    public void What_is_no_colour_is_refused(string text) => Assert.Throws<ArgumentException>(() => Colour.Hex(text));

    // WCAG 2.2, "relative luminance" and "contrast ratio".
    private static double Contrast(Colour a, Colour b)
    {
        double la = Luminance(a), lb = Luminance(b);
        return (Math.Max(la, lb) + 0.05) / (Math.Min(la, lb) + 0.05);
    }

    private static double Luminance(Colour c)
    {
        static double Linear(byte channel) => channel / 255.0 is var s && s <= 0.04045 ? s / 12.92 : Math.Pow((s + 0.055) / 1.055, 2.4);
        return (0.2126 * Linear(c.Red)) + (0.7152 * Linear(c.Green)) + (0.0722 * Linear(c.Blue));
    }
}
