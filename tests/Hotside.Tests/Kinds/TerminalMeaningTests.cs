using Hotside.Kinds;

namespace Hotside.Tests.Kinds;

/// <summary>Terminals of the kinds against the public standards.</summary>
public class TerminalMeaningTests
{
    // DIN 72552 part 2 (1971), as public terminal lists have it: 15 switched feed, ignition on; 15a from the ballast to the coil; 19 preheat; 30 battery; 31 return;
    // 31b return through a switch; 49 flasher in; 49a flasher out; 50 starter control; 53 wiper; 53a wiper's self-parking feed; 53b shunt winding (second speed);
    // 54 stop lamp; 56 headlamp feed; 56a high beam; 56b low beam; 58 tail; 61 charge tell-tale; B+ battery plus; D+ plus of the machine; DF field; L, R turn lamps;
    // L54, R54 combined with stop; 57 parking lamp and 58d dimmed panel lamps (from memory).
    [Theory]
    [InlineData("charge-lamp", "61", "to the machine")]
    [InlineData("charge-lamp", "15", "ignition feed")]
    [InlineData("warning-lamp", "15", "ignition feed")]
    [InlineData("courtesy-lamp", "30", "feed")]
    [InlineData("courtesy-lamp", "31b", "to the door switches")]
    [InlineData("horn-button-insulated", "31b", "horn or relay")]
    [InlineData("light-switch-rheostat", "30", "battery")]
    [InlineData("light-switch-rheostat", "56", "head")]
    [InlineData("light-switch-rheostat", "57", "parking")]
    [InlineData("light-switch-rheostat", "58", "tail")]
    [InlineData("light-switch-rheostat", "58d", "panel lamps")]
    [InlineData("headlamp-relays", "56a", "high beam, from the dimmer")]
    [InlineData("headlamp-relays", "56b", "low beam, from the dimmer")]
    [InlineData("preheat-switch", "15", "run")]
    [InlineData("preheat-switch", "19", "preheat")]
    [InlineData("preheat-switch", "50", "start")]
    [InlineData("hazard-switch", "49", "to the flasher")]
    [InlineData("hazard-switch", "49a", "from the flasher")]
    [InlineData("hazard-switch", "L", "left")]
    [InlineData("turn-stop-switch", "54", "from the stop switch")]
    [InlineData("turn-stop-switch", "L54", "left rear stop and turn")]
    [InlineData("turn-stop-switch", "R54", "right rear stop and turn")]
    [InlineData("wiper-switch-two-speed", "53a", "feed")]
    [InlineData("wiper-switch-two-speed", "53b", "fast")]
    [InlineData("wiper-two-speed", "53", "slow")]
    [InlineData("wiper-two-speed", "53a", "steady feed")]
    [InlineData("alternator-regulator", "DF", "field")]
    [InlineData("ballast", "15a", "to the coil")]
    [InlineData("glow-plug", "19", "feed")]
    // ISO 7588 footprint (makers' sheets): 30 common, 87a break, 85 and 86 coil, 86 the feed's side.
    [InlineData("relay-break", "30", "contact in")]
    [InlineData("relay-break", "87a", "break")]
    [InlineData("relay-double", "87", "first make")]
    [InlineData("relay-resistor", "86", "coil start")]
    [InlineData("relay-resistor", "85", "coil end")]
    // ISO 11446 (from memory): 1 left turn, 4 right turn, 6 stop, 9 battery, 3 and 13 returns.
    [InlineData("trailer-socket-13", "a1", "left turn")]
    [InlineData("trailer-socket-13", "a4", "right turn")]
    [InlineData("trailer-socket-13", "a6", "stop")]
    [InlineData("trailer-socket-13", "a9", "battery")]
    [InlineData("trailer-socket-13", "b13", "return of 9")]
    public void A_standard_terminal_of_a_kind_means_what_the_standard_says(string kind, string terminal, string meaning) =>
        Assert.Equal(meaning, Catalogue.Standard.Find(kind)!.Terminals.First(t => t.Name == terminal).Meaning);

    // Old marks of the list of DIN 72552: 16 is now 15a, X of a flasher 49; trade marks (common practice, no source): SW and CB of a coil, S and B of a horn relay, IGN, ACC and ST of a switch.
    [Theory]
    [InlineData("ballast", "16", "15a")]
    [InlineData("thermal-flasher", "X", "49")]
    [InlineData("flasher-pilot", "P", "C")]
    [InlineData("ignition-coil", "SW", "15")]
    [InlineData("ignition-coil", "CB", "1")]
    [InlineData("horn-relay", "30", "B")]
    [InlineData("horn-relay", "87", "H")]
    [InlineData("starter-relay-case", "50", "S")]
    [InlineData("starter-relay-internal", "87", "MOT")]
    [InlineData("ignition-switch", "IGN", "15")]
    [InlineData("ignition-switch", "ACC", "75")]
    [InlineData("preheat-switch", "ST", "50")]
    [InlineData("charge-lamp", "D+", "61")]
    [InlineData("generator", "D+", "A")]
    [InlineData("generator", "DF", "F")]
    [InlineData("alternator-external", "FLD", "DF")]
    [InlineData("alternator-regulator", "case", "31")]
    [InlineData("light-switch-rheostat", "B", "30")]
    [InlineData("light-switch-rheostat", "T", "58")]
    [InlineData("light-switch-rheostat", "IL", "58d")]
    [InlineData("regulator-field-fed", "ARM", "GEN")]
    [InlineData("trailer-socket-13", "aL", "a1")]
    public void An_old_mark_or_a_mark_of_the_trade_is_the_standard_terminal(string kind, string mark, string terminal) =>
        Assert.Equal(terminal, Catalogue.Standard.Find(kind)!.TerminalNamed(mark));
}
