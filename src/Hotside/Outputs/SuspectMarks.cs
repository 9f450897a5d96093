using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Drawings.Plans;

namespace Hotside.Outputs;

/// <summary>The marks of a diagnosis on a drawing: each suspected wire and part with its share, the next point at the wires that end there or at its part.</summary>
internal static class SuspectMarks
{
    // A wire that is hardly suspected has no mark.
    private const double Least = 1;

    private const string Looked = "look", CaseOf = "case of ";

    public static LineMarks Of(Diagnosis diagnosis, Circuit circuit, bool isBefore)
    {
        var texts = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var atParts = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var banded = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (string id in diagnosis.Suspects.Where(s => s.Share.Percent >= Least).SelectMany(s => s.Items.Take(1)).Distinct())
        {
            string share = $"{Numbers.Plain(diagnosis.Suspects.Where(s => s.Items.FirstOrDefault() == id).Sum(s => s.Share.Percent), 0)} %";
            if (circuit.FindConductor(id) is null) atParts[id] = "suspect " + share;
            else if (banded.Add(id)) texts[id] = $"{id} {share}";
        }
        foreach (var (lead, point) in Leads(diagnosis.Next))
        {
            var wires = circuit.Conductors.Where(c => c.Ends.Any(e => circuit.TextOf(e) == point && e.Part is not null)).ToArray();
            foreach (var wire in wires) texts[wire.Id] = texts.TryGetValue(wire.Id, out string? before) ? $"{before}, {lead} at {point}" : $"{lead} at {point}";
            // What is looked at, a rail, a bolted terminal.
            if (wires.Length == 0 && PartOf(point, circuit) is { } part) atParts[part] = atParts.TryGetValue(part, out string? there) ? $"{there}, next" : lead == Looked ? "look at it next" : $"{lead} at {point}";
        }
        return new(isBefore, texts.ToImmutable(), banded.ToImmutable())
        {
            AtParts = atParts.ToImmutable(),
            Meaning = "share of suspicion; where the leads go next", BandMeaning = "suspect",
            Note = diagnosis.Next is { } next ? $"; next, {next.Setting}: {(next.BlackOn.Length == 0 ? $"look at {next.RedOn}" : $"red on {next.RedOn}, black on {next.BlackOn}")}"
                : diagnosis.Suspects is [var first, ..] ? $"; {first.Text}, {Numbers.Plain(first.Share.Percent, 0)} %" : "",
        };
    }

    private static IEnumerable<(string Lead, string Point)> Leads(NextReading? next) => next is null ? [] : next.BlackOn.Length == 0 ? [(Looked, next.RedOn)] : [("red", next.RedOn), ("black", next.BlackOn)];

    // "E3.tail", "case of E1", "X1", "F1.fuse3".
    private static string? PartOf(string point, Circuit circuit) => circuit.FindPart((point.StartsWith(CaseOf, StringComparison.Ordinal) ? point[CaseOf.Length..] : point).Split('.')[0])?.Id;
}
