using Hotside.Wording;

namespace Hotside.Tests.Wording;

/// <summary>What a sheet is called, by what stands on it.</summary>
public sealed class SubjectTextTests
{
    [Theory]
    // Worked out by hand: what is alike stands together, and nothing is said twice.
    [InlineData("P2: gauge, Fuel, 6 V, 20 ohm; P3: gauge, Oil, 6 V, 20 ohm; M2: motor, Heater, 6 V, 6 A, wound", "Fuel, Oil gauges; Heater motor")]
    [InlineData("E1: headlamp, 'Headlamp, left', 6 V, 45/35 W; E2: headlamp, 'Headlamp, right', 6 V, 45/35 W", "Headlamps")]
    [InlineData("E5: lamp, 'Turn, left front', 6 V, 18 W; E6: lamp, 'Turn, right front', 6 V, 18 W; E9: lamp, Panel, 6 V, 2 W", "Turn, Panel lamps")]
    [InlineData("E1: lamp, Reading lamp, 6 V, 5 W; E2: lamp, Map, 6 V, 5 W", "Reading, Map lamps")]
    [InlineData("M1: starter, Starter motor, 6 V, 200 A; H1: horn, 6 V, 8 A", "Starter motor; Horn")]
    public void It_is_made_of_names_and_of_what_kinds_are_called(string parts, string expected) => Assert.Equal(expected, Forms(parts, true)[0]);

    [Fact]
    public void It_gets_shorter_by_what_things_are_called_together_and_then_from_the_end()
    {
        var forms = Forms("P2: gauge, Fuel, 6 V, 20 ohm; P3: gauge, Temperature, 6 V, 20 ohm; P4: gauge, Oil, 6 V, 20 ohm; E1: lamp, Map, 6 V, 5 W; E2: lamp, Panel, 6 V, 5 W; M2: motor, Heater, 6 V, 6 A, wound", true);
        Assert.Equal(
        [
            "Fuel, Temperature, Oil gauges; Map, Panel lamps; Heater motor", "Gauges; Map, Panel lamps; Heater motor", "Gauges; Lamps; Heater motor", "Gauges; Lamps; Motor", "Gauges; Lamps; …", "Gauges; …",
        ], forms);
    }

    [Fact]
    public void Names_in_another_language_stand_by_themselves() =>
        Assert.Equal("Blinker; Äänimerkki", Forms("E5: lamp, 'Blinker, links vorn', 6 V, 18 W; E6: lamp, 'Blinker, rechts vorn', 6 V, 18 W; H1: horn, Äänimerkki, 6 V, 8 A", false)[0]);

    private static string[] Forms(string parts, bool isEnglish)
    {
        var circuit = Job.Read($"hotside: 1\ntitle: t\nsystem: 6 V, negative ground\nparts:\n  {parts.Replace("; ", "\n  ", StringComparison.Ordinal)}\n").Job!.Alteration.After;
        return [.. SubjectText.Of(circuit.Parts, isEnglish, Vocabulary.Of(Words.American))];
    }
}
