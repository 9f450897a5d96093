using System.Collections.Immutable;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>A line of the table that says who switches what, and on which side.</summary>
/// <param name="Load">The load.</param>
/// <param name="Name">What it is.</param>
/// <param name="Before">On which side before; <see langword="null"/> where it is not there.</param>
/// <param name="After">On which side after; <see langword="null"/> where it is not there.</param>
internal sealed record SwitchRow(string Load, string Name, SwitchVerdict? Before, SwitchVerdict? After)
{
    /// <summary>Whether its part is there before, though it may be no load then.</summary>
    public bool IsThereBefore { get; private init; }

    /// <summary>Whether its part is there after, though it may be no load then.</summary>
    public bool IsThereAfter { get; private init; }

    /// <summary>What stands in the place of a verdict that is not there.</summary>
    /// <param name="isBefore">In which circuit.</param>
    public string Absence(bool isBefore) => (isBefore ? IsThereBefore : IsThereAfter) ? "no load of its own" : "not there";

    /// <summary>A line for each load of either circuit, in the order of the file.</summary>
    public static ImmutableArray<SwitchRow> Of(Study study, Vocabulary words)
    {
        bool isAltered = study.IsAltered;
        var names = study.Before.Loads.Concat(study.After.Loads).Where(l => !l.Element.IsInternal).Select(l => l.Name).Distinct(StringComparer.Ordinal);
        return [.. names.Select(name =>
        {
            LoadStudy? old = study.Before.Loads.FirstOrDefault(l => l.Name == name), fresh = study.After.Loads.FirstOrDefault(l => l.Name == name);
            var part = (fresh ?? old)!.Part;
            return new SwitchRow(name, words.Title(part), isAltered ? SwitchVerdict.Of(old, study.Before) : null, SwitchVerdict.Of(fresh, study.After))
            {
                IsThereBefore = study.Before.Circuit.FindPart(part.Id) is not null, IsThereAfter = study.After.Circuit.FindPart(part.Id) is not null,
            };
        })];
    }
}

/// <summary>How a load is switched in one circuit.</summary>
/// <param name="Side">On which side.</param>
/// <param name="By">By what, and what that carries; may be empty.</param>
/// <param name="ProtectedBy">The fuses, links and breakers between the source and the load, in that order; empty when there are none.</param>
internal sealed record SwitchVerdict(SwitchedSide Side, string By, ImmutableArray<string> ProtectedBy)
{
    public static SwitchVerdict? Of(LoadStudy? load, CircuitStudy study) => load is null ? null
        : new(load.Side, VerdictCaption.ByOf(load, study), [.. load.Paths.SelectMany(p => p.Guards).Where(id => id != load.Part.Id).Distinct()]);
}
