using System.Text.Json;
using Hotside.Faults;

namespace Hotside.Outputs;

/// <summary>
/// Faults as JSON of the contract <c>hotside-faults/1</c>, which may be extended but in which nothing is renamed. Amperes, volts, watts, seconds and degrees Celsius as plain numbers; what is
/// not known is left out.
/// </summary>
internal static class FaultJson
{
    private const string Schema = "hotside-faults/1";

    /// <summary>The faults of some circuits, each with its name.</summary>
    public static string Write(IEnumerable<(string Name, CircuitFaults Faults)> circuits, string caution) => JsonText.Of(Schema, json =>
    {
        json.WriteString("caution", caution);
        foreach (var (name, faults) in circuits)
        {
            json.WriteStartObject(name);
            json.List("faults", faults.Faults, fault => Fault(json, fault));
            json.Findings(faults.Findings);
            json.WriteEndObject();
        }
    });

    private static void Fault(Utf8JsonWriter json, FaultStudy fault)
    {
        json.WriteString("wire", fault.Conductor.Id);
        json.WriteString("fault", fault.Kind switch { FaultKind.Open => "open", FaultKind.BadJoint => "bad-joint", FaultKind.ShortAtFirstEnd => "short-at-first-end", _ => "short-at-second-end" });
        json.WriteString("setting", fault.Setting.Name);
        json.WriteBoolean("withoutEffect", fault.IsWithoutEffect);
        json.Number("current", fault.Kind == FaultKind.Open ? null : fault.Current.Amperes);
        json.Number("currentWhenHot", fault.CurrentWhenHot?.Amperes);
        json.List("loads", fault.Loads, load =>
        {
            json.WriteString("load", load.Load);
            json.WriteString("effect", load.Effect switch { LoadEffect.Dead => "dead", LoadEffect.Weak => "weak", LoadEffect.Reversed => "reversed", _ => "on-though-off" });
            json.Number("before", load.Before.Volts);
            json.Number("now", load.Now.Volts);
        });
        if (fault.Kind == FaultKind.BadJoint)
        {
            json.Number("jointDrop", fault.JointDrop.Volts);
            json.Number("jointHeat", (double)fault.JointHeat.Watts);
        }
        if (fault.End == FaultEnd.None) return;
        json.WriteString("end", fault.End switch { FaultEnd.Cleared => "cleared", FaultEnd.MayNeverClear => "may-never-clear", FaultEnd.LimitedByLoads => "limited-by-loads", _ => "unprotected" });
        json.List("opens", fault.Openings, opening =>
        {
            json.WriteString("part", opening.Part);
            json.Number("rating", opening.Rating.Amperes);
            json.Number("current", opening.Current.Amperes);
            json.Number("earliest", opening.Earliest?.Seconds);
            json.Number("latest", opening.Latest?.Seconds);
            if (opening.MayNeverOpen) json.WriteBoolean("mayNeverOpen", true);
        });
        json.List("strains", fault.Strains, strain =>
        {
            json.WriteString("wire", strain.Conductor);
            json.Number("current", strain.Current.Amperes);
            json.WriteString("survival", strain.Survival switch { Survival.Survives => "survives", Survival.NotShown => "not-shown", Survival.Overheats => "overheats", _ => "melts" });
            json.Number("letThrough", strain.LetThrough, 1);
            json.Number("stands", strain.Stands, 1);
            json.Number("warmth", strain.Warmth?.DegreesCelsius, 1);
        });
    }
}
