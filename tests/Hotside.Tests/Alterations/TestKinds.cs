using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Tests.Alterations;

/// <summary>Small kinds of our own, enough for the tests of this room and of the wording.</summary>
internal static class TestKinds
{
    public static PartKind Battery { get; } = Kind("battery", "pos top +|neg bottom -") with
    {
        Elements = [new("cells", ElementType.Source, "pos", "neg")],
        Ratings = [Rule("V", Unit.Volt, "cells"), Rule("Ah", Unit.AmpereHour, "cells")],
        Voltage = "match",
    };

    public static PartKind FeedRail { get; } = Kind("feed-rail", "1 any");

    public static PartKind Splice { get; } = Kind("splice", "1 any");

    public static PartKind Metal { get; } = Kind("metal", "1 any");

    public static PartKind Assembly { get; } = Kind("assembly", "");

    public static PartKind Fuse { get; } = Kind("fuse", "1 top|2 bottom") with
    {
        Elements = [new("link", ElementType.Fuse, "1", "2")],
        Ratings = [Rule("A", Unit.Ampere, "link")],
    };

    public static PartKind Horn { get; } = Kind("horn", "1 top|2 bottom") with
    {
        Elements = [new("horn", ElementType.Horn, "1", "2")],
        Ratings = [Rule("V", Unit.Volt, "horn"), Rule("A", Unit.Ampere, "horn")],
        Voltage = "match",
    };

    public static PartKind HornCase { get; } = Kind("horn-case", "1 top") with
    {
        Noun = "horn",
        Elements = [new("horn", ElementType.Horn, "1", "case")],
        Ratings = [Rule("V", Unit.Volt, "horn"), Rule("A", Unit.Ampere, "horn")],
        Case = CaseKind.Grounded,
        Voltage = "match",
    };

    public static PartKind PushButton { get; } = Kind("push-button", "1 top|2 bottom") with
    {
        Elements = [Contact("contact", "1", "2", "button", "pressed")],
        Actuators = [new("button", ["released", "pressed"], ActuatorDrive.Hand) { Returns = true }],
        Ratings = [Rule("A", Unit.Ampere, "contact")],
    };

    public static PartKind Relay { get; } = Kind("relay", "86 top A1|85 bottom A2|30 top COM|87 bottom NO") with
    {
        Elements = [new("coil", ElementType.Coil, "86", "85"), Contact("contact", "30", "87", "coil", "pulled")],
        Actuators = [new("coil", ["released", "pulled"], ActuatorDrive.Driven) { Pulls = [new("pulled", ["coil"])] }],
        Ratings = [Rule("V", Unit.Volt, "coil"), Rule("A", Unit.Ampere, "contact"), Rule("coil A", Unit.Ampere, "coil")],
        Voltage = "match",
    };

    public static PartKind HornRelay { get; } = Kind("horn-relay", "B top|S right|H bottom") with
    {
        Elements = [new("coil", ElementType.Coil, "B", "S"), Contact("contact", "B", "H", "coil", "pulled")],
        Actuators = [new("coil", ["released", "pulled"], ActuatorDrive.Driven) { Pulls = [new("pulled", ["coil"])] }],
        Ratings = [Rule("V", Unit.Volt, "coil"), Rule("A", Unit.Ampere, "contact"), Rule("coil A", Unit.Ampere, "coil")],
        Voltage = "match",
    };

    public static PartKind StarterRelayInternal { get; } = Kind("starter-relay-internal", "BAT top|MOT bottom|S left") with
    {
        Noun = "starter relay",
        Elements = [new("coil", ElementType.Coil, "BAT", "S"), Contact("contact", "BAT", "MOT", "coil", "pulled")],
        Actuators = [new("coil", ["released", "pulled"], ActuatorDrive.Driven) { Pulls = [new("pulled", ["coil"])] }],
        Ratings = [Rule("V", Unit.Volt, "coil"), Rule("coil A", Unit.Ampere, "coil")],
        Voltage = "match",
    };

    public static PartKind StarterRelay { get; } = Kind("starter-relay", "30 top BAT|87 bottom MOT|86 top|85 bottom") with
    {
        Elements = [new("coil", ElementType.Coil, "86", "85"), Contact("contact", "30", "87", "coil", "pulled")],
        Actuators = [new("coil", ["released", "pulled"], ActuatorDrive.Driven) { Pulls = [new("pulled", ["coil"])] }],
        Ratings = [Rule("V", Unit.Volt, "coil"), Rule("coil A", Unit.Ampere, "coil"), Rule("A", Unit.Ampere, "contact")],
        Voltage = "match",
    };

    public static PartKind Starter { get; } = Kind("starter", "1 top") with
    {
        Elements = [new("motor", ElementType.Motor, "1", "case")],
        Ratings = [Rule("V", Unit.Volt, "motor"), Rule("A", Unit.Ampere, "motor")],
        Case = CaseKind.Grounded,
        Voltage = "brief",
    };

    public static PartKind Elsewhere { get; } = new("elsewhere") { TakesAnyTerminal = true };

    public static PartKind Ammeter { get; } = Kind("ammeter", "1 top|2 bottom") with
    {
        Elements = [new("shunt", ElementType.Shunt, "1", "2")],
        Ratings = [Rule("A", Unit.Ampere, "shunt")],
        Polarity = "reverses",
    };

    public static PartKind Lamp { get; } = Kind("lamp", "1 top|2 bottom") with
    {
        Elements = [new("lamp", ElementType.Lamp, "1", "2")],
        Ratings = [Rule("V", Unit.Volt, "lamp"), Rule("W", Unit.Watt, "lamp")],
        Voltage = "match",
    };

    public static PartKind Headlamp { get; } = Kind("headlamp", "56a top|56b top|31 bottom") with
    {
        Elements = [new("high", ElementType.Lamp, "56a", "31"), new("low", ElementType.Lamp, "56b", "31")],
        Ratings = [Rule("V", Unit.Volt, "high", "low"), Rule("W", Unit.Watt, "high", "low") with { IsOneEach = true }],
        Voltage = "match",
    };

    public static PartKind Reducer { get; } = Kind("reducer", "in top|out bottom") with
    {
        Elements = [new("drop", ElementType.Dropper, "in", "out") { IsAgainstCase = true }],
        Ratings = [Rule("V", Unit.Volt, "drop")],
        Case = CaseKind.Grounded,
        Polarity = "destroyed",
    };

    public static PartKind Alternator { get; } = Kind("alternator", "B+ top 30|D+ top 61") with
    {
        Elements =
        [
            new("output", ElementType.Source, "B+", "case") { When = new([new("engine", ["running"])]) },
            new("rotor", ElementType.Coil, "D+", "case") { IsInternal = true },
        ],
        Actuators = [new("engine", ["stopped", "running"], ActuatorDrive.Automatic) { IsShared = true }],
        Ratings = [Rule("V", Unit.Volt, "output", "rotor"), Rule("A", Unit.Ampere, "output")],
        Case = CaseKind.Grounded,
        Polarity = "destroyed",
    };

    public static PartKind Generator { get; } = Kind("generator", "A top D+") with
    {
        Elements = [new("armature", ElementType.Source, "A", "case") { TakesEitherPolarity = true, When = new([new("engine", ["running"])]) }],
        Actuators = [new("engine", ["stopped", "running"], ActuatorDrive.Automatic) { IsShared = true }],
        Ratings = [Rule("V", Unit.Volt, "armature"), Rule("A", Unit.Ampere, "armature")],
        Case = CaseKind.Grounded,
        Polarity = "polarise",
    };

    // Terminals as "name side alias alias|name side".
    private static PartKind Kind(string id, string terminals) => new(id)
    {
        Terminals =
        [
            .. terminals.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(t => t.Split(' ')).Select(t =>
                new KindTerminal(t[0], Enum.Parse<TerminalSide>(t[1], ignoreCase: true)) { Aliases = [.. t.Skip(2)] }),
        ],
    };

    private static Element Contact(string name, string from, string to, string actuator, string position) =>
        new(name, ElementType.Contact, from, to) { When = new([new(actuator, [position])]) };

    private static RatingRule Rule(string name, Unit unit, params string[] elements) => new(name, unit, elements.ToImmutableArray(), IsOneEach: false);
}
