using Hotside.Checks.Protection;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing.Tables;
using Hotside.Studies;

namespace Hotside.Checks.Gauges;

/// <summary>Row 34: a resistor that takes more heat than it is made for, in its worst setting or behind a stalled motor whose fuse holds.</summary>
internal static class DropperHeat
{
    // Twice the heat as its rating (common practice, no source). What is below two watts gets warm, no more.
    private const double Derated = 0.5, Warm = 2;

    // Stalled, a motor draws four times its current (own choice; two to four times for starters is common practice).
    private const double Stall = 4;

    public static readonly DiagnosticKind Kind = new("HS3334", Severity.Stop, "Resistor too hot",
        "{0} turns {1} W into heat {2}, and is made for {3} W: it chars what is near it")
    {
        Source = "Ohm's law; a resistor is rated at twice its heat at least (common practice, no source); burn threshold of bare metal 65 to 70 °C for a second (ISO 13732-1, from memory)",
    };

    public static readonly DiagnosticKind Near = new("HS3388", Severity.Warning, "Resistor near its limit",
        "{0} turns {1} W into heat {2}, more than half of the {3} W that it is made for in free air") { Source = Kind.Source };

    public static readonly DiagnosticKind Unrated = new("HS3389", Severity.Warning, "Resistor without wattage",
        "{0} turns {1} W into heat {2}, and its wattage is not stated") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var part in circuit.Circuit.Parts.Where(p => p.Kind.Elements is [{ Type: ElementType.Resistor }]))
        {
            var element = part.Kind.Elements[0];
            double? rated = part.Rated(element.Name, Unit.Watt);
            // A ballast that says nothing is one bought for its coil.
            if (rated is null && part.Kind.Id == "ballast") continue;
            var (watts, when) = Worst(circuit, part, element);
            var (stalled, motor) = Stalled(circuit, part, element);
            if (stalled > watts) (watts, when) = (stalled, $"while {motor} is stalled and its fuse holds");
            string[] told = [part.Id, Numbers.Plain(watts, watts < 10 ? 1 : 0), when, rated is { } w ? Numbers.Plain(w) : "—"];
            string hint = $"take one of {Numbers.Plain(Math.Ceiling(watts / Derated / 5) * 5)} W or more on bare metal, away from cloth and wires; never touch it in use";
            if (watts > rated) yield return Kind.Of([part.Id], told) with { Hint = hint };
            else if (watts > Derated * rated) yield return Near.Of([part.Id], told) with { Hint = hint };
            else if (rated is null && watts > Warm) yield return Unrated.Of([part.Id], told) with { Hint = hint };
        }
    }

    private static (double Watts, string When) Worst(CheckedCircuit circuit, Part part, Element element)
    {
        double watts = 0;
        string when = "";
        foreach (var point in circuit.Points.Steady)
            if (point.Solution.Element(part.Id, element.Name).Watts is var here && here > watts) (watts, when) = (here, point.When);
        return (watts, when);
    }

    // The motor's winding alone, in series with the resistor, unless a fuse ahead opens at that current.
    private static (double Watts, string Motor) Stalled(CheckedCircuit circuit, Part part, Element element)
    {
        foreach (var load in circuit.Loads.Where(l => l.Element.Type == ElementType.Motor && l.Paths.Any(p => p.HotWay.Concat(p.GroundWay).Contains(part.Id))))
        {
            if (circuit.PointFor(load) is not { } point) continue;
            var motor = point.Solution.Element(load.Part.Id, load.Element.Name);
            var resistor = point.Solution.Element(part.Id, element.Name);
            if (Math.Abs(resistor.Amperes) < 0.5 * Math.Abs(motor.Amperes) || motor.RatedAmperes <= 0) continue;
            double ohms = Math.Abs(resistor.Volts / resistor.Amperes), amperes = (Math.Abs(motor.Volts) + Math.Abs(resistor.Volts)) / (ohms + (motor.RatedVolts / (Stall * motor.RatedAmperes)));
            double fuse = FusesAhead.Of(circuit, load, point).Select(f => f.Protection.Part!.Rated(f.Protection.Element!.Name, Unit.Ampere) ?? double.MaxValue).Append(Behind(circuit, load)).Min();
            // Up to there a fuse carries its current for minutes.
            if (amperes < OpeningTime.Opens * fuse) return (amperes * amperes * ohms, load.Name);
        }
        return (0, "");
    }

    // A fuse anywhere on the way, the resistor between it and the motor or not.
    private static double Behind(CheckedCircuit circuit, LoadStudy load) =>
        load.Paths.SelectMany(p => p.HotWay).Select(circuit.Circuit.FindPart).OfType<Part>()
            .Where(p => p.Kind.Elements is [{ Type: ElementType.Fuse or ElementType.Breaker }]).Select(p => p.Rated(p.Kind.Elements[0].Name, Unit.Ampere) ?? double.MaxValue).DefaultIfEmpty(double.MaxValue).Min();
}
