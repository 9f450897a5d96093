using Hotside.Circuits;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>The list of changes, with where each is drawn and room for what was done otherwise.</summary>
internal static class ChangePage
{
    public const string Key = "changes";

    public static Section? Of(PackSource source)
    {
        if (!source.IsAltered) return null;
        bool areDrawn = source.Zones.AreKnown;
        Column[] columns = [Column.Tick(), new("No.") { IsRight = true, IsBold = true }, new("On") { IsBold = true, Share = 0.01, Least = 60 }, new("What is done, and why") { Share = 1, Weight = 3 }, .. areDrawn ? [new Column("Sheet and zone") { Least = 52 }] : Array.Empty<Column>(), Column.Blank("Done otherwise", 38)];
        var rows = source.Alteration.Changes.Select(c => TableRow.Of(
        [
            Cell.Tick, Numbers.Whole(c.Number), FigureText.Some([.. c.Acts.SelectMany(a => a.Items).Distinct()]), ChangeText.Of(c, source.Alteration, source.Words) is var text ? Vocabulary.Capital(text) + "." : "",
            .. areDrawn ? [new Cell(source.Zones.OfAll(c.Acts.SelectMany(a => a.Items)))] : Array.Empty<Cell>(), Cell.Empty,
        ]));
        return new(Key, "Change list", [Table.Of([.. columns], rows, source.Width, source.Lettering)]) { Note = "Numbers as in the triangles of the drawing." };
    }
}
