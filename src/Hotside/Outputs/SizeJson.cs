using System.Text.Json;
using Hotside.Circuits;
using Hotside.Sizing;

namespace Hotside.Outputs;

/// <summary>
/// Sizes as JSON of the contract <c>hotside-sizes/1</c>, which may be extended but in which nothing is renamed. Amperes, volts and degrees Celsius as plain numbers; a share is of what a rule
/// allows, so that 1 is its limit. What is not known is left out.
/// </summary>
internal static class SizeJson
{
    private const string Schema = "hotside-sizes/1";

    public static string Write(SizeStudy study) => JsonText.Of(Schema, json =>
    {
        One(json, "before", study.Before);
        One(json, "after", study.After);
    });

    private static void One(Utf8JsonWriter json, string name, CircuitSizes sizes)
    {
        json.WriteStartObject(name);
        json.List("wires", sizes.Conductors, wire => Wire(json, sizes.Circuit, wire));
        json.List("fuses", sizes.Fuses, fuse => Fuse(json, fuse));
        json.Findings(sizes.Findings);
        json.WriteEndObject();
    }

    private static void Wire(Utf8JsonWriter json, Circuit circuit, ConductorSizing wire)
    {
        json.WriteString("wire", wire.Conductor.Id);
        json.WriteString("from", circuit.TextOf(wire.Conductor.From));
        json.WriteString("to", circuit.TextOf(wire.Conductor.To));
        json.Number("current", wire.Current.Amperes);
        json.WriteString("foundBy", wire.Basis.ToString().ToLowerInvariant());
        json.Text("size", wire.Conductor.Wire.Size?.ToString());
        json.Text("sizeNeeded", wire.SizeNeeded?.ToString());
        json.Text("by", wire.Binding?.ToString().ToLowerInvariant());
        json.Number("mayCarry", wire.Ampacity?.Amperes);
        json.Text("table", wire.AmpacitySource);
        json.Number("warmth", wire.Warmth?.DegreesCelsius, 1);
        json.WriteBoolean("hot", wire.IsHot);
        json.WriteBoolean("unprotected", wire.IsUnprotected);
        json.Texts("protectedBy", wire.ProtectedBy);
        json.Number("protection", wire.Protection?.Amperes);
        json.Text("dropOf", wire.DropOf);
        json.Number("drop", wire.Drop?.Volts);
        json.Number("dropLimit", wire.DropLimit?.Volts);
        json.Text("refused", wire.Refusal?.ToString());
        json.List("rules", wire.Rules, rule =>
        {
            json.WriteString("rule", rule.Rule.ToString().ToLowerInvariant());
            json.WriteString("outcome", OutcomeOf(rule.Outcome));
            json.Number("share", rule.Share);
            json.Text("leastSize", rule.LeastSize?.ToString());
        });
        json.WriteString("verdict", OutcomeOf(wire.Verdict));
    }

    private static void Fuse(Utf8JsonWriter json, FuseSizing fuse)
    {
        json.WriteString("fuse", fuse.Part.Id);
        json.Number("rating", fuse.Rating?.Amperes);
        json.Number("current", fuse.Current.Amperes);
        json.Number("ratingNeeded", fuse.RatingNeeded?.Amperes);
        json.Text("linkNeeded", fuse.LinkNeeded?.ToString());
        json.Text("thinnest", fuse.Thinnest?.Id);
        json.Number("thinnestMayCarry", fuse.ThinnestAmpacity?.Amperes);
        json.Number("inrush", fuse.Inrush?.Amperes);
        json.WriteString("carries", OutcomeOf(fuse.Carries));
        json.WriteString("guards", OutcomeOf(fuse.Guards));
        json.WriteString("standsInrush", OutcomeOf(fuse.StandsInrush));
        json.WriteString("verdict", OutcomeOf(fuse.Verdict));
    }

    private static string OutcomeOf(SizingOutcome outcome) => outcome switch
    {
        SizingOutcome.NotJudged => "not-judged",
        _ => outcome.ToString().ToLowerInvariant(),
    };
}
