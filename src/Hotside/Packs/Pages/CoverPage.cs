using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>A line of the cover's list of sheets.</summary>
/// <param name="Title">What the page is.</param>
/// <param name="Sheets">On which sheets, such as <c>3 to 5</c>.</param>
internal sealed record ListedPage(string Title, string Sheets);

/// <summary>The cover: which vehicle, what is done to it, what stops the work, what is in the pack.</summary>
internal static class CoverPage
{
    public const string Key = "cover";

    // More than these are a reason to look at the checks themselves.
    private const int MostFindings = 8;

    private static readonly (string Key, string Name)[] Fields =
    [
        ("identification number", "Identification number"), ("legal owner", "Legal owner"), ("revision", "Revision"), ("responsible department", "Responsible department"), ("date of issue", "Date of issue"),
        ("creator", "Creator"), ("document status", "Document status"), ("approval person", "Approval person"), ("technical reference", "Technical reference"),
    ];

    /// <summary>The cover.</summary>
    /// <param name="source">The job.</param>
    /// <param name="pages">What is in the pack.</param>
    public static Section Of(PackSource source, IEnumerable<ListedPage> pages)
    {
        var (width, lettering) = (source.Width, source.Lettering);
        List<FlowPart> parts = [];
        if (source.IsAltered) parts.Add(Prose.Paragraph(Vocabulary.Capital(source.Alteration.Title), lettering.Heading, width));
        parts.Add(Prose.Paragraph(Supply(source), lettering.TextBold, width));
        if (source.IsAltered) parts.Add(Prose.Paragraph(Extent(source.Alteration), lettering.Text, width));
        parts.AddRange(Facts(source));
        parts.Add(Stops(source));
        parts.Add(Blanks.Of(["Job number", "Begun on", "Mechanic", "Vehicle plate", "Odometer or hours", "Telephone"], 3, width, lettering));
        parts.Add(Contents([.. pages], width, lettering));
        return new(Key, source.Job.Title, [.. parts]) { Note = "Work pack" };
    }

    // In two columns, the first one read first.
    private static FlowPart Contents(ListedPage[] pages, double width, PackLettering lettering)
    {
        int rows = (pages.Length + 1) / 2;
        Column[] half = [new("In this pack") { Share = 1 }, new("Sheets") { IsRight = true, Least = 60 }];
        Cell[] CellsOf(int i) => i < pages.Length ? [pages[i].Title, pages[i].Sheets] : [Cell.Empty, Cell.Empty];
        return Table.Of([.. half, new("") { Least = 30 }, .. half], Enumerable.Range(0, rows).Select(i => TableRow.Of([.. CellsOf(i), Cell.Empty, .. CellsOf(rows + i)])), width, lettering) with { IsWhole = true };
    }

    private static string Supply(PackSource source)
    {
        var (before, after) = (SheetText.System(source.Alteration.Before.System, source.Words), SheetText.System(source.Alteration.After.System, source.Words));
        return !source.IsAltered ? before : before == after ? $"{after}, before and after" : $"{before}  →  {after}";
    }

    private static string Extent(Alteration alteration)
    {
        int Parts(params PartState[] states) => alteration.Before.Parts.Concat(alteration.After.Parts).Select(p => p.Id).Distinct().Count(i => states.Contains(alteration.StateOf(i)));
        int Wires(params ConductorState[] states) => alteration.Before.Conductors.Concat(alteration.After.Conductors).Select(c => c.Id).Distinct().Count(i => states.Contains(alteration.StateOfConductor(i)));
        (int Count, string What)[] all =
        [
            (Parts(PartState.Fitted), "fitted"), (Parts(PartState.Replaced, PartState.ReplacedReversed), "replaced"), (Parts(PartState.TakenOut), "taken out"), (Parts(PartState.Reversed, PartState.Remounted), "turned or remounted"),
        ];
        (int Count, string What)[] wires =
        [
            (Wires(ConductorState.RunNew), "run new"), (Wires(ConductorState.Renewed, ConductorState.MovedAndRenewed), "renewed"), (Wires(ConductorState.Moved, ConductorState.UsedElsewhere), "moved"), (Wires(ConductorState.TakenOut), "taken out"),
        ];
        string Said((int Count, string What)[] of, string noun) => of.Any(o => o.Count > 0) ? $" {noun}: {string.Join(", ", of.Where(o => o.Count > 0).Select(o => $"{Numbers.Whole(o.Count)} {o.What}"))}." : "";
        return $"{Numbers.Whole(alteration.Changes.Length)} {(alteration.Changes.Length == 1 ? "change" : "changes")}.{Said(all, "Parts")}{Said(wires, "Wires")}";
    }

    private static IEnumerable<FlowPart> Facts(PackSource source)
    {
        var facts = Fields.Select(f => (f.Name, Value: source.Field(f.Key))).Where(f => f.Value.Length > 0).ToArray();
        if (facts.Length == 0) yield break;
        var rows = facts.Chunk(2).Select(c => TableRow.Of(c[0].Name, new Cell(c[0].Value) { IsBold = true }, c.Length > 1 ? c[1].Name : "", new Cell(c.Length > 1 ? c[1].Value : "") { IsBold = true }));
        yield return Table.Of([new(""), new("") { Share = 1 }, new(""), new("") { Share = 1 }], rows, source.Width, source.Lettering);
    }

    private static FlowPart Stops(PackSource source)
    {
        Diagnostic[] grave = [.. source.Findings.Where(f => f is { Severity: >= Severity.Error, Accepted: null }).OrderByDescending(f => f.Severity)];
        int warnings = source.Findings.Count(f => f is { Severity: Severity.Warning, Accepted: null });
        string others = warnings == 0 ? "" : $"{Numbers.Whole(warnings)} {(warnings == 1 ? "warning" : "warnings")}: see Decisions, and the command check.";
        if (grave.Length == 0) return new([Prose.Boxed("", [$"No finding stops the work. {others}".TrimEnd()], source.Width, source.Lettering)]) { After = 6 };
        var lines = grave.Take(MostFindings).Select(f => $"{(f.Severity == Severity.Stop ? "Stop" : "Error")} {f.Code}: {f.Message}");
        string more = grave.Length > MostFindings ? $"And {Numbers.Whole(grave.Length - MostFindings)} more." : "";
        return new([Prose.Boxed("Do not begin before these are settled", [.. lines, .. new[] { more, others }.Where(t => t.Length > 0)], source.Width, source.Lettering)]) { After = 6 };
    }
}
