using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Drawings.Plans;

namespace Hotside.Outputs;

/// <summary>The marks of a diagnosis on a drawing: each suspected wire with its share, the next point at the wires that end there.</summary>
internal static class SuspectMarks
{
    // A wire that is hardly suspected has no mark.
    private const double Least = 1;

    public static LineMarks Of(Diagnosis diagnosis, Circuit circuit, bool isBefore)
    {
        var texts = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var banded = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (var suspect in diagnosis.Suspects.Where(s => s.Share.Percent >= Least))
            foreach (string id in suspect.Items.Take(1).Where(i => circuit.FindConductor(i) is not null))
            {
                banded.Add(id);
                double share = diagnosis.Suspects.Where(s => s.Items.FirstOrDefault() == id).Sum(s => s.Share.Percent);
                texts[id] = $"{id} {Numbers.Plain(share, 0)} %";
            }
        foreach (var (lead, point) in new[] { ("red", diagnosis.Next?.RedOn), ("black", diagnosis.Next?.BlackOn) })
            foreach (var conductor in circuit.Conductors.Where(c => point is { Length: > 0 } && c.Ends.Any(e => circuit.TextOf(e) == point && e.Part is not null)))
                texts[conductor.Id] = texts.TryGetValue(conductor.Id, out string? there) ? $"{there}, {lead} at {point}" : $"{lead} at {point}";
        return new(isBefore, texts.ToImmutable(), banded.ToImmutable())
        {
            Meaning = "share of suspicion; where the leads go next", BandMeaning = "suspect",
            Note = diagnosis.Next is { } next ? $"; next, {next.Setting}: {(next.BlackOn.Length == 0 ? $"look at {next.RedOn}" : $"red on {next.RedOn}, black on {next.BlackOn}")}"
                : diagnosis.Suspects is [var first, ..] ? $"; {first.Text}, {Numbers.Plain(first.Share.Percent, 0)} %" : "",
        };
    }
}
