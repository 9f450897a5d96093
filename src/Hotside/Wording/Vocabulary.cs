namespace Hotside.Wording;

/// <summary>The one table of words that differ between American and British trade usage (from memory).</summary>
internal static class Vocabulary
{
    // American, British. Nouns of part kinds stand here as the kinds have them.
    private static readonly Dictionary<string, string> British = new(StringComparer.Ordinal)
    {
        ["ground"] = "earth",
        ["grounded"] = "earthed",
        ["hot"] = "live",
        ["gray"] = "grey",
        ["wrench"] = "spanner",
        ["hood"] = "bonnet",
        ["fender"] = "wing",
        ["trunk"] = "boot",
        ["harness"] = "loom",
        ["gasoline"] = "petrol",
        ["polarize"] = "polarise",
        ["ground strap"] = "earth strap",
        ["generator"] = "dynamo",
        ["regulator"] = "control box",
        ["splice"] = "joint",
        ["dimmer"] = "dip switch",
        ["foot starter switch"] = "starter pedal switch",
        ["dropping resistor"] = "dropper",
        ["voltage limiter"] = "voltage stabiliser",
        ["parking lamp"] = "side lamp",
        ["tail stop lamp"] = "rear and brake lamp",
        ["dome lamp"] = "roof lamp",
        ["turn switch"] = "indicator switch",
        ["flasher"] = "flasher unit",
        ["push button"] = "push",
        ["ignition switch"] = "ignition lock",
        ["distributor"] = "contact breaker and distributor",
        ["capacitor"] = "condenser",
        ["wiper"] = "windscreen wiper",
        ["cigar lighter"] = "cigarette lighter",
        ["fuse block"] = "fuse box",
        ["sending unit"] = "sender",
    };

    /// <summary>A word or a kind's noun as these words have it; one that both share stays.</summary>
    /// <param name="words">Whose words.</param>
    /// <param name="american">The American word.</param>
    public static string Say(this Words words, string american) =>
        words == Words.British && British.TryGetValue(american, out string? british) ? british : american;
}
