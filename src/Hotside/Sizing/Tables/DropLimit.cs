using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Sizing.Tables;

/// <summary>How many volts a load's circuit may lose on the way from the source and back.</summary>
/// <param name="Circuit">The class of circuit: <c>headlamp</c>, <c>vital</c>, <c>other</c>, <c>control</c>, <c>starter</c>.</param>
/// <param name="Volts">The limit in volts.</param>
internal sealed record DropLimit(string Circuit, double Volts)
{
    /// <summary>Where it is from.</summary>
    public string Source => DataTable.Named("drop-limits").SourceOf(Circuit);

    /// <summary>The limit of a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="nominal">The nominal volts of its supply.</param>
    /// <param name="amperes">Its current: a starter may lose more the more it draws.</param>
    public static DropLimit Of(LoadStudy load, double nominal, double amperes) => Of(ClassOf(load), nominal, amperes);

    /// <summary>The limit of a class of circuit.</summary>
    /// <param name="circuit">The class.</param>
    /// <param name="nominal">The nominal volts of its supply.</param>
    /// <param name="amperes">The current, for a starter.</param>
    public static DropLimit Of(string circuit, double nominal, double amperes = 0)
    {
        var table = DataTable.Named("drop-limits");
        var row = table.Row(circuit);
        double atTwelve = table.Figure(row, "12V") ?? 0, atSix = table.Figure(row, "6V") ?? 0;
        double volts = table.Figure(row, "part") is { } part ? part * nominal : circuit == "starter" ? atTwelve * amperes / 100 : nominal <= 6 ? atSix * nominal / 6 : atTwelve * nominal / 12;
        return new(circuit, volts);
    }

    // Which loads are vital is common practice, no source: what the engine runs by, what a driver reads, and electronics.
    private static string ClassOf(LoadStudy load)
    {
        string kind = load.Part.Kind.Id;
        if (load.Part.IsStarter(load.Element)) return "starter";
        if (kind.StartsWith("headlamp", StringComparison.Ordinal) && load.Element.Type == ElementType.Lamp) return "headlamp";
        if (kind.StartsWith("ignition", StringComparison.Ordinal) || kind.StartsWith("fuel-pump", StringComparison.Ordinal)) return "vital";
        return load.Element.Type switch
        {
            ElementType.Gauge or ElementType.Electronics => "vital",
            ElementType.Coil => "control",
            _ => "other",
        };
    }
}
