using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sheets;
using Hotside.Wording;

namespace Hotside.Drawings.Sets;

/// <summary>What each sheet of a set is about: the supplementary title of its title block (ISO 7200, from memory), and its words in the index.</summary>
internal static class SheetSubject
{
    // Relays and converters serve what they feed, and that names the sheet.
    private static readonly string[] Serving = ["K", "N"];

    /// <summary>The subject of each sheet, in as many words as its title block has room for.</summary>
    public static ImmutableArray<string> Of(ImmutableArray<Block> sheets, DrawingPlan plan, SheetRequest request)
    {
        string language = TitleRow.Value(request.TitleBlock, "language");
        bool isEnglish = language.Length == 0 || language.StartsWith("en", StringComparison.OrdinalIgnoreCase);
        return [.. sheets.Select(s => SubjectText.Of(Named(s, plan), isEnglish, request.Words).ToArray() is var forms && forms.FirstOrDefault(f => Fits(f, request)) is { } fitting ? fitting : forms[^1])];
    }

    /// <summary>The sources and loads of a sheet, in the order of the file: what a reader looks for. A sheet with neither is about what it has.</summary>
    public static ImmutableArray<Part> Meant(Block sheet, DrawingPlan plan)
    {
        var loads = plan.Study.Before.Loads.Concat(plan.Study.After.Loads).Where(l => !l.Element.IsInternal).Select(l => l.Part.Id).ToHashSet(StringComparer.Ordinal);
        Part[] parts = [.. plan.Parts.Where(p => p.PartId.Length > 0 && sheet.Parts.Contains(p.Box)).Select(p => (p.After ?? p.Before)!.Part).DistinctBy(p => p.Id)];
        Part[] meant = [.. parts.Where(p => loads.Contains(p.Id) || p.Kind.Letter == "G")];
        return [.. meant.Length > 0 ? meant : parts];
    }

    private static IEnumerable<Part> Named(Block sheet, DrawingPlan plan)
    {
        var meant = Meant(sheet, plan);
        Part[] main = [.. meant.Where(p => !Serving.Contains(p.Kind.Letter))];
        return main.Length > 0 ? main : meant;
    }

    private static bool Fits(string subject, SheetRequest request) => TitleBlock.HoldsSupplement(request.Of(request.SheetText(88, 88), subject).TitleBlock);
}
