using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Protection;

/// <summary>Row 4: a fuse that opens on its own load, or on the surge of filaments and motors.</summary>
internal static class FuseUnderLoad
{
    public static readonly DiagnosticKind Kind = new("HS3304", Severity.Error, "Fuse smaller than its load",
        "{0} is rated {1} A and carries up to {2} A, {3} A in the first moment: it opens without a fault")
    {
        Source = "NFPA 70, 210.20(A): 80 % of the rating for lasting loads; opening times by ISO 8820-3 and SAE J1284 (from memory but for the greatest)",
    };

    public static readonly DiagnosticKind Near = new("HS3395", Severity.Note, "Fuse used by more than four fifths",
        "{0} is rated {1} A and carries {2} A for long; {3} A would be its rating") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var fuse in circuit.Sizes.Fuses.Where(f => f.Rating is not null))
        {
            string[] told = [fuse.Part.Id, Numbers.Plain(fuse.Rating!.Value.Amperes, 1), Numbers.Plain(fuse.Current.Amperes, 1)];
            string rush = fuse.Inrush is { } inrush ? Numbers.Plain(inrush.Amperes, 0) : told[2];
            if (fuse.Carries == SizingOutcome.Failed || fuse.StandsInrush == SizingOutcome.Failed)
                yield return Kind.Of([fuse.Part.Id], [.. told, rush]) with { Hint = fuse.RatingNeeded is { } needed ? $"take {Numbers.Plain(needed.Amperes, 1)} A{(fuse.Thinnest is null ? ", once the wires behind it are known to bear that" : "")}" : "the wires behind it must be thicker before it can be greater" };
            // Where no rating guards the wires as well, that is said by itself (HS3104).
            else if (fuse is { Carries: SizingOutcome.Warning, RatingNeeded: { } next, Thinnest: not null })
                yield return Near.Of([fuse.Part.Id], [.. told, Numbers.Plain(next.Amperes, 1)]);
        }
    }
}
