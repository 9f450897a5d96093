using Hotside.Circuits;

namespace Hotside.Tests.Circuits;

public class WireSizeTests
{
    // Cross-sections of ASTM B258 (as printed in wire tables; from memory): 14 AWG 2.08 mm², 10 AWG 5.26 mm², 1/0 53.5 mm².
    [Theory]
    [InlineData(14, 2.08, "14 AWG")]
    [InlineData(10, 5.26, "10 AWG")]
    [InlineData(0, 53.5, "1/0 AWG")]
    [InlineData(-1, 67.4, "2/0 AWG")]
    public void A_gauge_has_the_standard_s_cross_section(int gauge, double area, string text)
    {
        Assert.Equal(area, WireSize.Awg(gauge).Area, area * 0.002);
        Assert.Equal(text, WireSize.Awg(gauge).ToString());
    }

    [Theory]
    [InlineData("RD/WH", "RD/WH")]
    [InlineData("grey", "GY")]
    [InlineData("gray/black", "GY/BK")]
    [InlineData("GNYE", "GNYE")]
    public void Colours_are_codes_or_words_in_either_spelling(string text, string code)
    {
        Assert.True(WireColour.TryParse(text, out var colour));
        Assert.Equal(code, colour.ToString());
    }

    [Theory]
    [InlineData("rd")]
    [InlineData("RD/")]
    [InlineData("RD/WH/BK")]
    [InlineData("")]
    public void Anything_else_is_no_colour(string text) => Assert.False(WireColour.TryParse(text, out _));
}
