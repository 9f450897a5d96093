using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hotside.Diagnostics;

namespace Hotside.Outputs;

/// <summary>How all JSON of the library is written: indented, lines that end with a line feed, letters as they are; lists and rounded numbers.</summary>
internal static class JsonText
{
    /// <summary>The text of one object, ended by a line feed.</summary>
    /// <param name="schema">The contract, its first member.</param>
    /// <param name="write">Writes the other members.</param>
    public static string Of(string schema, Action<Utf8JsonWriter> write)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("schema", schema);
            write(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>A list of objects.</summary>
    public static void List<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A number, rounded; nothing where there is none.</summary>
    public static void Number(this Utf8JsonWriter json, string name, double? value, int decimals = 4)
    {
        if (value is not { } known) return;
        double rounded = Math.Round(known, decimals, MidpointRounding.AwayFromZero);
        json.WriteNumber(name, rounded == 0 ? 0 : rounded);
    }

    /// <summary>A text; nothing where it is empty.</summary>
    public static void Text(this Utf8JsonWriter json, string name, string? text)
    {
        if (!string.IsNullOrEmpty(text)) json.WriteString(name, text);
    }

    /// <summary>The findings of something, as every contract has them.</summary>
    public static void Findings(this Utf8JsonWriter json, IEnumerable<Diagnostic> findings) => json.List("findings", findings, finding =>
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
        json.Text("at", finding.Span?.ToString());
        json.Texts("items", finding.Items);
        json.WriteString("message", finding.Message);
        json.Text("hint", finding.Hint);
        json.Text("accepted", finding.Accepted);
    });
}
