using Hotside.Symbols.Texts;

namespace Hotside.Tests.Symbols.Texts;

public sealed class TextLinesTests
{
    private static readonly TextStyle Small = Lettering.Normal.Small;

    [Theory]
    [InlineData("run jumper K1.30 to K1.86, 16 RD, and lay it beside the loom to the bulkhead", 90)]
    [InlineData("Scheinwerferreinigungsanlagenrelaishalterung vorn links", 60)]
    [InlineData("Kaukovalorele/lähivalorele-kytkentäkotelo", 50)]
    public void No_line_is_too_wide_and_no_word_is_lost(string text, double width)
    {
        var lines = TextLines.Break(text, Small, width);
        Assert.True(lines.Length > 1);
        Assert.All(lines, l => Assert.True(TextMeasure.Width(l, Small) <= width));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_line_allowed_is_shortened()
    {
        var lines = TextLines.Break(string.Concat(Enumerable.Repeat("word ", 2000)), Small, 100, 2);
        Assert.Equal(2, lines.Length);
        Assert.EndsWith("…", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_stays_with_its_unit()
    {
        // Every width between the first word and the whole.
        foreach (int width in Enumerable.Range(40, 120))
            Assert.DoesNotContain(TextLines.Break("by S1, which carries 0.33 A; then 12 V", Small, width), l => l.StartsWith("A;", StringComparison.Ordinal) || l.StartsWith('V'));
    }

    [Fact]
    public void An_empty_text_has_no_lines() => Assert.Empty(TextLines.Break("  ", Small, 100));

    [Fact]
    public void A_width_of_nothing_still_ends() => Assert.Equal(3, TextLines.Break("abc", Small, 0.5).Length);
}
