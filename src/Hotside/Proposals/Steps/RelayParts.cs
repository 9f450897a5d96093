using Hotside.Circuits;

namespace Hotside.Proposals.Steps;

/// <summary>Relays as they are bought, and the colours of the wires behind them.</summary>
internal static class RelayParts
{
    // Contacts that are sold, how much more than the load they are to carry, and a coil's power (data sheets of plug-in relays; the share is common practice, no source).
    private static readonly double[] Contacts = [30, 40, 70];
    private const double Share = 1.25, CoilWatts = 1.8;

    private static readonly string[] Outputs = ["GN", "BU", "BN", "VT"];

    /// <summary>A plug-in relay for a load.</summary>
    public static PartSpec Spec(Workbench work, string name, double amperes)
    {
        double volts = work.Draft.System.Volts.Max();
        return new(work.Draft.KindOf("relay"))
        {
            Name = name,
            Ratings =
            [
                new("V", new(volts, Unit.Volt)), new("A", new(Contacts.FirstOrDefault(c => c >= Share * amperes, Contacts[^1]), Unit.Ampere)),
                new("coil A", new(Math.Ceiling(CoilWatts / volts * 20 - 1e-9) / 20, Unit.Ampere)),
            ],
        };
    }

    /// <summary>A colour that does not end yet at either of two parts.</summary>
    public static string Colour(Workbench work, params string[] parts)
    {
        var there = work.Draft.Circuit.Conductors.Where(c => c.Ends.Any(e => parts.Contains(e.Part))).Select(c => c.Wire.Colour?.Base).ToHashSet(StringComparer.Ordinal);
        return Outputs.FirstOrDefault(c => !there.Contains(c), Outputs[0]);
    }

    /// <summary>A colour with a tracer where it ends already at one of two parts: <c>WH/RD</c>.</summary>
    public static WireColour? Traced(Workbench work, WireColour? colour, params string[] parts)
    {
        if (colour is not { } hue) return null;
        bool isThere = work.Draft.Circuit.Conductors.Any(c => c.Wire.Colour == hue && c.Ends.Any(e => parts.Contains(e.Part)));
        if (!isThere) return hue;
        string tracer = hue.Base == "RD" || hue.Tracer == "RD" ? "WH" : "RD";
        return WireColour.TryParse($"{hue.Base}/{tracer}", out var traced) ? traced : hue;
    }

    /// <summary>Black is the return's colour where minus is: a hot wire that keeps it is sleeved.</summary>
    public static void Sleeve(Workbench work, string wire)
    {
        if (work.Draft.Wire(wire).Wire.Colour?.Base == "BK" && work.Draft.Circuit.Sources.All(s => s.PlusIsFeed)) work.Comment(wire, "a black wire that is hot: sleeve it red at both ends");
    }
}
