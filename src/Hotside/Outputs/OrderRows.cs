using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hotside.Circuits;
using Hotside.Orders;

namespace Hotside.Outputs;

/// <summary>Writes an order of work for machines: comma-separated values, a line an act, and JSON.</summary>
internal static class OrderRows
{
    private const string Schema = "hotside-order/1";

    private static readonly string[] Head = ["step", "phase", "place", "circuit", "change", "act", "item", "at", "done", "text", "because", "caution", "old battery may", "new battery may", "harm"];

    public static string WriteCsv(WorkOrder order)
    {
        return CsvText.Of([Head, .. order.Steps.SelectMany(step => step.Acts.Select(act => new[]
            {
                Numbers.Whole(step.Number), step.Phase, step.Place ?? "", step.Circuit, act.Label, Word(act.Type), act.Item, act.At ?? "",
                act.IsDone ? "yes" : "", act.Text, string.Join("; ", step.Reasons), step.Caution ?? "", Yes(step.SafeWithOld), Yes(step.SafeWithNew),
                string.Join("; ", step.Harms.Select(h => $"{Word(h.Battery)}: {h.Text}")),
            }))]);
    }

    public static string WriteJson(WorkOrder order, string supply)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping })) All(json, order, supply);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void All(Utf8JsonWriter json, WorkOrder order, string supply)
    {
        json.WriteStartObject();
        json.WriteString("schema", Schema);
        json.WriteString("title", order.Title);
        json.WriteString("supply", supply);
        json.WriteString("order", order.Mark);
        Number(json, "newBatteryFromStep", order.NewBatteryFrom);
        Number(json, "oldBatteryUntilStep", order.OldBatteryUntil);
        Number(json, "battery step", order.BatteryStep);
        List(json, "cautions", order.Cautions, json.WriteStringValue);
        List(json, "steps", order.Steps, step => Step(json, step));
        List(json, "findings", order.Findings, finding =>
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", Word(finding.Severity));
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Step(Utf8JsonWriter json, WorkStep step)
    {
        json.WriteStartObject();
        json.WriteNumber("number", step.Number);
        json.WriteString("phase", step.Phase);
        if (step.Place is { } place) json.WriteString("place", place);
        if (step.Circuit.Length > 0) json.WriteString("circuit", step.Circuit);
        if (step.Caution is { } caution) json.WriteString("caution", caution);
        if (step.SafeWithOld is { } old) json.WriteBoolean("safeWithOldBattery", old);
        json.WriteBoolean("safeWithNewBattery", step.SafeWithNew);
        List(json, "acts", step.Acts, act =>
        {
            json.WriteStartObject();
            json.WriteString("act", Word(act.Type));
            if (act.Item.Length > 0) json.WriteString("item", act.Item);
            if (act.At is { } at) json.WriteString("at", at);
            if (act.Label.Length > 0) json.WriteString("change", act.Label);
            if (act.IsDone) json.WriteBoolean("done", true);
            json.WriteString("text", act.Text);
            json.WriteEndObject();
        });
        List(json, "because", step.Reasons, json.WriteStringValue);
        List(json, "harms", step.Harms, harm =>
        {
            json.WriteStartObject();
            json.WriteString("kind", Word(harm.Kind));
            json.WriteString("severity", Word(harm.Severity));
            json.WriteString("battery", Word(harm.Battery));
            json.WriteString("item", harm.Item);
            json.WriteString("setting", harm.Setting);
            json.WriteString("text", harm.Text);
            Number(json, "endsWithStep", harm.EndsWithStep);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, int? value)
    {
        if (value is { } number) json.WriteNumber(name, number);
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items) write(item);
        json.WriteEndArray();
    }

    // "WireOff" is two words to a person.
    private static string Word(Enum value) => string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static string Yes(bool? value) => value switch { true => "yes", false => "no", _ => "" };
}
