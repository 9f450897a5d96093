using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Sizes;

/// <summary>Row 6: a wire that carries more than its size and insulation may.</summary>
internal static class WireOverCurrent
{
    public static readonly DiagnosticKind Over = new("HS3306", Severity.Stop, "Wire over its current",
        "{0}, {1}, carries up to {2} A and may carry {3} A: its insulation cooks")
    {
        Source = "33 CFR 183.425, table 5, at the temperature of the insulation or the next lower, 60 °C where it is not known",
    };

    public static readonly DiagnosticKind Bundled = new("HS3397", Severity.Warning, "Wire over its current in the loom",
        "{0}, {1}, carries up to {2} A; by itself it may, but in a loom of {3} live wires only {4} A")
    {
        Source = "33 CFR 183.425, table 5, note on bundles",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var wire in circuit.Sizes.Conductors)
        {
            if (wire is not { Ampacity: { } allowed, Conductor.Wire.Size: { } size } || wire.By(SizingRule.Ampacity) is not { } rule) continue;
            string id = wire.Conductor.Id, carried = Numbers.Plain(wire.Current.Amperes, 1), may = Numbers.Plain(allowed.Amperes, 1);
            string hint = rule.LeastSize is { } least ? $"{least} would do" : "divide its loads among several wires";
            if (rule.Outcome == SizingOutcome.Failed) yield return Over.Of([id], id, size.ToString(), carried, Numbers.Plain((wire.AmpacityAlone ?? allowed).Amperes, 1)) with { Hint = hint };
            else if (rule.Outcome == SizingOutcome.Warning) yield return Bundled.Of([id], id, size.ToString(), carried, Numbers.Whole(wire.Bundled), may) with { Hint = hint + ", or lead it apart" };
        }
    }
}
