using System.Text;
using Hotside.Circuits;
using Hotside.Outputs;
using Hotside.Sizing;

namespace Hotside;

/// <summary>What each conductor and each fuse of a job carries, may carry and needs, before and after, as tables. Immutable.</summary>
/// <remarks>Amperes of a conductor are its greatest steady ones while the engine runs; drops are told in parts of what the circuit may lose.</remarks>
public sealed class SizeTable
{
    private static readonly string[] Wires = ["wire", "from", "to", "current", "size", "needed", "by", "may carry", "fuse", "of drop limit", "verdict"];
    private static readonly string[] Guards = ["fuse", "rating", "current", "needed", "guards", "verdict"];

    private readonly string text;

    private readonly SizeStudy study;

    private SizeTable(string text, SizeStudy study) => (this.text, this.study) = (text, study);

    /// <summary>The tables of a job.</summary>
    /// <param name="job">The job.</param>
    public static SizeTable Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var sizes = job.Sizes;
        bool isAltered = job.Study.IsAltered;
        StringBuilder text = new();
        if (isAltered) Tell(text, "Before, ", sizes.Before);
        Tell(text, isAltered ? "After, " : "", sizes.After);
        text.Append("Currents are the greatest steady ones while the engine runs; those with * were found by trying all combinations, with ~ by a search. The workshop manual, local codes and licensed practice take precedence.\n");
        return new(text.ToString(), sizes);
    }

    /// <summary>The tables in plain text, columns aligned by spaces, a caution below; lines end with a line feed.</summary>
    public string ToText() => text;

    /// <summary>The same as JSON of the contract <c>hotside-sizes/1</c>: wires with the verdict of each rule, fuses, findings; before and after.</summary>
    public string ToJson() => SizeJson.Write(study);

    private static void Tell(StringBuilder text, string head, CircuitSizes sizes)
    {
        text.Append(head).Append(sizes.Circuit.System).Append('\n');
        text.Append(TextColumns.Of("  ", [Wires, .. sizes.Conductors.Select(c => Row(sizes.Circuit, c))])).Append('\n');
        if (sizes.Fuses.Length > 0) text.Append(TextColumns.Of("  ", [Guards, .. sizes.Fuses.Select(Row)])).Append('\n');
        foreach (var finding in sizes.Findings) text.Append("  ").Append(finding).Append('\n');
        if (sizes.Findings.Length > 0) text.Append('\n');
    }

    private static string[] Row(Circuit circuit, ConductorSizing sizing) =>
    [
        sizing.Conductor.Id, circuit.TextOf(sizing.Conductor.From), circuit.TextOf(sizing.Conductor.To),
        Numbers.Brief(sizing.Current.Amperes) + " A" + sizing.Basis switch { CurrentBasis.Enumerated => " *", CurrentBasis.Searched => " ~", _ => "" },
        sizing.Conductor.Wire.Size?.ToString() ?? "", sizing.SizeNeeded?.ToString() ?? "", sizing.Binding?.ToString().ToLowerInvariant() ?? "",
        sizing.Ampacity is { } ampacity ? Numbers.Brief(ampacity.Amperes) + " A" : "",
        !sizing.IsHot ? "" : sizing.IsUnprotected ? sizing.FeedsStarter ? "none (starter)" : "none" : string.Join(" + ", sizing.ProtectedBy) + (sizing.Protection is { } amperes ? $" {Numbers.Brief(amperes.Amperes)} A" : ""),
        sizing.By(SizingRule.Drop)?.Share is { } share ? $"{Numbers.Brief(share * 100)} % {sizing.DropOf}" : "",
        Verdict(sizing),
    ];

    private static string Verdict(ConductorSizing sizing)
    {
        if (sizing.Refusal is { } refusal)
            return refusal switch
            {
                SizingRefusal.IgnitionSecondary => "high voltage: no size",
                SizingRefusal.ResistanceWire => "resistance wire: no size",
                SizingRefusal.SizeOutsideTables => "no table has it",
                SizingRefusal.HotterThanInsulation => "too hot for its insulation",
                _ => "no table for its insulation",
            };
        string[] broken = [.. sizing.Rules.Where(r => r.Outcome >= SizingOutcome.Warning).Select(r => $"{r.Rule.ToString().ToLowerInvariant()} {(r.Outcome == SizingOutcome.Failed ? "NOT KEPT" : "warning")}")];
        return broken.Length > 0 ? string.Join(", ", broken) : sizing.Verdict == SizingOutcome.NotJudged ? "not stated" : "good";
    }

    private static string[] Row(FuseSizing fuse)
    {
        string[] broken =
        [
            .. Said("load", fuse.Carries), .. Said("wire", fuse.Guards), .. Said("inrush", fuse.StandsInrush),
        ];
        return
        [
            fuse.Part.Id, fuse.Rating is { } rating ? Numbers.Brief(rating.Amperes) + " A" : "", Numbers.Brief(fuse.Current.Amperes) + " A",
            fuse.RatingNeeded is { } needed ? Numbers.Brief(needed.Amperes) + " A" : fuse.LinkNeeded?.ToString() ?? "",
            fuse.Thinnest is { } thinnest ? $"{thinnest.Id}, {Numbers.Brief(fuse.ThinnestAmpacity!.Value.Amperes)} A" : "",
            broken.Length > 0 ? string.Join(", ", broken) : fuse.Verdict == SizingOutcome.NotJudged ? "not stated" : "good",
        ];
    }

    private static IEnumerable<string> Said(string what, SizingOutcome outcome)
    {
        if (outcome > SizingOutcome.Passed) yield return $"{what} {(outcome == SizingOutcome.Failed ? "NOT KEPT" : outcome.ToString().ToLowerInvariant())}";
    }
}
