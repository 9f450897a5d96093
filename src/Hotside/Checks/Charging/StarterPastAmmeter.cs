using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 29: a starter's current goes through the ammeter.</summary>
internal static class StarterPastAmmeter
{
    public static readonly DiagnosticKind Kind = new("HS3329", Severity.Error, "Starter current through the ammeter",
        "{0} A pass {1} while {2} cranks: no ammeter stands that")
    {
        Source = "common practice, no source: the starter's cable leaves before the meter",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        where Trade.IsAmmeter(part)
        let shunt = part.Kind.Elements.First(e => e.Type == ElementType.Shunt)
        let worst = circuit.Points.All.Where(p => p.IsCranking).MaxBy(p => Math.Abs(p.Solution.Element(part.Id, shunt.Name).Amperes))
        where worst is not null
        let starters = worst.Solution.Elements.Where(e => e.Part.IsStarter(e.Element) && Math.Abs(e.Amperes) > 1).ToArray()
        let amperes = Math.Abs(worst.Solution.Element(part.Id, shunt.Name).Amperes)
        where starters.Length > 0 && amperes > 0.5 * starters.Sum(s => Math.Abs(s.Amperes))
        select Kind.Of([part.Id, .. starters.Select(s => s.Part.Id).Distinct()], Numbers.Plain(amperes, 0), part.Id, Listing.Of(starters.Select(s => s.Part.Id))) with
        {
            Hint = "take the starter's cable from the battery itself, with the battery out",
        };
}
