using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>Resistances of conductors against printed tables.</summary>
public class ResistanceTests
{
    // Ohms per 1000 ft at 20 °C, solid: NBS Circular 31 (1914), which computes from the series of ASTM B258 (from memory).
    [Theory]
    [InlineData(-3, 0.04901)] [InlineData(0, 0.09827)] [InlineData(2, 0.1563)] [InlineData(4, 0.2485)] [InlineData(6, 0.3951)] [InlineData(8, 0.6282)]
    [InlineData(10, 0.9989)] [InlineData(12, 1.588)] [InlineData(14, 2.525)] [InlineData(16, 4.016)] [InlineData(18, 6.385)] [InlineData(20, 10.15)] [InlineData(24, 25.67)]
    public void The_gauge_series_is_that_of_the_copper_tables(int gauge, double ohms)
    {
        double solid = CopperResistance.OhmsPerMetre(WireSize.Awg(gauge)) / 1.02 * 304.8;
        Assert.Equal(ohms, solid, 0.001 * ohms);
    }

    // Ohms per 1000 ft at 75 °C, stranded, uncoated copper: NFPA 70, chapter 9, table 8.
    [Theory]
    [InlineData(18, 7.95)] [InlineData(16, 4.99)] [InlineData(14, 3.14)] [InlineData(12, 1.98)] [InlineData(10, 1.24)] [InlineData(8, 0.778)] [InlineData(6, 0.491)]
    [InlineData(4, 0.308)] [InlineData(2, 0.194)] [InlineData(0, 0.122)] [InlineData(-3, 0.0608)]
    public void Stranded_wire_at_75_degrees_is_that_of_the_electrical_code(int gauge, double ohms) =>
        Assert.Equal(ohms, CopperResistance.OhmsPerMetre(WireSize.Awg(gauge)) * CopperResistance.FactorAt(75) * 304.8, 0.006 * ohms);

    // IEC 60228, class 5, plain copper, milliohms a metre; 2.5 mm² at 70 °C by the ratio (234.5 + T) / 254.5 of AC 43.13-1B, 11-66.
    [Theory]
    [InlineData(0.5, 39.0)] [InlineData(1.5, 13.3)] [InlineData(2.5, 7.98)] [InlineData(6, 3.30)] [InlineData(25, 0.780)] [InlineData(120, 0.161)]
    public void Metric_sizes_are_those_of_the_standard(double area, double milliohms) =>
        Assert.Equal(milliohms / 1000, CopperResistance.OhmsPerMetre(WireSize.SquareMillimetres(area)), 1e-12);

    [Fact]
    public void Warm_copper_resists_more() =>
        Assert.Equal(9.548, 1000 * CopperResistance.OhmsPerMetre(WireSize.SquareMillimetres(2.5)) * CopperResistance.FactorAt(70), 0.005);

    // ISO 6722-1 has 9.42 mΩ/m for 2 mm² and 2.38 for 8 mm² (from memory): a size between two of IEC 60228 lies near, and always between its neighbours.
    [Theory]
    [InlineData(2, 9.42)] [InlineData(3, 6.15)] [InlineData(8, 2.38)] [InlineData(40, 0.473)]
    public void A_metric_size_between_two_of_the_standard_lies_between_them(double area, double milliohms) =>
        Assert.Equal(milliohms, 1000 * CopperResistance.OhmsPerMetre(WireSize.SquareMillimetres(area)), 0.09 * milliohms);

    // Makers' data of blade fuses (from memory).
    [Theory]
    [InlineData(5, 17.9)] [InlineData(10, 7.7)] [InlineData(30, 2.0)]
    public void A_fuse_has_the_resistance_of_its_data_sheet(double amperes, double milliohms) => Assert.Equal(milliohms, 1000 * FuseResistance.Of(amperes), 1e-9);

    [Fact]
    public void A_wire_without_length_has_no_resistance_of_its_own_and_a_measured_one_wins()
    {
        Assert.Null(CopperResistance.Of(new Wire { Size = WireSize.Awg(14) }, 20));
        Assert.Null(CopperResistance.Of(new Wire { LengthInMetres = 2 }, 20));
        Assert.Equal(0.0004, CopperResistance.Of(new Wire { Size = WireSize.Awg(14), LengthInMetres = 2, ResistanceInOhms = 0.0004 }, 80)!.Value, 1e-12);
    }
}
