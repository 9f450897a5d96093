using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>What is decided of every part, why, and what is still open.</summary>
internal static class DecisionPage
{
    public const string Key = "decisions";

    public static Section? Of(PackSource source)
    {
        if (!source.IsAltered) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        var changed = source.Decisions.Where(d => !d.Stays).ToArray();
        var kept = source.Decisions.Where(d => d.Stays).ToArray();
        var parts = new List<FlowPart>();
        if (changed.Length > 0)
            parts.Add(Table.Of([new("No.") { IsRight = true }, new("Part") { Share = 1 }, new("Decision") { IsBold = true }, new("Becomes, and why") { Share = 2, Weight = 1.3 }, .. OpenColumn(changed), Column.Blank("Agreed by", 20)],
                changed.Select(d => TableRow.Of([string.Join(", ", d.Numbers), d.Named, d.Decision, Why(d), .. OpenCell(d, changed), Cell.Empty]) with { Least = 24 }), width, lettering));
        if (kept.Length > 0)
        {
            parts.Add(Prose.Heading("Stays as it is", width, lettering));
            parts.Add(Table.Of([new("Why") { Share = 1 }, new("Parts") { Share = 2 }, .. OpenColumn(kept), Column.Blank("Agreed by", 20)],
                kept.Select(d => TableRow.Of([Vocabulary.Capital(d.Why), d.Named, .. OpenCell(d, kept), Cell.Empty]) with { Least = 24 }), width, lettering));
        }
        return new(Key, "Decisions", [.. parts]) { Note = source.Decisions.Any(d => !d.Open.IsEmpty) ? "Open: codes of findings; the command check says what they mean." : "No finding is open." };
    }

    private static string Why(DecisionEntry decision) => string.Join("; ", new[] { decision.Becomes, decision.Why }.Where(t => t.Length > 0));

    // A column that would be empty is none.
    private static Column[] OpenColumn(DecisionEntry[] decisions) => decisions.Any(d => !d.Open.IsEmpty) ? [new("Open") { Least = 60 }] : [];

    private static Cell[] OpenCell(DecisionEntry decision, DecisionEntry[] decisions) => decisions.Any(d => !d.Open.IsEmpty) ? [string.Join(", ", decision.Open.Select(f => f.Code).Distinct().Take(4))] : [];
}
