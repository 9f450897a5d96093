using Hotside.Circuits;

namespace Hotside.Tests.Alterations;

/// <summary>A circuit as text, one line a part and a wire, so that two can be compared.</summary>
internal static class CircuitText
{
    public static string Of(Circuit circuit) => string.Join('\n', Lines(circuit));

    /// <summary>The same, whatever the order of lines.</summary>
    public static string Sorted(Circuit circuit) => string.Join('\n', Lines(circuit).Order(StringComparer.Ordinal));

    public static string Wire(Circuit circuit, string id) => WireLine(circuit.FindConductor(id)!);

    public static string Part(Circuit circuit, string id) => PartLine(circuit.FindPart(id)!);

    private static IEnumerable<string> Lines(Circuit circuit) =>
        [circuit.System.ToString(), .. circuit.Parts.Select(PartLine), .. circuit.Conductors.Select(WireLine)];

    private static string PartLine(Part part)
    {
        var items = new List<string?>
        {
            $"{part.Id}: {part.Kind.Id}", part.Name, string.Join(", ", part.Ratings.Select(r => r.Name + "=" + r.Quantity)),
            string.Join(", ", part.Joints.OrderBy(j => j.Terminal, StringComparer.Ordinal).Select(j => $"{j.Terminal} on {j.On}")),
            part.CaseOn is { } on ? $"case on {on}" : null, part.Assembly is null ? null : "in " + part.Assembly, part.Place is null ? null : "at " + part.Place,
        };
        return string.Join(", ", items.Where(i => !string.IsNullOrEmpty(i)));
    }

    private static string WireLine(Conductor c)
    {
        var items = new[]
        {
            $"{c.Id}: {c.From} to {c.To}", c.Wire.Label, c.Wire.LengthInMetres is { } m ? Numbers.Plain(m) + " m" : null,
            c.Wire.ResistanceInOhms is { } r ? Numbers.Plain(r) + " ohm" : null, c.Wire.Condition?.ToString(), c.Wire.Role == WireRole.Wire ? null : c.Wire.Role.ToString(),
        };
        return string.Join(", ", items.Where(i => !string.IsNullOrEmpty(i)));
    }
}
