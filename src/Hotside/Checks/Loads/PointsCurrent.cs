using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Loads;

/// <summary>What breaker points carry: a coil that wants a ballast and has none, or of which nobody can tell.</summary>
internal static class PointsCurrent
{
    // Points carry about 4 to 5 A; 6 V coils of 0.9 ohm draw up to 8 A (common practice, no source).
    private const double Most = 5.5, MostAtSixVolts = 8.5;

    public static readonly DiagnosticKind Unknown = new("HS3391", Severity.Warning, "Ignition coil of unknown resistance",
        "nothing says the ohms of {0}, and no ballast lies in its feed: a coil made for a ballast burns, and its breaker points with it")
    {
        Source = "TM 9-8000, chapter 15: points carry about 4 to 5 A; coils of 3 to 4.5 ohm want no ballast at 12 V, those of 1.3 to 2 ohm do (common practice, no source)",
    };

    public static readonly DiagnosticKind Kind = new("HS3392", Severity.Error, "Too much current for breaker points",
        "{0} draws {1} A {2} through the points of {3}; they carry about 5 A: coil and points burn") { Source = Unknown.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var load in circuit.Loads.Where(l => l.Element.Type == ElementType.Coil && Trade.IsIgnition(l.Part, l.Element)))
        {
            var way = load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Where(id => id != load.Part.Id).Distinct().Select(circuit.Circuit.FindPart).OfType<Part>().ToArray();
            if (way.FirstOrDefault(p => p.Kind.Id.StartsWith("distributor", StringComparison.Ordinal)) is not { } points) continue;
            bool isStated = new[] { Unit.Ohm, Unit.Ampere, Unit.Watt }.Any(u => load.Part.Rated(load.Element.Name, u) is not null);
            if (!isStated)
            {
                if (way.All(p => p.Kind.Elements.All(e => e.Type != ElementType.Resistor))) yield return Unknown.Of([load.Part.Id], load.Name) with { Hint = "measure it with the battery out and state it (\"3.4 ohm\")" };
                continue;
            }
            if (circuit.Points.Steady.MaxBy(p => Math.Abs(p.Solution.Element(load.Part.Id, load.Element.Name).Amperes)) is not { } worst) continue;
            double amperes = Math.Abs(worst.Solution.Element(load.Part.Id, load.Element.Name).Amperes);
            if (amperes > (circuit.Circuit.System.Volts[0] < 12 ? MostAtSixVolts : Most))
                yield return Kind.Of([load.Part.Id, points.Id], load.Name, Numbers.Plain(amperes, 1), worst.When, points.Id) with { Hint = "fit the ballast that belongs to the coil, or a coil that wants none" };
        }
    }
}
