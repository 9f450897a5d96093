using System.Globalization;
using Hotside.Circuits;

namespace Hotside.Sizing.Tables;

/// <summary>The temperature that the insulation of a conductor stands.</summary>
/// <param name="Name">As the job has it; empty where it does not say.</param>
/// <param name="Celsius">The temperature in °C.</param>
/// <param name="IsKnown">Whether the table has it; else it counts as 60 °C.</param>
internal sealed record Insulation(string Name, double Celsius, bool IsKnown)
{
    /// <summary>What is taken where nothing is known, and for cloth and rubber.</summary>
    public const double Unknown = 60;

    /// <summary>The insulation of a wire: its own, else that of the whole job.</summary>
    public static Insulation Of(Wire wire, ElectricalSystem system)
    {
        string name = (wire.Insulation ?? system.Insulation ?? "").Trim();
        if (wire.IsBraid) return new("bare braid", Unknown, IsKnown: true);
        if (name.Length == 0) return new("", Unknown, IsKnown: true);
        if (Stated(name) is { } celsius) return new(name, celsius, IsKnown: true);
        var table = DataTable.Named("insulation");
        foreach (var row in table.Rows)
            if (string.Equals(row[0].Replace('-', ' '), name.Replace('-', ' '), StringComparison.OrdinalIgnoreCase))
                return new(name, DataTable.FigureOf(row[1])!.Value, IsKnown: true);
        return new(name, Unknown, IsKnown: false);
    }

    // "105 °C", "PVC 105 C"
    private static double? Stated(string name)
    {
        string[] words = name.Replace("°", " ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is [.., var figure, "C" or "c"] && double.TryParse(figure, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double celsius) ? celsius : null;
    }
}
