using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Protection;

/// <summary>Rows 6, 41 and 49: a wire, a return among them, that carries more than it may where it lies.</summary>
internal static class WireOverAmpacity
{
    public static readonly DiagnosticKind Kind = new("HS3306", Severity.Stop, "Wire over its allowed current",
        "{0} ({1}) carries {2} A, and may carry {3} A where it lies: it gets about {4} °C warm")
    {
        Source = "33 CFR 183.425, table 5, with its factors for bundles and engine spaces",
    };

    public static readonly DiagnosticKind Near = new("HS3396", Severity.Warning, "Wire over the allowance of its loom",
        "{0} ({1}) carries {2} A; by itself it may, among the others of its loom {3} A are allowed, and it gets about {4} °C warm") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from wire in circuit.Sizes.Conductors
        let outcome = wire.By(SizingRule.Ampacity)?.Outcome
        where outcome is SizingOutcome.Failed or SizingOutcome.Warning && wire is { Ampacity: not null, FeedsStarter: false }
        select (outcome == SizingOutcome.Failed ? Kind : Near).Of([wire.Conductor.Id], wire.Conductor.Id, wire.Conductor.Wire.Label, Numbers.Plain(wire.Current.Amperes, 1), Numbers.Plain(wire.Ampacity!.Value.Amperes, 1),
            wire.Warmth is { } warmth ? Numbers.Plain(warmth.DegreesCelsius, 0) : "?") with
        {
            Hint = wire.SizeNeeded is { } size ? $"take {size}" : "share its current, or shorten the loads on it",
        };
}
