using System.Text.Json;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;

namespace Hotside.Outputs;

/// <summary>Writes an order of work for machines: comma-separated values, a line an act, and JSON.</summary>
internal static class OrderRows
{
    private const string Schema = "hotside-order/1";

    private static readonly string[] Head = ["step", "phase", "place", "circuit", "change", "act", "item", "at", "done", "text", "because", "caution", "old battery may", "new battery may", "harm", "remark", "stops"];

    public static string WriteCsv(WorkOrder order, IReadOnlyList<Diagnostic> stops)
    {
        // On every line, so that no line reads as if one might work to it.
        string found = string.Join(" ", stops.Select(s => s.Code));
        return CsvText.Of([Head, .. order.Steps.SelectMany(step => step.Acts.Select(act => new[]
            {
                Numbers.Whole(step.Number), step.Phase, step.Place ?? "", step.Circuit, act.Label, Word(act.Type), act.Item, act.At ?? "",
                act.IsDone ? "yes" : "", act.Text, string.Join("; ", step.Reasons), step.Caution ?? "", Yes(step.SafeWithOld), Yes(step.SafeWithNew),
                string.Join("; ", step.Harms.Select(h => $"{Word(h.Battery)}: {h.Text}")),
                string.Join(" ", step.Remarks), found,
            }))]);
    }

    public static string WriteJson(WorkOrder order, string supply, IReadOnlyList<Diagnostic> stops) => JsonText.Of(Schema, json => All(json, order, supply, stops));

    private static void All(Utf8JsonWriter json, WorkOrder order, string supply, IReadOnlyList<Diagnostic> stops)
    {
        json.WriteString("title", order.Title);
        json.WriteString("supply", supply);
        json.WriteString("order", order.Mark);
        json.Number("newBatteryFromStep", order.NewBatteryFrom);
        json.Number("oldBatteryUntilStep", order.OldBatteryUntil);
        json.Number("batteryStep", order.BatteryStep);
        json.Texts("cautions", order.Cautions);
        json.List("steps", order.Steps, step => Step(json, step));
        json.List("stops", stops, finding => Finding(json, finding));
        json.List("findings", order.Findings, finding => Finding(json, finding));
    }

    private static void Finding(Utf8JsonWriter json, Diagnostic finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", Word(finding.Severity));
        json.WriteString("message", finding.Message);
    }

    private static void Step(Utf8JsonWriter json, WorkStep step)
    {
        json.WriteNumber("number", step.Number);
        json.WriteString("phase", step.Phase);
        if (step.Place is { } place) json.WriteString("place", place);
        if (step.Circuit.Length > 0) json.WriteString("circuit", step.Circuit);
        if (step.Caution is { } caution) json.WriteString("caution", caution);
        if (step.SafeWithOld is { } old) json.WriteBoolean("safeWithOldBattery", old);
        json.WriteBoolean("safeWithNewBattery", step.SafeWithNew);
        json.List("acts", step.Acts, act =>
        {
            json.WriteString("act", Word(act.Type));
            json.Text("item", act.Item);
            json.Text("at", act.At);
            json.Text("change", act.Label);
            if (act.IsDone) json.WriteBoolean("done", true);
            json.WriteString("text", act.Text);
        });
        json.Texts("remarks", step.Remarks);
        json.Texts("because", step.Reasons);
        json.List("harms", step.Harms, harm =>
        {
            json.WriteString("kind", Word(harm.Kind));
            json.WriteString("severity", Word(harm.Severity));
            json.WriteString("battery", Word(harm.Battery));
            json.WriteString("item", harm.Item);
            json.WriteString("setting", harm.Setting);
            json.WriteString("text", harm.Text);
            json.Number("endsWithStep", harm.EndsWithStep);
        });
    }

    // "WireOff" is two words to a person.
    private static string Word(Enum value) => string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static string Yes(bool? value) => value switch { true => "yes", false => "no", _ => "" };
}
