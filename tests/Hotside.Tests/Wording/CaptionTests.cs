using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Tests.Alterations;
using Hotside.Wording;

namespace Hotside.Tests.Wording;

public class CaptionTests
{
    [Fact]
    public void A_text_block_says_name_rating_and_state_of_its_own_view()
    {
        var horn = Samples.HornAltered();
        Assert.Equal(new PartCaption("G1", "Battery", "90 Ah · 6 V", "to be replaced"),
            PartCaption.Of("G1", horn, Moment.Before, Words.American));
        Assert.Equal(new PartCaption("G1", "Battery", "12 V · 60 Ah", "replaced reversed"), PartCaption.Of("G1", horn, Moment.After, Words.American));
        Assert.Equal(new PartCaption("K1", "Horn relay", "12 V · 30 A · coil 0.15 A", "fitted"), PartCaption.Of("K1", horn, Moment.After, Words.American));
        Assert.Equal(new PartCaption("S1", "Horn button", "", ""), PartCaption.Of("S1", horn, Moment.After, Words.American));
        Assert.Equal(new PartCaption("F2", "", "10 A", "replaced"), PartCaption.Of("F2", horn, Moment.After, Words.American));
        Assert.Equal("The before circuit has no part \"K1\". (Parameter 'partId')",
            Assert.Throws<ArgumentException>(() => PartCaption.Of("K1", horn, Moment.Before, Words.American)).Message);
    }

    [Fact]
    public void A_part_without_a_name_is_called_by_its_kind_in_the_words_asked_for()
    {
        Assert.Equal("Dynamo", PartNaming.Title(Alone(TestKinds.Generator), Words.British));
        Assert.Equal("Generator", PartNaming.Title(Alone(TestKinds.Generator), Words.American));
        Assert.Equal("Starter relay", PartNaming.Title(Alone(TestKinds.StarterRelayInternal), Words.American));
    }

    [Theory]
    [InlineData(45.0, null, Unit.Watt, 1, "45 W")]
    [InlineData(0.0, 90.0, Unit.Ohm, 1, "0–90 Ω")]
    [InlineData(0.0004, null, Unit.Ohm, 1, "0.4 mΩ")]
    [InlineData(21.0, null, Unit.Watt, 2, "2 × 21 W")]
    [InlineData(2.5, null, Unit.SquareMillimetre, 1, "2.5 mm²")]
    public void Ratings_have_their_true_units(double value, double? upTo, Unit unit, int count, string text) =>
        Assert.Equal(text, AmountText.Of(new Quantity(value, unit) { UpTo = upTo, Count = count }));

    [Fact]
    public void A_rating_with_one_value_an_element_keeps_its_stroke() => Assert.Equal("45/35 W", AmountText.Of(new Quantity([45, 35], Unit.Watt)));

    [Theory]
    [InlineData(0.0166, "17 mA")]
    [InlineData(0.15, "0.15 A")]
    [InlineData(8, "8.0 A")]
    [InlineData(9.96, "10 A")]
    [InlineData(180, "180 A")]
    [InlineData(-7.9, "−7.9 A")]
    public void A_current_has_the_figures_that_matter(double amperes, string text) => Assert.Equal(text, AmountText.Amperes(amperes));

    [Theory]
    [InlineData(12, "+12 V")]
    [InlineData(-6, "−6 V")]
    [InlineData(0, "0 V")]
    public void A_potential_has_its_sign_and_a_true_minus(double volts, string text) => Assert.Equal(text, AmountText.Potential(volts));

    [Fact]
    public void A_long_name_breaks_where_the_halves_are_alike()
    {
        Assert.Equal(["Horn relay"], PartCaption.InTwoLines("Horn relay", 14));
        Assert.Equal(["Engine block with", "a strap of its own"], PartCaption.InTwoLines("Engine block with a strap of its own", 14));
        Assert.Equal(["Windscreenwashermotor"], PartCaption.InTwoLines("Windscreenwashermotor", 14));
    }

    [Theory]
    [InlineData(SwitchedSide.HotSwitched, "HOT-SWITCHED", "LIVE-SWITCHED")]
    [InlineData(SwitchedSide.GroundSwitched, "GROUND-SWITCHED", "EARTH-SWITCHED")]
    [InlineData(SwitchedSide.BothSides, "SWITCHED BOTH SIDES", "SWITCHED BOTH SIDES")]
    [InlineData(SwitchedSide.Unswitched, "UNSWITCHED", "UNSWITCHED")]
    [InlineData(SwitchedSide.InSeries, "IN SERIES", "IN SERIES")]
    [InlineData(SwitchedSide.Dead, "DEAD", "DEAD")]
    public void A_badge_names_the_side(SwitchedSide side, string american, string british)
    {
        var load = Load(TestKinds.Horn, "H1", side);
        Assert.Equal(american, VerdictText.Of(load, Words.American).Badge);
        Assert.Equal(british, VerdictText.Of(load, Words.British).Badge);
    }

    [Fact]
    public void The_quiet_line_says_by_whom_and_with_what_current()
    {
        var button = Load(TestKinds.Horn, "H1", SwitchedSide.GroundSwitched, "6 V, 8 A") with { SwitchedBy = ["S1"] };
        Assert.Equal("by S1, which carries 8.0 A", By(button));
        Assert.Equal("by S1 and S2, which carry 8.0 A", By(button with { SwitchedBy = ["S1", "S2"] }));
        Assert.Equal("by S1, S2 and 2 more, which carry 8.0 A", By(button with { SwitchedBy = ["S1", "S2", "S3", "S4"] }));
        Assert.Equal("by K1", By(button with { SwitchedBy = [], Chain = ["K1", "K2"] }));
        Assert.Equal("by K1 and S1", By(button with { Chain = ["K1"] }));
        Assert.Equal("by S1", By(Load(TestKinds.Horn, "H1", SwitchedSide.HotSwitched) with { SwitchedBy = ["S1"] }));
        Assert.Equal("coil by S1, 0.15 A", By(Load(TestKinds.Relay, "K1", SwitchedSide.GroundSwitched, "12 V, coil 0.15 A") with { SwitchedBy = ["S1"] }));
        Assert.Equal("high by S2, which carries 7.5 A", By(Load(TestKinds.Headlamp, "E1", SwitchedSide.HotSwitched, "6 V, 45/35 W") with { SwitchedBy = ["S2"] }));
    }

    [Fact]
    public void The_quiet_line_says_what_is_odd_about_a_load()
    {
        var lamp = Load(TestKinds.Lamp, "E5", SwitchedSide.InSeries, "6 V, 2 W");
        Assert.Equal("with E3 in series", By(lamp with { InSeriesWith = ["E3"] }));
        Assert.Equal("because of polarity", By(lamp with { Side = SwitchedSide.Dead, DeadBecause = "polarity" }));
        Assert.Equal("shorted by S2", By(lamp with { Side = SwitchedSide.Unswitched, ShortedBy = ["S2"] }));
        var always = new Control([new([])]);
        Assert.Equal("by S1, which carries 0.33 A, held by K1, until K1 pulled, turned round by S4, relays race, not fully worked out", By(lamp with
        {
            Side = SwitchedSide.HotSwitched, SwitchedBy = ["S1"], Holds = new("K1", "contact", always, always), Until = new("K1", "coil", "pulled"),
            ReversedBy = ["S4"], IsInRace = true, IsApproximate = true,
        }));
    }

    // Ohm's law: 12 V at 3.4 ohm is 3.53 A; 21 W at 6 V is 3.5 A.
    [Fact]
    public void A_rated_current_comes_from_power_or_resistance_where_it_is_not_stated()
    {
        var lamp = Alone(TestKinds.Lamp, "6 V, 21 W");
        Assert.Equal(3.5, LoadCurrent.Of(lamp, lamp.Kind.Elements[0]));
        var kind = TestKinds.Lamp with { Ratings = [.. TestKinds.Lamp.Ratings, new("ohm", Unit.Ohm, ["lamp"], IsOneEach: false)] };
        var coil = new Part("T1", Lines.Spec(kind, "12 V, 3.4 ohm"));
        Assert.Equal(3.53, LoadCurrent.Of(coil, kind.Elements[0])!.Value, 2);
        Assert.Null(LoadCurrent.Of(Alone(TestKinds.Lamp, "21 W"), kind.Elements[0]));
    }

    internal static LoadStudy Load(PartKind kind, string id, SwitchedSide side, string ratings = "", string? name = null)
    {
        var part = new Part(id, Lines.Spec(kind, ratings, name));
        return new(part, part.Kind.Elements.First(e => e.IsConsumer), side, new Control([]));
    }

    private static string By(LoadStudy load) => VerdictText.Of(load, Words.American).By;

    private static Part Alone(PartKind kind, string ratings = "") => new("P1", Lines.Spec(kind, ratings));
}
