using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 2: a fuse too far along the wire that it protects.</summary>
internal static class FarProtection
{
    // 72 in from a battery's post; 40 in from anywhere else, sheathed all the way, and 7 in not sheathed. A road vehicle's wires lie in a loom.
    private const double FromPost = 1.83, Sheathed = 1.016;

    /// <summary>The most metres of wire between a source and its fuse where the wire is not sheathed: 7 in (33 CFR 183.455(b)).</summary>
    public const double Bare = 0.178;

    public static readonly DiagnosticKind Kind = new("HS3302", Severity.Warning, "Fuse far from its source",
        "{0} lies {1} m of wire away from {2}; a fault before it is protected by nothing")
    {
        Source = "33 CFR 183.455(b): 7 in (178 mm), 40 in (1016 mm) where sheathed; 33 CFR 183.460 (from memory): 72 in (1.83 m) from a battery; on the road common practice, no source",
    };

    public static readonly DiagnosticKind Afloat = new("HS3380", Severity.Error, "Fuse far from its source, isolated system",
        "{0} lies {1} m of wire away from {2}; a fault before it is protected by nothing")
    {
        Source = Kind.Source,
    };

    /// <summary>An own check: nothing is said of a length that decides.</summary>
    public static readonly DiagnosticKind Unknown = new("HS3398", Severity.Note, "Distance of a fuse not known",
        "how far {0} lies from {1} is not known: {2} {3} no length")
    {
        Source = Kind.Source,
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        // A job that gives no length at all asks for no verdict on lengths.
        bool isMeasured = circuit.Circuit.Conductors.Any(c => c.Wire.LengthInMetres is not null);
        bool isAfloat = Trade.IsIsolated(circuit.Circuit);
        foreach (var branch in circuit.Unfused.Where(b => b.Loads.IsEmpty && b.Batteries.IsEmpty))
        {
            double limit = branch.IsFromPost ? FromPost : isAfloat ? Bare : Sheathed;
            var far = branch.Protections.Where(p => p.Metres > limit && p.Metres < double.MaxValue).DistinctBy(p => p.Part.Id).ToArray();
            var unknown = branch.Protections.Where(p => p.Metres <= limit && p.KnownMetres > limit).DistinctBy(p => p.Part.Id).ToArray();
            string[] unmeasured = [.. branch.Conductors.Where(c => c.Wire.LengthInMetres is null).Select(c => c.Id)];
            if (isMeasured && unknown.Length > 0 && unmeasured.Length > 0)
                yield return Unknown.Of([.. unknown.Select(p => p.Part.Id), .. unmeasured], Listing.Of(unknown.Select(p => p.Part.Id)), From(branch), Listing.Of(unmeasured), unmeasured.Length == 1 ? "has" : "have") with
                {
                    Hint = $"measure: a fuse belongs within {Numbers.Plain(limit, 2)} m",
                };
            if (far.Length == 0) continue;
            yield return (isAfloat ? Afloat : Kind).Of([.. far.Select(p => p.Part.Id), .. branch.Conductors.Select(c => c.Id)],
                Listing.Of(far.Select(p => p.Part.Id)), Numbers.Plain(far.Max(p => p.Metres), 2), From(branch)) with
            {
                Hint = $"move the fuse to within {Numbers.Plain(limit, 2)} m, or fit another at the source, with the battery out",
            };
        }
    }

    private static string From(UnfusedBranch branch) => branch.IsFromPost ? branch.Source.Id : "the starter cable";
}
