using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What conductors are called.</summary>
internal static class WireNaming
{
    /// <summary>
    /// A conductor by what it does, where the circuit tells: <c>H1 feed wire w3</c>, <c>H1 ground wire w6</c>, <c>battery cable w1</c>,
    /// <c>ground strap w4</c>; else <c>wire w4</c>.
    /// </summary>
    public static string Of(Conductor conductor, Circuit circuit, Words words) => $"{RoleOf(conductor, circuit, words)} {conductor.Id}";

    /// <summary>From where to where: <c>from H1.2 to chassis</c>.</summary>
    public static string Way(Conductor conductor, Circuit circuit) =>
        $"from {circuit.TextOf(conductor.From)} to {circuit.TextOf(conductor.To)}";

    /// <summary>The colour in words: <c>red with white tracer</c>.</summary>
    public static string Colour(WireColour colour, Words words) =>
        Word(colour.Base, words) + (colour.Tracer is { } tracer ? $" with {Word(tracer, words)} tracer" : "");

    private static string Word(string code, Words words) => code == "GY" ? words.Say("gray") : WireColour.WordFor(code);

    private static string RoleOf(Conductor conductor, Circuit circuit, Words words)
    {
        if (conductor.Wire.Name is { } own) return own;
        if (conductor.Wire.Role == WireRole.Spare) return "spare wire";
        bool isToReturn = conductor.Ends.Any(e => e == circuit.System.ReturnNode);
        bool isOnSource = conductor.Ends.Any(e => circuit.Sources.Any(s => s.Element.When is null && (s.Feed == e || s.Return == e)));
        if (isOnSource) return isToReturn ? $"battery {words.Say("ground")} cable" : "battery cable";
        if (isToReturn && conductor.Wire.IsBraid) return words.Say("ground strap");
        string? load = conductor.Ends.Select(e => e.Part).OfType<string>().FirstOrDefault(id => IsLoad(circuit.FindPart(id)));
        if (load is null) return "wire";
        if (isToReturn) return $"{load} {words.Say("ground")} wire";
        return IsFeedOf(load, conductor, circuit) ? $"{load} feed wire" : "wire";
    }

    private static bool IsLoad(Part? part) => part is not null && part.Kind.Elements.Any(e => e is { IsConsumer: true, IsInternal: false });

    // Only what stands on the feed for good, through fuses and rails at most, is called so.
    private static bool IsFeedOf(string load, Conductor conductor, Circuit circuit)
    {
        var nodes = Nodes.Of(circuit, throughLinks: true);
        return conductor.Ends.Any(e => e.Part != load && circuit.Sources.Any(s => nodes.AreOne(s.Feed, e)));
    }
}
