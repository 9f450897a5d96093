using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside;

/// <summary>What happens to a load, in sentences for somebody with the hood open.</summary>
/// <param name="Title">The load, with its name.</param>
/// <param name="Sections">Before, after, what changes, and what to mind.</param>
public sealed record Explanation(string Title, ImmutableArray<ExplanationSection> Sections)
{
    /// <summary>The whole as text: a heading and its sentences, each on a line.</summary>
    public override string ToString() => Title + "\n" + string.Concat(Sections.Select(s => $"\n{s.Heading}\n" + string.Concat(s.Sentences.Select(t => $"  {t}\n"))));

    internal static Explanation Of(string load, Study study, Vocabulary words)
    {
        LoadStudy[] before = [.. study.Before.LoadsNamed(load)], after = [.. study.After.LoadsNamed(load)];
        if (before.Length + after.Length == 0) throw new ArgumentException(study.Unknown(load), nameof(load));
        bool isAltered = study.IsAltered;
        var sections = ImmutableArray.CreateBuilder<ExplanationSection>();
        if (isAltered) sections.AddRange(Told("Before", before, study.Before, words, "it is fitted in the alteration"));
        sections.AddRange(Told(isAltered ? "After" : "As it is", after, study.After, words, "it is taken out"));
        if (isAltered) sections.Add(new("What changes", LoadChanges.Of(load, before, after, study, words)));
        sections.Add(new("Mind",
        [
            "This is read from the job file; currents and volts are worked out from ratings and wire sizes, nothing was measured. Measure with one hand, clear of fans and belts, and pull no plug under load.",
            "The workshop manual, local codes and licensed practice take precedence.",
        ]));
        var shown = after.Length > 0 ? after[0].Part : before[0].Part;
        return new(PartWords.Named(shown, words), sections.ToImmutable());
    }

    private static IEnumerable<ExplanationSection> Told(string moment, LoadStudy[] loads, CircuitStudy study, Vocabulary words, string ifNone)
    {
        string system = $"{moment}, {SheetText.System(study.Circuit.System, words)}";
        if (loads.Length == 0) yield return new(system, [$"Not there: {ifNone}."]);
        foreach (var load in loads)
            yield return new(loads.Length > 1 ? $"{system}: {load.Name}" : system, [.. Rated(load.Part), .. new LoadExplanation(load, study, words).Sentences()]);
    }

    private static IEnumerable<string> Rated(Part part) =>
        part.Ratings.IsEmpty ? [] : [$"{part.Id} is rated {string.Join(", ", QuantityWords.Of(part.Ratings))}."];
}

/// <summary>A heading with its sentences.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Sentences">The sentences, in order.</param>
public sealed record ExplanationSection(string Heading, ImmutableArray<string> Sentences);
