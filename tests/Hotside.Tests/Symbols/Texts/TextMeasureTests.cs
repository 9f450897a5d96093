using Hotside.Symbols.Texts;

namespace Hotside.Tests.Symbols.Texts;

public sealed class TextMeasureTests
{
    private static readonly TextStyle Ten = new("ten", 6.98, false, 13);

    [Theory]
    // The typeface's own hmtx table, read with fontTools: advances in thousandths of the size.
    [InlineData("H", false, 707)]
    [InlineData("A", false, 641)]
    [InlineData("8", false, 600)]
    [InlineData("M", false, 812)]
    [InlineData("H", true, 724)]
    public void The_advance_of_a_glyph_is_that_of_its_font_file(string glyph, bool bold, int advance) =>
        Assert.Equal(advance, (bold ? FontFace.Bold : FontFace.Regular).Advance(glyph));

    [Fact]
    public void Kerning_and_ligatures_are_measured_as_a_browser_draws_them()
    {
        // Chromium 156, getComputedTextLength of this text in the unsubset typeface at 60 px: 475.45; the sum of the advances would be 496.4.
        double width = TextMeasure.Width("AVAVAVAV To fi rv", Ten with { CapHeight = 6 * 6.98 });
        Assert.Equal(475.45, width, 0.05);
    }

    [Fact]
    public void Kerned_letters_are_narrower_than_the_sum_of_their_advances() =>
        Assert.True(FontFace.Regular.Advance("AVAV") < 2 * (FontFace.Regular.Advance("A") + FontFace.Regular.Advance("V")));

    [Fact]
    public void Capitals_have_the_height_that_the_style_asks_for() => Assert.Equal(10, Ten.Size, 1e-9);

    [Fact]
    public void A_text_that_fits_is_left_alone() => Assert.Equal("Horn", TextMeasure.Shorten("Horn", Ten, 100));

    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(300)]
    public void A_shortened_text_keeps_within_its_width_and_is_as_long_as_it_can_be(double width)
    {
        string text = string.Concat(Enumerable.Repeat("Scheinwerferhalterung ", 500));
        string shortened = TextMeasure.Shorten(text, Ten, width);
        Assert.EndsWith("…", shortened, StringComparison.Ordinal);
        Assert.True(TextMeasure.Width(shortened, Ten) <= Math.Max(width, TextMeasure.Width("…", Ten)));
        Assert.True(width < 20 || TextMeasure.Width(shortened, Ten) > width - 25);
    }

    [Fact]
    public void The_same_text_has_the_same_width_on_four_threads()
    {
        double one = TextMeasure.Width("Beleuchtung vorn 55/60 W · GNYE", Ten);
        double[] many = new double[400];
        Parallel.For(0, many.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => many[i] = TextMeasure.Width("Beleuchtung vorn 55/60 W · GNYE", Ten));
        Assert.All(many, w => Assert.Equal(one, w));
    }

    [Fact]
    public void The_font_survives_a_collection_of_garbage()
    {
        double before = TextMeasure.Width("AVAVAVAV", Ten);
        for (int i = 0; i < 5; i++)
        {
            GC.KeepAlive(new byte[5_000_000]);
            GC.Collect(2, GCCollectionMode.Forced, blocking: true, compacting: true);
        }

        Assert.Equal(before, TextMeasure.Width("AVAVAVAV", Ten));
    }
}
