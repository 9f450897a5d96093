using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing.Tables;

namespace Hotside.Checks.Loads;

/// <summary>Row 38: too many volts stay in wires, switches and joints on the way to a load and back.</summary>
internal static class VoltageDrop
{
    private const double Lamp = 0.85;

    public static readonly DiagnosticKind Kind = new("HS3338", Severity.Error, "Lamp below 85 % of its volts",
        "{0} gets {1} V of the {2} V at the battery {3}, less than 85 %: it gives about {4} % of its light")
    {
        Source = "California Code of Regulations, title 13, § 1249(c): lamps at 85 % of design volts at least; light goes with about the 3.4th power of the volts (Standard Handbook for Electrical Engineers, 11th ed.)",
    };

    public static readonly DiagnosticKind Drop = new("HS3383", Severity.Warning, "Voltage drop over 10 %",
        "{0} loses {1} V of {2} V on the way {3}, {4} %")
    {
        Source = "ABYC E-11 as quoted: 10 % where nothing vital hangs on it, 3 % for vital circuits",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var point in circuit.Points.All.Where(p => p is { For: not null, IsRunning: false, IsCranking: false }))
        {
            var load = point.For!;
            var at = point.Solution.Element(load.Part.Id, load.Element.Name);
            if (load.Element.Type is ElementType.Gauge or ElementType.Coil || Trade.IsLed(load.Element) || !load.InSeriesWith.IsEmpty || IsReduced(circuit, load)) continue;
            double supply = point.Solution.Sources.Where(s => s.Element.When is null).Select(s => s.Volts).DefaultIfEmpty(0).Max(), volts = Math.Abs(at.Volts);
            // What is hardly on is fed through something, and what is made for less hangs on a tap: no matter of wires.
            if (supply <= 0 || volts < 0.3 * supply || at.RatedVolts < 0.8 * circuit.Circuit.System.Volts.Max()) continue;
            double share = volts / supply;
            var lossy = point.Solution.Conductors.Where(c => Math.Abs(c.Volts) > 0.02 * supply && c.Conductor.Id is var id && load.Paths.Any(p => p.Hot.Contains(id) || p.Ground.Contains(id)))
                .OrderByDescending(c => Math.Abs(c.Volts)).Select(c => c.Conductor.Id).ToArray();
            string[] items = [load.Part.Id, .. lossy];
            string hint = lossy.Length > 0 ? $"a thicker or shorter {Listing.Of(lossy)}, or a relay near the load" : "look for the resistance in its way";
            if (load.Element.Type == ElementType.Lamp && share < Lamp)
                yield return Kind.Of(items, load.Name, Numbers.Plain(volts, 1), Numbers.Plain(supply, 1), point.When, Numbers.Plain(100 * Math.Pow(share, 3.4), 0)) with { Hint = hint };
            else if (1 - share > DropLimit.Of("other", 1).Volts)
                yield return Drop.Of(items, load.Name, Numbers.Plain(supply - volts, 1), Numbers.Plain(supply, 1), point.When, Numbers.Plain(100 * (1 - share), 0)) with { Hint = hint };
        }
    }

    // A resistor, a reducer or a diode on the way takes volts on purpose.
    private static bool IsReduced(CheckedCircuit circuit, Studies.LoadStudy load) => load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Where(id => id != load.Part.Id)
        .Any(id => circuit.Circuit.FindPart(id) is { } part && part.Kind.Elements.Any(e => e.IsInLine && !e.IsLink));
}
