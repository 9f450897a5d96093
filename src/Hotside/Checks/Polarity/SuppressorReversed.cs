using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 48: a relay whose diode lies the wrong way round across its coil, so that it is a short circuit.</summary>
internal static class SuppressorReversed
{
    private const double Amperes = 1;

    public static readonly DiagnosticKind Kind = new("HS3348", Severity.Stop, "Relay with a diode wired backward",
        "the diode in {0} conducts {1} A {2}: its coil is shorted, and the diode or the switch burns")
    {
        Source = "common practice, no source: 86 is plus on a relay with a diode (DIN 72552 numbers, from public lists)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        let diode = part.Kind.Elements.FirstOrDefault(e => e.Type == ElementType.Diode && part.Kind.Elements.Any(c => c.Type == ElementType.Coil && Across(c, e)))
        where diode is not null && !circuit.Points.All.IsEmpty
        let worst = circuit.Points.All.MaxBy(p => p.Solution.Element(part.Id, diode.Name).Amperes)
        let amperes = worst.Solution.Element(part.Id, diode.Name).Amperes
        where amperes > Amperes
        select Kind.Of([part.Id], part.Id, Numbers.Plain(amperes, 0), worst.When) with { Hint = "swap the two coil wires, with the battery out, and check the switch that fed it" };

    private static bool Across(Element coil, Element diode) => (coil.From == diode.From && coil.To == diode.To) || (coil.From == diode.To && coil.To == diode.From);
}
