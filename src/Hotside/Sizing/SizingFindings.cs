using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Sizing;

/// <summary>The kinds of findings that come from sizing: what could not be judged, and feeds that no fuse serves.</summary>
internal static class SizingFindings
{
    public static readonly DiagnosticKind OutsideTables = new("HS3101", Severity.Note, "Size in no table",
        "no table says what {0} may carry: {1}") { Source = "33 CFR 183.425, table 5" };

    public static readonly DiagnosticKind UnknownInsulation = new("HS3102", Severity.Note, "Unknown insulation",
        "the insulation \"{1}\" of {0} is not known; it is taken to stand 60 °C") { Source = "SAE J1127, SAE J1128, ISO 6722-1" };

    public static readonly DiagnosticKind ResistanceWire = new("HS3103", Severity.Note, "Resistance wire",
        "{0} resists far more than copper of its size: no table of ampacities is for it");

    public static readonly DiagnosticKind NoFuseServes = new("HS3104", Severity.Warning, "No fuse serves",
        "no rating that is made carries the {1} A through {0}, stands the inrush and guards {2}, which may carry {3} A") { Source = "33 CFR 183.455, NFPA 70, 210.20(A)" };

    public static readonly DiagnosticKind NoSizeServes = new("HS3105", Severity.Warning, "No size serves",
        "no size that is made lets {0} keep its rules; {1}");

    /// <summary>What is found of a circuit.</summary>
    public static ImmutableArray<Diagnostic> Of(ImmutableArray<ConductorSizing> conductors, ImmutableArray<FuseSizing> fuses) =>
        [.. conductors.SelectMany(Of), .. fuses.Where(f => f is { RatingNeeded: null, Thinnest: not null, LinkNeeded: null } && f.Element.Type == ElementType.Fuse && f.LeastRating.Amperes > 0).Select(Of)];

    private static IEnumerable<Diagnostic> Of(ConductorSizing sizing)
    {
        var (id, wire) = (sizing.Conductor.Id, sizing.Conductor.Wire);
        if (!sizing.Insulation.IsKnown)
            yield return UnknownInsulation.Of([id], id, sizing.Insulation.Name) with { Hint = "write what it stands, as in insulation 105 °C" };
        switch (sizing.Refusal)
        {
            case SizingRefusal.SizeOutsideTables: yield return OutsideTables.Of([id], id, wire.Size.ToString()!); break;
            case SizingRefusal.InsulationBelowTables: yield return OutsideTables.Of([id], id, $"its insulation stands {Numbers.Plain(sizing.Insulation.Celsius, 0)} °C only"); break;
            case SizingRefusal.ResistanceWire: yield return ResistanceWire.Of([id], id); break;
            case null when sizing.SizeNeeded is null: yield return NoSizeServes.Of([id], id, Reason(sizing)); break;
        }
    }

    private static string Reason(ConductorSizing sizing) =>
        sizing.By(SizingRule.Drop) is { Share: > 1 } ? $"the circuit of {sizing.DropOf} loses too much elsewhere"
        : $"it carries {Numbers.Plain(sizing.Worst.Amperes, 1)} A{(sizing.GuardAmperes is { } guard ? $" behind {Numbers.Plain(guard, 1)} A" : "")}";

    private static Diagnostic Of(FuseSizing fuse) => NoFuseServes.Of([fuse.Part.Id, fuse.Thinnest!.Id], fuse.Part.Id, Numbers.Plain(fuse.Current.Amperes, 1), fuse.Thinnest.Id,
        Numbers.Plain(fuse.ThinnestAmpacity!.Value.Amperes, 1)) with { Hint = $"a larger size for {fuse.Thinnest.Id}, or a fuse of its own" };
}
