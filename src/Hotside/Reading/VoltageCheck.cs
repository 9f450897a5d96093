using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>Whether the batteries give the volts that the system line says.</summary>
internal static class VoltageCheck
{
    public static readonly DiagnosticKind OtherVolts = new("HS2009", Severity.Warning, "Volts contradict the circuit", "the system line says {0}, but {1} is rated {2} V");

    // Batteries in a row are one source of more volts: only one that stands on the return by itself, with no other on its hot pole, is compared.
    public static IEnumerable<Diagnostic> Of(Circuit circuit)
    {
        var nodes = Nodes.Of(circuit, throughLinks: true);
        SourcePoles[] batteries = [.. circuit.Sources.Where(s => s.Element.When is null && s.Part.Rated(s.Element.Name, Unit.Volt) is not null)];
        return from battery in batteries
               where nodes.AreOne(battery.Return, circuit.System.ReturnNode) && !batteries.Any(b => b != battery && nodes.AreOne(b.Return, battery.Feed))
               where !circuit.System.Volts.Contains(battery.Volts)
               select OtherVolts.Of([battery.Part.Id], string.Join(" and ", circuit.System.Volts.Select(v => Numbers.Plain(v) + " V")), battery.Part.Id, Numbers.Plain(battery.Volts)) with
               {
                   Hint = "correct the system line, or the battery",
               };
    }
}
