using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Lamps;

/// <summary>Rows 30 and 31: a thermal flasher with other lamps than it is timed for.</summary>
internal static class FlasherLoad
{
    // With one of two lamps out it shows that by its rate; one lamp more is half as much again (own choice).
    private const double Least = 0.6, Most = 1.25;

    public static readonly DiagnosticKind Kind = new("HS3330", Severity.Error, "Too little load for a thermal flasher",
        "{0} is timed for {1} A and gets {2} A {3}: it flashes wrongly, or not at all")
    {
        Source = "NHTSA interpretation nht91-7.29 (SAE J588e: the rate tells a lamp that is out); 60 to 120 flashes a minute (SAE J590, from memory)",
    };

    public static readonly DiagnosticKind Over = new("HS3331", Severity.Error, "Too much load for a thermal flasher",
        "{0} is timed for {1} A and gets {2} A {3}: it flashes too fast and wears out") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var part in circuit.Circuit.Parts.Where(Trade.IsThermalFlasher))
        {
            if (part.Kind.ElementNamed("contact") is not { } contact || part.Ratings.FirstOrDefault(r => r.Name == "W") is not { } watts) continue;
            double volts = part.Rated(contact.Name, Unit.Volt) ?? circuit.Circuit.System.Volts[0], rated = watts.Quantity.Value * watts.Quantity.Count / volts;
            var loads = circuit.Points.Steady.Where(p => p.For is { } load && !p.IsRunning && load.Element.Type == ElementType.Lamp && load.Paths.Any(w => w.HotWay.Contains(part.Id)))
                .Select(p => (p.When, Amperes: Nominal(p, part))).Where(p => p.Amperes > 0).ToArray();
            if (loads.Length == 0 || GoesElsewhere(circuit, part, contact)) continue;
            var least = loads.MinBy(l => l.Amperes);
            var most = loads.MaxBy(l => l.Amperes);
            if (least.Amperes < Least * rated)
                yield return Kind.Of([part.Id], part.Id, Numbers.Plain(rated, 1), Numbers.Plain(least.Amperes, 1), least.When) with { Hint = "fit an electronic flasher, which minds no load; with LED lamps there is no other way without waste" };
            if (most.Amperes > Most * rated)
                yield return Over.Of([part.Id], part.Id, Numbers.Plain(rated, 1), Numbers.Plain(most.Amperes, 1), most.When) with { Hint = "fit one rated for so many lamps, or an electronic one; a trailer counts" };
        }
    }

    // The rated current of the lamps behind it that are lit: wires and the battery's state say nothing about the flasher.
    private static double Nominal(OperatingPoint point, Part flasher)
    {
        double amperes = Math.Abs(point.Solution.Element(flasher.Id, "contact").Amperes), drawn = 0, rated = 0;
        foreach (var lamp in point.Solution.Loads.Where(l => l.Element.Type == ElementType.Lamp && Math.Abs(l.Amperes) > 0.3 * l.RatedAmperes))
        {
            drawn += Math.Abs(lamp.Amperes);
            rated += lamp.RatedAmperes;
        }
        return drawn > 0 ? amperes * rated / drawn : 0;
    }

    // Behind an end of the page there may be more lamps.
    private static bool GoesElsewhere(CheckedCircuit circuit, Part part, Element contact)
    {
        var (_, node) = circuit.Graph.NodesOf(part, contact);
        var behind = circuit.Graph.Reach([node], e => e.IsLink && e.Part != part);
        return circuit.Graph.Elsewhere.Any(e => behind.Contains(e.Node));
    }
}
