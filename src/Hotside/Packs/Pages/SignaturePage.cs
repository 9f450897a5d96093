using Hotside.Circuits;
using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>Who did what, what was done otherwise than planned, and who took the vehicle over.</summary>
internal static class SignaturePage
{
    public const string Key = "signatures";

    private const int Deviations = 10;

    public static Section? Of(PackSource source)
    {
        if (!source.IsAltered) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        return new(Key, "As fitted, and signatures",
        [
            Prose.Paragraph("What was done otherwise than this pack says goes here and then into the job file: the drawing has to show the vehicle, not the plan.", lettering.Text, width),
            Table.Of([new("No.") { IsBold = true, Least = 28 }, Column.Blank("Part, wire, terminal", 40, 1), Column.Blank("What was done, and why", 70, 2), Column.Blank("Date", 18), Column.Blank("By", 16)],
                Enumerable.Range(1, Deviations).Select(n => TableRow.Of("A" + Numbers.Whole(n), Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty) with { Least = 34 }), width, lettering),
            Prose.Heading("Handed over", width, lettering),
            Prose.Ticks(Handed(source), lettering.Text, width),
            Table.Of([new("") { Share = 1 }, Column.Blank("Name", 44, 1), Column.Blank("Date", 22), Column.Blank("Signature", 50, 1)],
                new[] { "Work done by", "Tested by", "Approved by", "Received by the owner" }.Select(w => TableRow.Of(w, Cell.Empty, Cell.Empty, Cell.Empty) with { Least = 40 }), width, lettering) with { IsWhole = true },
        ]) { IsWhole = true, Note = "Deviations are numbered A1 and so on." };
    }

    private static IEnumerable<string> Handed(PackSource source)
    {
        string system = Wording.SheetText.System(source.Alteration.After.System, source.Words).ToUpperInvariant();
        yield return "Photographs of all that is covered taken, before it was covered.";
        // Where the supply stays, the old labels are right.
        if (source.Alteration.Before.System != source.Alteration.After.System && source.Alteration.After.Sources.Any(s => s.Part.IsStandingSource)) yield return $"Label \"{system}\" at battery, charging point and filler.";
        if (!source.Fuses.IsEmpty) yield return "Fuse chart in the lid, spare fuses in their place.";
        yield return "Old bulbs, fuses and relays out of the vehicle.";
        yield return "Readings and corrected drawings left with the vehicle; the job file given to the owner.";
    }
}
