using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sheets;
using Hotside.Wording;

namespace Hotside.Drawings.Sets;

/// <summary>What the overview of a set says of where things are.</summary>
/// <param name="Contents">What stands on each sheet that is drawn, below the sheet's number.</param>
/// <param name="Load">On which sheet and in which zone a load is; empty where it is on none.</param>
/// <param name="Change">On which sheets a change of the list is drawn; empty where it is on none.</param>
internal sealed record SetIndex(ImmutableArray<(string Sheet, string What)> Contents, Func<string, string> Load, Func<string, string> Change);

/// <summary>Reads off the sheets of a set what stands there.</summary>
internal sealed class SetIndexes
{
    private readonly DrawingPlan plan;
    private readonly SheetRequest request;
    private readonly Sheet[] sheets;
    private readonly string[] contents;
    private readonly ImmutableArray<HashSet<string>> changes;

    /// <summary>Reads the sheets.</summary>
    /// <param name="plan">The whole.</param>
    /// <param name="request">What is asked for.</param>
    /// <param name="sheets">The sheets that are drawn.</param>
    /// <param name="subjects">What each is called in its title block.</param>
    public SetIndexes(DrawingPlan plan, SheetRequest request, Sheet[] sheets, ImmutableArray<string> subjects)
    {
        (this.plan, this.request, this.sheets) = (plan, request, sheets);
        // The picture itself says what a reader finds: it knows which labels have a place.
        SceneGroup[][] shown = [.. sheets.Select(s => s.Request.Views.SelectMany(v => CircuitPicture.Of(s.Plan, s.Layout, v, 0, 0)).ToArray())];
        contents = [.. subjects.Zip(shown, (subject, groups) => string.Join(": ", new[] { subject, string.Join(", ", PartsIn(groups)) }.Where(t => t.Length > 0)))];
        changes = [.. shown.Select(groups => ChangesIn(groups).ToHashSet(StringComparer.Ordinal))];
    }

    /// <summary>What the overview says.</summary>
    /// <param name="before">How many sheets of text stand before those that are drawn.</param>
    public SetIndex After(int before) => new(
        [.. contents.Select((what, i) => (NumberOf(before, i), what))],
        load => string.Join(" ", ZonesOf(load, before)),
        change => SheetText.OnSheets([.. Enumerable.Range(0, sheets.Length).Where(i => changes[i].Contains(change)).Select(i => NumberOf(before, i))]));

    private string NumberOf(int before, int sheet) => Numbers.Whole(request.NumberOf(before + sheet));

    // In the order of the file. A rail is looked for by what it feeds: it has its name, too.
    private IEnumerable<string> PartsIn(SceneGroup[] groups)
    {
        var shown = groups.Where(g => g.Classes.Contains("part")).SelectMany(g => g.Data).Where(d => d.Name == "ref").Select(d => d.Value).ToHashSet(StringComparer.Ordinal);
        return plan.Parts.Where(p => shown.Contains(p.PartId)).DistinctBy(p => p.PartId)
            .Select(p => p.Role is PlannedRole.Rail or PlannedRole.FeedRail or PlannedRole.ReturnRail ? $"{p.PartId} ({plan.Words.Title((p.After ?? p.Before)!.Part)})" : p.PartId);
    }

    // A label and what stands beside a part have triangles; a bus that is the return has none.
    private IEnumerable<string> ChangesIn(SceneGroup[] groups)
    {
        var bus = plan.Parts.Where(p => p.Role == PlannedRole.ReturnRail).Select(p => p.PartId).ToHashSet(StringComparer.Ordinal);
        return groups.Where(g => (g.Classes.Contains("part") || g.Classes.Contains("label")) && !g.Data.Any(d => d.Name == "ref" && bus.Contains(d.Value)))
            .SelectMany(g => g.Data).Where(d => d.Name == "number").SelectMany(d => d.Value.Split(','));
    }

    // A part is found in the last view that shows it.
    private IEnumerable<string> ZonesOf(string load, int before)
    {
        string part = plan.Parts.FirstOrDefault(p => load == p.PartId || load.StartsWith(p.PartId + ".", StringComparison.Ordinal) && p.PartId.Length > 0)?.Box ?? "";
        for (int i = 0; i < sheets.Length; i++)
            if (request.Views.Reverse().Select(v => sheets[i].ZoneOf(part, v)).FirstOrDefault(z => z is not null) is { } zone) yield return $"{NumberOf(before, i)}.{zone}";
    }
}
