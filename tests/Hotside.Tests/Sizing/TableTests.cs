using Hotside.Circuits;
using Hotside.Sizing.Heating;
using Hotside.Sizing.Tables;

namespace Hotside.Tests.Sizing;

/// <summary>The tables and formulas of sizing against printed ones.</summary>
public class TableTests
{
    private static Insulation Stands(double celsius) => new("", celsius, IsKnown: true);

    private static Ampacity Of(WireSize size, double celsius, bool engine = false, int bundled = 1) => Ampacity.Of(size, Stands(celsius), engine, bundled)!;

    // 33 CFR 183.425, table 5.
    [Theory]
    [InlineData(18, 60, 10)] [InlineData(16, 75, 15)] [InlineData(14, 80, 25)] [InlineData(14, 105, 35)] [InlineData(12, 90, 40)] [InlineData(10, 105, 60)] [InlineData(8, 125, 90)]
    [InlineData(6, 60, 80)] [InlineData(4, 200, 180)] [InlineData(2, 80, 175)] [InlineData(0, 105, 285)] [InlineData(-1, 60, 225)] [InlineData(-3, 105, 445)]
    public void A_single_wire_may_carry_what_the_federal_rule_allows(int gauge, double celsius, double amperes) => Assert.Equal(amperes, Of(WireSize.Awg(gauge), celsius).Amperes);

    // The same section as printed for 105 °C inside engine spaces, rounded to whole amperes.
    [Theory]
    [InlineData(18, 17)] [InlineData(16, 21)] [InlineData(14, 30)] [InlineData(12, 38)] [InlineData(10, 51)] [InlineData(8, 68)] [InlineData(6, 102)] [InlineData(4, 136)] [InlineData(2, 178)]
    [InlineData(0, 242)] [InlineData(-3, 378)]
    public void In_an_engine_space_it_is_what_the_rule_prints(int gauge, double amperes) => Assert.Equal(amperes, Of(WireSize.Awg(gauge), 105, engine: true).Amperes, 0.6);

    // Guideline to the rule, worked there: 10 AWG, 105 °C, 7 to 24 in a bundle, engine space: 60 × 0.85 × 0.50 = 25.5 A; 14 AWG alone: 29.75 A.
    [Fact]
    public void Factors_multiply_as_in_the_worked_examples_of_the_guideline()
    {
        Assert.Equal(25.5, Of(WireSize.Awg(10), 105, engine: true, bundled: 12).Amperes, 1e-9);
        Assert.Equal(29.75, Of(WireSize.Awg(14), 105, engine: true).Amperes, 1e-9);
        Assert.Equal(35, Of(WireSize.Awg(14), 105, bundled: 2).Amperes);
    }

    // NFPA 70, 310.15(B): a factor for another ambient is √((TC − Ta') / (TC − Ta)); from 30 to 50 °C.
    [Theory]
    [InlineData(60)] [InlineData(75)] [InlineData(80)] [InlineData(90)] [InlineData(105)] [InlineData(125)]
    public void Engine_space_factors_are_those_of_the_correction_for_ambient_air(double celsius) =>
        Assert.Equal(Math.Sqrt((celsius - 50) / (celsius - 30)), Ampacity.EngineSpaceFactor(celsius), 0.008);

    // 33 CFR 183.455(c): up to 150 % of the allowed current: 14 AWG, 105 °C: 52.5 A outside, 44.6 A inside an engine space.
    [Fact]
    public void A_fuse_may_be_half_as_large_again_at_most()
    {
        Assert.Equal(52.5, FuseLadder.MostOfAmpacity * Of(WireSize.Awg(14), 105).Amperes, 1e-9);
        Assert.Equal(44.6, FuseLadder.MostOfAmpacity * Of(WireSize.Awg(14), 105, engine: true).Amperes, 0.05);
    }

    // A metric size takes the row of the gauge of the next smaller section: sections by ASTM B258.
    [Theory]
    [InlineData(1, 18)] [InlineData(1.5, 16)] [InlineData(2.5, 14)] [InlineData(4, 12)] [InlineData(6, 10)] [InlineData(10, 8)] [InlineData(16, 6)] [InlineData(25, 4)] [InlineData(35, 2)]
    [InlineData(50, 1)] [InlineData(70, -1)] [InlineData(95, -2)] [InlineData(120, -3)]
    public void A_metric_size_takes_the_row_of_the_next_smaller_gauge(double area, int gauge)
    {
        Assert.Equal(Of(WireSize.Awg(gauge), 105).Amperes, Of(WireSize.SquareMillimetres(area), 105).Amperes);
        Assert.True(WireSize.Awg(gauge).Area <= area);
    }

    [Fact]
    public void Where_tables_are_silent_nothing_is_said_and_a_second_table_only_warns()
    {
        Assert.Null(Ampacity.Of(WireSize.Awg(20), Stands(105), isInEngineSpace: false, 1));
        Assert.Null(Ampacity.Of(WireSize.Awg(14), Stands(55), isInEngineSpace: false, 1));
        Assert.Null(Ampacity.Of(WireSize.SquareMillimetres(0.5), Stands(105), isInEngineSpace: false, 1));
        var small = Of(WireSize.SquareMillimetres(0.75), 105);
        Assert.True(small.WarnsOnly);
        Assert.Equal(16, small.Amperes);
    }

    // SAE J1128 and J1127; ISO 6722-1 classes from memory.
    [Theory]
    [InlineData("GPT", 80)] [InlineData("gxl", 125)] [InlineData("SGX", 125)] [InlineData("class B", 100)] [InlineData("PVC 105 °C", 105)] [InlineData("cloth", 60)]
    public void Insulation_is_known_by_its_type_or_its_temperature(string name, double celsius)
    {
        var insulation = Insulation.Of(new Wire { Insulation = name }, new ElectricalSystem([12], Ground.Negative));
        Assert.True(insulation.IsKnown);
        Assert.Equal(celsius, insulation.Celsius);
    }

    [Fact]
    public void Insulation_that_nobody_states_counts_as_old()
    {
        Assert.Equal(60, Insulation.Of(new Wire(), new ElectricalSystem([12], Ground.Negative)).Celsius);
        Assert.False(Insulation.Of(new Wire { Insulation = "shellac" }, new ElectricalSystem([12], Ground.Negative)).IsKnown);
        Assert.Equal(80, Insulation.Of(new Wire(), new ElectricalSystem([12], Ground.Negative) { Insulation = "GPT" }).Celsius);
    }

    // ISO 8820-3, types C and F: at twice the rating 0.15 to 5 s, at six times 0.02 to 0.1 s; at 110 % 100 hours at least (shortest times from memory).
    [Theory]
    [InlineData(2, 0.15, 5)] [InlineData(3.5, 0.04, 0.5)] [InlineData(6, 0.02, 0.1)] [InlineData(1.35, 0.75, 1800)]
    public void A_blade_opens_within_the_band_of_its_standard(double times, double least, double most)
    {
        var band = OpeningTime.At(FusePattern.Blade, times)!;
        Assert.Equal(least, band.Least, 1e-9);
        Assert.Equal(most, band.Most!.Value, 1e-9);
    }

    [Fact]
    public void Between_the_points_of_the_standard_the_band_is_a_line_in_logarithms_and_never_one_time()
    {
        Assert.Null(OpeningTime.At(FusePattern.Blade, 1.1));
        Assert.Null(OpeningTime.At(FusePattern.Blade, 1.2)!.Most);
        // 0.0258 s worked by hand: 0.04 · (0.02 / 0.04)^(ln(4.916 / 3.5) / ln(6 / 3.5)).
        Assert.Equal(0.0258, OpeningTime.At(FusePattern.Blade, 4.916)!.Least, 5e-5);
        var far = OpeningTime.At(FusePattern.Blade, 16.7)!;
        Assert.Equal((0, 0.1), (far.Least, far.Most!.Value));
        // Type E at six times: 0.04 to 1 s (from memory).
        Assert.Equal(1, OpeningTime.At(FusePattern.LargeBlade, 8)!.Most!.Value, 1e-9);
        // Glass (UL 248-14): 3600 s at 135 %, 120 s at 200 %; beyond, no more I²·t than there: 120 × (2 / 10)² s.
        Assert.Equal((0, 120), (OpeningTime.At(FusePattern.Glass, 2)!.Least, OpeningTime.At(FusePattern.Glass, 2)!.Most!.Value));
        Assert.Equal(4.8, OpeningTime.At(FusePattern.Glass, 10)!.Most!.Value, 1e-9);
        Assert.Equal(0.1, OpeningTime.At(FusePattern.Glass, 1000)!.Most!.Value, 1e-9);
        // Breakers (SAE J553): an hour at 135 %, a minute at 200 %.
        Assert.Equal(60, OpeningTime.At(FusePattern.Breaker, 2)!.Most!.Value, 1e-9);
        Assert.Null(OpeningTime.At(FusePattern.Breaker, 1.1));
    }

    // IEC 60364-5-54, annex A (from memory): k from 70 to 160 °C 115, from 90 to 250 °C 143; from 60 to 200 °C 141.
    [Theory]
    [InlineData(70, 160, 115.0)] [InlineData(90, 250, 143.1)] [InlineData(60, 200, 140.9)] [InlineData(80, 160, 107.59)]
    public void The_adiabatic_constant_is_that_of_the_standard(double from, double to, double k) => Assert.Equal(k, Adiabatic.K(from, to), 0.05);

    // Formula of IEC 60364-4-43: 1.5 mm² in PVC at 200 A takes 0.744 s from 70 to 160 °C; 27.5 mm² for 10 kA in 0.1 s with k = 115 (printed in a text on cable sizing).
    [Fact]
    public void Short_circuits_heat_copper_as_in_the_standard()
    {
        Assert.Equal(0.744, Adiabatic.Seconds(1.5, 70, 160, 200), 0.001);
        Assert.Equal(27.5, 10_000 * Math.Sqrt(0.1) / Adiabatic.K(70, 160), 0.05);
        Assert.Equal(2.10, Math.Sqrt(90_000) / Adiabatic.K(90, 250), 0.005);
    }

    // E. R. Stauffacher, General Electric Review 31 (1928): 16 AWG melts within 5 s at 168.9 A from 25 °C; IEC's constants give 168.6 A.
    [Fact]
    public void A_wire_melts_within_seconds_at_the_current_of_the_fusing_formula() =>
        Assert.Equal(168.9, Math.Sqrt(Adiabatic.Stands(WireSize.Awg(16).Area, 25, 1083) / 5), 0.5);

    // W. H. Preece, Proc. Royal Society 44 (1888): copper of 0.0098 in melts at 10 A, of 0.0457 in at 100 A.
    [Theory]
    [InlineData(0.0098, 10)] [InlineData(0.0457, 100)]
    public void A_bare_wire_melts_at_about_the_current_of_the_old_table(double inches, double amperes) =>
        Assert.Equal(amperes, SteadyHeat.MeltingAmperes(Math.PI / 4 * inches * 25.4 * inches * 25.4), 0.02 * amperes);

    // AC 43.13-1B, page 11-27, example 2: 20 A in a wire that 26 A warm from 50 to 200 °C. It takes the square root, on the safe side: 181.6 °C; heat with the square gives 138.8 °C.
    [Fact]
    public void A_wire_warms_with_the_square_of_its_current() => Assert.Equal(138.8, SteadyHeat.Celsius(50, 200, 20.0 / 26), 0.05);

    // The headings of the tables are the ladders: nobody makes a fuse of 12 A (SAE J1284).
    [Fact]
    public void Fuses_are_made_in_the_ratings_of_the_standard() => Assert.Equal([1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100], FuseLadder.Ratings);
}
