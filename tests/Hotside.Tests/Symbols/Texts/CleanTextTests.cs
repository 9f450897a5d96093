using Hotside.Symbols.Texts;

namespace Hotside.Tests.Symbols.Texts;

public sealed class CleanTextTests
{
    [Theory]
    [InlineData("Horn relay")]
    [InlineData("Scheinwerfer außen, übergroß")]
    [InlineData("Vilkkurele etuvalot, kaasuläpän kytkin")]
    [InlineData("Přepínač świateł")]
    [InlineData("Фара левая")]
    [InlineData("Ω µ ² ³ ° ± × − – — · … ← ↑ → ↓ ≤ ≥ ≈ ½ √ ∞ ✓")]
    public void What_the_font_has_stays_as_it_is(string text)
    {
        Assert.True(CleanText.CanDraw(text));
        Assert.Equal(text, CleanText.Of(text));
    }

    [Theory]
    [InlineData("a\u0000b", "a\uFFFDb")]
    [InlineData("a\u202Eb", "a\uFFFDb")]
    [InlineData("a\u200Bb", "a\uFFFDb")]
    [InlineData("a\u00ADb", "a\uFFFDb")]
    [InlineData("horn 📯!", "horn \uFFFD!")]
    [InlineData("👩‍🔧", "\uFFFD")]
    [InlineData("שלום", "\uFFFD\uFFFD\uFFFD\uFFFD")]
    [InlineData("△", "\uFFFD")]
    public void What_it_lacks_leaves_a_visible_sign(string text, string drawn) => Assert.Equal(drawn, CleanText.Of(text));

    [Theory]
    [InlineData("  two\t\n words ", "two words")]
    [InlineData("no\u00A0break", "no break")]
    [InlineData("", "")]
    [InlineData("   ", "")]
    public void White_space_is_one_space_and_none_at_the_ends(string text, string drawn) => Assert.Equal(drawn, CleanText.Of(text));

    [Fact]
    public void Half_a_surrogate_pair_leaves_a_sign_too() => Assert.Equal("\uFFFDx", CleanText.Of((char)0xD800 + "x"));

    [Fact]
    public void A_letter_and_its_accent_become_one() => Assert.Equal("é", CleanText.Of("e\u0301"));

    [Fact]
    public void Both_faces_have_the_sign_for_what_is_missing()
    {
        Assert.True(FontFace.Regular.Has(CleanText.Substitute));
        Assert.True(FontFace.Bold.Has(CleanText.Substitute));
        Assert.True(FontFace.IsNarrow("Horn \uFFFD"));
        Assert.False(FontFace.IsNarrow("Přepínač"));
    }
}
