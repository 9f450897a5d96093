using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 1: a hot run that feeds something and has no fuse, breaker or link.</summary>
internal static class UnfusedRun
{
    public static readonly DiagnosticKind Kind = new("HS3301", Severity.Stop, "Hot run without a fuse",
        "nothing opens if {0} touches {3}: it feeds {1} from {2} with no fuse, breaker or link before it")
    {
        Source = "33 CFR 183.455(a), boats; on the road common practice, no source. Starter cables are left out, as in 33 CFR 183.425(g)",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from branch in circuit.Unfused
        where !branch.Loads.IsEmpty || !branch.Batteries.IsEmpty
        let fed = branch.Loads.Concat(branch.Batteries).Select(p => p.Id).ToArray()
        select Kind.Of([.. branch.Bare.Select(c => c.Id), .. fed],
            Listing.Of(branch.Bare.Take(1).Select(c => c.Wire.Label.Length > 0 ? $"{c.Id} ({c.Wire.Label})" : c.Id)), Listing.Of(fed), branch.Source.Id,
            // Where the metal carries no current, a single touch is no short circuit: the return is what must not be touched.
            circuit.Circuit.System.Return is { } busbar ? circuit.Circuit.TextOf(busbar) : "metal") with
        {
            Hint = !branch.Batteries.IsEmpty ? "fit a fuse at both batteries, each for the wire between them; battery out first"
                : "fit a fuse no greater than the wire carries where it leaves the battery or the starter cable, with the battery out",
        };
}
