using Hotside.Checks.Gauges;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Figures;
using Hotside.Solving;

namespace Hotside.Checks.Loads;

/// <summary>Row 9: something gets far more volts than it is made for.</summary>
internal static class WrongVolts
{
    // A sound charging system holds 14.9 V at most (TM 10-3930-621-12), 1.24 times 12 V; the next lower system's parts, 8 V or 6 V, get 1.5 times and more.
    private const double Most = 1.25;

    public static readonly DiagnosticKind Kind = new("HS3309", Severity.Stop, "Far too many volts",
        "{0} is made for {1} V and gets {2} V {3}: {4}")
    {
        Source = "limit 1.25: own derivation from TM 10-3930-621-12 (regulators hold 14.9 V at most, 1.24 times 12 V); lamp life goes with about the 12th to 16th power of the volts (Standard Handbook for Electrical Engineers, 11th ed.)",
    };

    public static readonly DiagnosticKind Brief = new("HS3381", Severity.Warning, "Too many volts for seconds only",
        "{0} is made for {1} V and gets {2} V {3}: it stands that for seconds, no longer")
    {
        Source = "common practice, no source; TM 10-3930-671-24: crank 30 s at most, then rest 2 min",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var points = circuit.Points.All;
        if (points.IsEmpty) yield break;
        for (int i = 0; i < points[0].Solution.Elements.Length; i++)
        {
            var (part, element) = (points[0].Solution.Elements[i].Part, points[0].Solution.Elements[i].Element);
            if (!element.IsConsumer || element.IsInternal || part.Kind.Voltage is "contact" || part.Rated(element.Name, Unit.Volt) is not { } rated) continue;
            var worst = points.MaxBy(p => Math.Abs(p.Solution.Elements[i].Volts))!;
            double volts = Math.Abs(worst.Solution.Elements[i].Volts);
            string when = worst.When;
            if (Swept(circuit, part, element) is { } swept && Math.Abs(swept.Point.Volts) > volts) (volts, when) = (Math.Abs(swept.Point.Volts), swept.When);
            if (volts <= Most * rated) continue;
            bool isBrief = BriefLoad.Is(part);
            // Somebody has said how to live with it.
            if (isBrief && circuit.WorkFor(part.Id).Any(Trade.SaysHowLong)) continue;
            string name = worst.Solution.Elements[i].Name;
            yield return (isBrief ? Brief : Kind).Of([part.Id], name, Numbers.Plain(rated, 1), Numbers.Plain(volts, 1), when, What(element)) with
            {
                Hint = isBrief ? "crank no longer than 10 s at a time and let it cool; a relay's coil that may be held on is better replaced"
                    : $"replace it by one for {Numbers.Plain(circuit.Circuit.System.Volts[0])} V, or protect it by a reducer of its own, before anything is powered",
            };
        }
    }

    /// <summary>Whether an element gets far more volts than it is made for.</summary>
    public static bool IsTooMany(ElementPoint? point) => point is not null && Math.Abs(point.Volts) > Most * point.RatedVolts;

    // A gauge gets most where its sender has least.
    private static (ElementPoint Point, string When)? Swept(CheckedCircuit circuit, Part part, Element element)
    {
        if (element.Type != ElementType.Gauge || circuit.Loads.FirstOrDefault(l => l.Part.Id == part.Id && l.Element.Name == element.Name) is not { } load) return null;
        if (SenderSweep.Of(circuit, load) is not var (sender, least, _) || SenderSweep.At(circuit, load, sender.Id, least) is not { } point) return null;
        return (point, $"where {sender.Id} has {Numbers.Plain(least)} ohm");
    }

    private static string What(Element element) => element.Type switch
    {
        ElementType.Lamp => "a filament lasts minutes so",
        ElementType.Motor => "it races and burns out",
        ElementType.Coil or ElementType.Heater => "its heat goes with the square of the volts",
        ElementType.Gauge => "its winding burns, or it reads wrongly",
        ElementType.Horn => "it burns or sticks",
        _ => "it is destroyed",
    };
}
