using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Sizes;

/// <summary>Rows 3 and 5: a fuse that lets more through than the thinnest wire behind it may carry, up to the next fuse.</summary>
internal static class FuseOverWire
{
    public static readonly DiagnosticKind Far = new("HS3303", Severity.Stop, "Fuse larger than its wire",
        "{0} lets {1} A through, and {2} behind it, {3}, may carry {4} A: the wire is the fuse")
    {
        Source = "33 CFR 183.455(c): at most 150 % of the wire's allowed current",
    };

    public static readonly DiagnosticKind Near = new("HS3395", Severity.Warning, "Fuse above its wire's current",
        "{0} lets {1} A through, and {2} behind it, {3}, may carry {4} A: below the 150 % that boats' rules allow, above what aircraft's do")
    {
        Source = "AC 43.13-1B, 11-47: a fuse of no more than the wire's current; 33 CFR 183.455(c): 150 %",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var fuse in circuit.Sizes.Fuses)
        {
            if (fuse is not { Rating: { } rating, Thinnest: { Wire.Size: { } size } thinnest, ThinnestAmpacity: { } carries, Guards: SizingOutcome.Warning or SizingOutcome.Failed }) continue;
            var kind = fuse.Guards == SizingOutcome.Failed ? Far : Near;
            yield return kind.Of([fuse.Part.Id, thinnest.Id], fuse.Part.Id, Numbers.Plain(rating.Amperes, 1), thinnest.Id, size.ToString(), Numbers.Plain(carries.Amperes, 1)) with
            {
                Hint = (fuse.RatingNeeded is { } fits ? $"take one of {Numbers.Plain(fits.Amperes, 1)} A, or " : "") + "give the thin wire a fuse of its own where it begins, with the battery out",
            };
        }
    }
}
