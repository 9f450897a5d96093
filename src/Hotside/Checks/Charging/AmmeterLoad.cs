using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 27: more current through an ammeter than its scale has.</summary>
internal static class AmmeterLoad
{
    public static readonly DiagnosticKind Kind = new("HS3327", Severity.Error, "Ammeter over its scale",
        "up to {1} A pass {0} {2}, and its scale ends at {3} A: its studs heat behind the dash")
    {
        Source = "TM 9-8000, 17-2a: the meter is matched to the generator",
    };

    public static readonly DiagnosticKind Unknown = new("HS3385", Severity.Warning, "Ammeter of unknown scale",
        "the scale of {0} is not stated, and up to {1} A pass it {2}")
    {
        Source = Kind.Source,
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var part in circuit.Circuit.Parts.Where(Trade.IsAmmeter))
        {
            var shunt = part.Kind.Elements.First(e => e.Type == ElementType.Shunt);
            var (amperes, when) = Worst(circuit, part, shunt);
            if (part.Rated(shunt.Name, Unit.Ampere) is not { } scale)
            {
                if (amperes > 1) yield return Unknown.Of([part.Id], part.Id, Numbers.Plain(amperes, 0), when) with { Hint = "read the scale and state it: \"60 A\"; it must exceed what the machine gives" };
            }
            else if (amperes > 1.02 * scale)
                yield return Kind.Of([part.Id], part.Id, Numbers.Plain(amperes, 0), when, Numbers.Plain(scale)) with
                {
                    Hint = "lead the charge past it, put a shunt beside it, or fit one of a greater scale",
                };
        }
    }

    // What loads draw, and what a machine may give to an empty battery where its whole output passes the meter.
    private static (double Amperes, string When) Worst(CheckedCircuit circuit, Part part, Element shunt)
    {
        double amperes = 0;
        string when = "";
        foreach (var point in circuit.Points.Steady)
            if (Math.Abs(point.Solution.Element(part.Id, shunt.Name).Amperes) is var here && here > amperes) (amperes, when) = (here, point.When);
        foreach (var machine in circuit.Circuit.Parts.Where(p => p.Kind.Elements.Any(Trade.IsMachine)))
        {
            var output = machine.Kind.Elements.First(Trade.IsMachine);
            if (machine.Rated(output.Name, Unit.Ampere) is { } most && most > amperes && IsCharging(circuit, part, shunt)) (amperes, when) = (most, $"while {machine.Id} charges an empty battery");
        }
        return (amperes, when);
    }

    private static bool IsCharging(CheckedCircuit circuit, Part part, Element shunt) => circuit.Points.Steady.Where(p => p.IsRunning).Any(p =>
        p.Solution.Sources.Where(s => s.Element.When is null).Sum(s => Math.Max(0, s.Amperes)) is > 0.05 and var charge && Math.Abs(Math.Abs(p.Solution.Element(part.Id, shunt.Name).Amperes) - charge) < 0.1 * charge);
}
