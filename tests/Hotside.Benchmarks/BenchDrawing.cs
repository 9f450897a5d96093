using System.Text;
using System.Text.Json;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Tests.Layouts;

namespace Hotside.Benchmarks;

/// <summary>A layout as the bench's rulers read it: millimetres, view by view.</summary>
internal static class BenchDrawing
{
    private const double Module = 2.5;

    /// <summary>The drawing as JSON; the time is that of one layout, in milliseconds.</summary>
    public static string Of(BenchCase bench, Layout layout, double milliseconds)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(memory))
        {
            json.WriteStartObject();
            json.WriteString("case", bench.Name);
            json.WriteString("tool", "hotside");
            json.WriteNumber("time_ms", Math.Round(milliseconds, 2));
            json.WriteStartObject("views");
            foreach (var (name, view) in new[] { ("union", SeenIn.Both), ("before", SeenIn.Before), ("after", SeenIn.After) }) View(json, name, view, bench, layout);
            json.WriteEndObject();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(memory.ToArray()) + "\n";
    }

    private static void View(Utf8JsonWriter json, string name, SeenIn view, BenchCase bench, Layout layout)
    {
        var boxes = bench.Input.Boxes.Zip(layout.Boxes).Where(p => (p.First.Seen & view) != 0).ToArray();
        var wires = bench.Input.Wires.Zip(layout.Wires).Where(p => (p.First.Seen & view) != 0).ToArray();
        var shown = wires.Select(w => w.First.Id).ToHashSet(StringComparer.Ordinal);
        json.WriteStartObject(name);
        json.WriteStartObject("boxes");
        foreach (var (box, placed) in boxes) Numbers(json, box.Id, placed.X, placed.Y, box.Width, box.Height);
        json.WriteEndObject();
        json.WriteStartObject("wires");
        foreach (var (wire, placed) in wires)
        {
            json.WriteStartArray(wire.Id);
            foreach (var (x, y) in placed.Points) Numbers(json, null, x, y);
            json.WriteEndArray();
        }
        json.WriteEndObject();
        json.WriteStartArray("labels");
        foreach (var (box, placed) in boxes.Where(p => p.First.HasText)) Label(json, box.Id, placed.TextX, placed.TextY, box.TextWidth, box.TextHeight);
        foreach (var label in layout.Labels.Where(l => shown.Contains(l.Wire))) Label(json, label.Wire, label.X, label.Y, label.Width, label.Height);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Label(Utf8JsonWriter json, string of, double x, double y, double width, double height)
    {
        json.WriteStartObject();
        json.WriteString("of", of);
        Numbers(json, "box", x, y, width, height);
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, string? name, params double[] modules)
    {
        if (name is null) json.WriteStartArray();
        else json.WriteStartArray(name);
        foreach (double value in modules) json.WriteNumberValue(Math.Round(value * Module, 3));
        json.WriteEndArray();
    }
}
