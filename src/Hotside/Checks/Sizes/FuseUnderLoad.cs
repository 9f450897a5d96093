using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Sizes;

/// <summary>Row 4: a fuse that its own load opens, in the long run or at the first moment.</summary>
internal static class FuseUnderLoad
{
    public static readonly DiagnosticKind Small = new("HS3304", Severity.Error, "Fuse smaller than its load",
        "{0}, {1} A, carries up to {2} A: it opens with nothing wrong behind it")
    {
        Source = "a fuse carries its rating and opens above it: ISO 8820-3",
    };

    public static readonly DiagnosticKind Surge = new("HS3394", Severity.Error, "Fuse opens when switched on",
        "{0}, {1} A, gets {2} A at the first moment, filaments cold or motors standing, for longer than it is likely to stand")
    {
        Source = "ISO 8820-3, opening times; how long filaments and motors take: own choice, no source",
    };

    public static readonly DiagnosticKind Full = new("HS3396", Severity.Note, "Fuse loaded above four fifths",
        "{0}, {1} A, carries up to {2} A for long: more than four fifths of its rating, so it ages and may open on a hot day")
    {
        Source = "80 % of the rating for continuous loads: NFPA 70, 210.20(A), from memory; on the road common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var fuse in circuit.Sizes.Fuses)
        {
            if (fuse.Rating is not { } rating) continue;
            string id = fuse.Part.Id, stated = Numbers.Plain(rating.Amperes, 1), carried = Numbers.Plain(fuse.Current.Amperes, 1);
            string hint = fuse is { RatingNeeded: { } fits } && fits > rating ? $"take one of {Numbers.Plain(fits.Amperes, 1)} A, which its wires bear"
                : "divide its loads among several fuses, or lay thicker wires and a larger fuse";
            if (fuse.Carries == SizingOutcome.Failed) yield return Small.Of([id], id, stated, carried) with { Hint = hint };
            else if (fuse.StandsInrush == SizingOutcome.Failed && fuse.Inrush is { } rush) yield return Surge.Of([id], id, stated, Numbers.Plain(rush.Amperes, 1)) with { Hint = hint };
            else if (fuse.Carries == SizingOutcome.Warning) yield return Full.Of([id], id, stated, carried) with { Hint = hint };
        }
    }
}
