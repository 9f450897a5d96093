using System.Text.Json;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>A circuit of the bench as the layout takes it.</summary>
internal sealed record BenchCase(string Name, string Size, int Conductors, LayoutInput Input)
{
    private const double Module = 2.5;

    /// <summary>Reads a case; its name is the file's.</summary>
    public static BenchCase Read(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        var root = document.RootElement;
        return new(Path.GetFileNameWithoutExtension(file), root.GetProperty("size").GetString()!, root.GetProperty("conductors").GetInt32(), new(
            [.. root.GetProperty("parts").EnumerateArray().Select(Box)], [.. root.GetProperty("wires").EnumerateArray().Select(Wire)]));
    }

    private static LayoutBox Box(JsonElement part)
    {
        var (width, height) = Label(part);
        return new(Text(part, "id"), Seen(part), Whole(part, "w"), Whole(part, "h"),
            [.. part.GetProperty("ports").EnumerateObject().Select(p => new LayoutPin(p.Name, SideOf(Text(p.Value, "side")), Whole(p.Value, "x"), Whole(p.Value, "y")))])
        {
            Shape = Text(part, "kind"),
            IsJoint = Text(part, "kind") == "splice",
            TextWidths = new(width, width),
            TextHeight = height,
        };
    }

    private static LayoutWire Wire(JsonElement wire)
    {
        var (width, height) = Label(wire);
        return new(Text(wire, "id"), Text(wire, "conductor"), End(Text(wire, "from")), End(Text(wire, "to")), Seen(wire)) { LabelWidth = width, LabelHeight = height };
    }

    private static LayoutEnd End(string text) =>
        text == "FEED" ? LayoutEnd.Feed : text == "CHASSIS" ? LayoutEnd.Chassis : LayoutEnd.At(text[..text.IndexOf('.', StringComparison.Ordinal)], text[(text.IndexOf('.', StringComparison.Ordinal) + 1)..]);

    private static Side SideOf(string side) => side switch { "N" => Side.Top, "S" => Side.Bottom, "W" => Side.Left, "E" => Side.Right, _ => Side.Centre };

    private static SeenIn Seen(JsonElement of) => of.GetProperty("in").EnumerateArray().Aggregate((SeenIn)0, (m, v) => m | (v.GetString() == "before" ? SeenIn.Before : SeenIn.After));

    // A text's room in modules; a name of several words is broken into two lines, as on the sheets.
    private static (double, double) Label(JsonElement of)
    {
        if (of.GetProperty("label") is not { ValueKind: JsonValueKind.Object } label) return (0, 0);
        string[] lines = [.. label.GetProperty("lines").EnumerateArray().Select(l => l.GetString()!)];
        double width = label.GetProperty("w").GetDouble(), height = label.GetProperty("h").GetDouble();
        if (lines is [var id, var name] && name.Contains(' ', StringComparison.Ordinal))
        {
            int least = Enumerable.Range(0, name.Length).Where(i => name[i] == ' ').Min(i => Math.Max(i, name.Length - i - 1));
            (width, height) = (width / lines.Max(l => l.Length) * Math.Max(id.Length, least), height / 2 * 3);
        }
        return (width / Module, height / Module);
    }

    private static string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;

    private static int Whole(JsonElement of, string name) => (int)Math.Round(of.GetProperty(name).GetDouble() / Module);
}
