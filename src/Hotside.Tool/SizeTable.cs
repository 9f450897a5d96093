using Hotside.Circuits;
using Hotside.Sizing;

namespace Hotside.Tool;

/// <summary>Prints the sizes of a circuit as two tables, conductors and fuses.</summary>
internal static class SizeTable
{
    private static readonly string[] Wires = ["wire", "from", "to", "current", "size", "needed", "by", "may carry", "fuse", "of drop limit", "verdict"];
    private static readonly string[] Guards = ["fuse", "rating", "current", "needed", "guards", "verdict"];

    /// <summary>Prints the sizes of a job.</summary>
    public static void Print(TextWriter output, SizeStudy sizes)
    {
        bool isAltered = !ReferenceEquals(sizes.Before, sizes.After);
        if (isAltered) Print(output, "Before, ", sizes.Before);
        Print(output, isAltered ? "After, " : "", sizes.After);
        output.WriteLine("Currents are the greatest steady ones while the engine runs; those with * were found by trying all combinations, with ~ by a search. The workshop manual, local codes and licensed practice take precedence.");
    }

    private static void Print(TextWriter output, string head, CircuitSizes sizes)
    {
        output.WriteLine(head + sizes.Circuit.System);
        Table.Print(output, Wires, [.. sizes.Conductors.Select(c => Row(sizes.Circuit, c))]);
        output.WriteLine();
        if (sizes.Fuses.Length > 0)
        {
            Table.Print(output, Guards, [.. sizes.Fuses.Select(Row)]);
            output.WriteLine();
        }
        foreach (var finding in sizes.Findings) output.WriteLine("  " + finding);
        if (sizes.Findings.Length > 0) output.WriteLine();
    }

    private static string[] Row(Circuit circuit, ConductorSizing sizing) =>
    [
        sizing.Conductor.Id, circuit.TextOf(sizing.Conductor.From), circuit.TextOf(sizing.Conductor.To),
        Table.Figure(sizing.Current.Amperes) + " A" + sizing.Basis switch { CurrentBasis.Enumerated => " *", CurrentBasis.Searched => " ~", _ => "" },
        sizing.Conductor.Wire.Size?.ToString() ?? "", sizing.SizeNeeded?.ToString() ?? "", sizing.Binding?.ToString().ToLowerInvariant() ?? "",
        sizing.Ampacity is { } ampacity ? Table.Figure(ampacity.Amperes) + " A" : "",
        !sizing.IsHot ? "" : sizing.IsUnprotected ? sizing.FeedsStarter ? "none (starter)" : "none" : string.Join(" + ", sizing.ProtectedBy) + (sizing.Protection is { } amperes ? $" {Table.Figure(amperes.Amperes)} A" : ""),
        sizing.By(SizingRule.Drop)?.Share is { } share ? $"{Table.Figure(share * 100)} % {sizing.DropOf}" : "",
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
            fuse.Part.Id, fuse.Rating is { } rating ? Table.Figure(rating.Amperes) + " A" : "", Table.Figure(fuse.Current.Amperes) + " A",
            fuse.RatingNeeded is { } needed ? Table.Figure(needed.Amperes) + " A" : fuse.LinkNeeded?.ToString() ?? "",
            fuse.Thinnest is { } thinnest ? $"{thinnest.Id}, {Table.Figure(fuse.ThinnestAmpacity!.Value.Amperes)} A" : "",
            broken.Length > 0 ? string.Join(", ", broken) : fuse.Verdict == SizingOutcome.NotJudged ? "not stated" : "good",
        ];
    }

    private static IEnumerable<string> Said(string what, SizingOutcome outcome)
    {
        if (outcome > SizingOutcome.Passed) yield return $"{what} {(outcome == SizingOutcome.Failed ? "NOT KEPT" : outcome.ToString().ToLowerInvariant())}";
    }
}
