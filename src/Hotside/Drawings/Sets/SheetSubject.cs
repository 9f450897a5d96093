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

    /// <summary>The subject of each sheet, in as many words as its title block has room for; no two are alike, nor like the job's own words on the first.</summary>
    public static ImmutableArray<string> Of(ImmutableArray<Block> sheets, DrawingPlan plan, SheetRequest request)
    {
        string language = TitleRow.Value(request.TitleBlock, "language"), own = TitleRow.Value(request.TitleBlock, "supplementary title");
        bool isEnglish = language.Length == 0 || language.StartsWith("en", StringComparison.OrdinalIgnoreCase);
        string[][] forms = [.. sheets.Select(s => SubjectText.Of(Named(s, plan), isEnglish, request.Words).ToArray())];
        string[] said = [.. forms.Select(f => f.FirstOrDefault(t => Fits(t, request)) ?? f[^1])];
        var often = said.Append(own).GroupBy(s => s, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.Ordinal);
        var taken = new HashSet<string>([own], StringComparer.Ordinal);
        return [.. said.Select((s, i) => Alone(often.Contains(s) ? ByName(s, forms[i], Ids(sheets[i], plan), request) : s, taken))];
    }

    // What is called alike is told apart by its references: each stands on one sheet.
    private static string ByName(string said, string[] forms, string[] ids, SheetRequest request)
    {
        var called = from most in Enumerable.Range(0, ids.Length).Select(i => ids.Length - i)
                     let names = string.Join(", ", most < ids.Length ? ids.Take(most).Append("…") : ids)
                     from form in forms.SkipWhile(f => f != said).Append("")
                     select $"{form} {names}".Trim();
        return called.FirstOrDefault(c => Fits(c, request)) ?? ids.FirstOrDefault() ?? said;
    }

    private static string Alone(string subject, HashSet<string> taken)
    {
        string alone = subject;
        for (int again = 2; !taken.Add(alone); again++) alone = $"{subject} · {Numbers.Whole(again)}".Trim();
        return alone;
    }

    // A sheet of rails alone has its wires.
    private static string[] Ids(Block sheet, DrawingPlan plan) => Meant(sheet, plan) is { IsEmpty: false } meant ? [.. meant.Select(p => p.Id)] : [.. sheet.Lines];

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
