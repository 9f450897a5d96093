using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Colours of wires as a person says them.</summary>
internal static class ColourWords
{
    private static readonly Dictionary<string, string> words = new(StringComparer.Ordinal)
    {
        ["BK"] = "black", ["BN"] = "brown", ["RD"] = "red", ["OG"] = "orange", ["YE"] = "yellow", ["GN"] = "green", ["BU"] = "blue", ["VT"] = "violet",
        ["GY"] = "gray", ["WH"] = "white", ["PK"] = "pink", ["GD"] = "gold", ["TQ"] = "turquoise", ["SR"] = "silver", ["GNYE"] = "green-yellow",
    };

    /// <summary>The colour in words, with the tracer: <c>red with white</c>; empty where it is not known.</summary>
    public static string Of(Wire wire, Vocabulary vocabulary) =>
        wire.IsBraid ? "braid" : wire.Colour is not { } colour ? "" : Of(colour.Base, vocabulary) + (colour.Tracer is { } tracer ? " with " + Of(tracer, vocabulary) : "");

    private static string Of(string code, Vocabulary vocabulary) => code == "GY" && vocabulary.IsBritish ? "grey" : words.GetValueOrDefault(code, code);
}
