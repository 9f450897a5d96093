using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Tests.Kinds;

public class CatalogueTests
{
    [Fact]
    public void The_standard_kinds_are_read_without_a_mistake() => Assert.True(Catalogue.Standard.Kinds.Length >= 140);

    [Fact]
    public void A_single_coil_moves_an_actuator_of_its_own()
    {
        var coil = Assert.Single(Catalogue.Standard.Find("horn relay")!.Actuators);
        Assert.Equal(("coil", "released", "pulled"), (coil.Name, coil.Positions[0], coil.Positions[1]));
    }

    [Fact]
    public void A_kind_may_be_like_another()
    {
        var catalogue = Catalogue.Standard.WithKind("kind: top-gear-switch\nlike: switch\nactuators:\n  lever: off / on, automatic\n");
        Assert.Equal(ActuatorDrive.Automatic, catalogue.Find("top-gear-switch")!.Actuators[0].Drive);
        Assert.Null(Catalogue.Standard.Find("top-gear-switch"));
    }

    [Fact]
    public void A_wrong_kind_is_explained_with_its_place()
    {
        var e = Assert.Throws<ArgumentException>(() => Catalogue.Standard.WithKind("kind: buzzer\nterminals:\n  1: top\nelements:\n  works: horm, 1 to 2\n"));
        Assert.Contains("(kind):5:10: error HS1208: there is no element type \"horm\"\n     hint: did you mean \"horn\"?", e.Message, StringComparison.Ordinal);
    }

    // DIN 72552 part 2 (1971) as public lists have it: 30 battery, 15 ignition, 50 starter control, 56a high beam, 56b low beam, 58 tail, 54 stop, 49 flasher in, 49a flasher out, 31b switched return.
    [Theory]
    [InlineData("ignition-switch", "30", "from battery")]
    [InlineData("ignition-switch", "15", "ignition")]
    [InlineData("ignition-switch", "50", "start")]
    [InlineData("dimmer", "56a", "high beam")]
    [InlineData("dimmer", "56b", "low beam")]
    [InlineData("tail-stop-lamp", "58", "tail")]
    [InlineData("tail-stop-lamp", "54", "stop")]
    [InlineData("thermal-flasher", "49", "feed")]
    [InlineData("thermal-flasher", "49a", "lamps")]
    // ISO 7588 footprint (makers' sheets): 30 common, 87 make, 87a break, 85 and 86 coil.
    [InlineData("relay-changeover", "30", "common")]
    [InlineData("relay-changeover", "87", "make")]
    [InlineData("relay-changeover", "87a", "break")]
    public void A_standard_terminal_means_what_the_standard_says(string kind, string terminal, string meaning) =>
        Assert.Equal(meaning, Catalogue.Standard.Find(kind)!.Terminals.First(t => t.Name == terminal).Meaning);

    [Theory]
    [InlineData("horn-rely", "horn-relay")]
    [InlineData("fuel gauge", "gauge")]
    [InlineData("oil-pressure gauge", "gauge")]
    [InlineData("vacuum", null)]
    public void The_nearest_id_is_like_what_was_written_or_what_that_ends_with(string written, string? nearest) => Assert.Equal(nearest, Catalogue.Standard.Nearest(written));
}
