using Hotside.Kinds;

namespace Hotside.Reading;

/// <summary>What to do about a kind of part that is none.</summary>
internal static class KindHint
{
    // What people call parts of these kinds.
    private static readonly Dictionary<string, string> Others = new(StringComparer.OrdinalIgnoreCase)
    {
        ["bulb"] = "lamp", ["light"] = "lamp", ["pilot-light"] = "warning-lamp", ["indicator"] = "lamp", ["flasher-lamp"] = "lamp", ["flasher"] = "thermal-flasher", ["flasher-unit"] = "thermal-flasher", ["dynamo"] = "generator", ["condenser"] = "capacitor",
        ["accumulator"] = "battery", ["hooter"] = "horn", ["dipswitch"] = "dimmer", ["dip-switch"] = "dimmer",
        ["earth-strap"] = "ground-strap", ["earth-cable"] = "battery-cable", ["isolator"] = "battery-disconnect", ["master-switch"] = "battery-disconnect", ["ignition-lock"] = "ignition-switch",
        ["key-switch"] = "ignition-switch", ["circuit-breaker"] = "breaker", ["points"] = "distributor", ["voltage-stabilizer"] = "gauge-limiter", ["voltage-stabiliser"] = "gauge-limiter",
        ["busbar"] = "feed-rail", ["bus-bar"] = "feed-rail", ["joint"] = "splice", ["plug"] = "connector", ["resistance"] = "resistor", ["contactor"] = "relay",
    };

    /// <summary>The hint for a name.</summary>
    /// <param name="name">What stands in the place of the kind.</param>
    /// <param name="kinds">The kinds that there are.</param>
    public static string Of(string name, Catalogue kinds)
    {
        string asked = name.Replace(' ', '-');
        if (Others.GetValueOrDefault(asked) is { } meant && kinds.Find(meant) is not null) return $"here it is called \"{meant}\"";
        // A comma was forgotten: the longest beginning that is a kind.
        int[] gaps = [.. name.Index().Where(c => c.Item == ' ').Select(c => c.Index)];
        if (gaps.Reverse().Where(g => kinds.Find(name[..g]) is not null).Cast<int?>().FirstOrDefault() is { } end) return $"put a comma behind the kind: \"{name[..end]}, {name[(end + 1)..].TrimStart()}\"";
        return kinds.Nearest(name) is { } near ? $"did you mean \"{near}\"?" : "\"hotside kinds\" lists the kinds; the kind comes first";
    }
}
