using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Tests.Notation;

public class QuantityReaderTests
{
    // Feet and inches: the international foot of 1959 is 0.3048 m exactly.
    [Theory]
    [InlineData("6 V", 6, Unit.Volt)]
    [InlineData("6V", 6, Unit.Volt)]
    [InlineData("6 volts", 6, Unit.Volt)]
    [InlineData("6 Volts", 6, Unit.Volt)]
    [InlineData("150 mA", 0.15, Unit.Ampere)]
    [InlineData("8 amps", 8, Unit.Ampere)]
    [InlineData("8 amperes", 8, Unit.Ampere)]
    [InlineData("2.2 kohm", 2200, Unit.Ohm)]
    [InlineData("1 Mohm", 1e6, Unit.Ohm)]
    [InlineData("1 mohm", 1e-3, Unit.Ohm)]
    [InlineData("5 Ω", 5, Unit.Ohm)]
    [InlineData("5 \u2126", 5, Unit.Ohm)]
    [InlineData("90 Ah", 90, Unit.AmpereHour)]
    [InlineData("90 amp-hours", 90, Unit.AmpereHour)]
    [InlineData("3 metres", 3, Unit.Metre)]
    [InlineData("3 meters", 3, Unit.Metre)]
    [InlineData("10 ft", 3.048, Unit.Metre)]
    [InlineData("1 foot", 0.3048, Unit.Metre)]
    [InlineData("10 in", 0.254, Unit.Metre)]
    [InlineData(".5 m", 0.5, Unit.Metre)]
    [InlineData("2.5 mm²", 2.5, Unit.SquareMillimetre)]
    [InlineData("2.5 mm2", 2.5, Unit.SquareMillimetre)]
    [InlineData("2.5 sq mm", 2.5, Unit.SquareMillimetre)]
    [InlineData("14 AWG", 14, Unit.Awg)]
    [InlineData("1/0 AWG", 0, Unit.Awg)]
    [InlineData("4/0 AWG", -3, Unit.Awg)]
    [InlineData("12 ways", 12, Unit.Ways)]
    public void A_quantity_is_read_in_either_spelling(string text, double value, Unit unit)
    {
        var read = QuantityReader.Read(text, out string? problem);
        Assert.Null(problem);
        Assert.Equal(unit, read!.Unit);
        Assert.Equal(value, read.Value, 1e-12);
    }

    [Theory]
    [InlineData("45/35 W", "45/35 W")]
    [InlineData("2x21 W", "2x21 W")]
    [InlineData("0..90 ohm", "0..90 ohm")]
    public void Values_counts_and_ranges_are_kept(string text, string expected) => Assert.Equal(expected, QuantityReader.Read(text, out _)!.ToString());

    [Theory]
    [InlineData("30")]
    [InlineData("1e3 V")]
    [InlineData("0x10 V")]
    [InlineData("1.2.3 V")]
    [InlineData("V 6")]
    [InlineData("5/0 AWG")]
    [InlineData("41 AWG")]
    public void What_is_no_quantity_is_none(string text) => Assert.Null(QuantityReader.Read(text, out _));

    [Theory]
    [InlineData("6 v", "\"V\"")]
    [InlineData("6 vlots", "\"volts\"")]
    [InlineData("90 AH", "\"Ah\"")]
    public void The_nearest_unit_is_suggested(string text, string unit)
    {
        Assert.Null(QuantityReader.Read(text, out string? problem));
        Assert.Contains(unit, problem, StringComparison.Ordinal);
    }
}
