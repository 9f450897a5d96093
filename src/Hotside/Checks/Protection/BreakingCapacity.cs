using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 52: a battery gives more, through the wire to a fuse, than a common fuse can break.</summary>
internal static class BreakingCapacity
{
    // ISO 8820-3: blade fuses, up to 30 A as a rule, break 1000 A; bolted ones, above, 2000 A (ISO 8820-5, from memory).
    private const double Blade = 1000, Bolted = 2000, LargestBlade = 30;

    public static readonly DiagnosticKind Kind = new("HS3352", Severity.Warning, "More than a fuse breaks",
        "a short circuit right behind {0} draws about {1} A from {2}; a common fuse of its size breaks {3} A, and may arc on")
    {
        Source = "ISO 8820-3: 1000 A; ISO 8820-5, from memory: 2000 A for bolted fuses; the battery's resistance from SAE J537 cranking amperes, or by its ampere-hours (own choice)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var found = from branch in circuit.Unfused
                    where branch.Loads.IsEmpty && branch.Batteries.IsEmpty
                    from protection in branch.Protections.Select(p => p.Part).DistinctBy(p => p.Id)
                    where !protection.Kind.Id.Contains("link", StringComparison.Ordinal)
                    let amperes = ShortCircuitCurrent.Behind(circuit, branch.Source, protection)
                    let limit = protection.Kind.Elements.Max(e => protection.Rated(e.Name, Unit.Ampere) ?? 0) > LargestBlade ? Bolted : Blade
                    where amperes > limit
                    select (Battery: branch.Source, Fuse: protection, Amperes: amperes, Limit: limit);
        return from battery in found.GroupBy(f => f.Battery)
               select Kind.Of([.. battery.Select(f => f.Fuse.Id), battery.Key.Id], Listing.Of(battery.Select(f => f.Fuse.Id)), Numbers.Plain(Math.Round(battery.Max(f => f.Amperes) / 100) * 100), battery.Key.Id, Numbers.Plain(battery.Min(f => f.Limit))) with
               {
                   Hint = "take a bolted fuse whose maker states a higher breaking capacity for the first one behind the battery",
               };
    }
}
