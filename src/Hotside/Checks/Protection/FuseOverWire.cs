using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Protection;

/// <summary>Rows 3 and 5: a fuse that lets more through than a wire behind it stands: the wire is the fuse.</summary>
internal static class FuseOverWire
{
    public static readonly DiagnosticKind Kind = new("HS3303", Severity.Stop, "Fuse larger than its wire",
        "{0} {4} {1} A through for good, and {2} behind may carry {3} A only: in a fault the wire is the fuse")
    {
        Source = "33 CFR 183.455(c): at most 150 % of what the wire may carry (33 CFR 183.425, table 5); AC 43.13-1B, 11-47 asks for 100 %",
    };

    public static readonly DiagnosticKind Branch = new("HS3305", Severity.Stop, "Fuse ahead of thinner branches",
        "{0} {4} {1} A through for good; the first wire stands that, but {2} behind do not, {3} A at the least: in a fault the thinnest is the fuse") { Source = Kind.Source };

    public static readonly DiagnosticKind Near = new("HS3394", Severity.Warning, "Fuse above what its wire carries for good",
        "{0} {4} {1} A through for good, and {2} behind may carry {3} A: within the 150 % of 33 CFR 183 (boats), above the 100 % of AC 43.13-1B (aircraft), taken for want of a rule for old vehicles") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        // Behind several fuses beside each other counts what all of them let through.
        var guarded = circuit.Sizes.Conductors.Where(c => c is { ProtectedBy.IsEmpty: false, Ampacity: not null, Protection: not null, FeedsStarter: false, IsHot: true })
            .GroupBy(c => string.Join(' ', c.ProtectedBy.Order(StringComparer.Ordinal)), StringComparer.Ordinal);
        foreach (var group in guarded)
        {
            ConductorSizing[] behind = [.. group];
            var failed = Judged(behind, SizingOutcome.Failed);
            if (failed.Length > 0)
            {
                bool isBranch = behind.Any(c => c.By(SizingRule.Fuse)?.Outcome == SizingOutcome.Passed);
                yield return Told(isBranch ? Branch : Kind, failed) with { Hint = "fit a smaller fuse, thicker wires, or a fuse of its own where the wire becomes thinner; battery out first" };
            }
            else if (Judged(behind, SizingOutcome.Warning) is { Length: > 0 } near)
                yield return Told(Near, near) with { Hint = $"take {Numbers.Plain(near.Min(c => c.Ampacity!.Value.Amperes), 1)} A or the next rating below, if the load allows" };
        }
    }

    private static ConductorSizing[] Judged(ConductorSizing[] behind, SizingOutcome outcome) =>
        [.. behind.Where(c => c.By(SizingRule.Fuse)?.Outcome == outcome).OrderBy(c => c.Ampacity!.Value.Amperes)];

    private static Diagnostic Told(DiagnosticKind kind, ConductorSizing[] wires) => kind.Of([.. wires[0].ProtectedBy, .. wires.Select(w => w.Conductor.Id)], Listing.Of(wires[0].ProtectedBy), Numbers.Plain(wires.Max(w => w.Protection!.Value.Amperes), 1),
        Listing.Of(wires.Select(w => $"{w.Conductor.Id} ({w.Conductor.Wire.Label})")), Numbers.Plain(wires[0].Ampacity!.Value.Amperes, 1), wires[0].ProtectedBy.Length == 1 ? "lets" : "together let");
}
